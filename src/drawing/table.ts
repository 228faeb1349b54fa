import { point, type Point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import type { Item } from './drawing.js';
import type { Font } from './font.js';
import { letter, shape } from './items.js';
import type { Block } from './text-block.js';
import { wrapText } from './wrap-text.js';

/** A table's place, columns and rows. */
export interface TableOptions {
  /** Top left corner. */
  readonly at: Point;
  /** Heads of the columns; none for a table of labels and values. */
  readonly columns?: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** No wider than this, mm; cells are wrapped where the table would be. */
  readonly width: number;
  readonly height?: number;
  /** Columns set from their right end: figures. The first column is set from its left unless named. */
  readonly right?: readonly number[];
}

const pad = 1.5;

/** Natural widths where they fit; else columns wider than an even share give up what is too much, in proportion. */
const columnWidths = (natural: readonly number[], width: number): number[] => {
  const total = natural.reduce((a, b) => a + b, 0);
  if (total <= width) return [...natural];
  const share = width / natural.length;
  const narrow = natural.filter((w) => w <= share).reduce((a, b) => a + b, 0);
  const wide = natural.filter((w) => w > share).reduce((a, b) => a + b, 0);
  return natural.map((w) => (w <= share ? w : (w * (width - narrow)) / wide));
};

/** A table with a rule over it, two under its head, a thin one under every row. Every cell's words are kept: wrapped, never cut. */
export const table = (options: TableOptions, font: Font): Block & { readonly width: number } => {
  const { at, columns, rows, width, height = 2.5, right = [] } = options;
  const all = columns === undefined ? rows : [columns, ...rows];
  const count = Math.max(0, ...all.map((row) => row.length));
  if (count === 0) return { items: [], height: 0, width: 0 };
  const natural = Array.from({ length: count }, (_, i) => Math.max(...all.map((r) => font.width(r[i] ?? '', height))) + 2 * pad);
  const widths = columnWidths(natural, width);
  const starts = widths.map((_, i) => at.x + widths.slice(0, i).reduce((a, b) => a + b, 0));
  const end = starts.at(-1)! + widths.at(-1)!;
  const items: Item[] = [];
  const ruled = (y: number): void => { items.push(shape('dimension', line(point(at.x, y), point(end, y)))); };
  let y = at.y;
  ruled(y);
  all.forEach((row, r) => {
    const cells = widths.map((w, i) => wrapText(row[i] ?? '', w - 2 * pad + 1e-6, height, font));
    cells.forEach((lines, i) => lines.forEach((text, n) => {
      const fromRight = right.includes(i);
      const x = fromRight ? starts[i]! + widths[i]! - pad : starts[i]! + pad;
      items.push(letter(point(x, y + 1.35 * height + n * 1.5 * height), text, { height, anchor: fromRight ? 'end' : 'start' }));
    }));
    y += Math.max(1, ...cells.map((c) => c.length)) * 1.5 * height + 0.2 * height;
    ruled(y);
    if (r === 0 && columns !== undefined) ruled(y += 0.6);
  });
  return { items, height: y - at.y, width: end - at.x };
};
