import { numberPattern, parseNumber } from './parse-number.js';
import { plainText } from './plain-text.js';
import { ratioFromNumber, toNumber } from './ratio.js';
import type { Reading } from './refusal.js';
import { radians } from './units.js';

const inDegrees = new RegExp(`^(-?) ?(${numberPattern}) ?(?:°|deg\\.?|degrees?)?$`);
const asSlope = new RegExp(`^(-?) ?(${numberPattern}) ?: ?(${numberPattern})$`);

/** Longer than any angle. */
const longest = 60;

/** The forms of an angle, in the words of an error. */
export const angleForms = 'an angle such as 24, 24 deg, 24° or a slope 1:6 (a bare number is in degrees)';

/**
 * Radians from an angle as people write it: `24`, `24 deg`, `24°`, `22-1/2°`, or a slope `1:6`, which is atan(1/6); a minus
 * sign before the whole. To the last digit of a double. Refuses everything else with the reason.
 */
export function parseAngle(text: string | number): Reading {
  if (typeof text === 'number') return fromDegrees(text);
  if (text.length > longest) return refuse(`${text.length} letters are too many for an angle`);
  const plain = plainText(text);
  const [, sign, number] = inDegrees.exec(plain) ?? [];
  if (number !== undefined) return signed(sign, readNumber(number, radians));
  const [, slopeSign, rise, run] = asSlope.exec(plain) ?? [];
  if (rise !== undefined && run !== undefined) return signed(slopeSign, readSlope(rise, run));
  return refuse(plain === '' ? 'is empty' : 'is not an angle');
}

function fromDegrees(value: number): Reading {
  return Number.isFinite(value) ? { value: radians(toNumber(ratioFromNumber(value))) } : refuse('is not a finite number');
}

function readNumber(text: string, use: (value: number) => number): Reading {
  const number = parseNumber(text);
  return typeof number === 'string' ? refuse(number) : { value: use(toNumber(number)) };
}

function readSlope(rise: string, run: string): Reading {
  const [up, along] = [parseNumber(rise), parseNumber(run)];
  if (typeof up === 'string') return refuse(up);
  if (typeof along === 'string') return refuse(along);
  if (along.num === 0n) return refuse('a slope over a run of nothing', '90 deg');
  return { value: Math.atan(toNumber(up) / toNumber(along)) };
}

function signed(sign: string | undefined, reading: Reading): Reading {
  return sign === '-' && 'value' in reading ? { value: -reading.value } : reading;
}

function refuse(message: string, nearest?: string): Reading {
  return { refusal: { message, allowed: angleForms, ...(nearest === undefined ? {} : { nearest }) } };
}
