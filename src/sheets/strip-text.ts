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

/** Heights of capitals tried, the first that holds all of the words taken; the last is the least of ISO 3098. */
const heights = [2.5, 2.2, 1.8] as const;
/** In heights of a capital; base lines as far apart as the font's ascenders and descenders need to keep clear of each other. */
const ascent = 1.14;
const descent = 0.31;
const pitch = 1.425;
const gutter = 4;
const columnWidth = 86;

/** Breaks text into lines of a width for capitals of a height, mm. */
export type Wrap = (text: string, width: number, height: number) => readonly string[];

/** Breaks text of strips, and remembers: most of what a strip says is the same on all sheets of a drawing. */
export const stripWrap = (font: Font): Wrap => {
  const known = new Map<string, readonly string[]>();
  return (text, width, height) => {
    const key = `${height} ${width} ${text}`;
    const lines = known.get(key) ?? wrapText(text, width, height, font);
    known.set(key, lines);
    return lines;
  };
};

/** Lettering of one height, and how it is measured. */
interface Hand {
  readonly height: number;
  readonly font: Font;
  readonly wrap: Wrap;
}

/** How many lines of the strip a box holds. */
const lineCount = (box: Box, height: number): number =>
  Math.max(1, Math.floor((box.y1 - box.y0 - (ascent + descent) * height) / (pitch * height) + 1e-6) + 1);

interface LinesSet {
  readonly lines: readonly Statement[];
  /** What found no room. */
  readonly rest: readonly string[];
}

/** Statements one under the other in at most `room` lines; names and titles in one line each, ending in … where they are longer. */
const setLines = (statements: readonly Statement[], room: number, width: number, { height, font, wrap }: Hand): LinesSet => {
  const lines: Statement[] = [];
  const rest: string[] = [];
  for (const { text, part, single } of statements) {
    const words = text.slice(0, 600);
    const whole = single === true ? [fitText(words, width, height, font)] : wrap(words, width, height);
    if (rest.length === 0 && lines.length + whole.length <= room) lines.push(...whole.map((line) => ({ text: line, part })));
    else rest.push(single === true ? whole[0]! : words);
  }
  return { lines, rest };
};

/** The two columns set in one height, and whether all of the words found room uncut. */
const setColumns = (box: Box, words: StripWords, hand: Hand) => {
  const count = lineCount(box, hand.height);
  const width = Math.min(columnWidth, (box.x1 - box.x0 - gutter) / 2);
  const statements = words.lines.filter((w) => w.text !== '');
  const left = setLines(statements, count, width, hand);
  const beside = { x: box.x0 + width + gutter, width: box.x1 - box.x0 - width - gutter };
  const right = hand.wrap([...left.rest, ...words.running.filter((w) => w !== '')].join('  '), beside.width, hand.height);
  const uncut = statements.every(({ text, single }) => single !== true || hand.font.width(text, hand.height) <= width);
  return { height: hand.height, count, left: left.lines, right, beside, whole: uncut && left.rest.length === 0 && right.length <= count };
};

/** The columns in the largest height that holds all of the words, else in the least. */
const largest = (box: Box, words: StripWords, of: { font: Font; wrap: Wrap }): ReturnType<typeof setColumns> => {
  for (const height of heights.slice(0, -1)) {
    const set = setColumns(box, words, { height, ...of });
    if (set.whole) return set;
  }
  return setColumns(box, words, { height: heights.at(-1)!, ...of });
};

/**
 * The words of a strip in two columns: statements line by line at the left, the running words beside them, as large as all
 * of them find room. What finds none is left out at the end of the running words, and the last line then says `more`: put
 * what must be read first.
 */
export const stripText = (box: Box, words: StripWords, more: string, of: { font: Font; wrap: Wrap }): Item[] => {
  const { height, count, left, right, beside } = largest(box, words, of);
  const shown = right.length <= count ? right : [...right.slice(0, count - 1), fitText(more, beside.width, height, of.font)];
  const base = (i: number): number => box.y0 + (ascent + i * pitch) * height;
  return [
    ...left.map(({ text, part }, i) => letter(point(box.x0, base(i)), text, { height, part })),
    ...shown.map((text, i) => letter(point(beside.x, base(i)), text, { height, part: 'strip-words' })),
  ];
};
