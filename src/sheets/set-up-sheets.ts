import type { Item, JigDrawing, SetUp } from '../drawing/drawing.js';
import { fitText } from '../drawing/fit-text.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds } from '../drawing/item-bounds.js';
import { letter, moveItems, placeItems, shape } from '../drawing/items.js';
import { table } from '../drawing/table.js';
import { boxHeight, boxWidth, growBox } from '../geometry/box.js';
import { point } from '../geometry/point.js';
import { rectangle } from '../geometry/shapes.js';
import { scaling } from '../geometry/transform.js';
import { heading, paragraphs, tableBlocks } from './blocks.js';
import { flow, type FlowBlock } from './flow.js';
import type { PageFrame } from './page-frame.js';

interface Picture {
  readonly items: readonly Item[];
  readonly width: number;
  readonly height: number;
  /** 1 in true size. */
  readonly scale: number;
}

/** The picture in true size, or made small enough for the room, its lettering with it. */
const pictureOf = (setUp: SetUp, room: { width: number; height: number }, font: Font): Picture => {
  const { items } = setUp.picture;
  if (items.length === 0) return { items: [], width: 0, height: 0, scale: 1 };
  const bounds = itemsBounds(items, font);
  const scale = Math.min(1, room.width / boxWidth(bounds), room.height / boxHeight(bounds));
  const small = scale === 1 ? items : placeItems(items, scaling(scale, scale), 0)
    .map((item) => (item.kind === 'lettering' ? { ...item, height: item.height * scale } : item));
  const box = itemsBounds(small, font);
  return { items: moveItems(small, -box.x0, -box.y0), width: boxWidth(box), height: boxHeight(box), scale };
};

/** How much of the page a picture may take. */
interface Measure {
  readonly pictureWidth: number;
  readonly pictureHeight: number;
}

const roomy: Measure = { pictureWidth: 1, pictureHeight: 0.45 };
/** Smaller picture, numbers beside it: for operations that so stay on one page. */
const compact: Measure = { pictureWidth: 0.5, pictureHeight: 0.35 };

const pictureNote = (setUp: SetUp, scale: number): string[] => {
  const said = /not to scale/iu.test(setUp.pictureNote);
  return [`${scale === 1 || said ? '' : 'Not to scale. '}${setUp.pictureNote}`.trim()].filter((t) => t !== '');
};

/** Picture at the left and numbers beside it where both have room, else one under the other. */
const head = (setUp: SetUp, area: { width: number; height: number }, measure: Measure, font: Font): FlowBlock[] => {
  const room = { width: area.width * measure.pictureWidth, height: area.height * measure.pictureHeight };
  const picture = pictureOf(setUp, room, font);
  const rows = setUp.numbers.map(({ label, value }) => [label, value] as const);
  const note = paragraphs(pictureNote(setUp, picture.scale), area.width, font);
  const beside = area.width - picture.width - 8;
  if (beside >= 75 && rows.length > 0 && rows.length <= 24) {
    const numbers = table({ at: point(picture.width + 8, 0), rows, width: beside }, font);
    if (numbers.height <= area.height * 0.6) {
      return [{ items: [...picture.items, ...numbers.items], height: Math.max(picture.height, numbers.height), before: 2 }, ...note];
    }
  }
  return [
    ...(picture.items.length === 0 ? [] : [{ items: picture.items, height: picture.height, before: 2 }]),
    ...note, ...tableBlocks({ rows }, area.width, font),
  ];
};

/** Cautions in a double frame of their own, kept together. */
const cautionBlock = (cautions: readonly string[], width: number, font: Font): FlowBlock[] => {
  if (cautions.length === 0) return [];
  const inner = [heading('Cautions', width - 8, font), ...paragraphs(cautions, width - 8, font, { mark: () => '–' })];
  let y = 4;
  const items = inner.flatMap((block, i) => {
    y += i === 0 ? 0 : block.before;
    const placed = moveItems(block.items, 4, y);
    y += block.height;
    return placed;
  });
  const height = y + 3;
  const frame = [0, 0.9].map((inset) => shape('mark', rectangle(0.2 + inset, inset, width - 0.4 - 2 * inset, height - 2 * inset), 'cautions'));
  return [{ items: [...frame, ...items], height, before: 5 }];
};

/** A section of statements that have no order. */
const listOf = (title: string, texts: readonly string[], width: number, font: Font): FlowBlock[] =>
  (texts.length === 0 ? [] : [heading(title, width, font), ...paragraphs(texts, width, font, { mark: () => '–' })]);

/** Tables side by side where several fit the width, so that a page is not one narrow column of figures. */
const furtherTables = (setUp: SetUp, width: number, font: Font): FlowBlock[] => setUp.tables.flatMap(({ heading: words, columns, rows }) => {
  const natural = table({ at: point(0, 0), columns, rows, width }, font).width;
  const beside = Math.max(1, Math.min(3, Math.floor((width + 6) / (natural + 6))));
  const perPart = Math.ceil(rows.length / beside);
  if (rows.length === 0) return [];
  if (beside === 1 || rows.length < 8) return [heading(words, width, font), ...tableBlocks({ columns, rows }, width, font)];
  const parts = Array.from({ length: beside }, (_, i) => rows.slice(i * perPart, (i + 1) * perPart)).filter((r) => r.length > 0);
  const across = (width + 6) / beside;
  const blocks = parts.map((part, i) => table({ at: point(i * across, 0), columns, rows: part, width: across - 6 }, font));
  const height = Math.max(...blocks.map((b) => b.height));
  if (height > 180) return [heading(words, width, font), ...tableBlocks({ columns, rows }, width, font)];
  return [heading(words, width, font), { items: blocks.flatMap((b) => b.items), height, before: 2 }];
});

/**
 * The drawn parts of the pages of one operation: picture, numbers, steps, what the check found, the cautions in a frame, tables. On one page
 * where that does, else with the cautions on the first.
 */
export const setUpSheets = (jig: JigDrawing, setUp: SetUp, frame: PageFrame, font: Font): Item[][] => {
  const area = growBox(frame.area, -1);
  const size = { width: area.x1 - area.x0, height: area.y1 - area.y0 };
  const assumed = jig.assumed.length === 0 ? [] : [`Assumed, as measured: ${jig.assumed.join('; ')}`];
  const continued = letter(point(area.x0, area.y0 + 3.5), fitText(`${jig.title}: ${setUp.operation}, continued`, size.width, 3.5, font), { height: 3.5 });
  const pages = (measure: Measure): Item[][] => flow([
    { ...heading(`${jig.title}: ${setUp.operation}`, size.width, font, 5), before: 0 },
    ...paragraphs([setUp.machine, ...assumed].filter((t) => t !== ''), size.width, font),
    ...head(setUp, size, measure, font),
    ...(setUp.steps.length === 0 ? [] : [heading('Steps', size.width, font)]),
    ...paragraphs(setUp.steps, size.width, font, { mark: (i) => `${i + 1}` }),
    ...listOf('Before you cut', setUp.warnings ?? [], size.width, font),
    ...cautionBlock(setUp.cautions, size.width, font),
    ...furtherTables(setUp, size.width, font),
  ], area, { ...area, y0: area.y0 + 9 }).map((items, i) => (i === 0 ? items : [continued, ...items]));
  const first = pages(roomy);
  if (first.length === 1) return first;
  const second = pages(compact);
  return rank(second) < rank(first) ? second : first;
};

/** Fewer pages are better, then cautions on the first of them. */
const rank = (pages: readonly (readonly Item[])[]): number => pages.length + pages.findIndex((items) => items.some((i) => i.part === 'cautions')) / 100;
