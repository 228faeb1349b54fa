import type { Paper } from './paper.js';
import { papers } from './paper.js';
import { parseLength } from './parse-length.js';
import type { Units } from './units.js';

/** A side with its unit: that of the other where it has none itself and the other does, as in `11x17in`. */
const withUnit = (side: string, other: string): string => (/[^\d\s./⁄-]/.test(side) ? side : `${side}${/(?:mm|cm|in|inch|"|″)\s*$/.exec(other)?.[0] ?? ''}`);

/** A paper by its name, or by two lengths with an x between: `280x430mm`, `11in x 17in`; a unit behind the second holds for both. Undefined for anything else. mm, upright. */
export function parsePaper(text: string, units: Units): Paper | undefined {
  const name = text.trim().toLowerCase();
  if (Object.hasOwn(papers, name)) return papers[name];
  const [first, second, ...more] = name.split(/[x×]/);
  if (first === undefined || second === undefined || more.length > 0) return undefined;
  const [a, b] = [parseLength(withUnit(first, second), units), parseLength(second, units)];
  if (!('value' in a) || !('value' in b) || !isPaperSide(a.value) || !isPaperSide(b.value)) return undefined;
  return ownPaper(a.value, b.value);
}

/** The limits of a paper's side, mm: a postcard's short side to the longest page that PDF readers take (14 400 pt). */
export const paperSides = { min: 90, max: 5080 } as const;

const isPaperSide = (mm: number): boolean => mm >= paperSides.min && mm <= paperSides.max;

/** A paper of the user's own, given either way round; called `280x430` after its sides in mm, short side first. */
export function ownPaper(a: number, b: number): Paper {
  const [width, height] = [Math.min(a, b), Math.max(a, b)];
  const digits = (mm: number) => String(Number(mm.toFixed(2)));
  return { name: `${digits(width)}x${digits(height)}`, width, height };
}
