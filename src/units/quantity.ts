import { angleLabel, fixed, fractionInches, lengthLabel, lengthMain, millimetres, riseOverRun } from './format.js';
import type { Units } from './units.js';

/**
 * A figure that a sheet prints: a number with its unit, said in the spec's own units only when the sheet is written.
 * Lengths in mm, angles in radians; `as` is how it is said.
 */
export type Quantity =
  | { readonly kind: 'length'; readonly mm: number; readonly as: LengthForm; readonly sign?: 'Ø' | 'R' }
  | { readonly kind: 'angle'; readonly rad: number; readonly as: 'degrees' | 'slope' }
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'ratio'; readonly ratio: number; readonly decimals: number };

/**
 * `both`: both units, the spec's own first; `short`: its own alone; `thin`: the same, but in mm where the length is too
 * small for a fraction of an inch; `bare`: both without the name of the millimetres; `mm`: millimetres alone.
 */
export type LengthForm = 'both' | 'short' | 'thin' | 'bare' | 'mm';

/** A sentence or a cell in pieces: words, and the figures between them. */
export type Words = readonly (string | Quantity)[];

/** A length in mm. */
export function lengthOf(mm: number, as: LengthForm = 'both'): Quantity {
  return { kind: 'length', mm, as };
}

/** A diameter in mm, said with its sign Ø. */
export function diameterOf(mm: number, as: LengthForm = 'both'): Quantity {
  return { kind: 'length', mm, as, sign: 'Ø' };
}

/** A radius in mm, said with its sign R. */
export function radiusOf(mm: number, as: LengthForm = 'both'): Quantity {
  return { kind: 'length', mm, as, sign: 'R' };
}

/** An angle in radians, said in degrees. */
export function angleOf(rad: number): Quantity {
  return { kind: 'angle', rad, as: 'degrees' };
}

/** An angle in radians, said in degrees and as the rise over a run to set it by. */
export function slopeOf(rad: number): Quantity {
  return { kind: 'angle', rad, as: 'slope' };
}

/** A whole number of things. */
export function countOf(count: number): Quantity {
  return { kind: 'count', count };
}

/** A number without a unit, to so many decimals. */
export function ratioOf(ratio: number, decimals = 2): Quantity {
  return { kind: 'ratio', ratio, decimals };
}

/** Template tag for sentences with figures: words`Cut ${lengthOf(12)} deep.` Nested words are laid in flat. */
export function words(strings: TemplateStringsArray, ...values: readonly (string | Quantity | Words)[]): Words {
  const parts = strings.flatMap((text, i): (string | Quantity)[] => {
    const value = values[i];
    const after = value === undefined ? [] : isWords(value) ? value : [value];
    return text === '' ? [...after] : [text, ...after];
  });
  return parts.filter((part) => part !== '');
}

const isWords = (value: string | Quantity | Words): value is Words => Array.isArray(value);

/** Words one after another, `between` set between them. */
export function joinWords(list: readonly Words[], between: string): Words {
  return list.flatMap((each, i) => (i === 0 || between === '' ? each : [between, ...each]));
}

const lengthForms: Readonly<Record<LengthForm, (mm: number, units: Units) => string>> = {
  both: lengthLabel,
  short: lengthMain,
  thin: (mm, units) => (mm > 0 && mm < 25.4 / 128 ? millimetres(mm) : lengthMain(mm, units)),
  bare: (mm, units) => (units === 'inch' ? `${fractionInches(mm)} (${fixed(mm, 1)})` : `${fixed(mm, 1)} (${fractionInches(mm)})`),
  mm: millimetres,
};

/** A figure as text in the spec's units, rounded as labels are (1/64 in, 0.1 mm, 0.1°). Throws on NaN and infinities. */
export function sayQuantity(quantity: Quantity, units: Units): string {
  switch (quantity.kind) {
    case 'length': return `${quantity.sign === undefined ? '' : `${quantity.sign} `}${lengthForms[quantity.as](quantity.mm, units)}`;
    case 'angle': return quantity.as === 'degrees' ? angleLabel(quantity.rad)
      : `${angleLabel(quantity.rad)}: ${riseOverRun(quantity.rad, units)}`;
    case 'count': return fixed(quantity.count, 0);
    case 'ratio': return fixed(quantity.ratio, quantity.decimals);
  }
}

/** A sentence with its figures as text in the spec's units. */
export function sayWords(list: Words, units: Units): string {
  return list.map((part) => (typeof part === 'string' ? part : sayQuantity(part, units))).join('');
}

/** The figures of a sentence in its order: mm, radians or plain numbers. */
export function figuresOf(list: Words): readonly Quantity[] {
  return list.filter((part) => typeof part !== 'string');
}
