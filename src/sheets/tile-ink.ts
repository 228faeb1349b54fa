import { clipPath } from '../geometry/clip-path.js';
import { boxesMeet, boxContains, type Box } from '../geometry/box.js';
import { segmentLength } from '../geometry/length.js';
import type { Path } from '../geometry/path.js';
import type { Item, Shape } from '../drawing/drawing.js';
import { lineStyles } from '../drawing/line-types.js';
import { clipFilled } from './clip-filled.js';
import type { Ink, InkIndex, StrokeInk } from './ink-index.js';

/** What of an index falls to one sheet: the number of an ink and of its segments, in order; -1 for a block. */
export type TileInk = readonly (readonly [ink: number, segment: number])[];

/** Consecutive segments of one stroke. */
interface Run {
  readonly first: number;
  readonly count: number;
}

const isDashed = (stroke: StrokeInk): boolean => lineStyles[stroke.item.line].dash.length > 0;

/**
 * Joins neighbouring segments, so that what is cut out of them is cut only at the window and not where segments meet. Round
 * the start of a closed path too, unless it is dashed: a dash pattern starts afresh there.
 */
const runsOf = (stroke: StrokeInk, segments: readonly number[]): Run[] => {
  const runs: { first: number; count: number }[] = [];
  for (const s of segments) {
    const last = runs.at(-1);
    if (last !== undefined && last.first + last.count === s) last.count++;
    else runs.push({ first: s, count: 1 });
  }
  const [head] = runs;
  const tail = runs.at(-1);
  if (!stroke.item.path.closed || isDashed(stroke) || head === undefined || tail === undefined || runs.length < 2) return runs;
  const meets = head.first === 0 && tail.first + tail.count === stroke.segments.length;
  return meets ? [{ first: tail.first, count: tail.count + head.count }, ...runs.slice(1, -1)] : runs;
};

const runPath = (stroke: StrokeInk, run: Run): Path => {
  if (run.count === stroke.segments.length && !isDashed(stroke)) return stroke.item.path;
  const all = stroke.segments;
  const segments = Array.from({ length: run.count }, (_, i) => all[(run.first + i) % all.length]!.segment);
  return { start: all[run.first]!.from, segments, closed: false };
};

/** Lengths of the pen's way to the start of each segment; only dashed lines need them. */
const phasesOf = (stroke: StrokeInk): Float64Array => {
  const phases = new Float64Array(stroke.segments.length);
  let at = stroke.item.phase ?? 0;
  stroke.segments.forEach((s, i) => { phases[i] = at; at += segmentLength(s.segment, s.from); });
  return phases;
};

/** Cuts an index to windows. Keeps the dash lengths that it has worked out, so use one for all sheets of a drawing. */
export interface Cutter {
  readonly index: InkIndex;
  readonly phases: Map<number, Float64Array>;
}

/** A cutter for the ink of one drawing. */
export const cutter = (index: InkIndex): Cutter => ({ index, phases: new Map() });

const phaseAt = (cut: Cutter, ink: number, stroke: StrokeInk, segment: number): number => {
  if (!isDashed(stroke)) return 0;
  const known = cut.phases.get(ink) ?? phasesOf(stroke);
  cut.phases.set(ink, known);
  return known[segment]!;
};

const cutStroke = (stroke: StrokeInk, run: Run, window: Box, phase: number): Shape[] =>
  clipPath(runPath(stroke, run), window).map((piece) => (isDashed(stroke)
    ? { ...stroke.item, path: piece.path, phase: phase + piece.phase }
    : { ...stroke.item, path: piece.path }));

const cutBlock = (ink: Ink & { kind: 'block' }, window: Box): Item[] => {
  if (!boxesMeet(ink.box, window)) return [];
  if (boxContains(window, ink.box)) return [ink.item];
  if (ink.item.kind === 'lettering') return [{ ...ink.item, clip: window }];
  return clipFilled(ink.item.path, window).map((path) => ({ ...(ink.item as Shape), path }));
};

/** Groups a tile's list by ink, in order. */
const byInk = (tile: TileInk): Map<number, number[]> => {
  const groups = new Map<number, number[]>();
  for (const [ink, segment] of tile) {
    const group = groups.get(ink);
    if (group === undefined) groups.set(ink, [segment]);
    else group.push(segment);
  }
  return groups;
};

/** The items of one window: strokes cut exactly, their dashes going on where the neighbour's stop; lettering on the border clipped. */
export const cutItems = (cut: Cutter, tile: TileInk, window: Box): Item[] =>
  [...byInk(tile)].flatMap(([number, segments]): Item[] => {
    const ink = cut.index.inks[number]!;
    if (ink.kind === 'block') return cutBlock(ink, window);
    if (boxContains(window, ink.box)) return [ink.item];
    return runsOf(ink, segments).flatMap((run) => cutStroke(ink, run, window, phaseAt(cut, number, ink, run.first)));
  });
