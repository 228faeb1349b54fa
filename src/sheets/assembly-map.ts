import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds } from '../drawing/item-bounds.js';
import { moveItems, shape } from '../drawing/items.js';
import type { LineType } from '../drawing/line-types.js';
import { boxHeight, boxWidth, type Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { segmentPoint } from '../geometry/segment-point.js';
import { circle, line, rectangle } from '../geometry/shapes.js';
import { scaling, after, transformPath, transformPoint, translation, type Transform } from '../geometry/transform.js';
import { cores } from './axis.js';
import type { FlowBlock } from './flow.js';
import { besideGap, codeInside, codesAbove, codesBeside, largestCode, outlineStep, type MapCell } from './map-codes.js';
import { placeKey } from './seam-lines.js';
import type { GridTile } from './tile-grid.js';
import type { TiledDrawing } from './tile-sheet.js';

/** Lines that show what the part is; all others would only blacken a small map. */
const shown: ReadonlySet<LineType> = new Set(['edge', 'saw', 'bore', 'hidden']);

const hatchStep = 1.6;

/** Lines at 45° across a box: no sheet there. */
const hatch = (b: Box): Item[] => {
  const [w, h] = [b.x1 - b.x0, b.y1 - b.y0];
  const count = Math.floor((w + h) / hatchStep);
  return Array.from({ length: count }, (_, i) => {
    const s = (i + 1) * hatchStep;
    const from = s <= w ? point(b.x0 + s, b.y0) : point(b.x1, b.y0 + s - w);
    const to = s <= h ? point(b.x0, b.y0 + s) : point(b.x0 + s - h, b.y1);
    return shape('waste', line(from, to));
  }).filter((item) => item.path.start.x - b.x0 > 0.2);
};

const boxAt = (map: Transform, b: Box): Box => {
  const [p, q] = [transformPoint(map, { x: b.x0, y: b.y0 }), transformPoint(map, { x: b.x1, y: b.y1 })];
  return { x0: p.x, y0: p.y, x1: q.x, y1: q.y };
};

/** Points along what the map shows of a sheet. */
const outlinesOf = ({ plan }: TiledDrawing, tile: GridTile, map: Transform): Point[] => tile.ink.flatMap(([number, segment]) => {
  const ink = plan.cut.index.inks[number]!;
  if (ink.kind !== 'stroke' || !shown.has(ink.item.line)) return [];
  const { segment: run, from, box } = ink.segments[segment]!;
  const count = Math.ceil((3 * Math.max(boxWidth(box), boxHeight(box)) * map.a) / outlineStep) + 1;
  // The end of a line is where the next begins.
  return Array.from({ length: count }, (_, i) => transformPoint(map, segmentPoint(run, from, i / count)));
});

const codes = (tiled: TiledDrawing, map: Transform, font: Font): Item[] => {
  const { grid, tiles, datum } = tiled.plan;
  const cells = tiles.map((tile): MapCell => ({
    code: tiled.codeOf(tile), box: boxAt(map, tile.core), outlines: () => [...outlinesOf(tiled, tile, map), transformPoint(map, datum)],
  }));
  if (grid.y.seams.length === 0) return codesAbove(cells, font);
  return grid.x.seams.length === 0 ? codesBeside(cells) : cells.flatMap((cell) => codeInside(cell, font));
};

const cells = (tiled: TiledDrawing, map: Transform): Item[] => {
  const { grid } = tiled.plan;
  return cores(grid.y).flatMap((y, row) => cores(grid.x).flatMap((x, column) => {
    const box = boxAt(map, { x0: x.from, y0: y.from, x1: x.to, y1: y.to });
    return tiled.tiles.has(placeKey(row, column))
      ? [shape('reference', rectangle(box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0), 'map-sheet')]
      : hatch(box);
  }));
};

const datumDot = (at: Point): Item[] => [shape('mark', circle(at, 0.9), 'map-datum'), shape('mark', circle(at, 0.3))];

/** Room that the numbers need beside a row of sheets or a column of them, mm: of a row half a number may overhang at either end. */
const besideMap = (tiled: TiledDrawing, font: Font): number => {
  const { x, y } = tiled.plan.grid;
  if (x.seams.length > 0 && y.seams.length > 0) return 0;
  return Math.max(...tiled.plan.tiles.map((tile) => font.width(tiled.codeOf(tile), largestCode))) + (y.seams.length === 0 ? 0 : besideGap);
};

/** Scale at which a drawing is at most `width` by `height` mm, and no larger than a quarter. */
const mapScale = (tiled: TiledDrawing, width: number, height: number): number => {
  const { x, y } = tiled.plan.grid;
  return Math.min(0.25, width / (x.extent.to - x.extent.from), height / Math.max(1, y.extent.to - y.extent.from));
};

/** A small picture of a tiled drawing: its outlines, the sheets with their numbers clear of them, sheets that are not printed hatched. Keeps proportions. */
export const assemblyMap = (tiled: TiledDrawing, room: { readonly width: number; readonly height: number }, font: Font): FlowBlock => {
  const { plan } = tiled;
  const { x, y } = plan.grid;
  const k = mapScale(tiled, room.width - 2 - besideMap(tiled, font), room.height - 2);
  const map = after(translation(-x.extent.from, -y.extent.from), after(scaling(k, k), translation(1, 1)));
  const outlines = plan.cut.index.inks.flatMap((ink): Item[] =>
    (ink.kind === 'stroke' && shown.has(ink.item.line) ? [shape('dimension', transformPath(map, ink.item.path))] : []));
  const items = [...outlines, ...cells(tiled, map), ...codes(tiled, map, font), ...datumDot(transformPoint(map, plan.datum))];
  const box = itemsBounds(items, font);
  const [left, above] = [Math.max(0, -box.x0), Math.max(0, -box.y0)];
  return { items: moveItems(items, left, above), height: (y.extent.to - y.extent.from) * k + 2 + above, before: 2 };
};
