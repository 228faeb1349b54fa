import type { Item, Lettering } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { letter, shape } from '../drawing/items.js';
import { registrationMark, registrationReach } from '../drawing/registration-mark.js';
import { boxesMeet, growBox, type Box } from '../geometry/box.js';
import { distance, point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import { isClear } from './ink-map.js';
import { letteringBox } from './ink-index.js';
import type { TilePlan } from './plan-tiles.js';
import type { Seam } from './seam-lines.js';
import type { GridTile } from './tile-grid.js';

/** Gives the number of a tile’s sheet. */
export type CodeOf = (tile: GridTile) => string;

/** Parts of a stretch that lie outside all the gaps. */
const uncovered = (from: number, to: number, gaps: readonly (readonly [number, number])[]): [number, number][] => {
  const parts: [number, number][] = [];
  let at = from;
  for (const [a, b] of [...gaps].sort((p, q) => p[0] - q[0])) {
    if (a > at) parts.push([at, Math.min(a, to)]);
    at = Math.max(at, b);
  }
  if (at < to) parts.push([at, to]);
  return parts.filter(([a, b]) => b - a > 0.5);
};

/** The seam's line, broken at lettering and at its own marks. */
const seamLine = (seam: Seam, lettering: readonly Box[]): Item[] => {
  const x = seam.along === 'x';
  const across = (b: Box): boolean => (x ? b.x0 <= seam.at && b.x1 >= seam.at : b.y0 <= seam.at && b.y1 >= seam.at);
  const marks = seam.marks.map((m): [number, number] => {
    const at = x ? m.y : m.x;
    return [at - registrationReach, at + registrationReach];
  });
  const gaps = [...lettering.filter(across).map((b): [number, number] => (x ? [b.y0, b.y1] : [b.x0, b.x1])), ...marks];
  return uncovered(seam.from, seam.to, gaps).map(([a, b]) =>
    shape('seam', x ? line(point(seam.at, a), point(seam.at, b)) : line(point(a, seam.at), point(b, seam.at)), 'seam'));
};

const hintHeight = 1.8;

/** A hint set along its seam, on the side `beyond` of it (1: right or below), at `along` mm. */
const hintAt = (seam: Seam, beyond: 1 | -1, along: number, text: string): Lettering => {
  const off = beyond * 1.6;
  const options = { height: hintHeight, part: 'seam-hint' } as const;
  if (seam.along === 'y') return letter(point(along, seam.at + off + (beyond > 0 ? hintHeight : 0)), text, options);
  return letter(point(seam.at + off + (beyond > 0 ? hintHeight : 0), along), text, { ...options, turn: -Math.PI / 2 });
};

/** The first place along a seam, from its middle outwards, where a hint lies on no ink of the drawing and on no mark. */
const hint = (seam: Seam, beyond: 1 | -1, text: string, ground: { plan: TilePlan; window: Box; font: Font }): Item[] => {
  const middle = (seam.from + seam.to) / 2;
  for (let i = 0; i < 40; i++) {
    const item = hintAt(seam, beyond, middle + (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * 5, text);
    const box = growBox(letteringBox(item, ground.font), 0.4);
    const inside = box.x0 >= ground.window.x0 && box.x1 <= ground.window.x1 && box.y0 >= ground.window.y0 && box.y1 <= ground.window.y1;
    const reach = registrationReach + 0.5;
    const offMarks = seam.marks.every((m) => !boxesMeet(box, { x0: m.x - reach, y0: m.y - reach, x1: m.x + reach, y1: m.y + reach }));
    if (inside && offMarks && isClear(ground.plan.map, box)) return [item];
  }
  return [];
};

/** Everything that belongs to the seams of one sheet (`called`: sheet, or what else is joined): lines, registration marks, and what to do at each where there is room to say it. */
export const seamItems = (seams: readonly Seam[], tile: GridTile, plan: TilePlan, of: { codeOf: CodeOf; called: string; font: Font }): Item[] => {
  const lettering = tile.ink.flatMap(([number, segment]) => {
    const ink = plan.cut.index.inks[number]!;
    return segment < 0 && ink.kind === 'block' && ink.item.kind === 'lettering' ? [growBox(ink.box, 0.5)] : [];
  });
  return seams.flatMap((seam) => {
    const [first, second] = [of.codeOf(seam.first), of.codeOf(seam.second)];
    const trimmed = seam.first === tile;
    const words = trimmed ? `trim along the line, lay over ${of.called} ${second}` : `${of.called} ${first} comes up to the line`;
    return [
      ...seamLine(seam, lettering),
      ...seam.marks.flatMap((m, i) => registrationMark(m, `registration-${first}-${second}-${i + 1}`)),
      ...hint(seam, trimmed ? 1 : -1, words, { plan, window: tile.window, font: of.font }),
    ];
  });
};

/** Small ring on the datum, where the sheet shows it: what all stations are counted from. */
export const datumMark = (plan: TilePlan, tile: GridTile, font: Font): Item[] => {
  const { datum: d } = plan;
  const { window: w } = tile;
  if (d.x < w.x0 + 3 || d.x > w.x1 - 3 || d.y < w.y0 + 3 || d.y > w.y1 - 3) return [];
  const arms = [[-3, 0, -1, 0], [1, 0, 3, 0], [0, -3, 0, -1], [0, 1, 0, 3]] as const;
  const words = [point(d.x - 4, d.y - 1.2), point(d.x - 4, d.y + 3)].map((p) => letter(p, 'datum', { height: 1.8, anchor: 'end', part: 'datum' }));
  const free = words.find((item) => {
    const box = letteringBox(item, font);
    return box.x0 > w.x0 && distance(d, { x: box.x1, y: d.y }) > 1 && isClear(plan.map, box);
  });
  return [
    ...arms.map(([a, b, c, e]) => shape('mark', line(point(d.x + a, d.y + b), point(d.x + c, d.y + e)), 'datum')),
    ...(free === undefined ? [] : [free]),
  ];
};
