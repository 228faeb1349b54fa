import type { SaddleEnd } from '../../../src/jigs/saddle-cope/solve.js';

export type Vector = readonly [number, number, number];

export const plus = (...vs: readonly Vector[]): Vector => [0, 1, 2].map((i) => vs.reduce((sum, v) => sum + v[i]!, 0)) as unknown as Vector;
export const times = (k: number, v: Vector): Vector => [k * v[0], k * v[1], k * v[2]];
export const dot3 = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross3 = (a: Vector, b: Vector): Vector =>
  [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
export const length3 = (v: Vector): number => Math.hypot(...v);

/**
 * A joint set up in space from the words of the convention, without the formulas under test. The branch's axis is Z, its
 * far end up, the near throat towards +X, so that φ, counter-clockwise seen from the far end, turns from +X to +Y. Seen
 * from a throat with the far end up, right is Z × (throat direction).
 */
export const jointFrame = (end: SaddleEnd, centres: number): { readonly throat: Vector; readonly mainPoint: Vector; readonly mainAxis: Vector } => {
  const up: Vector = [0, 0, 1];
  const throat: Vector = [Math.cos(end.twist), Math.sin(end.twist), 0];
  const right = cross3(up, throat);
  const awayFromMain = times(end.name === 'near' ? 1 : -1, up);
  const crossing: Vector = [0, 0, end.name === 'near' ? 0 : centres];
  return {
    throat,
    // The branch lies to the right of the main: the main lies to the left of the branch.
    mainPoint: plus(crossing, times(-end.joint.offset, right)),
    mainAxis: plus(times(Math.cos(end.joint.angle), awayFromMain), times(Math.sin(end.joint.angle), throat)),
  };
};
