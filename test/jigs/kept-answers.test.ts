import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { check } from '../../src/compile.js';
import type { Finding } from '../../src/errors/finding.js';
import { UserError } from '../../src/errors/user-error.js';
import { kinds } from '../../src/jigs/index.js';
import { anySpec, type AnyKind } from '../support/any-spec.js';
import { testFont } from '../support/font.js';
import { figuresIn } from '../support/remedy-figures.js';

/*
 * What the code answers to specs drawn by a seed, many of them careless: every value, every finding with its figures and remedy, and a
 * fingerprint of the drawing. Nothing here says that an answer is right, the tests of each kind do that; it says that an answer has
 * changed. Whoever means to change some reads the difference, runs this file with -u, and says in the commit why.
 */
const perKind: Readonly<Record<AnyKind, number>> = { 'saddle-cope': 50, 'v-cradle': 50, 'drill-guide': 60, 'rack-top': 90 };

/** Six digits are a tenth of a micrometre and less: no machine's arithmetic moves them. */
const rounded = (_key: string, value: unknown): unknown => (typeof value === 'number' ? Number(value.toPrecision(6)) + 0 : value);
const coarse = (_key: string, value: unknown): unknown => (typeof value === 'number' ? Math.round(value * 1e4) / 1e4 + 0 : value);

const findingsOf = (text: string): readonly Finding[] => {
  try {
    return check({ text, file: 'any.yaml', kinds }).report.jigs.flatMap(({ findings }) => findings);
  } catch (error) {
    if (error instanceof UserError) return [];
    throw error;
  }
};

const answer = (text: string): string[] => {
  try {
    const { report, draw } = check({ text, file: 'any.yaml', kinds });
    return [
      ...report.jigs.flatMap(({ name, values, findings }) => [
        ...findings.map(({ severity, code, measured, limit, about, would, message, remedy }) => `${severity} ${code} ${JSON.stringify({ measured, limit, about, would }, rounded)} ${message} | ${remedy}`),
        `${name} ${JSON.stringify(values, rounded)}`,
      ]),
      ...draw(testFont).map((drawing) => `${drawing.jig} drawn ${createHash('sha256').update(JSON.stringify(drawing, coarse)).digest('hex').slice(0, 12)}`),
    ];
  } catch (error) {
    if (error instanceof UserError) return error.mistakes.map(({ code, path, got, allowed }) => `mistake ${JSON.stringify({ code, path, got, allowed })}`);
    throw error;
  }
};

test.each(Object.keys(kinds) as AnyKind[])('%s answers as it has answered', async (kind) => {
  const answers = Array.from({ length: perKind[kind] }, (_, number) => {
    const text = anySpec(kind, number);
    return [`# ${number} ${JSON.stringify(JSON.parse(text).jigs)}`, ...answer(text)].join('\n');
  });
  await expect(`${answers.join('\n\n')}\n`).toMatchFileSnapshot(`kept/${kind}.txt`);
});

test.each(Object.keys(kinds) as AnyKind[])('what a cure of %s would set is what its remedy says', (kind) => {
  let cures = 0;
  for (let number = 0; number < perKind[kind]; number += 1) {
    const text = anySpec(kind, number);
    for (const { code, remedy, would } of findingsOf(text)) {
      for (const { field, value, unit } of would) {
        cures += 1;
        // A length is said to a tenth of a millimetre; 0 is written out; a place is said by how far to move from the one that is written.
        const said = [...figuresIn(remedy), ...(remedy.includes('diameter: 0') ? [0] : [])];
        const from = field.includes('.at') ? parseFloat(field.split('.').reduce((at, key) => at[key], JSON.parse(text).jigs.at(-1))) : 0;
        expect(said.some((figure) => Math.abs(figure - Math.abs(value - from)) < 0.0501), `${code}: ${field} ${value} ${unit} in “${remedy}”`).toBe(true);
      }
    }
  }
  expect(cures).toBeGreaterThan(10);
});
