import { sheetsWished } from '../sheets/sheets-wished.js';

/** Some sheets of a set, by their numbers in it, counted from 1. */
export interface SheetNumbers {
  /** As it goes into a file name: `3,5-7`. */
  readonly text: string;
  readonly has: (number: number) => boolean;
}

/** Reads `--sheets 3,5-7` of a set of `count` sheets. */
export const sheetNumbersFrom = (text: string, count: number): SheetNumbers => {
  const wished = sheetsWished(text, count);
  const numbers = new Set(wished.numbers);
  return { text: wished.text, has: (number) => numbers.has(number) };
};
