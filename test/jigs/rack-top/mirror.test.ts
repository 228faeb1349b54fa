import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { findingsOf, outcomeOf, type Given } from './rack.js';

const [length, width] = [600, 180];
const mm = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const slot = fc.record({ at: mm(20, 580), item: mm(12, 30), depth: mm(20, 120), edge: fc.constantFrom('front', 'rear'), ease: mm(0, 6), widest: mm(30, 90) })
  .map(({ ease, ...rest }) => ({ count: 1, ...rest, mouth: { ease } }));
const hole = fc.record({ round: mm(12, 36), along: mm(10, 590), across: mm(10, 170), lean: fc.integer({ min: 0, max: 25 }), toward: fc.integer({ min: 0, max: 359 }), below: mm(0, 60), above: mm(0, 60) });
const recess = fc.oneof(
  fc.record({ along: mm(20, 580), across: mm(20, 160), depth: mm(3, 20), face: fc.constantFrom('top', 'under'), circle: mm(14, 60) }),
  fc.record({ along: mm(20, 580), across: mm(20, 160), depth: mm(3, 20), face: fc.constantFrom('top', 'under'), turn: fc.integer({ min: 0, max: 89 }), box: fc.record({ width: mm(20, 90), height: mm(14, 50), radius: mm(0, 7) }) }),
);
const any = fc.record({
  board: fc.constantFrom({}, { endRadius: 90 }, { endRadius: 140 }, { cornerRadius: 18 }), slots: fc.array(slot, { minLength: 0, maxLength: 4 }),
  holes: fc.array(hole, { minLength: 0, maxLength: 3 }), recesses: fc.array(recess, { minLength: 0, maxLength: 2 }), split: fc.array(mm(20, 580), { minLength: 0, maxLength: 1 }),
});

/** A rack as it is, or seen in a mirror that stands across the board or along it. */
type Rack = ReturnType<typeof any.generate>['value'];
const given = ({ board, slots, holes, recesses, split }: Rack, mirror: 'none' | 'across' | 'along'): Given => {
  const x = (along: number): number => (mirror === 'across' ? length - along : along);
  const y = (across: number): number => (mirror === 'along' ? width - across : across);
  const bearing = (toward: number): number => (mirror === 'across' ? 180 - toward : mirror === 'along' ? -toward : toward);
  const turned = (turn: number): number => (mirror === 'none' ? turn : -turn);
  return {
    board: { length, width, thickness: 27, ...board }, cutter: { diameter: 10 },
    slots: slots.map((s) => ({ ...s, at: x(s.at), edge: mirror === 'along' ? (s.edge === 'front' ? 'rear' : 'front') : s.edge })),
    holes: holes.map(({ along, across, toward, ...h }) => ({ ...h, at: [x(along), y(across)], toward: bearing(toward) })),
    recesses: recesses.map(({ along, across, ...r }) => ({ ...r, at: [x(along), y(across)], ...('turn' in r && { turn: turned(r.turn) }) })),
    split: split.map(x),
  };
};

/** What is found, without the numbers of the slots, which run from the left. */
const said = (of: Given) => findingsOf(of).map(({ code, severity, measured, limit }) => ({ code, severity, measured, limit }))
  .sort((a, b) => a.code.localeCompare(b.code) || a.measured - b.measured || a.limit - b.limit);

/** Stations are told from the left end, so their figures are no mirror images; and of several alike one is told of. */
const byPlace = new Set(['slot-off-board']);

test('a rack seen in a mirror is as sound as it was: the same is found, with the same figures', () => {
  let clean = 0;
  fc.assert(fc.property(any, (rack) => {
    const plain = said(given(rack, 'none'));
    if (plain.some(({ code }) => byPlace.has(code))) return;
    if (plain.every(({ severity }) => severity !== 'stop')) clean++;
    for (const mirror of ['across', 'along'] as const) {
      const seen = said(given(rack, mirror));
      expect(seen.map(({ code, severity }) => [code, severity])).toEqual(plain.map(({ code, severity }) => [code, severity]));
      seen.forEach((finding, i) => {
        expect(finding.measured, finding.code).toBeCloseTo(plain[i]!.measured, 1);
        expect(finding.limit, finding.code).toBeCloseTo(plain[i]!.limit, 6);
      });
    }
    const outcomes = (['none', 'across', 'along'] as const).map((mirror) => outcomeOf(given(rack, mirror)));
    const land = outcomes.map((outcome) => ('refused' in outcome ? undefined : rackTop.values(outcome.solution)['land']));
    for (const each of land) if (typeof land[0] === 'number') expect(each).toBeCloseTo(land[0], 6);
  }), { numRuns: 60, seed: 3 });
  expect(clean).toBeGreaterThan(5);
}, 30_000);
