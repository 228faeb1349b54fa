import { distance, type Point } from '../geometry/point.js';
import { lengthLabel } from '../units/format.js';
import type { Units } from '../units/units.js';
import { seamsOf, type Seam } from './seam-lines.js';
import type { TiledDrawing } from './tile-sheet.js';

/** A registration mark as it is named and where it stands, mm of the drawing. */
interface NamedMark {
  readonly name: string;
  readonly at: Point;
}

/** A distance between two marks far apart, mm. */
export interface ClosingDistance {
  readonly from: string;
  readonly to: string;
  /** In the drawing's own millimetres: what a tape shows over the true print. Exact. */
  readonly length: number;
}

const which = { x: ['upper', 'lower'], y: ['left', 'right'] } as const;

const marksOf = (tiled: TiledDrawing, seam: Seam): NamedMark[] => seam.marks.map((m, i) => ({
  name: `${which[seam.along][i]} mark of seam ${tiled.codeOf(seam.first)}/${tiled.codeOf(seam.second)}`,
  at: { x: m.x / tiled.plan.toPage.a, y: m.y / tiled.plan.toPage.d },
}));

const most = (marks: readonly NamedMark[], key: (p: Point) => number): NamedMark =>
  marks.reduce((a, b) => (key(b.at) > key(a.at) ? b : a));

/** Distances shorter than this say nothing that a single sheet does not. */
const worthwhile = 100;

/** Distances between marks far apart, corner to corner and along both long sides, to check with a steel tape after taping. */
export const closingDistances = (tiled: TiledDrawing): ClosingDistance[] => {
  const marks = tiled.plan.tiles.flatMap((tile) =>
    seamsOf(tiled.plan, tiled.tiles, tile).filter((s) => s.first === tile).flatMap((s) => marksOf(tiled, s)));
  if (marks.length < 2) return [];
  const topLeft = most(marks, (p) => -p.x - p.y);
  const bottomRight = most(marks, (p) => p.x + p.y);
  const topRight = most(marks, (p) => p.x - p.y);
  const bottomLeft = most(marks, (p) => p.y - p.x);
  const pairs = [[topLeft, bottomRight], [bottomLeft, topRight], [topLeft, topRight], [bottomLeft, bottomRight]] as const;
  const seen = new Set<string>();
  return pairs.flatMap(([a, b]) => {
    const length = distance(a.at, b.at);
    const key = [a.name, b.name].sort().join('|');
    if (length < worthwhile || seen.has(key)) return [];
    seen.add(key);
    return [{ from: a.name, to: b.name, length }];
  });
};

/** The same in words. */
export const closingWords = (d: ClosingDistance, units: Units): string => `${d.from} to ${d.to}: ${lengthLabel(d.length, units)}`;
