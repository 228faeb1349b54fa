/** An exact fraction; `den` > 0. Lengths stay ratios until the last step, so that 1 3/8 in is 34.925 mm and nothing near it. */
export interface Ratio {
  readonly num: bigint;
  readonly den: bigint;
}

/** The ratio num/den, not reduced. `den` must be above 0. */
export const ratio = (num: bigint, den: bigint = 1n): Ratio => ({ num, den });

/** a + b, exact. */
export const addRatios = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.den + b.num * a.den, a.den * b.den);

/** a·b, exact. */
export const multiplyRatios = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.num, a.den * b.den);

/** −a. */
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

/** The nearest double, to within its last digit; below 1e-300 to within 1e-300. */
export function toNumber({ num, den }: Ratio): number {
  const size = num < 0n ? -num : num;
  const value = size < exact && den < exact ? Number(size) / Number(den) : longDivision(size, den);
  return num < 0n ? -value : value;
}

/** Doubles hold every whole number below it. */
const exact = 1n << 53n;

/** Divides with 64 binary digits of the quotient kept, wherever its point lies. */
function longDivision(size: bigint, den: bigint): number {
  const shift = Math.max(0, 64 + bits(den) - bits(size));
  const quotient = Number((size << BigInt(shift)) / den);
  return shift > 1000 ? quotient / 2 ** 1000 / 2 ** Math.min(shift - 1000, 1000) : quotient / 2 ** shift;
}

const bits = (size: bigint): number => size.toString(16).length * 4;
