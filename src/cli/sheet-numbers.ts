import { sheetsWished } from '../sheets/sheets-wished.js';

/** Some sheets of a set, by their place in it, counted from 1. */
export interface SheetNumbers {
  /** As it goes into a file name: `3,5-7,A3`. */
  readonly text: string;
  readonly has: (number: number) => boolean;
}

/** Reads `--sheets 3,5-7,A3` of a set with these codes: numbers are pages, words with a letter the codes printed on tiles. */
export const sheetNumbersFrom = (text: string, codes: readonly string[]): SheetNumbers => {
  const wished = sheetsWished(text, codes);
  const pages = new Set(wished.pages);
  return { text: wished.text, has: (number) => pages.has(number) };
};
