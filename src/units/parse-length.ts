import { numberPattern, parseNumber } from './parse-number.js';
import { plainText } from './plain-text.js';
import { addRatios, multiplyRatios, negateRatio, ratio, ratioFromNumber, toNumber, type Ratio } from './ratio.js';
import type { Reading, Refusal } from './refusal.js';
import type { Units } from './units.js';

/** Exact millimetres in each unit that may be written (1 in = 25.4 mm since 1 July 1959). */
const unitTable: readonly (readonly [RegExp, Ratio])[] = [
  [/^(?:mm|millimet(?:re|er)s?)$/, ratio(1n)],
  [/^(?:cm|centimet(?:re|er)s?)$/, ratio(10n)],
  [/^(?:m|met(?:re|er)s?)$/, ratio(1000n)],
  [/^(?:in\.?|inch|inches|")$/, ratio(127n, 5n)],
  [/^(?:ft\.?|foot|feet|')$/, ratio(1524n, 5n)],
];

const oneNumber = new RegExp(`^(-?) ?(${numberPattern}) ?(["'a-zµ.]*)$`);
const feetAndInches = new RegExp(`^(-?) ?(${numberPattern}) ?(?:'|ft\\.?|foot|feet) ?-? ?(${numberPattern}) ?(?:"|in\\.?|inch|inches)$`);

/** Longer than any length; keeps nonsense from costing time. */
const longest = 60;

/** The forms of a length, in the words of an error. `units` is that of a bare number. */
export const lengthForms = (units: Units): string =>
  units === 'inch'
    ? 'a length such as 1-3/8, 1 3/8 in, 3\' 2-1/2" or 34.9 mm (a bare number is in inches)'
    : 'a length such as 34.9, 34.9 mm, 3.5 cm or 1-3/8 in (a bare number is in millimetres)';

/**
 * Millimetres from a length as people write it: `1-3/8`, `1 3/8 in`, `1⅜"`, `3' 2-1/2"`, `3 ft 2 1/2 in`, `34.9 mm`, `3.5 cm`,
 * a bare number in `units`; a minus sign before the whole. Worked in exact ratios, so the result is the double nearest
 * the exact length. Refuses everything else with the reason; whether a length is within reason is for the field to say.
 */
export function parseLength(text: string | number, units: Units): Reading {
  if (typeof text === 'number') return fromNumber(text, units);
  if (text.length > longest) return refuse(`${text.length} letters are too many for a length`, units);
  const plain = plainText(text);
  const mm = readFeetAndInches(plain) ?? readOneNumber(plain, units);
  return typeof mm === 'string' ? refuse(mm, units, likelyLength(plain)) : { value: toNumber(mm) };
}

function fromNumber(value: number, units: Units): Reading {
  if (!Number.isFinite(value)) return refuse('is not a finite number', units);
  return { value: toNumber(multiplyRatios(ratioFromNumber(value), bareUnit(units))) };
}

const bareUnit = (units: Units): Ratio => (units === 'inch' ? ratio(127n, 5n) : ratio(1n));

function readFeetAndInches(plain: string): Ratio | string | undefined {
  const [, sign, feet, inches] = feetAndInches.exec(plain) ?? [];
  if (feet === undefined || inches === undefined) return undefined;
  const [ft, inch] = [parseNumber(feet), parseNumber(inches)];
  if (typeof ft === 'string') return ft;
  if (typeof inch === 'string') return inch;
  return signed(sign, addRatios(multiplyRatios(ft, ratio(1524n, 5n)), multiplyRatios(inch, ratio(127n, 5n))));
}

function readOneNumber(plain: string, units: Units): Ratio | string {
  const [, sign, number, unit = ''] = oneNumber.exec(plain) ?? [];
  if (number === undefined) return plain === '' ? 'is empty' : 'is not a length';
  const size = parseNumber(number);
  if (typeof size === 'string') return size;
  const scale = unit === '' ? bareUnit(units) : unitTable.find(([name]) => name.test(unit))?.[1];
  if (!scale) return `“${unit}” is not a unit of length`;
  return signed(sign, multiplyRatios(size, scale));
}

const signed = (sign: string | undefined, size: Ratio): Ratio => (sign === '-' ? negateRatio(size) : size);

/** What a refused text most likely means, where that can be told: a decimal comma, inches left without their mark behind feet. */
function likelyLength(plain: string): string | undefined {
  if (/^-?\d+,\d+ ?[a-z"']*$/.test(plain)) return plain.replace(',', '.');
  if (/^-?\d+ ?('|ft|feet|foot) ?\d+([ -]\d+\/\d+)?$/.test(plain)) return `${plain}"`;
  return undefined;
}

function refuse(message: string, units: Units, nearest?: string): { readonly refusal: Refusal } {
  return { refusal: { message, allowed: lengthForms(units), ...(nearest === undefined ? {} : { nearest }) } };
}
