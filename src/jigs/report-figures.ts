import type { Finding } from '../errors/finding.js';
import type { Value, Values } from './jig.js';

/** What a report keeps of a millimetre or a degree: a thousandth of a micrometre. Beyond it stands what arithmetic leaves behind. */
const perUnit = 1e6;

/** A figure as reports hold it; never −0. */
const figure = (value: number): number => Math.round(value * perUnit) / perUnit + 0;

const inReport = (value: Value): Value => {
  if (typeof value === 'number') return figure(value);
  return Array.isArray(value) ? value.map(figure) : valuesInReport(value as Values);
};

/** A jig's values with their figures to 1e-6 mm or degrees. */
export function valuesInReport(values: Values): Values {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, inReport(value)]));
}

/** A finding with its figures to 1e-6 mm or degrees. */
export const findingInReport = (finding: Finding): Finding => ({
  ...finding,
  measured: figure(finding.measured),
  limit: figure(finding.limit),
  would: finding.would.map((cure) => ({ ...cure, value: figure(cure.value) })),
});
