import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { check } from '../../src/compile.js';
import { UserError } from '../../src/errors/user-error.js';
import { kinds } from '../../src/jigs/index.js';
import { anySpec, type AnyKind } from '../support/any-spec.js';
import { testFont } from '../support/font.js';

/*
 * What the code answers to specs drawn by a seed, many of them careless: every value, every finding with its figures and remedy, and a
 * fingerprint of the drawing. Nothing here says that an answer is right, the tests of each kind do that; it says that an answer has
 * changed. Whoever means to change some reads the difference, runs this file with -u, and says in the commit why.
 */
const perKind: Readonly<Record<AnyKind, number>> = { 'saddle-cope': 50, 'v-cradle': 50, 'drill-guide': 60, 'rack-top': 90 };

/** Six digits are a tenth of a micrometre and less: no machine's arithmetic moves them. */
const rounded = (_key: string, value: unknown): unknown => (typeof value === 'number' ? Number(value.toPrecision(6)) + 0 : value);
const coarse = (_key: string, value: unknown): unknown => (typeof value === 'number' ? Math.round(value * 1e4) / 1e4 + 0 : value);

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
