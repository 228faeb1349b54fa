import { expect } from 'vitest';
import type { Finding } from '../../src/errors/finding.js';

/** One line of what a finding says, for a file that keeps them as they were read over. */
export const asLine = ({ code, severity, measured, limit, message, remedy }: Finding): string =>
  `${code} ${severity} ${Number(measured.toPrecision(6))} ${Number(limit.toPrecision(6))} ${message} | ${remedy}\n`;

/** The figures in mm and degrees that a remedy says, in order; lengths in the second unit left out. */
export const figuresIn = (remedy: string): number[] =>
  [...remedy.replace(/ \([^)]*″\)/g, '').matchAll(/(\d+(?:\.\d+)?)(?: mm|°)/g)].map((found) => Number(found[1]));

/**
 * Checks a remedy's figures against those worked out on paper, each with its sense: `≥ 26` what is at least needed and `≤ 787` what is at
 * most allowed, both said rounded to the safe side by 1/64″, 0.4, at most; `= 27` and `< 187` the figure itself.
 */
export const expectFigures = ({ code, remedy, would }: Finding, figures: readonly string[]): void => {
  const said = figuresIn(remedy);
  // What a cure would set is said too, but for a place, which is said by how far to move.
  for (const { field, value } of would.filter((cure) => !cure.field.includes('.at'))) {
    expect(said.some((figure) => Math.abs(figure - Math.abs(value)) < 0.0501), `${code}: ${field} ${value} in “${remedy}”`).toBe(true);
  }
  expect(said, `${code}: ${remedy}`).toHaveLength(figures.length);
  for (const [i, figure] of figures.entries()) {
    const [sense, worked] = [figure[0], Number(figure.slice(2))];
    const off = said[i]! - worked;
    const holds = sense === '≥' ? off > -1e-9 && off < 0.4 : sense === '≤' ? off < 1e-9 && off > -0.4 : Math.abs(off) < 1e-9;
    expect(holds, `${code}: ${figure} in “${remedy}”`).toBe(true);
  }
};
