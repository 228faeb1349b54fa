import { segmentBounds } from './bounds.js';
import { type Box, boxContains, boxesMeet, growBox, uniteBoxes } from './box.js';
import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import { segmentLength } from './length.js';
import { levelCrossings } from './level-crossings.js';
import type { Path, Segment } from './path.js';
import type { Point } from './point.js';
import { segmentPoint } from './segment-point.js';
import { subSegment } from './split-segment.js';

/** A part of a path, and the arc length, mm, from the whole path's start to the part's, so that dashes meet across tiles. */
export interface ClippedPath {
  readonly path: Path;
  readonly phase: number;
}

/** What lies this near outside the border, mm, counts as on it: rounding must not lose a run along the border. */
const BORDER = 1e-9;

/** Crossings whose parameters differ by less are one: a path through a corner of the box meets two borders there. */
const NEXT = 1e-13;

const contains = (box: Box, p: Point): boolean => p.x >= box.x0 && p.x <= box.x1 && p.y >= box.y0 && p.y <= box.y1;

/** The parameter ranges of a segment within the box (already grown by the border), rising, neighbours joined. */
const rangesInside = (placed: PlacedSegment, bounds: Box, box: Box, border: Box): readonly (readonly [number, number])[] => {
  if (!boxesMeet(bounds, border)) return [];
  if (boxContains(border, bounds)) return [[0, 1]];
  const cuts = [
    ...levelCrossings(placed, 'x', box.x0), ...levelCrossings(placed, 'x', box.x1),
    ...levelCrossings(placed, 'y', box.y0), ...levelCrossings(placed, 'y', box.y1),
  ].filter((t) => t > NEXT && t < 1 - NEXT).sort((a, b) => a - b).filter((t, i, all) => i === 0 || t - all[i - 1]! > NEXT);
  const ranges: [number, number][] = [];
  [...cuts, 1].forEach((end, i) => {
    const begin = cuts[i - 1] ?? 0;
    if (end <= begin || !contains(border, segmentPoint(placed.segment, placed.from, (begin + end) / 2))) return;
    const last = ranges.at(-1);
    if (last !== undefined && last[1] === begin) last[1] = end; else ranges.push([begin, end]);
  });
  return ranges;
};

/** A piece being gathered. */
interface Run {
  readonly start: Point;
  readonly segments: Segment[];
  readonly phase: number;
  readonly atStart: boolean;
  reachesEnd: boolean;
}

/** Gathers what lies inside, segment by segment; a run goes on while each part begins where the last one ended. */
const gather = (placed: readonly PlacedSegment[], bounds: readonly Box[], box: Box, lengthTo: (i: number) => number): Run[] => {
  const border = growBox(box, BORDER);
  const runs: Run[] = [];
  let open: Run | undefined;
  placed.forEach((each, i) => {
    const ranges = rangesInside(each, bounds[i]!, box, border);
    for (const [a, b] of ranges) {
      const part = a === 0 && b === 1 ? each : subSegment(each, a, b);
      if (a > 0 || open === undefined) {
        const skipped = a > 0 ? segmentLength(subSegment(each, 0, a).segment, each.from) : 0;
        open = { start: part.from, segments: [], phase: lengthTo(i) + skipped, atStart: i === 0 && a === 0, reachesEnd: false };
        runs.push(open);
      }
      open.segments.push(part.segment);
      open.reachesEnd = b === 1 && i === placed.length - 1;
    }
    if ((ranges.at(-1)?.[1] ?? 0) < 1) open = undefined;
  });
  return runs;
};

/** On a closed path, a run that ends at the path's start goes on in the run that begins there. */
const joinOverStart = (runs: readonly Run[], closed: boolean): readonly Run[] => {
  const [first, last] = [runs[0], runs.at(-1)];
  if (!closed || first === undefined || last === undefined || first === last) return runs;
  if (!first.atStart || !last.reachesEnd) return runs;
  return [...runs.slice(1, -1), { ...last, segments: [...last.segments, ...first.segments] }];
};

/**
 * A function that clips one path to one box after another, for a path that is laid over many sheets: bounds and lengths
 * are found once. What it gives is `clipPath`'s.
 */
export const pathClipper = (path: Path): ((box: Box) => readonly ClippedPath[]) => {
  const placed = explicitSegments(path);
  const bounds = placed.map(({ segment, from }) => segmentBounds(segment, from));
  const whole = uniteBoxes(bounds);
  const lengths: number[] = [0];
  const lengthTo = (i: number): number => {
    for (let k = lengths.length; k <= i; k += 1) {
      const { segment, from } = placed[k - 1]!;
      lengths.push(lengths[k - 1]! + segmentLength(segment, from));
    }
    return lengths[i]!;
  };
  return (box) => {
    if (!boxesMeet(whole, growBox(box, BORDER))) return [];
    if (boxContains(growBox(box, BORDER), whole)) return [{ path, phase: 0 }];
    return joinOverStart(gather(placed, bounds, box, lengthTo), path.closed)
      .map(({ start, segments, phase }) => ({ path: { start, segments, closed: false }, phase }));
  };
};

/**
 * The parts of a path inside a closed box, in the path's order, parted exactly where it crosses the border. A path wholly
 * inside comes back unchanged, a closed one closed; a part that runs through a closed path's start comes back joined. A
 * run along the border is inside; a mere touch of it is no part. What lies within 1e-9 mm of the border counts as on it.
 */
export const clipPath = (path: Path, box: Box): readonly ClippedPath[] => pathClipper(path)(box);
