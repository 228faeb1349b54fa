import type { Item } from '../drawing/drawing.js';
import { fitText } from '../drawing/fit-text.js';
import type { Font } from '../drawing/font.js';
import { letter } from '../drawing/items.js';
import { wrapText } from '../drawing/wrap-text.js';
import type { Box } from '../geometry/box.js';
import { point } from '../geometry/point.js';

/** One statement of the strip. */
export interface Statement {
  readonly text: string;
  readonly part: string;
  /** Never more than one line: what is too long ends in … */
  readonly single?: boolean;
}

/** The words of a strip: each statement of `lines` on lines of its own as far as there is room, those of `running` one behind the other. */
export interface StripWords {
  readonly lines: readonly Statement[];
  readonly running: readonly string[];
}

/** Least lettering of ISO 3098; base lines as far apart as the font's ascenders and descenders need to keep clear of each other. */
const height = 1.8;
const ascent = 2.05;
const descent = 0.56;
const pitch = 2.56;
const gutter = 4;
const columnWidth = 86;

/** Breaks text into lines of a width, mm. */
export type Wrap = (text: string, width: number) => readonly string[];

/** Breaks text of strips, and remembers: most of what a strip says is the same on all sheets of a drawing. */
export const stripWrap = (font: Font): Wrap => {
  const known = new Map<string, readonly string[]>();
  return (text, width) => {
    const key = `${width} ${text}`;
    const lines = known.get(key) ?? wrapText(text, width, height, font);
    known.set(key, lines);
    return lines;
  };
};

/** Text in at most `lines` lines; what is too much gives way to `more`. */
const wrapWithin = (text: string, lines: number, of: { width: number; more: string }, font: Font, wrap: Wrap): string[] => {
  const all = wrap(text, of.width);
  if (all.length <= lines) return [...all];
  return [...all.slice(0, lines - 1), fitText(of.more, of.width, height, font)];
};

/** How many lines of the strip a box holds. */
const lineCount = (box: Box): number => Math.max(1, Math.floor((box.y1 - box.y0 - ascent - descent) / pitch + 1e-6) + 1);

interface LinesSet {
  readonly lines: readonly Statement[];
  /** What found no room. */
  readonly rest: readonly string[];
}

/** Statements one under the other in at most `room` lines; names and titles in one line each, ending in … where they are longer. */
const setLines = (statements: readonly Statement[], room: number, width: number, of: { font: Font; wrap: Wrap }): LinesSet => {
  const lines: Statement[] = [];
  const rest: string[] = [];
  for (const { text, part, single } of statements) {
    const words = text.slice(0, 600);
    const whole = single === true ? [fitText(words, width, height, of.font)] : of.wrap(words, width);
    if (rest.length === 0 && lines.length + whole.length <= room) lines.push(...whole.map((line) => ({ text: line, part })));
    else rest.push(single === true ? whole[0]! : words);
  }
  return { lines, rest };
};

/**
 * The words of a strip in two columns: statements line by line at the left, the running words beside them. What finds no
 * room is left out at the end of the running words, and the last line then says `more`: put what must be read first.
 */
export const stripText = (box: Box, words: StripWords, more: string, of: { font: Font; wrap: Wrap }): Item[] => {
  const count = lineCount(box);
  const width = Math.min(columnWidth, (box.x1 - box.x0 - gutter) / 2);
  const left = setLines(words.lines.filter((w) => w.text !== ''), count, width, of);
  const running = [...left.rest, ...words.running.filter((w) => w !== '')];
  const rest = { x: box.x0 + width + gutter, width: box.x1 - box.x0 - width - gutter };
  const right = wrapWithin(running.join('  '), count, { width: rest.width, more }, of.font, of.wrap);
  const base = (i: number): number => box.y0 + ascent + i * pitch;
  return [
    ...left.lines.map(({ text, part }, i) => letter(point(box.x0, base(i)), text, { height, part })),
    ...right.map((text, i) => letter(point(rest.x, base(i)), text, { height, part: 'strip-words' })),
  ];
};
