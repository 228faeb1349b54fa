import type { Item } from '../drawing/drawing.js';
import { fitText } from '../drawing/fit-text.js';
import type { Font } from '../drawing/font.js';
import { letter, shape } from '../drawing/items.js';
import type { LineType } from '../drawing/line-types.js';
import type { Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { circle, line, rectangle } from '../geometry/shapes.js';
import { scaling, after, transformPath, transformPoint, translation, type Transform } from '../geometry/transform.js';
import { cores } from './axis.js';
import type { FlowBlock } from './flow.js';
import { placeKey } from './seam-lines.js';
import type { TiledDrawing } from './tile-sheet.js';

/** Lines that show what the part is; all others would only blacken a small map. */
const shown: ReadonlySet<LineType> = new Set(['cut', 'saw', 'drill', 'hidden']);

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

const codeIn = (b: Box, code: string, font: Font): Item[] => {
  const [w, h] = [b.x1 - b.x0 - 1, b.y1 - b.y0 - 1];
  const height = [3.5, 2.5, 1.8].find((t) => t <= h && font.width(code, t) <= w);
  if (height === undefined) return [];
  return [letter(point((b.x0 + b.x1) / 2, (b.y0 + b.y1 + height) / 2), fitText(code, w, height, font), { height, anchor: 'middle', part: 'map-code' })];
};

const cells = (tiled: TiledDrawing, map: Transform, font: Font): Item[] => {
  const { grid } = tiled.plan;
  return cores(grid.y).flatMap((y, row) => cores(grid.x).flatMap((x, column) => {
    const box = boxAt(map, { x0: x.from, y0: y.from, x1: x.to, y1: y.to });
    const tile = tiled.tiles.get(placeKey(row, column));
    if (tile === undefined) return hatch(box);
    return [
      shape('reference', rectangle(box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0), 'map-sheet'),
      ...codeIn(box, tiled.codeOf(tile), font),
    ];
  }));
};

const datumDot = (at: Point): Item[] => [shape('mark', circle(at, 0.9), 'map-datum'), shape('mark', circle(at, 0.3))];

/** Scale at which a drawing is at most `width` by `height` mm, and no larger than a quarter. */
const mapScale = (tiled: TiledDrawing, width: number, height: number): number => {
  const { x, y } = tiled.plan.grid;
  return Math.min(0.25, width / (x.extent.to - x.extent.from), height / Math.max(1, y.extent.to - y.extent.from));
};

/** A small picture of a tiled drawing: its outlines, the sheets with their codes, sheets that are not printed hatched. Keeps proportions. */
export const assemblyMap = (tiled: TiledDrawing, room: { readonly width: number; readonly height: number }, font: Font): FlowBlock => {
  const { plan } = tiled;
  const { x, y } = plan.grid;
  const k = mapScale(tiled, room.width - 2, room.height - 2);
  const map = after(translation(-x.extent.from, -y.extent.from), after(scaling(k, k), translation(1, 1)));
  const outlines = plan.cut.index.inks.flatMap((ink): Item[] =>
    (ink.kind === 'stroke' && shown.has(ink.item.line) ? [shape('dimension', transformPath(map, ink.item.path))] : []));
  return {
    items: [...outlines, ...cells(tiled, map, font), ...datumDot(transformPoint(map, plan.datum))],
    height: (y.extent.to - y.extent.from) * k + 2, before: 2,
  };
};
