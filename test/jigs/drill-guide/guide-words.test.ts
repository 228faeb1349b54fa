import { describe, expect, it, test } from 'vitest';
import type { DrillGuideFields } from '../../../src/jigs/drill-guide/schema.js';
import type { Context } from '../../../src/jigs/jig.js';
import { expectFigures, figuresIn } from '../../support/remedy-figures.js';
import type { Shape } from '../../../src/drawing/drawing.js';
import { endOf } from '../../../src/geometry/path.js';
import { context, findingsOf, pattern, round, solved } from './guide.js';

type Given = Partial<DrillGuideFields>;
const rad = (deg: number): number => (deg * Math.PI) / 180;
const close = (value: number) => expect.closeTo(value, 9);
/** 10 mm through the middle of a round of 40, square, 20 deep. */
const inPost: Given = { onto: round(40), drill: 10, angle: Math.PI / 2, depth: 20 };
const found = (given: Given, code: string, shop: Context['shop'] = {}) => {
  const all = findingsOf(given, { ...context, shop }).filter((f) => f.code === code);
  expect(all.length).toBeLessThanOrEqual(1);
  return all[0]!;
};

describe('what is said of the hole', () => {
  it('an offset that leaves a sound skin, a whole one through or a far wall’s where the hole is blind', () => {
    // 20 − 5 − 5 = 10 through; beside the end of a blind hole 20 − 5 − 6 = 9.
    for (const offset of [10.5, -10.5]) {
      const blind = found({ ...inPost, offset }, 'skin-thin');
      expect([blind.measured, blind.limit, figuresIn(blind.message)]).toEqual([close(4.5), 5, [4.5]]);
      expectFigures(blind, ['≤ 9']);
      expect(blind.would.map(({ field, value }) => [field, value])).toEqual([['offset', close(Math.sign(offset) * figuresIn(blind.remedy)[0]!)]]);
      const { depth: _, ...through } = { ...inPost, offset };
      expectFigures(found(through, 'skin-thin'), ['≤ 10']);
    }
    // 12 of a round of 24: 12 − 6 − 5.5 leaves half a millimetre of offset, 12.8 a tenth, 13 none.
    const { depth: _, ...thin } = { ...inPost, onto: round(24), drill: 13, offset: 1.6 };
    expectFigures(found(thin, 'skin-thin'), ['≤ 0.5']);
    const none = found({ ...thin, drill: 14 }, 'skin-thin');
    expect([figuresIn(none.remedy), none.would]).toEqual([[], []]);
  });

  it('the share of a round that it takes, and the drill that takes 0.4', () => {
    const large = found({ ...inPost, drill: 18 }, 'hole-large');
    expect([large.measured, large.limit]).toEqual([close(0.45), 0.4]);
    expect(large.message).toContain('0.45');
    expectFigures(large, ['≤ 16']);
    const half = found({ ...inPost, drill: 22 }, 'hole-over-half');
    expect([half.limit, half.would]).toEqual([0.5, [{ field: 'drill', value: close(figuresIn(half.remedy)[0]!), unit: 'mm' }]]);
    expectFigures(half, ['≤ 16']);
  });

  it('a blind hole’s far wall, and a depth while there is a millimetre of it', () => {
    // Square, no point: 20 − √((depth − 20)² + 5²) left at the corner of the hole’s end.
    const deep = found({ ...inPost, depth: 35, bit: { point: 0 } }, 'far-wall-very-thin') ?? found({ ...inPost, depth: 35, bit: { point: 0 } }, 'far-wall-thin');
    expect([deep.measured, figuresIn(deep.message)[0]]).toEqual([close(20 - Math.hypot(15, 5)), expect.closeTo(20 - Math.hypot(15, 5), 0)]);
    expectFigures(deep, [`≤ ${20 + Math.sqrt(14 * 14 - 25)}`]);
    const out = found({ ...inPost, depth: 41, bit: { point: 0 } }, 'breaks-through');
    expect(out.measured).toBeCloseTo(20 - Math.hypot(21, 5), 9);
    expect(figuresIn(out.message)).toEqual([41, expect.closeTo(Math.hypot(21, 5) - 20, 0)]);
    // A point of 12 in a round of 20 reaches the far wall’s 6 at 20 − 6 − 12 = 2; of 14 at none.
    const pointed = (point: number) => found({ onto: round(20), drill: 4, angle: Math.PI / 2, depth: 8, bit: { point } }, 'breaks-through') ?? found({ onto: round(20), drill: 4, angle: Math.PI / 2, depth: 8, bit: { point } }, 'far-wall-very-thin');
    expectFigures(pointed(12), ['≤ 2']);
    expect(pointed(12).would.map(({ field }) => field)).toEqual(['depth']);
    expect([figuresIn(pointed(13.2).remedy), pointed(13.2).would]).toEqual([[], []]);
  });
});

describe('what is said of the block', () => {
  const wall = (block: Given['block'], more: Given = {}) => found({ ...inPost, block: { height: 120, ...block }, ...more }, 'bore-wall-thin');

  it('a thin wall beside the bore: which of length and width to make how great', () => {
    // 10 and 6 on each side; with an offset of 5 the width is 10 more.
    const flat: Given = { onto: 'flat', thickness: 30, depth: 12 };
    const short = found({ ...flat, drill: 10, angle: Math.PI / 2, block: { length: 20, width: 60 } }, 'bore-wall-thin');
    expect([short.measured, short.limit, figuresIn(short.message)]).toEqual([close(5), 6, [5, 6]]);
    expectFigures(short, ['≥ 22']);
    expect(short.would.map(({ field }) => field)).toEqual(['block.length']);
    const narrow = found({ ...flat, drill: 10, angle: Math.PI / 2, block: { length: 60, width: 20 } }, 'bore-wall-thin');
    expectFigures(narrow, ['≥ 22']);
    expect(narrow.would.map(({ field }) => field)).toEqual(['block.width']);
    expect(narrow.remedy).toContain('wide');
    expect(short.remedy).toContain('long');
    const both = found({ ...flat, drill: 10, angle: Math.PI / 2, block: { length: 20, width: 21 } }, 'bore-wall-thin');
    expectFigures(both, ['≥ 22', '≥ 22']);
    expect(both.would).toEqual([]);
    for (const offset of [5, -5]) expectFigures(wall({ width: 31, length: 60 }, { offset, sole: 'flat' }), ['≥ 32']);
  });

  it('a bore too short: the height that gives it its 38 mm, or three drills', () => {
    // Square on flat work: bore and blank are one.
    const flat: Given = { onto: 'flat', thickness: 30, depth: 12, angle: Math.PI / 2 };
    const short = found({ ...flat, drill: 10, block: { height: 30 } }, 'bore-short');
    expect([short.measured, short.limit, figuresIn(short.message)]).toEqual([close(30), 38, [30]]);
    expectFigures(short, ['≥ 38', '= 38', '= 38']);
    expectFigures(found({ ...flat, drill: 20, block: { height: 30 } }, 'bore-short'), ['≥ 60', '= 60', '= 38']);
  });

  it('a thin short end, and walls beside the groove', () => {
    // At 60° a block 60 long: the sole falls 60 ÷ tan 60° over it.
    const rise = 60 / Math.tan(rad(60));
    const flat: Given = { onto: 'flat', thickness: 30, depth: 12, angle: rad(60), drill: 10 };
    const thin = found({ ...flat, block: { length: 60, height: rise + 4 } }, 'short-end-thin');
    expect([thin.measured, thin.limit, figuresIn(thin.message)]).toEqual([close(4), 6, [4, 6]]);
    expectFigures(thin, [`≥ ${rise + 6}`]);
    // A cove of 10 in a round of 40 is 2√(40·10 − 100) = 34.64 wide.
    const mouth = 2 * Math.sqrt(300);
    const beside = found({ ...inPost, sole: 'cove', groove: { includedAngle: Math.PI / 2, depth: 10 }, block: { width: mouth + 9 } }, 'groove-wall-thin');
    expect([beside.measured, beside.limit, figuresIn(beside.message)]).toEqual([close(4.5), 6, [4.5, 6]]);
    expectFigures(beside, [`≥ ${mouth + 12}`]);
    const over = found({ ...inPost, sole: 'cove', groove: { includedAngle: Math.PI / 2, depth: 10 }, block: { width: mouth - 1 } }, 'groove-wider-than-block');
    expect([over.measured, over.limit]).toEqual([close(mouth), close(mouth - 1)]);
    expectFigures(over, [`≥ ${mouth + 12}`]);
  });

  it('a V that stands off: the round’s distance from its point, less what the round fills', () => {
    // At 90°: R·(√2 − 1) of air between the V’s point and the round.
    const off = found({ ...inPost, onto: round(120), drill: 10 }, 'standoff-long');
    expect([off.measured, off.limit, figuresIn(off.message)]).toEqual([close(60 * (Math.SQRT2 - 1)), 20, [expect.closeTo(60 * (Math.SQRT2 - 1), 0)]]);
    expect(found({ ...inPost, onto: round(90), drill: 10 }, 'standoff-long')).toBeUndefined();
  });
});

test('a V of another angle is as wide and as deep as it is drawn, and touches the round where it should', () => {
  // 60°, 25 deep: half of it 25·tan 30° wide; a round of 30 touches 15·cos 30° to either side, 15·cos²30° ÷ sin 30° off its point; the sole stands 15 ÷ sin 30° − 25 over the axis.
  const { sole } = solved({ ...inPost, groove: { includedAngle: rad(60), depth: 25 }, onto: round(30) });
  expect(sole).toMatchObject({ form: 'v', depth: 25, mouth: close(25 / Math.sqrt(3)), plane: close(30 - 25) });
  expect([sole.contact!.halfWidth, sole.contact!.depth]).toEqual([close(15 * Math.sqrt(0.75)), close(15 * 0.75 * 2)]);
});

test('the section of a flat sole on a round is as wide as the block, level with the round’s top', () => {
  const s = solved({ ...inPost, sole: 'flat', block: { width: 44 } });
  const sole = pattern(s, 'section').items.find((item): item is Shape => item.kind === 'shape' && item.part === 'sole-section')!;
  expect([sole.path.start, endOf(sole.path.segments[0]!)]).toEqual([{ x: -22, y: -20 }, { x: 22, y: -20 }]);
});

describe('what is refused of a guide', () => {
  it('a bit that runs off the round: the offset that is sound, the one that just does, or a thinner drill', () => {
    for (const offset of [16, -16]) {
      const off = found({ ...inPost, offset }, 'bit-runs-off');
      expect([off.measured, off.limit, figuresIn(off.message)]).toEqual([21, 20, [21, 20]]);
      expectFigures(off, ['≤ 9', '≤ 15']);
      expect(off.would.map(({ field, value }) => [field, Math.sign(value)])).toEqual([['offset', Math.sign(offset)]]);
      const { depth: _, ...through } = { ...inPost, offset };
      expectFigures(found(through, 'bit-runs-off'), ['≤ 10', '≤ 15']);
    }
    // A drill of 30 leaves 20 − 15 − 6, less than none, for an offset.
    const thick = found({ ...inPost, drill: 30, offset: 6 }, 'bit-runs-off');
    expectFigures(thick, ['≤ 16']);
    expect(thick.would).toEqual([]);
  });

  it('a block that the bore breaks, by length, by width or by both', () => {
    const flat: Given = { onto: 'flat', thickness: 30, depth: 12, angle: Math.PI / 2, drill: 20 };
    const broken = (block: Given['block']) => found({ ...flat, block }, 'bore-breaks-block');
    for (const [block, fields] of [[{ length: 20, width: 60 }, ['block.length']], [{ length: 60, width: 20 }, ['block.width']], [{ length: 20, width: 20 }, []]] as const) {
      expectFigures(broken(block), ['≥ 32', '≥ 32']);
      expect(broken(block).would.map(({ field }) => field)).toEqual(fields);
      expect([broken(block).measured, broken(block).limit, figuresIn(broken(block).message)]).toEqual([0, 6, [20, block.length, block.width]]);
    }
    const offset = found({ ...inPost, drill: 20, offset: 8, sole: 'flat', block: { width: 30, length: 60, height: 120 } }, 'bore-breaks-block');
    expect(offset.measured).toBeCloseTo(15 - 8 - 10, 9);
    expectFigures(offset, ['≥ 32', '≥ 48']);
  });

  it('a block so low that its sole runs out through its top, by the taller of what the short end and the bore ask', () => {
    const rise = 60 / Math.tan(rad(60));
    const flat: Given = { onto: 'flat', thickness: 30, depth: 12, angle: rad(60), drill: 10, block: { length: 60, height: rise - 2 } };
    const low = found(flat, 'block-too-low');
    expect([low.measured, low.limit]).toEqual([close(rise - 2), close(rise)]);
    // 38 of bore over half the rise are more than 6 over the whole of it: 17.3 + 38 against 34.6 + 6; at 30° the other way: 52 + 38 against 104 + 6.
    expectFigures(low, [`≥ ${rise / 2 + 38}`]);
    const steep = 60 / Math.tan(rad(30));
    expectFigures(found({ ...flat, angle: rad(30), block: { length: 60, height: steep - 2 } }, 'block-too-low'), [`≥ ${steep + 6}`]);
  });
});
