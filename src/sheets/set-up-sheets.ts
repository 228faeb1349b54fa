import type { Item, JigDrawing } from '../drawing/drawing.js';
import { fitText } from '../drawing/fit-text.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds } from '../drawing/item-bounds.js';
import type { FigureTable, SetUp } from '../drawing/set-up.js';
import { letter, moveItems, placeItems, shape } from '../drawing/items.js';
import { table } from '../drawing/table.js';
import type { Finding } from '../errors/finding.js';
import { boxHeight, boxWidth, growBox } from '../geometry/box.js';
import { point } from '../geometry/point.js';
import { rectangle } from '../geometry/shapes.js';
import { scaling } from '../geometry/transform.js';
import { sayWords, type Words } from '../units/quantity.js';
import type { Units } from '../units/units.js';
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

/** Lettering of 2.5 mm is set no smaller than 1.8 mm, so a picture is made no smaller than this where the page holds it. */
const smallest = 0.72;

/** Room that a picture should keep to, and what the page holds at most, mm. */
interface PictureRoom {
  readonly width: number;
  readonly height: number;
  readonly most: { readonly width: number; readonly height: number };
}

/** The picture in true size, or made small enough for the room, its lettering with it. */
const pictureOf = (setUp: SetUp, room: PictureRoom, font: Font): Picture => {
  const { items } = setUp.picture;
  if (items.length === 0) return { items: [], width: 0, height: 0, scale: 1 };
  const bounds = itemsBounds(items, font);
  const wanted = Math.min(1, room.width / boxWidth(bounds), room.height / boxHeight(bounds));
  const lettered = items.some((item) => item.kind === 'lettering');
  const scale = !lettered ? wanted : Math.max(wanted, Math.min(smallest, room.most.width / boxWidth(bounds), room.most.height / boxHeight(bounds)));
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
const compact: Measure = { pictureWidth: 0.5, pictureHeight: 0.28 };

const pictureNote = (setUp: SetUp, scale: number, units: Units): string[] => {
  const small = scale !== 1 || setUp.pictureIs === 'not-to-scale';
  return [`${small ? 'Not to scale. ' : ''}${sayWords(setUp.pictureNote, units)}`.trim()].filter((t) => t !== '');
};

/** What the pages of one operation are made with. */
interface Page {
  readonly setUp: SetUp;
  readonly units: Units;
  readonly font: Font;
}

/** Picture at the left and numbers beside it where both have room, else one under the other. */
const head = ({ setUp, units, font }: Page, area: { width: number; height: number }, measure: Measure): FlowBlock[] => {
  const room = {
    width: area.width * measure.pictureWidth, height: area.height * measure.pictureHeight,
    most: { width: area.width, height: 0.8 * area.height },
  };
  const picture = pictureOf(setUp, room, font);
  const rows = setUp.numbers.map(({ label, value }) => [sayWords(label, units), sayWords(value, units)] as const);
  const note = paragraphs(pictureNote(setUp, picture.scale, units), area.width, font);
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

/** Between tables set side by side, mm. */
const gutter = 6;
/** A table set side by side is no taller, mm: beyond that it breaks over pages. */
const tallest = 180;

/** A table in parts side by side where several fit the width, so that a page is not one narrow column of figures. */
const furtherTable = ({ heading: title, note = [], columns, rows }: FigureTable, { units, font }: Page, width: number): FlowBlock[] => {
  if (rows.length === 0) return [];
  const say = (cells: readonly Words[]): string[] => cells.map((cell) => sayWords(cell, units));
  const of = { columns: columns.map(({ head: text }) => text), rows: rows.map(say) };
  const noted = paragraphs(note.length === 0 ? [] : [sayWords(note, units)], width, font).map((block) => ({ ...block, withNext: true }));
  const over = [heading(sayWords(title, units), width, font), ...noted];
  const plain = (): FlowBlock[] => [...over, ...tableBlocks(of, width, font)];
  const natural = table({ at: point(0, 0), ...of, width }, font).width;
  const beside = Math.max(1, Math.min(3, Math.floor((width + gutter) / (natural + gutter))));
  if (beside === 1 || rows.length < 8) return plain();
  const perPart = Math.ceil(rows.length / beside);
  const parts = Array.from({ length: beside }, (_, i) => of.rows.slice(i * perPart, (i + 1) * perPart)).filter((r) => r.length > 0);
  const across = (width + gutter) / beside;
  const blocks = parts.map((part, i) => table({ at: point(i * across, 0), columns: of.columns, rows: part, width: across - gutter }, font));
  const height = Math.max(...blocks.map((b) => b.height));
  return height > tallest ? plain() : [...over, { items: blocks.flatMap((b) => b.items), height, before: 2 }];
};

/** What the check found of an operation, as its page prints it: what is so, and what would do. */
const warningWords = ({ message, remedy }: Finding): string => (remedy === '' ? message : `${message} ${remedy}`);

/** An operation with what the check found of it. */
export interface SetUpRequest {
  readonly jig: JigDrawing;
  readonly setUp: SetUp;
  readonly findings: readonly Finding[];
  readonly units: Units;
}

/**
 * The drawn parts of the pages of one operation: picture, numbers, what the check found, steps, the cautions in a frame,
 * tables. On one page where that does, else with the cautions on the first, before the steps.
 */
export const setUpSheets = ({ jig, setUp, findings, units }: SetUpRequest, frame: PageFrame, font: Font): Item[][] => {
  const area = growBox(frame.area, -1);
  const size = { width: area.x1 - area.x0, height: area.y1 - area.y0 };
  const page: Page = { setUp, units, font };
  const title = `${jig.title}: ${setUp.operation}`;
  const assumed = jig.assumed.length === 0 ? [] : [`Assumed, as measured: ${jig.assumed.join('; ')}`];
  const continued = letter(point(area.x0, area.y0 + 3.5), fitText(`${title}, continued`, size.width, 3.5, font), { height: 3.5 });
  const steps = setUp.steps.map((step) => sayWords(step.words, units));
  const cautions = cautionBlock(setUp.cautions, size.width, font);
  const pages = (measure: Measure, cautionsFirst: boolean): Item[][] => flow([
    { ...heading(title, size.width, font, 5), before: 0 },
    ...paragraphs([setUp.machine, ...assumed].filter((t) => t !== ''), size.width, font),
    ...head(page, size, measure),
    ...listOf('Before you cut', findings.map(warningWords), size.width, font),
    ...(cautionsFirst ? cautions : []),
    ...(steps.length === 0 ? [] : [heading('Steps', size.width, font)]),
    ...paragraphs(steps, size.width, font, { mark: (i) => `${i + 1}` }),
    ...(cautionsFirst ? [] : cautions),
    ...setUp.tables.flatMap((each) => furtherTable(each, page, size.width)),
  ], area, { ...area, y0: area.y0 + 9 }).map((items, i) => (i === 0 ? items : [continued, ...items]));
  const first = pages(roomy, false);
  if (first.length === 1) return first;
  // On several pages the cautions come before the steps, so that they are read with the first of them.
  const others: readonly (readonly [Measure, boolean])[] = [[compact, false], [roomy, true], [compact, true]];
  return others.reduce<Item[][]>((best, [measure, early]) => {
    const other = pages(measure, early);
    return rank(other) < rank(best) ? other : best;
  }, first);
};

/** Fewer pages are better, then cautions on the first of them. */
const rank = (pages: readonly (readonly Item[])[]): number => pages.length + pages.findIndex((items) => items.some((i) => i.part === 'cautions')) / 100;
