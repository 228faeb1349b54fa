import type { Font } from '../drawing/font.js';
import { letter, moveItems, shape } from '../drawing/items.js';
import { riseAbove } from '../drawing/rise.js';
import { table } from '../drawing/table.js';
import { point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import { wrapText } from '../drawing/wrap-text.js';
import { stackHeight, stacked, type FlowBlock } from './flow.js';

const origin = point(0, 0);

/** From a heading's line to what follows. */
const underLine = 1.2;

/** Blocks of which the first is a table: its upper rule falls on the line of the heading before it, so that no empty band is left between them. */
export const onHeadingLine = ([first, ...rest]: readonly FlowBlock[]): FlowBlock[] =>
  (first === undefined ? [] : [{ ...first, before: -underLine }, ...rest]);

/** Between base lines, in heights of a capital: the least of ISO 3098. */
const pitch = 1.5;

/** A heading over a line, kept with what follows. mm. */
export const heading = (text: string, width: number, font: Font, height = 3.5): FlowBlock => {
  const lines = wrapText(shortened(text), width, height, font);
  const top = height + riseAbove(lines[0] ?? '', height, font);
  const base = top + (lines.length - 1) * pitch * height;
  return {
    items: [
      ...lines.map((words, i) => letter(point(0, top + i * pitch * height), words, { height })),
      shape('dimension', line(point(0, base + 1.6), point(width, base + 1.6))),
    ],
    height: base + 1.6 + underLine, before: 3.4, withNext: true,
  };
};

/** A block is never longer than this many lines, so that a page can break inside a long paragraph. */
const mostLines = 12;

/** How the lines of a paragraph are set: their height, how far in they begin, and what stands before the first. mm */
interface Lines {
  readonly height: number;
  readonly indent: number;
  readonly mark: string;
}

/** Lines of one paragraph, in blocks of a few lines. */
const lineBlocks = (lines: readonly string[], { height, indent, mark }: Lines, font: Font): FlowBlock[] => {
  const pieces = Array.from({ length: Math.ceil(lines.length / mostLines) }, (_, i) => lines.slice(i * mostLines, (i + 1) * mostLines));
  return pieces.map((piece, i) => {
    const top = height + riseAbove(piece[0] ?? '', height, font);
    return {
      items: [
        ...(i === 0 && mark !== '' ? [letter(point(0, top), mark, { height })] : []),
        ...piece.map((text, k) => letter(point(indent, top + k * pitch * height), text, { height })),
      ],
      height: top + (piece.length - 1) * pitch * height + 0.35 * height, before: i === 0 ? 1.4 : (pitch - 1.35) * height,
    };
  });
};

/** Paragraphs with an optional mark before each (`1`, `–`), in blocks between which a page may break. */
export const paragraphs = (texts: readonly string[], width: number, font: Font, options: { mark?: (i: number) => string; height?: number } = {}): FlowBlock[] => {
  const { mark, height = 2.5 } = options;
  const indent = mark === undefined ? 0 : Math.max(0, ...texts.map((_, i) => font.width(mark(i), height))) + 0.8 * height;
  return texts.flatMap((text, i) => lineBlocks(wrapText(text, width - indent, height, font), { height, indent, mark: mark?.(i) ?? '' }, font));
};

interface Rows {
  readonly columns?: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly right?: readonly number[];
}

/** Tables taller than this are parted, mm. */
const tallest = 110;

/** A table in blocks of rows no taller than a page holds, its head set again on each, so that long tables break. */
export const tableBlocks = (of: Rows, width: number, font: Font): FlowBlock[] => {
  if (of.rows.length === 0) return [];
  const block = { ...table({ at: origin, width, ...of }, font), before: 2 };
  if (block.height <= tallest || of.rows.length === 1) return [block];
  const half = Math.ceil(of.rows.length / 2);
  return [...tableBlocks({ ...of, rows: of.rows.slice(0, half) }, width, font), ...tableBlocks({ ...of, rows: of.rows.slice(half) }, width, font)];
};

/** Text cut to what a heading or a cell may hold. */
export const shortened = (text: string, most = 160): string => {
  const letters = [...text];
  return letters.length <= most ? text : `${letters.slice(0, most - 1).join('').trimEnd()}…`;
};

/** Between two columns of statements, mm. */
const gutter = 8;

/** Statements with their marks in two columns, parted where both come out lowest: one block. */
export const inTwoColumns = (texts: readonly string[], width: number, font: Font, mark: (i: number) => string): FlowBlock => {
  const each = (width - gutter) / 2;
  const set = (part: readonly string[], from: number): FlowBlock[] => paragraphs(part, each, font, { mark: (i) => mark(from + i) });
  const ways = texts.map((_, i) => {
    const [left, right] = [set(texts.slice(0, i + 1), 0), set(texts.slice(i + 1), i + 1)];
    return { left, right, height: Math.max(stackHeight(left), stackHeight(right)) };
  });
  const { left, right, height } = ways.reduce((a, b) => (b.height < a.height ? b : a));
  return { items: [...stacked(left), ...moveItems(stacked(right), each + gutter, 0)], height, before: 1.4 };
};
