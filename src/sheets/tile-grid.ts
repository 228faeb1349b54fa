import { pathBounds } from '../geometry/bounds.js';
import { boxContains, boxesMeet, uniteBoxes, type Box } from '../geometry/box.js';
import { pathLength } from '../geometry/length.js';
import { after, rotation, transformPath, translation } from '../geometry/transform.js';
import type { Lettering } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { cores, windows, type Axis, type Span } from './axis.js';
import { cutItems, type Cutter, type TileInk } from './tile-ink.js';

/** A sheet's place in a grid: what it answers for and what it shows, mm of the drawing as printed. */
export interface GridTile {
  readonly row: number;
  readonly column: number;
  readonly core: Box;
  readonly window: Box;
  readonly ink: TileInk;
}

/** Seams both ways. */
export interface Grid {
  readonly x: Axis;
  readonly y: Axis;
}

const boxFrom = (x: Span, y: Span): Box => ({ x0: x.from, y0: y.from, x1: x.to, y1: y.to });

/** First and last span that a stretch touches; spans run in order. */
const touched = (spans: readonly Span[], from: number, to: number): [number, number] => {
  let low = 0;
  let high = spans.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (spans[mid]!.to < from) low = mid + 1;
    else high = mid;
  }
  let last = low;
  while (last + 1 < spans.length && spans[last + 1]!.from <= to) last++;
  return [low, last];
};

/** Deals an index out to the windows of a grid: by row × columns + column. In proportion to segments and sheets. */
const deal = (cut: Cutter, xs: readonly Span[], ys: readonly Span[]): Map<number, [number, number][]> => {
  const hands = new Map<number, [number, number][]>();
  const give = (box: Box, ink: number, segment: number): void => {
    const [c0, c1] = touched(xs, box.x0, box.x1);
    const [r0, r1] = touched(ys, box.y0, box.y1);
    for (let r = r0; r <= r1; r++) {
      for (let c = c0; c <= c1; c++) {
        const hand = hands.get(r * xs.length + c);
        if (hand === undefined) hands.set(r * xs.length + c, [[ink, segment]]);
        else hand.push([ink, segment]);
      }
    }
  };
  cut.index.inks.forEach((ink, i) => {
    if (ink.kind === 'block') give(ink.box, i, -1);
    else ink.segments.forEach((s, k) => { give(s.box, i, k); });
  });
  return hands;
};

/** The box of the glyphs' own ink. */
const glyphBox = (item: Lettering, font: Font): Box => {
  const shift = { start: 0, middle: -0.5, end: -1 }[item.anchor] * font.width(item.text, item.height);
  const map = after(translation(shift, 0), after(rotation(item.turn), translation(item.at.x, item.at.y)));
  return uniteBoxes(font.outlines(item.text, item.height).map((p) => pathBounds(transformPath(map, p))));
};

/** Lines shorter than this are rounding, mm. */
const shortest = 1e-6;

/** Whether a box holds some line whole: then there is no need to clip. */
const holdsWhole = (cut: Cutter, ink: TileInk, box: Box): boolean => ink.some(([number, segment]) => {
  const found = cut.index.inks[number]!;
  return found.kind === 'stroke' && boxContains(box, found.segments[segment]!.box);
});

/** Whether a box of a sheet's window holds ink. */
export const hasInk = (cut: Cutter, tile: GridTile, box: Box, font: Font): boolean =>
  box.x1 > box.x0 && box.y1 > box.y0 && (holdsWhole(cut, tile.ink, box) || cutItems(cut, tile.ink, box).some((item) => (item.kind === 'lettering'
    ? item.clip === undefined || boxesMeet(glyphBox(item, font), box)
    : item.filled === true || pathLength(item.path) > shortest)));

/** How far a sheet's own part is also seen by the neighbour on each side. */
export interface Shared { readonly left: number; readonly right: number; readonly above: number; readonly below: number }

/** A sheet's own part less what is shared. */
export const ownBox = ({ core }: GridTile, s: Shared): Box =>
  ({ x0: core.x0 + s.left, x1: core.x1 - s.right, y0: core.y0 + s.above, y1: core.y1 - s.below });

/** All sheets of a grid with ink in their windows, row by row. */
const candidates = (cut: Cutter, grid: Grid): GridTile[] => {
  const [xs, ys] = [windows(grid.x), windows(grid.y)];
  const [coresX, coresY] = [cores(grid.x), cores(grid.y)];
  return [...deal(cut, xs, ys)].sort(([a], [b]) => a - b).map(([at, ink]) => {
    const [row, column] = [Math.floor(at / xs.length), at % xs.length];
    return { row, column, core: boxFrom(coresX[column]!, coresY[row]!), window: boxFrom(xs[column]!, ys[row]!), ink };
  });
};

/** The sheets of a grid with ink between their seams, row by row. A line along a seam belongs to the sheet right of it or below. */
export const inkedTiles = (cut: Cutter, grid: Grid, font: Font): GridTile[] =>
  candidates(cut, grid).filter((tile) => hasInk(cut, tile, ownBox(tile, {
    left: 0, above: 0,
    right: tile.column < grid.x.seams.length ? shortest : 0, below: tile.row < grid.y.seams.length ? shortest : 0,
  }), font));
