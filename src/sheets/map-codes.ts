import type { Item, Lettering } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { letter, shape } from '../drawing/items.js';
import { boxContains, growBox, type Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import { letteringBox } from './ink-index.js';

/** A printed sheet on a map: its number, its cell, and points along the outlines in it no further apart than `outlineStep`; mm of the map. */
export interface MapCell {
  readonly code: string;
  readonly box: Box;
  readonly outlines: () => readonly Point[];
}

/** Points along an outline are this near to each other, mm of the map. */
export const outlineStep = 0.4;

/** Largest lettering of a number, mm. */
export const largestCode = 3.5;
/** How far beside a column of cells their numbers stand, mm. */
export const besideGap = 1.5;

const clearance = 0.5;
const part = 'map-code';
const middleOf = ({ x0, x1 }: Box): number => (x0 + x1) / 2;

/** Most levels on which numbers stand above a row of cells narrower than they are. */
const mostLevels = 4;

/** Numbers over a row of cells, upwards from `y0` of the cells: on several levels, with ticks, where cells are narrow. */
export const codesAbove = (cells: readonly MapCell[], font: Font): Item[] => {
  const narrowest = Math.min(...cells.map(({ box }) => box.x1 - box.x0));
  const levelsAt = (height: number): number => Math.ceil((Math.max(...cells.map(({ code }) => font.width(code, height))) + 1) / narrowest);
  const height = [largestCode, 2.5].find((h) => levelsAt(h) === 1) ?? [2.5, 1.8].find((h) => levelsAt(h) <= mostLevels);
  if (height === undefined) return [];
  const levels = levelsAt(height);
  return cells.flatMap(({ code, box }, i) => {
    const base = box.y0 - 0.35 * height - (i % levels) * 1.5 * height;
    const x = middleOf(box);
    const tick = i % levels === 0 ? [] : [shape('dimension', line(point(x, base + 0.45 * height), point(x, box.y0)))];
    return [letter(point(x, base), code, { height, anchor: 'middle', part }), ...tick];
  });
};

/** Numbers to the right of a column of cells. */
export const codesBeside = (cells: readonly MapCell[]): Item[] => cells.flatMap(({ code, box }) => {
  const height = [largestCode, 2.5, 1.8].find((h) => h <= box.y1 - box.y0);
  return height === undefined ? [] : [letter(point(box.x1 + besideGap, (box.y0 + box.y1 + height) / 2), code, { height, part })];
});

const shares = [0, -1, 1, -2, 2, -3, 3].map((n) => n / 8);

/** Places of a number in its cell, the larger and the more central first; upright only where it is too wide. */
const placesIn = ({ code, box }: MapCell, font: Font): Lettering[] => [0, -Math.PI / 2].flatMap((turn) => [largestCode, 2.5, 1.8].flatMap((height) => {
  const [dx, dy] = turn === 0 ? [0, height / 2] : [height / 2, 0];
  const at = (sx: number, sy: number): Point => point(middleOf(box) + sx * (box.x1 - box.x0) + dx, (box.y0 + box.y1) / 2 + sy * (box.y1 - box.y0) + dy);
  return shares.flatMap((sy) => shares.map((sx) => letter(at(sx, sy), code, { height, anchor: 'middle', turn, part })))
    .filter((item) => boxContains(growBox(box, -0.4), letteringBox(item, font)));
}));

/** A number inside its cell, clear of the outlines; where nothing is clear, where it crosses the least of them; none where the cell is too small. */
export const codeInside = (cell: MapCell, font: Font): Item[] => {
  const outlines = cell.outlines();
  let least: { item: Lettering; hits: number } | undefined;
  for (const item of placesIn(cell, font)) {
    const b = growBox(letteringBox(item, font), clearance);
    const hits = outlines.filter((p) => p.x > b.x0 && p.x < b.x1 && p.y > b.y0 && p.y < b.y1).length;
    if (hits === 0) return [item];
    if (least === undefined || hits < least.hits) least = { item, hits };
  }
  return least === undefined ? [] : [least.item];
};
