import { describe, expect, it, test } from 'vitest';
import { expectFigures, figuresIn } from '../../support/remedy-figures.js';
import { findingsOf, solved, type Given } from './rack.js';

/** A plain slot for a round of 24 mm: 26 mm wide, its mouth not eased. The board is 800 × 200 × 27. */
const one = { count: 1, item: 24, depth: 60, mouth: { ease: 0 } };
const row = { ...one, count: 2, pitch: 100 };

/** What a finding says of where, how much and how many, and the figures of its words, in order. */
const said = (given: Given, code: string) => findingsOf(given).filter((f) => f.code === code).map((f) => ({
  f, about: f.about.parts, measured: f.measured, limit: f.limit, words: figuresIn(f.message), remedy: figuresIn(f.remedy), would: f.would.map(({ field, value }) => [field, value]), message: f.message,
}));

const close = (value: number) => expect.closeTo(value, 9);

describe('slots', () => {
  it('are numbered from the left, the front one first where two stand at one station', () => {
    const at = (along: number, edge: string) => ({ ...one, at: along, edge });
    for (const rows of [[at(400, 'rear'), at(400, 'front'), at(200, 'rear'), at(600, 'front'), at(600, 'rear')], [at(600, 'rear'), at(600, 'front'), at(400, 'front'), at(200, 'rear'), at(400, 'rear')]]) {
      expect(solved({ slots: rows }).slots.map(({ number, edge, at: along }) => `${number} ${along} ${edge}`)).toEqual(['1 200 rear', '2 400 front', '3 400 rear', '4 600 front', '5 600 rear']);
    }
  });
});

test('a board has a thousand slots at most, all rows together', () => {
  const rows = (counts: readonly number[]) => ({ board: { length: 50_000, width: 200, thickness: 27 }, slots: counts.map((count, i) => ({ ...one, count, pitch: 40, at: 100 + 20_000 * i })) });
  expect(() => solved(rows([500, 501]))).toThrow(/come to 1001 slots/);
  expect(solved(rows([490, 500])).slots).toHaveLength(990);
});

describe('a joint across the board', () => {
  it('is held against the nearer end, where its edge begins to run straight', () => {
    const near = (split: number, more: Given = {}) => findingsOf({ board: { length: 800, width: 200, thickness: 27, ...more }, split: [split] }).find(({ code }) => code.startsWith('split'));
    // Square ends: 27 of wood are sound. Half rounds begin to run straight 100 in.
    for (const split of [20, 780]) expect([near(split)!.code, near(split)!.measured]).toEqual(['split-near', close(20)]);
    for (const split of [120, 680]) expect([near(split, { endRadius: 100 })!.code, near(split, { endRadius: 100 })!.measured]).toEqual(['split-near', close(20)]);
    expect([near(28), near(128, { endRadius: 100 }), near(672, { endRadius: 100 })]).toEqual([undefined, undefined, undefined]);
    expect(near(90, { endRadius: 100 })).toMatchObject({ code: 'split-through', measured: close(-10) });
  });
});

describe('what is said of slots', () => {
  it('a finger by the shorter of its two slots, the weakest of both edges and ends', () => {
    // Between axes 60 apart 60 − 13 − 13 = 34 of wood; the shorter of the two reaches 40 + 13, the longer 120 + 13.
    const two = (first: number, second: number) => ({ slots: [{ ...one, at: 300, depth: first }, { ...one, at: 360, depth: second }] });
    expect(said(two(120, 40), 'short-grain')).toEqual([]);
    for (const [first, second] of [[120, 60], [60, 120]] as const) {
      const [found, ...more] = said(two(first, second), 'short-grain');
      expect([found!.measured, found!.limit, found!.words, more]).toEqual([close(73 / 34), 2, [73, 34], []]);
      expect(found!.message).toContain('between slots 1 and 2');
      expect(found!.remedy[0]).toBeCloseTo(68, 1);
    }
    // To the right end 800 − 760 − 13 = 27 of wood beside 60 + 13; the same to the left of the first.
    for (const at of [40, 760]) {
      const [found] = said({ slots: { ...one, at } }, 'short-grain');
      expect([found!.measured, found!.words]).toEqual([close(73 / 27), [73, 27]]);
      expect(found!.message).toContain('between slot 1 and the end');
    }
    expect(said({ slots: [{ ...one, at: 300, edge: 'rear' }, { ...one, at: 357, edge: 'rear' }] }, 'short-grain')[0]!.words).toEqual([73, 31]);
  });

  it('the wood behind a seat, and as much less depth as brings the whole land back', () => {
    // Of 200 mm, 187 to the seat’s bottom leave 13; 27 are sound, so 14 less than 174.
    const [found] = said({ slots: { ...one, depth: 174 } }, 'slot-deep');
    expect([found!.measured, found!.words[0], found!.remedy, found!.would]).toEqual([close(13), 13, [160], [['slots.depth', close(160)]]]);
    // A board so narrow that half a millimetre of depth is left.
    const shallow = (width: number, mouth: Given = { ease: 0 }) => said({ board: { length: 800, width, thickness: 27 }, slots: { ...one, depth: 8, mouth } }, 'slot-deep')[0]!;
    expect([shallow(40.5).remedy, shallow(40.5).would]).toEqual([[0.5], [['slots.depth', close(0.5)]]]);
    // None is left, or less than the mouth is long: then the board grows, 8 + 13 + 27.
    for (const narrow of [shallow(40), shallow(39), shallow(44, { ease: 0, flare: 5, run: 6 })]) expect([narrow.remedy, narrow.would]).toEqual([[48], [['board.width', close(48)]]]);
    expect(shallow(46.5, { ease: 0, flare: 5, run: 6 }).remedy).toEqual([6.5]);
  });

  it('tight seats with their count, and a cutter that would do for all of them', () => {
    const tight = (count: number, more: Given = {}) => said({ slots: { ...one, count, pitch: 150 }, cutter: { diameter: 25.6, ...more } }, 'seat-tight-for-cutter')[0]!;
    // 13 against 12.8 and 0.5 to spare: 2·(13 − 0.5), or 13.3.
    expect([tight(1).measured, tight(1).limit, tight(1).words]).toEqual([close(13), close(13.3), [13, 12.8]]);
    expectFigures(tight(1).f, ['≤ 25', '≥ 13.3']);
    expect(tight(1).message).toContain('of slot 1 has');
    expect(tight(2).message).toContain('of slot 1 and 1 more has');
    expect(tight(4).message).toContain('of slot 1 and 3 more has');
    for (const { would } of [tight(1), tight(4)]) expect(would).toEqual([['cutter.diameter', expect.closeTo(24.8, 0)]]);
    // The template is made for a bushing: another cutter alone would not fit it.
    expect(tight(1, { bushing: 30 }).would).toEqual([]);
    const seats = [{ ...one, at: 200, width: 26 }, { ...one, at: 400, width: 26.2 }];
    expect(said({ slots: seats, cutter: { diameter: 25.6 } }, 'seat-tight-for-cutter')[0]!.would).toEqual([]);
    expect(said({ slots: [{ ...one, at: 200, width: 30 }, { ...one, at: 400, width: 26 }], cutter: { diameter: 25.6 } }, 'seat-tight-for-cutter')[0]!.message).toContain('of slot 2 has');
  });

  it('the pair of widest parts that lacks most of what it should keep, and how many pairs lack some', () => {
    const three = (widest: readonly number[], gaps: readonly number[]) => ({ slots: [200, 300, 420].map((at, i) => ({ ...one, at, widest: widest[i], gap: gaps[i] })) });
    // Apart 100 − 95 = 5 of 12, and 120 − (95 + 139)/2 = 3 of 4.
    const near = said(three([95, 95, 139], [12, 0, 4]), 'items-close');
    expect([near[0]!.about, near[0]!.measured, near[0]!.limit, near[0]!.words]).toEqual([['slot-1', 'slot-2'], close(5), 12, [5, 12]]);
    expect(near[0]!.message).toMatch(/slots 1 and 2 .*\(2 pairs in all\)/);
    // The greater of the two gaps is kept, whichever slot asks for it: (95 + 95)/2 + 12.
    for (const gaps of [[12, 0, 0], [0, 12, 0]]) {
      const found = said(three([95, 95, 20], gaps), 'items-close');
      expect(found).toHaveLength(1);
      expectFigures(found[0]!.f, ['≥ 107']);
    }
    // Half a millimetre is close, not a touch.
    const [close05] = said(three([99.5, 99.5, 20], [12, 12, 0]), 'items-close');
    expect([close05!.measured, close05!.limit]).toEqual([close(0.5), 12]);
    expect(said(three([99.5, 99.5, 20], [12, 12, 0]), 'items-touch')).toEqual([]);
    // (101 + 101)/2 on axes 100 apart: 1 over.
    const [touch] = said(three([101, 101, 20], [12, 12, 0]), 'items-touch');
    expect([touch!.measured, touch!.limit, touch!.words]).toEqual([close(-1), 0, [1]]);
    expectFigures(touch!.f, ['≥ 113']);
  });

  it('what hangs out past either end, by how much', () => {
    for (const at of [95, 705]) {
      const [found] = said({ slots: { ...one, at, widest: 220 } }, 'item-past-end');
      expect([found!.measured, found!.limit, found!.words]).toEqual([95, 110, [220, 15]]);
      expectFigures(found!.f, ['≥ 110']);
    }
    expect(said({ slots: { ...one, at: 110, widest: 220 } }, 'item-past-end')).toEqual([]);
  });

  it('a slot that is tight, by what a lining and its glue leave', () => {
    // Unlined: 25/2 − 24/2.
    const plain = said({ slots: { ...one, width: 25 } }, 'slot-tight')[0]!;
    expect([plain.measured, plain.limit, plain.words]).toEqual([close(0.5), 1, [25, 0.5, 1]]);
    expectFigures(plain.f, ['≥ 26']);
    // Cork of 1.6 a side, and glue under it: 29/2 − 12 − 1.6 − 0.1 = 0.8.
    const lined = said({ slots: { ...one, width: 29, liner: 'cork' } }, 'slot-tight')[0]!;
    expect([lined.measured, lined.limit, lined.words]).toEqual([close(0.8), 1, [29, 0.8, 1]]);
    expectFigures(lined.f, ['≥ 29.4']);
  });

  it('a cure in a field of the row only where all slots come from one row', () => {
    const two = [{ ...one, at: 200, width: 25 }, { ...one, at: 400, width: 25 }];
    expect(said({ slots: two }, 'slot-tight').map((f) => f.would)).toEqual([[]]);
    expect(said({ slots: { ...row, pitch: 52 } }, 'land-narrow')[0]!.would).toEqual([['slots.pitch', close(53)]]);
  });
});
