import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import { UserError } from '../errors/user-error.js';

/** Some sheets of a set. */
export interface SheetsWished {
  /** The wish written plainly, as it goes into a file name: `3,5-7,A3`. */
  readonly text: string;
  /** Their places in the set, counted from 1, in order and each once. */
  readonly pages: readonly number[];
}

const refuse = (text: string, message: string, help: { readonly allowed: string; readonly nearest?: string }): never => {
  throw new UserError(undefined, [{ code: 'wrong-use', path: '', message: `--sheets ${quote(text)}: ${message}`, ...help }]);
};

/** Codes of tiles have a letter; sheets of another sort are called by their page. */
const isTileCode = (code: string): boolean => /[A-Z]/.test(code);

/** Allowed: the pages, and the first and last tile where there are any. */
const allowedOf = (codes: readonly string[]): string => {
  const tiles = codes.filter(isTileCode);
  const [first, last] = [tiles[0], tiles.at(-1)];
  return `pages 1 to ${codes.length}${first === undefined ? '' : `, or codes as printed on the tiles, ${first} to ${last!}`}; ranges too, e.g. 3,5-7${first === undefined ? '' : `,${first}`}`;
};

/** The page that one word names: its number in the set, or the tile with that code. */
const pageOf = (word: string, text: string, codes: readonly string[]): number => {
  const allowed = allowedOf(codes);
  if (/^\d{1,5}$/.test(word)) {
    const page = Number(word);
    return page >= 1 && page <= codes.length ? page : refuse(text, `there is no sheet ${page}`, { allowed });
  }
  const code = word.toUpperCase();
  const at = isTileCode(code) ? codes.indexOf(code) : -1;
  if (at >= 0) return at + 1;
  const like = nearest(code, codes.filter(isTileCode));
  return refuse(text, `${quote(word)} is no sheet of this set`, { allowed, ...(like !== undefined && { nearest: like }) });
};

/**
 * Reads which sheets of a set are wished: `3,5-7,A3`. A number is a page of the set, a word with a letter the code printed on
 * a tile, in capitals or not; a range goes in the order of the set. `codes`: those of the set, in order. Refuses what is no
 * sheet of it, and a range that runs backwards.
 */
export const sheetsWished = (text: string, codes: readonly string[]): SheetsWished => {
  const ranges = text.split(',').map((part) => {
    const words = part.split('-').map((word) => word.trim());
    if (words.length > 2) refuse(text, `${quote(part)} is no range`, { allowed: allowedOf(codes) });
    const [from, to = from] = words.map((word) => pageOf(word, text, codes)) as [number, number?];
    if (to < from) refuse(text, `${quote(part)} runs backwards`, { allowed: `${words[1]!}-${words[0]!}` });
    return { words, from, to };
  });
  const pages = new Set(ranges.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, i) => from + i)));
  return {
    text: ranges.map(({ words, from, to }) => (from === to ? words[0]! : words.join('-')).toUpperCase()).join(','),
    pages: [...pages].sort((a, b) => a - b),
  };
};
