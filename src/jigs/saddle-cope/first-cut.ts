import type { SaddleJoint } from '../../geometry/saddle.js';
import { sawCutHeight } from '../../geometry/saw-cut.js';
import { settingError } from '../../shop/tools.js';

/** The plane first cut of one end; heights mm along the branch as of the saddle. */
export interface FirstCut {
  /** Wood that it leaves at the wings, along the branch, for the saw's own error. */
  readonly allowance: number;
  /** Its nearest point to the main, on the long point's side, and its farthest, on the throat's. */
  readonly toe: number;
  readonly heel: number;
  /** How far the toe lies beyond the horn, towards the main. */
  readonly toeBeyondHorn: number;
  /** How far half a degree of error moves the cut at the wings. */
  readonly shift: number;
}

/** Height of the first cut at a clock angle, mm: the plane that keeps all of both wings, less the allowance. Exact. */
export function firstCutHeight(joint: SaddleJoint, allowance: number, phi: number): number {
  return sawCutHeight(joint, phi) - allowance;
}

/** The first cut of a joint whose edge is lowest at `horn`. Exact; the shift to first order in the error: r·δ ÷ sin²θ. */
export function firstCutOf(joint: SaddleJoint, horn: number, allowance: number): FirstCut {
  const toe = firstCutHeight(joint, allowance, Math.PI);
  return {
    allowance, toe, heel: firstCutHeight(joint, allowance, 0), toeBeyondHorn: horn - toe,
    shift: (joint.branch * settingError) / Math.sin(joint.angle) ** 2,
  };
}
