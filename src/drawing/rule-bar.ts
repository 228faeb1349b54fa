import { point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import { mmPerInch } from '../units/units.js';
import type { Item } from './drawing.js';
import { letter, shape, turnItems } from './items.js';

/** A bar to check the print's scale with, mm. */
export interface RuleBarOptions {
  /** `x` runs right from its zero; `y` runs up the page from its zero. */
  readonly axis: 'x' | 'y';
  /** Exact: the base line is as long as this. */
  readonly length: number;
  /** Which rules have all ticks and figures: millimetres on the left of the way (above an x-bar), inches on the right. */
  readonly rules?: 'both' | 'mm' | 'inch';
}

const figureHeight = 1.8;
const longestTick = 3;
/** Of the unit without figures: no longer than the end strokes reach. */
const plainTick = 1.4;

/** How far a rule reaches from the base line, mm: its longest ticks and its figures. */
export const ruleDepth = longestTick + 0.5 + figureHeight;

/** Length of the tick at the k-th sixteenth of an inch: longer the coarser the fraction. */
const inchTick = (k: number): number => [3, 1.1, 1.5, 1.1, 1.9, 1.1, 1.5, 1.1, 2.4, 1.1, 1.5, 1.1, 1.9, 1.1, 1.5, 1.1][k % 16]!;
const mmTick = (k: number): number => (k % 10 === 0 ? 3 : k % 5 === 0 ? 2.1 : 1.3);

/** Ticks and figures of one rule. `side` −1 above, 1 below; `whole` ticks make a numbered unit of `value`. */
const rule = (length: number, side: 1 | -1, of: { step: number; whole: number; value: number; unit: string; tick: (k: number) => number }): Item[] => {
  const count = Math.floor(length / of.step + 1e-6);
  const ks = Array.from({ length: count + 1 }, (_, k) => k);
  const base = side < 0 ? -(longestTick + 0.5) : ruleDepth;
  return [
    ...ks.map((k) => shape('mark', line(point(k * of.step, 0), point(k * of.step, side * of.tick(k))))),
    ...ks.filter((k) => k % of.whole === 0).map((k) =>
      letter(point(k * of.step, base), String((k / of.whole) * of.value), { height: figureHeight, anchor: 'middle' })),
    letter(point(4.2, base), of.unit, { height: figureHeight, anchor: 'middle' }),
  ];
};

/** Short ticks without figures of the other unit: whole centimetres or inches, and their halves. */
const plainTicks = (length: number, side: 1 | -1, half: number): Item[] =>
  Array.from({ length: Math.floor(length / half + 1e-6) + 1 }, (_, k) =>
    shape('mark', line(point(k * half, 0), point(k * half, side * (k % 2 === 0 ? plainTick : 0.6 * plainTick)))));

/**
 * A bar divided like a rule: millimetres on one side, sixteenths of an inch on the other, figures at every 10 mm and every
 * inch; where only one rule is asked for, the other unit has short ticks without figures. The base line (part `x-bar` or `y-bar`) is exactly the nominal length from `at`, its zero; end strokes cross it where it ends.
 */
export const ruleBar = (at: { readonly x: number; readonly y: number }, { axis, length, rules = 'both' }: RuleBarOptions): Item[] => {
  const mm = rule(length, -1, { step: 1, whole: 10, value: 10, unit: 'mm', tick: mmTick });
  const inches = rule(length, 1, { step: mmPerInch / 16, whole: 16, value: 1, unit: 'in', tick: inchTick });
  const reach = [rules === 'inch' ? -1.5 : -longestTick, rules === 'mm' ? 1.5 : longestTick] as const;
  const ends = [0, length].map((x) => shape('reference', line(point(x, reach[0]), point(x, reach[1]))));
  // Ticks and figures between lines of another type: they make the same run on every sheet, which a PDF then holds once.
  const items = [
    shape('reference', line(point(0, 0), point(length, 0)), `${axis}-bar`),
    ...(rules === 'inch' ? plainTicks(length, -1, 5) : mm),
    ...(rules === 'mm' ? plainTicks(length, 1, mmPerInch / 2) : inches), ...ends,
  ];
  return turnItems(items, axis === 'x' ? 0 : -Math.PI / 2, at.x, at.y);
};
