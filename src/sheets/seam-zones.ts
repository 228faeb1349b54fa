import type { Zone } from '../drawing/drawing.js';
import type { Span } from './axis.js';
import type { Grid } from './tile-grid.js';

/** What seams in one direction should keep out of and seek: intervals of that coordinate, mm. */
export interface SeamWishes {
  readonly keepClear: readonly Span[];
  /** What must stay whole and the room round it. */
  readonly near: readonly Span[];
  readonly lettering: readonly Span[];
  readonly lands: readonly Span[];
}

/** Boxes that seams should keep out of, and seek. */
export interface SeamZones {
  readonly keepClear: readonly Zone[];
  readonly lettering: readonly Zone[];
  readonly lands: readonly Zone[];
  /** Height of the spine, where there is one: a seam along it could be taken for it. */
  readonly spine?: number;
}

/** Seams keep this far from the spine, and where that costs no sheet and no cut from what must stay whole; mm. */
export const seamStandOff = 8;

/** Intervals of zones along x or y. */
export const seamWishes = (zones: SeamZones, along: 'x' | 'y'): SeamWishes => {
  const spans = (of: readonly Zone[]): Span[] => of.map(({ box }) => (along === 'x' ? { from: box.x0, to: box.x1 } : { from: box.y0, to: box.y1 }));
  const wider = (span: Span): Span => ({ from: span.from - seamStandOff, to: span.to + seamStandOff });
  const keepClear = spans(zones.keepClear);
  const spine = along === 'y' && zones.spine !== undefined ? [wider({ from: zones.spine, to: zones.spine })] : [];
  return { keepClear: [...keepClear, ...spine], near: keepClear.map(wider), lettering: spans(zones.lettering), lands: spans(zones.lands) };
};

/** What the seams of a grid do to a drawing, each zone counted for every seam. */
export interface SeamTally {
  /** Zones that must not be cut and that a seam cuts, the surroundings of the spine among them. */
  readonly cuts: number;
  readonly letteringCuts: number;
  /** Zones that must not be cut and that a seam cuts or comes near. */
  readonly closeSeams: number;
  readonly seamsOutsideLands: number;
}

const isIn = (at: number) => ({ from, to }: Span): boolean => from < at && at < to;

/** Counts what the seams of a grid cut, and miss. */
export const seamTally = (grid: Grid, wishes: { readonly x: SeamWishes; readonly y: SeamWishes }): SeamTally => {
  const seams = (['x', 'y'] as const).flatMap((side) => grid[side].seams.map((at) => ({ at, wish: wishes[side] })));
  const count = (sort: 'keepClear' | 'near' | 'lettering'): number => seams.reduce((n, { at, wish }) => n + wish[sort].filter(isIn(at)).length, 0);
  return {
    cuts: count('keepClear'), letteringCuts: count('lettering'), closeSeams: count('near'),
    seamsOutsideLands: seams.filter(({ at, wish: { lands } }) => lands.length > 0 && !lands.some(({ from, to }) => from <= at && at <= to)).length,
  };
};
