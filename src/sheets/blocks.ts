import type { Font } from '../drawing/font.js';
import { letter, shape } from '../drawing/items.js';
import { table } from '../drawing/table.js';
import { textBlock } from '../drawing/text-block.js';
import { point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import { wrapText } from '../drawing/wrap-text.js';
import type { FlowBlock } from './flow.js';

const origin = point(0, 0);

/** A heading over a line, kept with what follows. mm. */
export const heading = (text: string, width: number, font: Font, height = 3.5): FlowBlock => {
  const lines = wrapText(text, width, height, font).slice(0, 3);
  const base = height + (lines.length - 1) * 1.6 * height;
  return {
    items: [
      ...lines.map((words, i) => letter(point(0, height + i * 1.6 * height), words, { height })),
      shape('dimension', line(point(0, base + 1.6), point(width, base + 1.6))),
    ],
    height: base + 3.2, before: 4, withNext: true,
  };
};

/** Paragraphs, a block each, so that a page may break between them. */
export const paragraphs = (texts: readonly string[], width: number, font: Font, options: { mark?: (i: number) => string; height?: number } = {}): FlowBlock[] => {
  const { mark, height = 2.5 } = options;
  const widest = mark === undefined ? 0 : Math.max(0, ...texts.map((_, i) => font.width(mark(i), height))) + 0.8 * height;
  return texts.map((text, i) => {
    const block = textBlock({ at: point(widest, 0), width: width - widest, paragraphs: [text], height }, font);
    const marks = mark === undefined ? [] : [letter(point(0, height), mark(i), { height })];
    return { items: [...marks, ...block.items], height: block.height, before: 1.4 };
  });
};

/** Rows of a table in blocks of a few rows, its head set again on each, so that long tables break. */
export const tableBlocks = (of: { columns?: readonly string[]; rows: readonly (readonly string[])[]; right?: readonly number[] }, width: number, font: Font): FlowBlock[] => {
  const chunk = 30;
  const pieces = Array.from({ length: Math.ceil(of.rows.length / chunk) }, (_, i) => of.rows.slice(i * chunk, (i + 1) * chunk));
  return pieces.map((rows) => ({ ...table({ at: origin, width, ...of, rows }, font), before: 2 }));
};
