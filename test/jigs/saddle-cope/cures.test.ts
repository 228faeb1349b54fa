import fc from 'fast-check';
import { expect, test } from 'vitest';
import { check } from '../../../src/compile.js';
import { UserError } from '../../../src/errors/user-error.js';
import { kinds } from '../../../src/jigs/index.js';
import { failedCures, findingsIn, type PlainSpec } from '../../support/cures.js';

const spec = (units: 'inch' | 'mm', branch: number, main: number, more: Record<string, unknown>, shop: Record<string, unknown> = {}): PlainSpec => ({
  units, rounds: { rail: `${branch} mm`, post: `${main} mm` }, shop, jigs: [{ kind: 'saddle-cope', name: 'cope', branch: 'rail', main: 'post', angle: 60, ...more }],
});

const cases: readonly [string, PlainSpec][] = [
  ['wing-thin', spec('mm', 44, 50, { pin: { diameter: 0 } })],
  ['wing-knife-edge', spec('inch', 47.7, 50, { pin: { diameter: 0 } })],
  ['wing-knife-edge', spec('mm', 30, 50, { offset: '9.1 mm', pin: { diameter: 0 } })],
  ['branch-overhangs-main', spec('inch', 25, 50, { offset: '14 mm', pin: { diameter: 0 } })],
  ['branch-overhangs-main', spec('mm', 60, 50, { pin: { diameter: 0 } })],
  ['pin-over-branch', spec('mm', 25, 50, { pin: { diameter: '22 mm' } })],
  ['pin-thick', spec('inch', 25, 50, { pin: { diameter: '13 mm' } })],
  ['pin-thin', spec('inch', 25, 50, { pin: { diameter: '7 mm' } })],
  ['pin-short', spec('inch', 25, 50, { pin: { diameter: '10 mm', intoBranch: '20 mm' } })],
  ['pin-wall-thin', spec('inch', 25, 50, { pin: { diameter: '10 mm', intoMain: '48 mm' } })],
  ['pin-breaks-out', spec('mm', 25, 50, { pin: { diameter: '10 mm', intoMain: '60 mm' } })],
  ['pin-skin-thin', spec('mm', 16, 50, { offset: '16.8 mm', pin: { diameter: '8 mm' } })],
  ['pin-too-flat', spec('mm', 25, 50, { angle: 12 })],
  ['ends-meet', spec('inch', 25, 50, { centres: '60 mm', pin: { diameter: 0 }, farEnd: { main: 'post', angle: 60 } })],
];

test.each(cases)('what the remedy of %s says clears it, as printed', (code, of) => {
  const found = findingsIn(of).filter((f) => f.code === code);
  expect(found.length).toBeGreaterThan(0);
  expect(found.some((f) => f.would.length > 0)).toBe(true);
  expect(failedCures(of)).toEqual([]);
});

test('a main at the very figure of the remedy is sound, whatever rounding leaves', () => {
  // 39.015 ÷ 45.9 is 0.85, and a little more in a double.
  expect(failedCures(spec('mm', 39.015, 43.35, { angle: 16, pin: { diameter: 0 } }))).toEqual([]);
  expect(findingsIn(spec('mm', 39.015, 45.9, { pin: { diameter: 0 } })).map((f) => f.code)).not.toContain('wing-thin');
});

test('every cure of any cope clears its finding', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((mm) => Math.round(mm * 100) / 100);
  fc.assert(fc.property(fc.constantFrom('inch' as const, 'mm' as const), size(12, 60), size(0.55, 1.1), size(16, 90), size(-0.45, 0.45), (units, main, share, angle, aside) => {
    const branch = Math.max(10, main * share);
    expect(failedCures(spec(units, branch, main, { angle, offset: `${aside * main} mm`, pin: { diameter: 0 } }))).toEqual([]);
  }), { numRuns: 150 });
});

const mistakes = (text: string) => {
  try {
    check({ text, file: 'x.yaml', kinds });
    return [];
  } catch (error) {
    if (error instanceof UserError) return error.mistakes;
    throw error;
  }
};

test('an angle of 102° is answered with its supplement, 78°, and with the side on which the throat then is', () => {
  const [wrong] = mistakes('title: t\nunits: mm\njigs:\n  - { kind: saddle-cope, branch: 25, main: 40, angle: 102 }\n');
  expect(wrong).toMatchObject({ code: 'past-square', path: 'jigs[0].angle', nearest: '78°' });
  expect(wrong!.message).toContain('throat is on the side of that acute angle');
});
