import { quote } from '../errors/quote.js';
import { usageError } from './usage-error.js';

/** Some sheets of a set, by their place in it, counted from 1. */
export interface SheetNumbers {
  /** As it goes into a file name: `3,5-7`. */
  readonly text: string;
  readonly has: (number: number) => boolean;
  readonly highest: number;
}

/** Reads `3,5-7`. Refuses what is no number, 0, and a range that runs backwards. */
export const sheetNumbersFrom = (text: string): SheetNumbers => {
  const ranges = text.split(',').map((part) => {
    const [, first, last] = /^\s*(\d{1,5})\s*(?:-\s*(\d{1,5})\s*)?$/.exec(part) ?? [];
    const [from, to] = [Number(first), Number(last ?? first)];
    if (first === undefined || from < 1 || to < from) throw usageError(`--sheets ${quote(text)}: ${quote(part)} is no sheet`, { allowed: 'numbers from 1 and ranges, e.g. 3,5-7' });
    return { from, to };
  });
  return {
    text: ranges.map(({ from, to }) => (from === to ? `${from}` : `${from}-${to}`)).join(','),
    has: (number) => ranges.some(({ from, to }) => number >= from && number <= to),
    highest: Math.max(...ranges.map(({ to }) => to)),
  };
};
