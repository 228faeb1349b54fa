import { quote } from '../errors/quote.js';
import type { SheetSet } from '../sheets/lay-out.js';
import type { SetPart } from '../sheets/set-pages.js';
import { sheetsWished } from '../sheets/sheets-wished.js';
import { listOption, nearestOf, textOption } from './arguments.js';
import type { Arguments } from './command.js';
import { usageError } from './usage-error.js';

/** Some sheets of a set, by their numbers in it, counted from 1. */
export interface SheetNumbers {
  /** As it goes into a file name: `3,5-7`, `tiles`, `tiles-3,5-7`. */
  readonly text: string;
  readonly has: (number: number) => boolean;
}

/** What of a set is asked for, in the user's words: what they name is known once the set is laid out. */
export interface SheetsChosen {
  readonly sheets: string | undefined;
  readonly parts: readonly SetPart[] | undefined;
}

/** The parts of a set that may be chosen, in the order of the sheets. */
const partNames = ['patterns', 'tiles', 'set-ups'] as const satisfies readonly SetPart[];

const partNamed = (word: string): SetPart => {
  const found = partNames.find((name) => name === word.toLowerCase());
  if (found !== undefined) return found;
  throw usageError(`--parts: there is no ${quote(word)}`, { allowed: `any of ${partNames.join(', ')}, with commas`, ...nearestOf(word, partNames) });
};

/** Reads `--sheets` and `--parts`. Refuses a word that is no part of a set. */
export const sheetsChosen = (given: Arguments): SheetsChosen => {
  const parts = listOption(given, 'parts')?.map(partNamed);
  return { sheets: textOption(given, 'sheets'), parts: parts === undefined ? undefined : partNames.filter((name) => parts.includes(name)) };
};

/** The sheets of some parts; those that open the set, with its scale check and map, come with any. */
const ofParts = (chosen: readonly SetPart[], { parts }: Pick<SheetSet, 'parts'>): ReadonlySet<number> => {
  const missing = chosen.find((part) => !parts.includes(part));
  if (missing !== undefined) {
    const there = partNames.filter((part) => parts.includes(part));
    throw usageError(`--parts: this set has no ${missing}`, there.length === 0 ? {} : { allowed: there.join(', ') });
  }
  return new Set(parts.flatMap((part, i) => (part === 'opening' || chosen.includes(part) ? [i + 1] : [])));
};

/**
 * The sheets asked for, under the numbers that they have in the whole set; undefined where all are. With both options those
 * of the parts among the sheets named. Refuses sheets and parts that the set does not have, and where none is left.
 */
export const sheetNumbersFrom = ({ sheets, parts }: SheetsChosen, set: Pick<SheetSet, 'count' | 'parts'>): SheetNumbers | undefined => {
  const wished = sheets === undefined ? undefined : sheetsWished(sheets, set.count);
  const among = parts === undefined ? undefined : ofParts(parts, set);
  if (wished === undefined && among === undefined) return undefined;
  const numbers = new Set((wished?.numbers ?? [...among!]).filter((number) => among?.has(number) !== false));
  if (numbers.size === 0) throw usageError(`--sheets ${quote(sheets!)}: none of them holds ${parts!.join(' or ')}`, { allowed: `of these: ${[...among!].join(', ')}` });
  return { text: [parts?.join(','), wished?.text].filter((text) => text !== undefined).join('-'), has: (number) => numbers.has(number) };
};
