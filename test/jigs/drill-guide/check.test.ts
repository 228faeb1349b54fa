import { describe, expect, it } from 'vitest';
import type { DrillGuideFields } from '../../../src/jigs/drill-guide/schema.js';
import type { Context } from '../../../src/jigs/jig.js';
import { radians } from '../../../src/units/units.js';
import { codesOf, context, findingsOf, round, solved } from './guide.js';

type Given = Partial<DrillGuideFields>;
const within = (shop: Context['shop']): Context => ({ ...context, shop });
const square = Math.PI / 2;
const inPost: Given = { onto: round(40), drill: 10, angle: square, depth: 20 };

/** Which of two guides has a finding: the one that should, and one just inside that should not. */
const triggered = (code: string, found: Given, free: Given, shop: Context['shop'] = {}) =>
  ({ found: codesOf(found, within(shop)).includes(code), free: codesOf(free, within(shop)).includes(code) });
const onlyFound = { found: true, free: false };

describe('findings on the hole (limits: common practice)', () => {
  it('hole-large above 0.4 of the round, hole-over-half above 0.5', () => {
    expect(triggered('hole-large', { ...inPost, drill: 16.01 }, { ...inPost, drill: 16 })).toEqual(onlyFound);
    expect(triggered('hole-over-half', { ...inPost, drill: 20.01 }, { ...inPost, drill: 20 })).toEqual(onlyFound);
    expect(codesOf({ ...inPost, drill: 20 })).toContain('hole-large');
  });

  it('skin-thin below 5 mm beside an offset hole, skin-very-thin below 3', () => {
    expect(triggered('skin-thin', { ...inPost, offset: 10.01 }, { ...inPost, offset: 10 })).toEqual(onlyFound);
    expect(triggered('skin-very-thin', { ...inPost, offset: -12.01 }, { ...inPost, offset: -12 })).toEqual(onlyFound);
    // 12 − 7.5 = 4.5 on either side of a hole through the axis: that is the share’s finding.
    const thin: Given = { onto: round(24), drill: 15, angle: square };
    expect(triggered('skin-thin', { ...thin, offset: 0.01 }, thin)).toEqual(onlyFound);
  });

  it('far-wall-thin below 6 mm, far-wall-very-thin below 4, breaks-through below 0; the depth it offers is free', () => {
    // Square, drill 10, no point: wall = 20 − hypot(5, depth − 20).
    const deep = (wall: number): Given => ({ ...inPost, bit: { point: 0 }, depth: 20 + Math.sqrt((20 - wall) ** 2 - 25) });
    expect(triggered('far-wall-thin', deep(5.99), deep(6.01))).toEqual(onlyFound);
    expect(triggered('far-wall-very-thin', deep(3.99), deep(4.01))).toEqual(onlyFound);
    expect(triggered('breaks-through', deep(-0.01), deep(0.01))).toEqual(onlyFound);
    expect(findingsOf(deep(5.99)).find((f) => f.code === 'far-wall-thin')!.remedy).toContain('33 mm');
    expect(triggered('far-wall-thin', { depth: 25 }, { depth: 22 })).toEqual(onlyFound);
  });

  it('counts the point: wall beyond it on a round', () => {
    expect(triggered('far-wall-thin', { ...inPost, drill: 4, depth: 30, bit: { point: 4.01 } }, { ...inPost, drill: 4, depth: 30, bit: { point: 3.99 } })).toEqual(onlyFound);
  });

  it('point-does-not-lead from atan(2p/b) off square', () => {
    const limit = Math.atan((2 * 3) / 12);
    expect(triggered('point-does-not-lead', { angle: square - limit - 1e-4 }, { angle: square - limit + 1e-4 })).toEqual(onlyFound);
  });
});

describe('findings on the bit', () => {
  // To the lips: the point, 3 mm, reaches on beyond them.
  const needed = solved(inPost).budget.neededToLips;
  const forBlock = solved(inPost).block.height;

  it('bit-too-short where the bit given does not reach', () => {
    expect(triggered('bit-too-short', { ...inPost, bit: { usableLength: needed - 0.01 } }, { ...inPost, bit: { usableLength: needed + 0.01 } })).toEqual(onlyFound);
  });

  it('bit-too-short where no owned bit of the size reaches, with its own point', () => {
    const bits = (usableLength: number) => ({ bits: [{ diameter: 10, usableLength: 40, point: 3 }, { diameter: 10, usableLength, point: 3 }, { diameter: 12, usableLength: 900, point: 3 }] });
    expect(codesOf(inPost, within(bits(needed - 0.01)))).toContain('bit-too-short');
    expect(codesOf(inPost, within(bits(needed + 0.01)))).not.toContain('bit-too-short');
  });

  it('bit-not-owned, with the nearest that is', () => {
    const bits = [{ diameter: 9, usableLength: 300, point: 2 }, { diameter: 12, usableLength: 300, point: 2 }];
    const [found] = findingsOf(inPost, within({ bits })).filter((f) => f.code === 'bit-not-owned');
    expect(found).toMatchObject({ measured: 10, limit: 9 });
    expect(codesOf(inPost, within({ bits: [{ diameter: 10.04, usableLength: 300, point: 2 }] }))).not.toContain('bit-not-owned');
  });

  it('bore-from-both-ends where the bit is shorter than the blank', () => {
    expect(triggered('bore-from-both-ends', { ...inPost, bit: { usableLength: forBlock - 0.01 } }, { ...inPost, bit: { usableLength: forBlock + 0.01 } })).toEqual(onlyFound);
  });

  it('stroke-short where the drill press does not go through the blank', () => {
    const { height } = solved(inPost).block;
    expect(codesOf(inPost, within({ drillPress: { stroke: height - 0.01 } }))).toContain('stroke-short');
    expect(codesOf(inPost, within({ drillPress: { stroke: height } }))).not.toContain('stroke-short');
  });
});

describe('findings on the block', () => {
  const block = { length: 60, width: 60, height: 100 };

  it('bore-short below 38 mm and three diameters', () => {
    expect(triggered('bore-short', { angle: square, block: { ...block, height: 37.99 } }, { angle: square, block: { ...block, height: 38 } })).toEqual(onlyFound);
    expect(triggered('bore-short', { angle: square, drill: 20, block: { ...block, height: 59.99 } }, { angle: square, drill: 20, block: { ...block, height: 60 } })).toEqual(onlyFound);
  });

  it('bore-wall-thin below 6 mm, along and across, offset counted', () => {
    expect(triggered('bore-wall-thin', { block: { ...block, length: 23.99 } }, { block: { ...block, length: 24 } })).toEqual(onlyFound);
    expect(triggered('bore-wall-thin', { block: { ...block, width: 23.99 } }, { block: { ...block, width: 24 } })).toEqual(onlyFound);
    expect(triggered('bore-wall-thin', { ...inPost, offset: 5, block: { ...block, width: 46, height: 120 }, drill: 24.01 }, { ...inPost, offset: 5, block: { ...block, width: 46, height: 120 }, drill: 24 })).toEqual(onlyFound);
  });

  it('short-end-thin below 6 mm', () => {
    const rise = 60 / Math.tan(Math.PI / 3);
    expect(triggered('short-end-thin', { block: { ...block, height: rise + 5.99 } }, { block: { ...block, height: rise + 6 } })).toEqual(onlyFound);
  });

  it('groove-wall-thin below 6 mm beside the groove', () => {
    const width = 2 * solved(inPost).sole.mouth + 12;
    expect(triggered('groove-wall-thin', { ...inPost, block: { width: width - 0.01 } }, { ...inPost, block: { width } })).toEqual(onlyFound);
  });

  it('sole-rocks for a flat sole on a round', () => {
    expect(triggered('sole-rocks', { ...inPost, sole: 'flat' }, { ...inPost, sole: 'cove' })).toEqual(onlyFound);
    expect(codesOf({})).not.toContain('sole-rocks');
  });

  it('standoff-long above two diameters', () => {
    const radius = (2 * 10) / (Math.SQRT2 - 1);
    expect(triggered('standoff-long', { ...inPost, onto: round(2 * radius + 0.01) }, { ...inPost, onto: round(2 * radius - 0.01) })).toEqual(onlyFound);
  });
});

describe('refusals', () => {
  it('angle-too-flat below 15° on a round; flat work goes on', () => {
    expect(triggered('angle-too-flat', { ...inPost, angle: radians(14.99) }, { ...inPost, angle: radians(15) })).toEqual(onlyFound);
    expect(codesOf({ angle: radians(10), drill: 4, thickness: 6 })).not.toContain('angle-too-flat');
  });

  it('bit-runs-off where offset and half the drill pass the round, equality allowed', () => {
    expect(triggered('bit-runs-off', { ...inPost, offset: 15.01 }, { ...inPost, offset: 15 })).toEqual(onlyFound);
    expect(findingsOf({ ...inPost, offset: 18 })[0]).toMatchObject({ severity: 'stop', measured: 23, limit: 20 });
  });

  it('an excess between rounding and the geometry’s own slack is refused or drawn, never thrown', () => {
    for (let k = 0; k < 40; k += 1) {
      const diameter = 9 - k * 0.5e-12;
      expect(() => codesOf({ ...inPost, onto: round(diameter), drill: 1, offset: 4, depth: undefined, sole: 'flat' })).not.toThrow();
    }
  });

  it('tilts-on-a-round, with the one angle and turn that do it', () => {
    const [found] = findingsOf({ ...inPost, angle: { rake: radians(10), splay: radians(15) } });
    expect(found).toMatchObject({ code: 'tilts-on-a-round', severity: 'stop' });
    // atan(tan 10° · cos 15°) = 9.669°
    expect(found!.remedy).toContain('80.3°');
    expect(codesOf({ angle: { rake: radians(10), splay: radians(15) } })).not.toContain('tilts-on-a-round');
  });

  it('cove-too-deep past the middle of the round', () => {
    expect(triggered('cove-too-deep', { ...inPost, sole: 'cove', groove: { includedAngle: square, depth: 20.01 } }, { ...inPost, sole: 'cove', groove: { includedAngle: square, depth: 20 } })).toEqual(onlyFound);
  });

  it('v-too-shallow where it ends before it touches: R·cos²h/sin h', () => {
    const contact = 20 * Math.SQRT1_2;
    expect(triggered('v-too-shallow', { ...inPost, groove: { includedAngle: square, depth: contact - 0.01 } }, { ...inPost, groove: { includedAngle: square, depth: contact + 0.01 } })).toEqual(onlyFound);
  });

  it('bore-breaks-block, block-too-low, groove-wider-than-block', () => {
    expect(triggered('bore-breaks-block', { block: { width: 11.99 } }, { block: { width: 12.01 } })).toEqual(onlyFound);
    const rise = 60 / Math.tan(Math.PI / 3);
    expect(triggered('block-too-low', { block: { length: 60, height: rise - 0.01 } }, { block: { length: 60, height: rise + 0.01 } })).toEqual(onlyFound);
    const mouth = 2 * solved(inPost).sole.mouth;
    expect(triggered('groove-wider-than-block', { ...inPost, block: { width: mouth - 0.01 } }, { ...inPost, block: { width: mouth + 0.01 } })).toEqual(onlyFound);
  });

  it('the height that block-too-low offers is enough', () => {
    const given = (height: number): Given => ({ ...inPost, angle: radians(30), block: { length: 40, height } });
    const [found] = findingsOf(given(60));
    expect(found!.code).toBe('block-too-low');
    expect(codesOf(given(found!.limit + 1e-6))).not.toContain('block-too-low');
    expect(findingsOf(given(found!.would[0]!.value)).filter((f) => f.severity !== 'note')).toEqual([]);
  });
});
