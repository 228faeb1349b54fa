import type { Item } from '../drawing/drawing.js';
import { cleanText } from '../drawing/clean-text.js';
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
  /** Never more than one line: what is too long gives way to the first of `shorter` that fits, and ends in … where none does. */
  readonly single?: boolean;
  readonly shorter?: readonly string[];
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

/** How the words of strips are measured. */
export interface StripMeasure {
  readonly wrap: Wrap;
  /** Width of text to a capital's height of 1 mm. */
  readonly width: (text: string) => number;
}

/** Measures the words of strips, and remembers: most of what a strip says is the same on all sheets of a drawing. */
export const stripMeasure = (font: Font): StripMeasure => {
  const wrapped = new Map<string, readonly string[]>();
  const widths = new Map<string, number>();
  return {
    wrap: (text, width, height) => {
      const key = `${height} ${width} ${text}`;
      const lines = wrapped.get(key) ?? wrapText(text, width, height, font);
      wrapped.set(key, lines);
      return lines;
    },
    width: (text) => {
      const width = widths.get(text) ?? font.width(text, 1);
      widths.set(text, width);
      return width;
    },
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

/** The first wording of a statement that fits a line; undefined where none does. */
const wordingFor = ({ text, shorter = [] }: Statement, width: number, { height, font }: Hand): string | undefined => {
  for (const words of [text, ...shorter]) {
    const clean = cleanText(words.slice(0, longestText));
    if (words.length <= longestText && font.width(clean, height) <= width) return clean;
  }
  return undefined;
};

/** No statement is set beyond so many letters. */
const longestText = 600;

/** Statements one under the other in at most `room` lines; names and titles in one line each, ending in … where they are longer. */
const setLines = (statements: readonly Statement[], room: number, width: number, hand: Hand): LinesSet => {
  const lines: Statement[] = [];
  const rest: string[] = [];
  for (const statement of statements) {
    const { text, part, single, shorter = [] } = statement;
    const words = text.slice(0, longestText);
    const whole = single === true
      ? [wordingFor(statement, width, hand) ?? fitText(shorter.at(-1) ?? words, width, hand.height, hand.font)]
      : hand.wrap(words, width, hand.height);
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
  const running = [...left.rest, ...words.running].filter((w) => w !== '');
  const right = hand.wrap(running.join(' '), beside.width, hand.height);
  const uncut = statements.every((s) => s.single !== true || wordingFor(s, width, hand) !== undefined);
  return { height: hand.height, count, left: left.lines, right, running, beside, whole: uncut && left.rest.length === 0 && right.length <= count };
};

/** Whether words of a height could find room if lines were filled to their ends: spares breaking them where they cannot. */
const mayFit = (box: Box, words: StripWords, height: number, { width }: StripMeasure): boolean => {
  const count = lineCount(box, height);
  const flowing = [...words.lines.filter(({ single }) => single !== true).map(({ text }) => text), ...words.running];
  // Spaces at the ends of lines take no room.
  const room = count * (box.x1 - box.x0 + 2 * height);
  return flowing.reduce((sum, text) => sum + width(text), 0) * height <= room;
};

/** The columns in the largest height that holds all of the words, else in the least. */
const largest = (box: Box, words: StripWords, of: { font: Font; measure: StripMeasure }): ReturnType<typeof setColumns> => {
  const hand = (height: number): Hand => ({ height, font: of.font, wrap: of.measure.wrap });
  for (const height of heights.slice(0, -1)) {
    if (!mayFit(box, words, height, of.measure)) continue;
    const set = setColumns(box, words, hand(height));
    if (set.whole) return set;
  }
  return setColumns(box, words, hand(heights.at(-1)!));
};

const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?]) (?=\p{Lu})/u);

/** As many whole sentences as leave room for `more` behind them in `count` lines; where not even one does, its beginning. */
const cutBetweenSentences = ({ running, count, beside, height, right }: ReturnType<typeof setColumns>, more: string, { font, measure: { wrap } }: { font: Font; measure: StripMeasure }): readonly string[] => {
  const sentences = running.flatMap(sentencesOf);
  for (let kept = sentences.length - 1; kept > 0; kept--) {
    const lines = wrap([...sentences.slice(0, kept), more].join(' '), beside.width, height);
    if (lines.length <= count) return lines;
  }
  return [...right.slice(0, count - 1), fitText(more, beside.width, height, font)];
};

/**
 * The words of a strip in two columns: statements line by line at the left, the running words beside them, as large as all
 * of them find room. Sentences that find none are left out at the end of the running words, which then end in `more`: put
 * what must be read first.
 */
export const stripText = (box: Box, words: StripWords, more: string, of: { font: Font; measure: StripMeasure }): Item[] => {
  const set = largest(box, words, of);
  const { height, count, left, right, beside } = set;
  const shown = right.length <= count ? right : cutBetweenSentences(set, more, of);
  const base = (i: number): number => box.y0 + (ascent + i * pitch) * height;
  return [
    ...left.map(({ text, part }, i) => letter(point(box.x0, base(i)), text, { height, part })),
    ...shown.map((text, i) => letter(point(beside.x, base(i)), text, { height, part: 'strip-words' })),
  ];
};
