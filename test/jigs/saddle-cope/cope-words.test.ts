import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/errors/finding.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import { expectFigures, figuresIn } from '../../support/remedy-figures.js';
import { context, fields } from './written.js';

type Given = Parameters<typeof fields>[0];
const close = (value: number) => expect.closeTo(value, 9);
const noPin = { pin: { diameter: 0 } };
/** A branch of 25 on a main of 50 at 90° unless given. */
const found = (given: Given, code: string): Finding => {
  const outcome = saddleCope.solve(fields(given), context);
  return ('refused' in outcome ? outcome.refused : saddleCope.check(outcome.solution, context)).find((f) => f.code === code)!;
};

describe('what is said of a saddle', () => {
  it('thin wings: the share of the main’s radius that the branch reaches, offset either way', () => {
    for (const offset of [0, 3, -3]) {
      // (|e| + 21) ÷ 25; sound at 0.85: 2·(21.25 − |e|), or a main of 2·(|e| + 21)/0.85.
      const e = Math.abs(offset);
      const thin = found({ ...noPin, branchDiameter: 43, offset: offset === 0 ? 0 : offset / 3 }, 'wing-thin');
      const by = offset === 0 ? 0 : e / 3;
      expect([thin.measured, thin.limit]).toEqual([close((by + 21.5) / 25), 0.85]);
      expect(thin.message).toContain(((by + 21.5) / 25).toFixed(3).replace(/0+$/, ''));
      expectFigures(thin, [`≤ ${2 * (21.25 - by)}`, `≥ ${(2 * (by + 21.5)) / 0.85}`]);
      expect(thin.would).toHaveLength(2);
    }
    const knife = found({ ...noPin, branchDiameter: 48 }, 'wing-knife-edge');
    expect([knife.measured, knife.limit, knife.would.length]).toEqual([close(0.96), 0.95, 2]);
    expect(knife.message).toContain('knife edge');
    expect(found({ ...noPin, branchDiameter: 43 }, 'wing-thin').message).toContain('thin and short in the grain');
    // A branch so far off the axis that none of 3 mm would do: 2·(0.85·25 − 20) = 2.5.
    const far = found({ ...noPin, branchDiameter: 3.2, offset: 20 }, 'wing-thin');
    expectFigures(far, [`≥ ${(2 * 21.6) / 0.85}`]);
    expect(far.remedy).toContain('A smaller offset');
    // A pin written of more than half the thinner branch stays too thick for it: then the branch alone is no cure.
    expect(found({ pin: { diameter: 21.4 }, branchDiameter: 44 }, 'wing-thin').would).toHaveLength(1);
    expect(found({ pin: { diameter: 21.2 }, branchDiameter: 44 }, 'wing-thin').would).toHaveLength(2);
  });

  it('stock that hardly closes: what is left beside the branch, and twice that on the diameter', () => {
    for (const offset of [0, 5, -5]) {
      const spare = 0.15;
      const tight = found({ ...noPin, branchDiameter: 2 * (25 - Math.abs(offset) - spare), offset }, 'measured-stock-tight');
      expect([tight.measured, tight.limit]).toEqual([close(spare), 0.2]);
      expect(tight.message).toMatch(/^Only 0\.15 mm .*measures 0\.30 mm more/);
      expect(found({ ...noPin, branchDiameter: 2 * (25 - Math.abs(offset) - 0.21), offset }, 'measured-stock-tight')).toBeUndefined();
    }
    expect(found({ ...noPin, branchDiameter: 49.995 }, 'measured-stock-tight').message).toContain('measures any more');
  });

  it('a branch that is too short, horn to horn or toe to toe', () => {
    const ends = { centres: 200, farEnd: { main: { name: 'post', diameter: 50 }, angle: Math.PI / 2, offset: 0, twist: 0 } };
    // Horn to horn 200 − 2·√(25² − 12.5²), toe to toe one millimetre more at each end.
    const horns = 200 - 2 * Math.sqrt(625 - 156.25);
    const of = (length: number, code: string) => found({ ...noPin, ...ends, branch: { name: 'rail', diameter: 25, length } }, code);
    const short = of(150, 'branch-short');
    expect([short.measured, short.limit, figuresIn(short.message)]).toEqual([150, close(horns), [150, expect.closeTo(horns, 0)]]);
    expectFigures(short, [`≥ ${horns + 2}`]);
    expect(short.about).toMatchObject({ operation: 'hollow', round: 'rail' });
    const near = of(157.5, 'branch-ends-before-toe');
    expect([near.measured, near.limit, figuresIn(near.message)]).toEqual([157.5, close(horns + 2), [157.5, expect.closeTo(horns + 2, 0)]]);
    expectFigures(near, [`≥ ${horns + 2}`]);
    expect([of(157.5, 'branch-short'), of(159, 'branch-ends-before-toe')]).toEqual([undefined, undefined]);
    // No far end: no length is known, so none is missed.
    expect(found({ ...noPin, branch: { name: 'rail', diameter: 25, length: 10 } }, 'branch-short')).toBeUndefined();
  });

  it('two hollows that leave too little between them, or meet', () => {
    const ends = (centres: number) => found({ ...noPin, centres, farEnd: { main: { name: 'post', diameter: 50 }, angle: Math.PI / 2, offset: 0, twist: 0 } }, 'ends-meet');
    expect([ends(53).measured, ends(53).limit, figuresIn(ends(53).message)]).toEqual([53, close(55), [53, 3, 5]]);
    expectFigures(ends(53), ['≥ 55']);
    expect(figuresIn(ends(48).message)).toEqual([48, 2]);
    expect([ends(48).message, ends(53).message].map((said) => said.includes('into each other'))).toEqual([true, false]);
  });

  it('a wrap larger than one sheet, by the side that does not fit', () => {
    // π·(d + t) and a tab of 10 across; the drawing area is 183 by 254.
    const wide = found({ ...noPin, branchDiameter: 80, mainDiameter: 120 }, 'wrap-over-one-sheet');
    expect([wide.measured, wide.limit]).toEqual([close(Math.PI * 80.1 + 10), 254]);
    expect(figuresIn(wide.message)[0]).toBeCloseTo(Math.PI * 80.1 + 10, 0);
    // Not over the longer side, but both over the shorter.
    const square = found({ ...noPin, branchDiameter: 60, mainDiameter: 300, angle: Math.PI / 4 }, 'wrap-over-one-sheet');
    if (square !== undefined) expect(square.limit === 183 || square.limit === 254).toBe(true);
  });
});

describe('what is said of a pin', () => {
  const pinned = (pin: Given['pin'], more: Given = {}) => (code: string) => found({ ...more, ...(pin && { pin }) }, code);

  it('its size against the branch: a third to a half, two millimetres of wood round it at the least', () => {
    const over = pinned({ diameter: 21.4 })('pin-over-branch');
    expect([over.measured, over.limit, figuresIn(over.message)]).toEqual([21.4, close(21), [21.4, 2, 25]]);
    for (const [diameter, code, limit] of [[13, 'pin-thick', 12.5], [8, 'pin-thin', 25 / 3]] as const) {
      const off = pinned({ diameter })(code);
      expect([off.measured, off.limit, figuresIn(off.message)]).toEqual([diameter, close(limit), [diameter]]);
      expectFigures(off, [`≥ ${25 / 3}`, '≤ 12.5']);
      expect(off.would.map(({ field }) => field)).toEqual(['pin.diameter']);
    }
  });

  it('its length in end grain: three diameters and 30 mm', () => {
    for (const [diameter, least] of [[9, 30], [12, 36]] as const) {
      const short = pinned({ diameter, intoBranch: 25 })('pin-short');
      expect([short.measured, short.limit, figuresIn(short.message)]).toEqual([25, least, [25]]);
      expectFigures(short, [`≥ ${least}`, '= 30']);
    }
  });

  it('the main beyond its hole and beside it', () => {
    // Square through the axis: 50 less depth, 1.5 of allowance and a point of 3 mm for a bit of 10.
    const thin = pinned({ diameter: 10, intoMain: 41 })('pin-wall-thin');
    expect(thin.limit).toBe(6);
    expect(thin.measured).toBeGreaterThan(4);
    expect(thin.measured).toBeLessThan(6);
    expectFigures(thin, ['≤ 39.5']);
    const out = pinned({ diameter: 10, intoMain: 47 })('pin-breaks-out');
    expect(out.measured).toBeLessThanOrEqual(0);
    // 25 − |e| − d/2 beside a pin off the axis; a pin of 2·(25 − |e| − 5) leaves 5.
    for (const offset of [16.5, -16.5]) {
      const skin = pinned({ diameter: 8 }, { branchDiameter: 16, offset })('pin-skin-thin');
      expect([skin.measured, skin.limit, figuresIn(skin.message)]).toEqual([close(4.5), 5, [4.5]]);
      expectFigures(skin, ['≤ 7']);
      expect(skin.would).toHaveLength(1);
    }
    // Of a branch of 15 a third is 5: 2·(25 − 17.3 − 5) = 5.4 is a pin, and 2·(25 − 17.49 − 5) = 5.02, printed below 5, is none.
    expectFigures(pinned({ diameter: 8 }, { branchDiameter: 15, offset: 17.3 })('pin-skin-very-thin') ?? pinned({ diameter: 8 }, { branchDiameter: 15, offset: 17.3 })('pin-skin-thin'), ['≤ 5.4']);
    const none = pinned({ diameter: 8 }, { branchDiameter: 15, offset: 17.49 })('pin-skin-thin');
    expect([figuresIn(none.remedy), none.would]).toEqual([[], []]);
  });
});
