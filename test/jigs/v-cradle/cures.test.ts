import fc from 'fast-check';
import { expect, test } from 'vitest';
import { failedCures, findingsIn, type PlainSpec } from '../../support/cures.js';

const cradleOf = (units: 'inch' | 'mm', more: Record<string, unknown>, shop: Record<string, unknown> = {}): PlainSpec =>
  ({ units, rounds: { post: '32 mm' }, shop, jigs: [{ kind: 'v-cradle', name: 'cradle', holds: ['post'], ...more }] });

const steep = { sharpAngle: 20 };

const cases: readonly [string, PlainSpec][] = [
  ['rests-on-edges', cradleOf('inch', { flat: 0, depth: '11 mm' })],
  ['groove-shallow', cradleOf('inch', { flat: 0, depth: '13 mm' })],
  ['contacts-leave-flanks', cradleOf('mm', { flat: '30 mm' })],
  ['rides-on-flat', cradleOf('inch', { flat: '14 mm', depth: '14 mm', block: { width: '90 mm' } })],
  ['gap-small', cradleOf('inch', { flat: '12.6 mm', depth: '14 mm' })],
  ['below-top', cradleOf('inch', { flat: 0, depth: '40 mm' })],
  ['block-narrow', cradleOf('inch', { block: { width: '25 mm' } })],
  ['wall-thin', cradleOf('inch', { block: { width: '40 mm' } })],
  ['groove-through', cradleOf('inch', { block: { height: '10 mm' } })],
  ['floor-thin', cradleOf('inch', { block: { height: '20 mm' } })],
  ['block-short', cradleOf('inch', { block: { length: '140 mm' } })],
  ['stop-off-block', cradleOf('inch', { stop: '210 mm', block: { length: '200 mm' } })],
  ['blade-tilt-unknown', cradleOf('mm', { includedAngle: 100, depth: '14 mm' })],
  ['blade-tilt-out-of-reach', cradleOf('mm', { depth: '15 mm', flat: 0 }, { saw: { maxTilt: 44.5 } })],
  ['tooth-past-flank', cradleOf('inch', { includedAngle: 60, flat: 0, depth: '20 mm' }, { saw: { kerf: '3 mm' } })],
  ['no-carrier-needed', cradleOf('mm', { carrier: { sharpAngle: 40, sawReading: 50 } })],
  ['reading-past-angle', cradleOf('mm', { carrier: { sharpAngle: 40, sawReading: 60 } })],
  ['carrier-short', cradleOf('inch', { carrier: { ...steep, length: '400 mm' } })],
  ['carrier-seat-short', cradleOf('inch', { carrier: { ...steep, width: '75 mm' } })],
  ['turn-small', cradleOf('mm', { carrier: { ...steep, sawReading: 55 } })],
  ['saw-reading-out-of-reach', cradleOf('mm', { carrier: { ...steep, sawReading: 30 } }, { saw: { maxReading: 25.5 } })],
  ['end-cut-out-of-reach', cradleOf('inch', { carrier: { sharpAngle: 20, sawReading: 40 } }, { saw: { maxReading: 50 } })],
  ['end-cut-out-of-reach', cradleOf('mm', { carrier: { sharpAngle: 20, sawReading: 30 } })],
  ['saw-depth-short', cradleOf('mm', { depth: '14 mm', block: { height: '40 mm' }, make: ['carrier'], carrier: steep }, { saw: { maxDepth: '55 mm' } })],
];

test.each(cases)('what the remedy of %s says clears it, as printed', (code, of) => {
  const found = findingsIn(of).filter((f) => f.code === code);
  expect(found.length).toBeGreaterThan(0);
  expect(found.every((f) => f.would.length > 0)).toBe(true);
  expect(failedCures(of)).toEqual([]);
});

test('a flat that would leave the block’s walls thin is no cure by itself: the block’s width goes with it', () => {
  // The groove is 2·19·tan 39.35° = 31.158 wide and grows by the flat of 1.1906, 3/64 in: with 6 on each side 44.349.
  const of = (width: number) => cradleOf('inch', { includedAngle: 78.7, flat: '0 mm', depth: '19 mm', block: { width: `${width} mm`, height: '40 mm' } });
  const tooth = (width: number) => findingsIn(of(width)).find((f) => f.code === 'tooth-past-flank')!;
  expect(tooth(43.2).would).toEqual([]);
  expect(tooth(43.2).remedy).toContain('in a block at least');
  const wide = Number(/([\d.]+) mm\) wide/.exec(tooth(43.2).remedy)![1]);
  expect(wide).toBeGreaterThanOrEqual(44.3);
  expect(wide).toBeLessThan(44.8);
  expect(tooth(44.4).would.map(({ field }) => field)).toEqual(['flat']);
  expect(failedCures(of(44.4))).toEqual([]);
});

test('every cure of any cradle with one fault clears it', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((mm) => Math.round(mm * 10) / 10);
  fc.assert(fc.property(
    fc.constantFrom('inch' as const, 'mm' as const), size(10, 40), size(0, 8), size(30, 90), size(12, 60), size(60, 90), size(10, 60),
    (units, depth, flat, width, height, angle, sharp) => {
      const of = cradleOf(units, {
        includedAngle: angle, flat: `${flat} mm`, depth: `${depth} mm`, block: { width: `${width} mm`, height: `${height} mm` }, carrier: { sharpAngle: sharp },
      });
      const grave = findingsIn(of).filter((f) => f.severity !== 'note');
      if (grave.length === 1 && grave[0]!.severity === 'warn' && ['block.width', 'block.height', 'carrier.width'].includes(grave[0]!.would[0]?.field ?? '')) expect(failedCures(of)).toEqual([]);
    }), { numRuns: 250 });
});
