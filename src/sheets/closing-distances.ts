import { distance, type Point } from '../geometry/point.js';
import { lengthLabel } from '../units/format.js';
import type { Units } from '../units/units.js';
import { boxCorners, endPoints, outermostCorners, type NamedPoint } from './piece-points.js';
import { seamsOf, type Seam } from './seam-lines.js';
import type { TiledDrawing } from './tile-sheet.js';

/** A distance between two places far apart, mm. */
export interface ClosingDistance {
  readonly from: string;
  readonly to: string;
  /** In the drawing's own millimetres: what a tape shows over the true print. Exact. */
  readonly length: number;
}

type Pair = readonly [NamedPoint, NamedPoint];

const which = { x: ['upper', 'lower'], y: ['left', 'right'] } as const;

const marksOf = ({ codeOf }: TiledDrawing, seam: Seam): NamedPoint[] => seam.marks.map((at, i) => ({
  name: `${which[seam.along][i]} mark ${codeOf(seam.first)}/${codeOf(seam.second)}`, at,
}));

const allMarks = (tiled: TiledDrawing): NamedPoint[] => tiled.plan.tiles.flatMap((tile) =>
  seamsOf(tiled.plan, tiled.tiles, tile).filter((s) => s.first === tile).flatMap((s) => marksOf(tiled, s)));

const most = (points: readonly NamedPoint[], key: (p: Point) => number): NamedPoint =>
  points.reduce((a, b) => (key(b.at) > key(a.at) ? b : a));

/**
 * Pairs of the points nearest to the drawing's corners, in shares of its length and height so that a long board's height
 * counts as much as its length: both diagonals, then the long sides, then the short ones, then straight across the middle.
 */
const cornerPairs = ({ plan }: TiledDrawing, points: readonly NamedPoint[]): Pair[] => {
  if (points.length < 2) return [];
  const [w, h] = [plan.grid.x, plan.grid.y].map(({ extent }) => extent.to - extent.from) as [number, number];
  const toward = (x: number, y: number): NamedPoint => most(points, (p) => (x * p.x) / w + (y * p.y) / h);
  const [topLeft, topRight, bottomLeft, bottomRight] = [toward(-1, -1), toward(1, -1), toward(-1, 1), toward(1, 1)];
  const along: Pair[] = [[topLeft, topRight], [bottomLeft, bottomRight]];
  const across: Pair[] = [[topLeft, bottomLeft], [topRight, bottomRight]];
  return [
    [topLeft, bottomRight], [bottomLeft, topRight], ...(w >= h ? [...along, ...across] : [...across, ...along]),
    [toward(-1, 0), toward(1, 0)], [toward(0, -1), toward(0, 1)],
  ];
};

/** Distances shorter than this say nothing, mm. */
const worthwhile = 100;

/** Two diagonals and two sides. */
const enough = 4;

/** A distance proves the taping only where no single sheet shows both its ends. */
const isProof = ({ plan }: TiledDrawing, [a, b]: Pair): boolean => !plan.tiles.some(({ window: w }) =>
  [a.at, b.at].every((p) => p.x >= w.x0 && p.x <= w.x1 && p.y >= w.y0 && p.y <= w.y1));

const measured = ({ plan: { toPage } }: TiledDrawing, [a, b]: Pair): ClosingDistance => {
  const own = ({ x, y }: Point): Point => ({ x: x / toPage.a, y: y / toPage.d });
  return { from: a.name, to: b.name, length: distance(own(a.at), own(b.at)) };
};

/** What of some pairs is worth measuring, no two alike. */
const proofs = (tiled: TiledDrawing, pairs: readonly Pair[]): ClosingDistance[] => {
  const seen = new Set<string>();
  return pairs.filter((pair) => isProof(tiled, pair)).flatMap((pair) => {
    const found = measured(tiled, pair);
    const key = [found.from, found.to].sort().join('|');
    if (found.length < worthwhile || seen.has(key)) return [];
    seen.add(key);
    return [found];
  }).slice(0, enough);
};

/** The first source that gives enough, else the one that gives most. */
const richest = (sources: readonly (() => ClosingDistance[])[]): ClosingDistance[] => sources.reduce<ClosingDistance[]>((best, source) => {
  const found = best.length === enough ? [] : source();
  return found.length > best.length ? found : best;
}, []);

/**
 * Distances to check with a steel tape after taping, every one of them across a seam: the whole length along the spine, and
 * the diagonals and sides between the marks furthest apart; between the corners of what is cut where there are too few seams.
 */
export const closingDistances = (tiled: TiledDrawing): ClosingDistance[] => {
  const ends = endPoints(tiled.plan);
  const whole = ends === undefined ? [] : proofs(tiled, [ends]).map((d) => ({ ...d, to: `${d.to} along the spine` }));
  const sources = [allMarks, ...[boxCorners, outermostCorners].map((of) => ({ plan }: TiledDrawing) => of(plan))]
    .map((of) => () => proofs(tiled, cornerPairs(tiled, of(tiled))));
  return [...whole, ...richest(sources)];
};

/** The same in words. */
export const closingWords = (d: ClosingDistance, units: Units): string => `${d.from} to ${d.to}: ${lengthLabel(d.length, units)}`;
