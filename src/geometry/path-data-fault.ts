/** The first place at which path data do not go by the grammar. */
export interface PathDataFault {
  /** Characters before the place. */
  readonly at: number;
  /** What is wrong there, to be read on its own. */
  readonly message: string;
}

/** How many numbers each command takes at a time (SVG 2, 9.3). */
const arity: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 };

const number = /[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/y;
const flag = /[01]/y;
const blank = /[\s]*/y;
const comma = /[\s]*,?[\s]*/y;

/** No figure of a drawing is greater: with such ones a curve's handles add up to what is no number any more. */
const greatest = 1e12;

/** Where a pattern that begins at `from` ends; undefined where it does not stand there. */
const past = (pattern: RegExp, text: string, from: number): number | undefined => {
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : undefined;
};

/** The fourth and fifth number of an arc say which of the four arcs it is, and need no space after them. */
const wantsFlag = (command: string, i: number): boolean => command === 'a' && (i % 7 === 3 || i % 7 === 4);

const takes = (letter: string, count: number): string => `${letter} takes ${count} number${count === 1 ? '' : 's'} at a time`;

/** The numbers after a command letter: where they end, or what is wrong with them. */
const readNumbers = (text: string, letter: string, from: number): number | PathDataFault => {
  const command = letter.toLowerCase();
  const wanted = arity[command] ?? 0;
  if (wanted === 0) return from;
  let end = from;
  for (let i = 0; ; i++) {
    const at = past(i === 0 ? blank : comma, text, end) ?? end;
    const next = past(wantsFlag(command, i) ? flag : number, text, at);
    if (next !== undefined && Math.abs(Number(text.slice(at, next))) > greatest) return { at, message: `no number of a drawing is beyond ${greatest}` };
    if (next !== undefined) { end = next; continue; }
    // Between two commands the grammar has room for blanks, not for a comma.
    const whole = i > 0 && i % wanted === 0 && !text.slice(end, at).includes(',');
    if (whole) return end;
    const left = i % wanted;
    const here = at >= text.length ? 'the data end' : wantsFlag(command, i) ? 'a 0 or a 1 is wanted' : 'a number is wanted';
    return { at, message: `${here}; ${takes(letter, wanted)}, and ${left === 0 ? 'none' : left} stand${left === 1 ? 's' : ''} there` };
  }
};

/** What is wrong with SVG path data and where, by the grammar of SVG 2 (9.3.9); undefined where they can be read to the end. */
export const pathDataFault = (text: string): PathDataFault | undefined => {
  let end = past(blank, text, 0) ?? 0;
  for (let first = true; end < text.length || first; first = false) {
    const letter = text.charAt(end);
    if (first && !/[mM]/.test(letter)) return { at: end, message: 'the data do not begin with a move, M x y' };
    if (arity[letter.toLowerCase()] === undefined) return { at: end, message: 'no command of path data stands there (M L H V C S Q T A Z)' };
    const read = readNumbers(text, letter, end + 1);
    if (typeof read !== 'number') return read;
    end = past(blank, text, read) ?? read;
  }
  return undefined;
};
