import type { Item } from '../drawing/drawing.js';
import { fitText } from '../drawing/fit-text.js';
import type { Font } from '../drawing/font.js';
import { letter } from '../drawing/items.js';
import { wrapText } from '../drawing/wrap-text.js';
import type { Box } from '../geometry/box.js';
import { point } from '../geometry/point.js';

/** One statement of the strip: set in as many lines as it needs, up to `lines`. */
export interface Statement {
  readonly text: string;
  readonly lines: number;
  readonly part?: string;
}

/** Least lettering of ISO 3098, and base lines far enough apart that accents and descenders keep clear of each other. */
const height = 1.8;
const pitch = 2.66;
const gutter = 4;

/** Text in at most `lines` lines; the last one ends in … where that is too few. */
const wrapWithin = (statement: Statement, width: number, font: Font): string[] => {
  const all = wrapText(statement.text.slice(0, 1000), width, height, font);
  if (all.length <= statement.lines) return all;
  return [...all.slice(0, statement.lines - 1), fitText(all.slice(statement.lines - 1).join(' '), width, height, font)];
};

/** How many columns a strip is wide: lines of some fifty letters read best. */
const columnCount = (width: number): number => Math.max(1, Math.round(width / 82));

/**
 * Statements set in columns, each begun on a line of its own, in the order given. What finds no room is left out from the
 * end, and the last line set then says `more`: put what must be read first, and say the rest on a page with room.
 */
export const stripText = (box: Box, statements: readonly Statement[], more: string, font: Font): Item[] => {
  const columns = columnCount(box.x1 - box.x0);
  const width = (box.x1 - box.x0 - gutter * (columns - 1)) / columns;
  const perColumn = Math.floor((box.y1 - box.y0 - 1.15 * height - 0.32 * height) / pitch) + 1;
  const room = perColumn * columns;
  const all = statements.filter((s) => s.text !== '').flatMap((s) => wrapWithin(s, width, font).map((text) => ({ text, part: s.part })));
  const shown = all.length <= room ? all : [...all.slice(0, room - 1), { text: fitText(more, width, height, font), part: undefined }];
  return shown.map(({ text, part }, i) => {
    const at = point(box.x0 + Math.floor(i / perColumn) * (width + gutter), box.y0 + 1.15 * height + (i % perColumn) * pitch);
    return letter(at, text, { height, ...(part !== undefined && { part }) });
  });
};
