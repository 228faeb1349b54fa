import { quote } from '../errors/quote.js';
import { UserError } from '../errors/user-error.js';

/** Some sheets of a set. */
export interface SheetsWished {
  /** The wish written plainly, as it goes into a file name: `3,5-7`. */
  readonly text: string;
  /** Their numbers in the set, counted from 1, in order and each once. */
  readonly numbers: readonly number[];
}

const refuse = (text: string, message: string, allowed: string): never => {
  throw new UserError(undefined, [{ code: 'wrong-use', path: '', message: `--sheets ${quote(text)}: ${message}`, allowed }]);
};

const allowedOf = (count: number): string => (count === 1 ? 'sheet 1' : `sheets 1 to ${count}, one by one or from one to another: 1,${count} or 1-${count}`);

/** The sheet that one word names. A letter with figures was never a number: the words say what a sheet is called by. */
const numberOf = (word: string, text: string, count: number): number => {
  if (/^\d{1,5}$/.test(word)) {
    const number = Number(word);
    return number >= 1 && number <= count ? number : refuse(text, `there is no sheet ${number}`, allowedOf(count));
  }
  const why = /[a-z]/i.test(word) ? `${quote(word)} is no number: a sheet is called by the number that stands large at its foot` : `${quote(word)} is no sheet of this set`;
  return refuse(text, why, allowedOf(count));
};

/**
 * Reads which sheets of a set of `count` are wished: numbers and ranges, `3,5-7`. Refuses what is no sheet of it, letters,
 * and a range that runs backwards.
 */
export const sheetsWished = (text: string, count: number): SheetsWished => {
  const ranges = text.split(',').map((part) => {
    const words = part.split('-').map((word) => word.trim());
    if (words.length > 2) refuse(text, `${quote(part)} is no range`, allowedOf(count));
    const [from, to = from] = words.map((word) => numberOf(word, text, count)) as [number, number?];
    if (to < from) refuse(text, `${quote(part)} runs backwards`, `${to}-${from}`);
    return { from, to };
  });
  const numbers = new Set(ranges.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, i) => from + i)));
  return {
    text: ranges.map(({ from, to }) => (from === to ? String(from) : `${from}-${to}`)).join(','),
    numbers: [...numbers].sort((a, b) => a - b),
  };
};
