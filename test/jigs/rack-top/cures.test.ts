import fc from 'fast-check';
import { expect, test } from 'vitest';
import { failedCures, findingsIn, type PlainSpec } from '../../support/cures.js';

const mm = (value: number): string => `${value} mm`;

const rack = (units: 'inch' | 'mm', more: Record<string, unknown>, board: Record<string, unknown> = {}, shop: Record<string, unknown> = {}): PlainSpec => ({
  units, rounds: { item: '24 mm', post: '30 mm' }, shop,
  jigs: [{ kind: 'rack-top', name: 'rack', board: { length: mm(800), width: mm(200), thickness: mm(27), ...board }, cutter: { diameter: mm(12) }, ...more }],
});

const one = { count: 1, item: 'item', depth: mm(60), mouth: { ease: 0 } };
const row = { ...one, count: 2, pitch: mm(100) };
const hole = (along: number, across: number) => ({ holes: [{ round: 'post', at: [mm(along), mm(across)], below: 0 }] });
const recess = (more: Record<string, unknown>) => ({ recesses: [{ circle: mm(40), at: [mm(400), mm(100)], depth: mm(8), ...more }] });

const cases: readonly [string, PlainSpec][] = [
  ['end-radius-small', rack('inch', {}, { endRadius: mm(90) })],
  ['corner-radius-large', rack('inch', {}, { cornerRadius: mm(110) })],
  ['bushing-small', rack('inch', { cutter: { diameter: mm(12), bushing: mm(12) } })],
  ['land-narrow', rack('inch', { slots: { ...row, pitch: mm(45) }, indexPins: { spacing: mm(120) } })],
  ['slot-deep', rack('inch', { slots: { ...one, depth: mm(165) } })],
  ['seat-tight-for-cutter', rack('inch', { slots: one, cutter: { diameter: mm(25.5) } })],
  ['items-touch', rack('inch', { slots: { ...row, widest: mm(110) } })],
  ['items-close', rack('inch', { slots: { ...row, widest: mm(92) } })],
  ['slot-tight', rack('inch', { slots: { ...one, width: mm(25.2) } })],
  ['hole-near-edge', rack('inch', hole(400, 20))],
  ['hole-near-end', rack('inch', hole(60, 100))],
  ['recess-floor-thin', rack('inch', recess({ depth: mm(24) }))],
  ['recess-through-board', rack('inch', recess({ depth: mm(27) }))],
  ['recess-cutter-cannot-enter', rack('inch', { ...recess({ circle: mm(10) }) })],
  ['recess-corner', rack('inch', { recesses: [{ box: { width: mm(60), height: mm(30), radius: mm(3) }, at: [mm(400), mm(100)], depth: mm(5) }] })],
  ['recess-tight-for-cutter', rack('inch', { recesses: [{ box: { width: mm(60), height: mm(30), radius: mm(6.2) }, at: [mm(400), mm(100)], depth: mm(5) }] })],
  ['bearing-over-template', rack('inch', { ...recess({}), cutter: { diameter: mm(12), length: mm(25) } })],
  ['spline-thick', rack('inch', { split: [mm(400)], spline: { thickness: mm(30) } })],
  ['cutter-beyond-router', rack('inch', { slots: one, cutter: { diameter: mm(20) } }, {}, { router: { maxBitDiameter: mm(15) } })],
];

test.each(cases)('what the remedy of %s says clears it, as printed', (code, of) => {
  const found = findingsIn(of).filter((f) => f.code === code);
  expect(found.length).toBeGreaterThan(0);
  expect(found.every((f) => f.would.length > 0)).toBe(true);
  expect(failedCures(of)).toEqual([]);
});

/** Findings whose remedy moves something by a printed distance, in the sense that the test gives: moved so far, they are gone. */
test.each<[string, (by: number) => PlainSpec]>([
  ['recess-near-edge', (by) => rack('inch', { recesses: [{ circle: mm(40), at: [mm(400), mm(24 + by)], depth: mm(5) }] })],
  ['recess-off-board', (by) => rack('inch', { recesses: [{ circle: mm(40), at: [mm(400), mm(18 + by)], depth: mm(5) }] })],
  ['hole-off-board', (by) => rack('inch', hole(400, 12 + by))],
  ['holes-meet', (by) => rack('inch', { holes: [400, 425 + by].map((x) => ({ round: 'post', at: [mm(x), mm(100)], below: 0 })) })],
  ['hole-near-hole', (by) => rack('inch', { holes: [400, 450 + by].map((x) => ({ round: 'post', at: [mm(x), mm(100)], below: 0 })) })],
  ['hole-near-slot', (by) => rack('inch', { slots: one, holes: [{ round: 'post', at: [mm(400), mm(93 + by)], below: 0 }] })],
  ['hole-meets-slot', (by) => rack('inch', { slots: one, holes: [{ round: 'post', at: [mm(400), mm(80 + by)], below: 0 }] })],
  ['end-land-narrow', (by) => rack('inch', { slots: { ...one, at: mm(35 + by) } })],
  ['split-near', (by) => rack('inch', { slots: one, split: [mm(430 + by)] })],
  ['split-through', (by) => rack('inch', { slots: one, split: [mm(405 + by)] })],
  ['recess-near-recess', (by) => rack('inch', { recesses: [400, 443 + by].map((x) => ({ circle: mm(40), at: [mm(x), mm(100)], depth: mm(5) })) })],
  ['recess-meets-slot', (by) => rack('inch', { slots: one, ...{ recesses: [{ circle: mm(40), at: [mm(400), mm(90 + by)], depth: mm(5) }] } })],
])('moved by what the remedy of %s prints, it is gone with nothing graver', (code, at) => {
  const found = findingsIn(at(0)).find((f) => f.code === code)!;
  // The printed figure in millimetres, the second of the two units.
  const printed = Number(/\(([\d.]+) mm\)/.exec(found.remedy)![1]);
  const after = findingsIn(at(printed)).filter((f) => f.severity !== 'note').map((f) => f.code);
  expect(after.filter((c) => c === code || c.startsWith(code.split('-')[0]!))).toEqual([]);
});

test('every cure of a rack with one fault clears it', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((x) => Math.round(x * 10) / 10);
  fc.assert(fc.property(fc.constantFrom('inch' as const, 'mm' as const), size(30, 120), size(40, 175), size(8, 26), size(14, 30), (units, pitch, depth, cutter, thickness) => {
    const of = rack(units, { slots: { ...row, pitch: mm(pitch), depth: mm(depth) }, cutter: { diameter: mm(cutter) } }, { thickness: mm(thickness) });
    const grave = findingsIn(of).filter((f) => f.severity !== 'note');
    if (grave.length === 1 && grave[0]!.severity === 'warn') expect(failedCures(of)).toEqual([]);
  }), { numRuns: 150 });
});
