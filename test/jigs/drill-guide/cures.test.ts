import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asLine, expectFigures } from '../../support/remedy-figures.js';
import { failedCures, findingsIn, type PlainSpec } from '../../support/cures.js';

const guide = (units: 'inch' | 'mm', more: Record<string, unknown>, shop: Record<string, unknown> = {}): PlainSpec =>
  ({ units, rounds: { post: '40 mm' }, shop, jigs: [{ kind: 'drill-guide', name: 'guide', onto: 'post', drill: '10 mm', angle: 60, depth: '15 mm', ...more }] });

/*
 * With the remedy's figures in mm, worked out on paper for a drill of 10 at 60° in a round of 40: a hole of 0.4 of the round; 20 − 5 − 6 beside it; the point, 3 beyond
 * the lips, 6 from the far side at 40 − 0.866 (d + 3) = 6; 38 of bore, 20 (√2 − 1) ÷ sin 60° of air and 15 of depth. The V is 40 ÷ 2.25 deep and twice as wide, its flanks
 * touch 14.142 below its point. On flat work at 30° the sole rises 30 ÷ tan 30° to either side of the bore, 6 are left at its short end.
 */
const cases: readonly [string, PlainSpec, readonly string[]][] = [
  ['hole-large', guide('inch', { drill: '17 mm', depth: '8 mm' }), ['≤ 16']],
  ['hole-over-half', guide('mm', { drill: '21 mm', depth: '8 mm' }), ['≤ 16']],
  ['skin-thin', guide('inch', { offset: '10.5 mm' }), ['≤ 9']],
  ['skin-very-thin', guide('mm', { offset: '-12.6 mm' }), ['≤ 9']],
  ['far-wall-thin', guide('inch', { depth: '37 mm' }), ['≤ 36.26']],
  ['far-wall-very-thin', guide('inch', { depth: '39.5 mm' }), ['≤ 36.26']],
  ['breaks-through', guide('mm', { depth: '50 mm' }), ['≤ 36.26']],
  ['bit-too-short', guide('inch', { bit: { usableLength: '50 mm' } }), ['≥ 62.5659']],
  ['bore-short', guide('inch', { block: { height: '70 mm' } }), ['≥ 78.692', '= 38', '= 38']],
  ['bore-wall-thin', guide('inch', { block: { length: '21 mm' } }), ['≥ 22']],
  ['short-end-thin', guide('inch', { onto: 'flat', thickness: '60 mm', angle: 30, block: { length: '60 mm', height: '107 mm' } }), ['≥ 109.923']],
  ['groove-wall-thin', guide('inch', { block: { width: '40 mm' } }), ['≥ 47.5556']],
  ['angle-too-flat', guide('mm', { angle: 12 }), ['= 15']],
  ['bit-runs-off', guide('inch', { offset: '17 mm' }), ['≤ 9', '≤ 15']],
  ['cove-too-deep', guide('inch', { sole: 'cove', groove: { depth: '22 mm' } }), ['≤ 20']],
  ['v-too-shallow', guide('inch', { groove: { depth: '12 mm' } }), ['≥ 17.6777', '= 14.1']],
  ['bore-breaks-block', guide('mm', { onto: 'flat', thickness: '30 mm', block: { width: '20 mm' }, drill: '20.4 mm', depth: '10 mm' }), ['≥ 32.4', '≥ 32.4']],
  ['block-too-low', guide('inch', { onto: 'flat', thickness: '30 mm', angle: 30, block: { length: '60 mm', height: '60 mm' } }), ['≥ 109.923']],
  ['groove-wider-than-block', guide('inch', { block: { width: '34 mm' } }), ['≥ 47.5556']],
];

test.each(cases)('what the remedy of %s says clears it, as printed', (code, of) => {
  const found = findingsIn(of).filter((f) => f.code === code);
  expect(found.map((f) => f.would.length > 0)).toEqual([true]);
  expect(failedCures(of)).toEqual([]);
});

test.each(cases)('the remedy of %s says the figures that it takes', (code, of, figures) => {
  expectFigures(findingsIn(of).find((f) => f.code === code)!, figures);
});

test('findings on a guide say what they have said', async () => {
  await expect(cases.flatMap(([, of]) => findingsIn(of).map(asLine)).join('')).toMatchFileSnapshot('../kept/drill-guide-findings.txt');
});

test('every cure of any guide clears its finding', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((mm) => Math.round(mm * 10) / 10);
  fc.assert(fc.property(fc.constantFrom('inch' as const, 'mm' as const), size(3, 15.9), size(16, 90), size(-18, 18), size(2, 45), (units, drill, angle, offset, depth) => {
    const of = guide(units, { drill: `${drill} mm`, angle, offset: `${offset} mm`, depth: `${depth} mm` });
    // A hole that is both too wide and too near the side needs more than one change; one that is refused is not yet checked for all else.
    const grave = findingsIn(of).filter((f) => f.severity !== 'note');
    if (grave.length === 1 && grave[0]!.severity === 'warn') expect(failedCures(of)).toEqual([]);
  }), { numRuns: 200 });
});
