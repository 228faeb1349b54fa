import { addRatios, ratio, ratioFromDecimal, type Ratio } from './ratio.js';

/** Matches an unsigned number as makers write it: `24`, `1.375`, `3/8`, `1 3/8`, `1-3/8`. For building other patterns; no groups. */
export const numberPattern = String.raw`(?:\d+(?: ?- ?| )\d+ ?/ ?\d+|\d+ ?/ ?\d+|\d+\.?\d*|\.\d+)`;

/** Exact value of what `numberPattern` matched, or a word on what is wrong with its fraction. */
export function parseNumber(text: string): Ratio | string {
  const fraction = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (!fraction) return ratioFromDecimal(text) ?? `“${text}” is not a number`;
  const [, whole, top = '', bottom = ''] = fraction;
  const part = ratio(BigInt(top), BigInt(bottom));
  if (part.den === 0n) return `the fraction ${top}/${bottom} divides by zero`;
  if (whole === undefined) return part;
  if (part.num >= part.den) return `the fraction ${top}/${bottom} behind a whole number is not less than one`;
  return addRatios(ratio(BigInt(whole)), part);
}
