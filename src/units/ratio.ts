/** An exact fraction; `den` > 0. Lengths stay ratios until the last step, so that 1 3/8 in is 34.925 mm and nothing near it. */
export interface Ratio {
  readonly num: bigint;
  readonly den: bigint;
}

export const ratio = (num: bigint, den: bigint = 1n): Ratio => ({ num, den });

export const addRatios = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.den + b.num * a.den, a.den * b.den);

export const multiplyRatios = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.num, a.den * b.den);

export const negateRatio = (a: Ratio): Ratio => ratio(-a.num, a.den);

/** The ratio that a decimal names: `34.9`, `.5`, `1e-7`, `-3`. Exact. Undefined for anything else and for exponents past ±400. */
export function ratioFromDecimal(text: string): Ratio | undefined {
  const match = /^(-?)(\d*)\.?(\d*)(?:e([+-]?\d{1,3}))?$/i.exec(text);
  const [, sign = '', whole = '', fraction = '', exponent = '0'] = match ?? [];
  const digits = whole + fraction;
  const shift = Number(exponent) - fraction.length;
  if (!match || digits === '' || Math.abs(shift) > 400) return undefined;
  const num = BigInt(sign + digits);
  return shift < 0 ? ratio(num, 10n ** BigInt(-shift)) : ratio(num * 10n ** BigInt(shift));
}

/**
 * The ratio that a number's shortest decimal names: 0.79375 is taken as 79375/100000, though the double lies beside it.
 * So a tie is one that a reader sees. Throws on NaN and infinities, which have no place in a drawing.
 */
export function ratioFromNumber(value: number): Ratio {
  const exact = ratioFromDecimal(String(value));
  if (!exact) throw new RangeError(`not a finite number: ${value}`);
  return exact;
}

/** Nearest whole number, ties away from zero: 2.5 → 3, −2.5 → −3. */
export function roundRatio({ num, den }: Ratio): bigint {
  const size = num < 0n ? -num : num;
  const rounded = (2n * size + den) / (2n * den);
  return num < 0n ? -rounded : rounded;
}

/** The nearest double, to within its last digit: both halves are first cut to 2⁵³ where they are larger. */
export function toNumber({ num, den }: Ratio): number {
  const size = num < 0n ? -num : num;
  const whole = size / den;
  const limit = 1n << 53n;
  const value = size < limit && den < limit ? Number(size) / Number(den) : Number(whole) + tail(size % den, den);
  return num < 0n ? -value : value;
}

/** A remainder over its denominator, scaled to 60 binary digits first. */
const tail = (rest: bigint, den: bigint): number => Number((rest << 60n) / den) / 2 ** 60;
