import type { Cure } from '../../errors/finding.js';
import { usualReach } from '../../shop/tools.js';
import { angleOf, lengthOf, words, type Words } from '../../units/quantity.js';
import { degrees } from '../../units/units.js';
import type { Context } from '../jig.js';
import type { Concern, Report } from './report.js';

/** Settings that differ by less are equal, radians or mm: sums leave that behind. */
const rounding = 1e-9;

/** Something that a machine of the shop is asked to do. */
export interface Asked {
  readonly about: Concern;
  /** What asks for it, to begin the sentence: `the first cut`, `hole 1 (post)`. */
  readonly what: Words;
  /** A way that works without it. */
  readonly remedy: Words;
  readonly would?: readonly Cure[];
}

/** An angle that a machine is set to, and how it is said. */
interface Setting {
  readonly code: string;
  readonly angle: number;
  readonly most: number | undefined;
  /** `needs the saw at`, and what is said of the machine's own reach: `the saw turns to`. */
  readonly needs: string;
  readonly goesTo: string;
  /** What to measure where the shop does not say. */
  readonly measure: string;
}

/** An angle beyond the shop's reach is a warning; one that few machines reach, where the shop does not say, a note to measure. */
const checkAngle = (setting: Setting, { about, what, remedy, would = [] }: Asked): readonly Report[] => {
  const { code, angle, most, needs, goesTo, measure } = setting;
  const limit = most ?? usualReach;
  if (angle <= limit + rounding) return [];
  const shared = { about, measured: degrees(angle), limit: degrees(limit), remedy, would };
  if (most !== undefined) {
    const message = words`${what} ${needs} ${angleOf(angle)}; ${goesTo} ${angleOf(most)}.`;
    return [{ ...shared, code: `${code}-out-of-reach`, severity: 'warn', message }];
  }
  const message = words`${what} ${needs} ${angleOf(angle)}: ${measure} before you start; many go to ${angleOf(usualReach)} only.`;
  return [{ ...shared, code: `${code}-unknown`, severity: 'note', message }];
};

/** A saw turned from square, radians, against its own gauge. */
export function checkSawReading(angle: number, asked: Asked, { shop }: Pick<Context, 'shop'>): readonly Report[] {
  return checkAngle({
    code: 'saw-reading', angle, most: shop.saw?.maxReading, needs: 'needs the saw turned', goesTo: 'the shop’s saw turns to', measure: 'see how far your saw turns',
  }, asked);
}

/** A blade tilted from upright, radians. */
export function checkBladeTilt(angle: number, asked: Asked, { shop }: Pick<Context, 'shop'>): readonly Report[] {
  return checkAngle({
    code: 'blade-tilt', angle, most: shop.saw?.maxTilt, needs: 'needs the blade tilted', goesTo: 'the shop’s blade tilts to', measure: 'see how far your blade tilts',
  }, asked);
}

/** A drill press's table tilted from level, radians. */
export function checkTableTilt(angle: number, asked: Asked, { shop }: Pick<Context, 'shop'>): readonly Report[] {
  return checkAngle({
    code: 'table-tilt', angle, most: shop.drillPress?.maxTableTilt, needs: 'needs the drill press’s table tilted', goesTo: 'the shop’s table tilts to', measure: 'see how far your table tilts',
  }, asked);
}

/** The travel of the quill, mm; not checked where the shop does not say. */
export function checkStroke(travel: number, { about, what, remedy, would = [] }: Asked, { shop }: Pick<Context, 'shop'>): readonly Report[] {
  const stroke = shop.drillPress?.stroke;
  if (stroke === undefined || travel <= stroke + rounding) return [];
  return [{
    code: 'stroke-short', severity: 'warn', measured: stroke, limit: travel, about, remedy, would,
    message: words`${what} takes ${lengthOf(travel)} of travel; the shop’s quill has ${lengthOf(stroke)}.`,
  }];
}

/** How deep the saw cuts with its blade tilted, mm; undefined where the shop does not say. Exact: depth · cos tilt. */
export function sawDepth({ shop }: Pick<Context, 'shop'>, tilt = 0): number | undefined {
  const upright = shop.saw?.maxDepth;
  return upright === undefined ? undefined : upright * Math.cos(tilt);
}

/** The height that the saw cuts through, its blade tilted by `tilt`; not checked where the shop does not say. mm, radians. */
export function checkSawDepth(height: number, tilt: number, { about, what, remedy, would = [] }: Asked, context: Pick<Context, 'shop'>): readonly Report[] {
  const most = sawDepth(context, tilt);
  if (most === undefined || height <= most + rounding) return [];
  return [{
    code: 'saw-depth-short', severity: 'warn', measured: height, limit: most, about, remedy, would,
    message: words`${what} stands ${lengthOf(height)} in the saw’s way; the shop’s saw cuts ${lengthOf(most)} deep${tilt === 0 ? '' : words` with the blade tilted ${angleOf(tilt)}`}.`,
  }];
}
