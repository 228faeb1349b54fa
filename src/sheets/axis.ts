/** A stretch of one coordinate, mm. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** How far a sheet sees in one direction. */
export interface Reach {
  /** Length of drawing on one sheet, mm. */
  readonly window: number;
  /** What two neighbours both show, mm. */
  readonly overlap: number;
}

/** One direction of a grid of sheets: the drawing's extent and the seams that cut it, in order. */
export interface Axis extends Reach {
  readonly extent: Span;
  readonly seams: readonly number[];
}

/** Furthest apart that two seams may lie. */
export const seamStep = (reach: Reach): number => reach.window - reach.overlap;

/** What each sheet is responsible for: from seam to seam, the outer ones to the end of the drawing. They meet without a gap. */
export const cores = (axis: Axis): Span[] => {
  const ends = [axis.extent.from, ...axis.seams, axis.extent.to];
  return ends.slice(1).map((to, i) => ({ from: ends[i]!, to }));
};

/**
 * What each sheet shows: half an overlap past its seams. A sheet at the end of the drawing shows as much beyond it as the
 * paper holds, so that marks can stand far apart; a lone sheet has the drawing in its middle.
 */
export const windows = (axis: Axis): Span[] => {
  const half = axis.overlap / 2;
  const all = cores(axis);
  return all.map(({ from, to }, i) => {
    const first = i === 0;
    const last = i === all.length - 1;
    if (first && last) {
      const spare = (axis.window - (to - from)) / 2;
      return { from: from - spare, to: to + spare };
    }
    if (first) return { from: to + half - axis.window, to: to + half };
    if (last) return { from: from - half, to: from - half + axis.window };
    return { from: from - half, to: to + half };
  });
};

/** Longest core: `inner` between two seams, `outer` with one seam, `alone` with none. */
export const longestCores = (reach: Reach): { inner: number; outer: number; alone: number } => ({
  inner: reach.window - reach.overlap, outer: reach.window - reach.overlap / 2, alone: reach.window,
});

/** Two seams no nearer than this leave room for the marks of both and of the seams that cross them, mm. */
export const leastCore = (reach: Reach): number => reach.overlap + 20;

const slack = 1e-9;

/** Whether every core of the axis fits its sheet and holds its marks. */
export const isLegal = (axis: Axis): boolean => {
  const most = longestCores(axis);
  const all = cores(axis);
  return all.every(({ from, to }, i) => {
    const seams = Number(i > 0) + Number(i < all.length - 1);
    const limit = [most.alone, most.outer, most.inner][seams]!;
    const least = seams === 2 ? leastCore(axis) : 0;
    return to > from && to - from >= least && to - from <= limit + slack;
  });
};

/** Seams a full step apart from the start of the drawing: what one gets without a search. */
export const plainSeams = (extent: Span, reach: Reach): number[] => {
  const { inner, outer, alone } = longestCores(reach);
  if (extent.to - extent.from <= alone + slack) return [];
  const seams = [extent.from + outer];
  while (extent.to - seams.at(-1)! > outer + slack) seams.push(seams.at(-1)! + inner);
  return seams;
};
