import { assert, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boreOnMain } from '../../../src/geometry/bore-on-main.js';
import { saddleHeight } from '../../../src/geometry/saddle.js';
import { jointOf } from '../../../src/jigs/drill-guide/solve.js';
import { radians } from '../../../src/units/units.js';
import { round, solved, valuesOf } from './guide.js';

const close = 9;

describe('a hole through flat work', () => {
  it.each([[90, 12, 30], [75, 8, 19], [60, 12, 30], [45, 10, 25], [30, 6, 12], [15, 4, 10]])('at %d°, Ø %d, through %d mm: opening b/sin, marks T/tan, run b/tan', (deg, drill, thickness) => {
    const v = valuesOf({ drill, angle: radians(deg), thickness, bit: { point: 2.5 } });
    const [sin, tan] = [Math.sin(radians(deg)), Math.tan(radians(deg))];
    expect(v['openingLength']).toBeCloseTo(drill / sin, close);
    expect(v['markShift']).toBeCloseTo(thickness / tan, close);
    expect(v['run']).toBeCloseTo(drill / tan, close);
    expect(v['standoff']).toBe(0);
    expect(v['depth']).toBeCloseTo(thickness / sin, close);
    // The run of drill/tan lies inside the depth; the hole is open all round after half of it more, and 3 mm on it is clear.
    expect(v['bitNeeded']).toBeCloseTo((v['boreLength'] as number) + thickness / sin + drill / 2 / tan + 3 + 2.5, close);
    // The lips clear the far face b/2 ÷ tan after the axis.
    expect(v['tipStop']).toBeCloseTo(thickness / sin + drill / 2 / tan + 3 + 2.5, close);
    expect(v['resultantAngle']).toBeCloseTo(90 - deg, close);
    expect(v['sightLine']).toBe(0);
  });

  it('of known depth and unknown thickness ends depth·cos from its mark', () => {
    expect(valuesOf({ thickness: undefined, depth: 20 })['markShift']).toBeCloseTo(10, close);
  });

  it('blind leaves what the rim or the point does not reach', () => {
    const v = valuesOf({ depth: 20, bit: { point: 2 } });
    expect(v['farWall']).toBeCloseTo(30 - 20 * Math.sin(Math.PI / 3) - 6 * Math.cos(Math.PI / 3), close);
    expect(valuesOf({ depth: 20, bit: { point: 9 } })['farWall']).toBeCloseTo(30 - 29 * Math.sin(Math.PI / 3), close);
  });
});

describe('a hole in a round', () => {
  it('on its axis has an opening b/sin long at every angle', () => {
    for (const deg of [15, 26, 45, 60, 90]) {
      expect(valuesOf({ onto: round(40), angle: radians(deg), depth: 10 })['openingLength']).toBeCloseTo(12 / Math.sin(radians(deg)), close);
    }
  });

  it('square, through the middle: run is the sagitta, marks do not shift', () => {
    const v = valuesOf({ onto: round(40), angle: Math.PI / 2, sole: 'cove' });
    expect(v['run']).toBeCloseTo(20 - Math.sqrt(400 - 36), close);
    expect(v['markShift']).toBe(0);
    expect(v['bitNeeded']).toBeCloseTo(38 + 40 + 3 + 3, close);
    expect(v['tipStop']).toBeCloseTo(46, close);
  });

  it('beside its axis is as long as the longest of 20 000 points of its edge says', () => {
    const s = solved({ onto: round(40), angle: radians(35), offset: 9, depth: 10 });
    const edge = boreOnMain({ main: 20, branch: 6, angle: radians(35), offset: 9 });
    const along = Array.from({ length: 20_000 }, (_, i) => edge.point((i * Math.PI) / 10_000).y);
    expect(s.hole.openingLength).toBeCloseTo(Math.max(...along) - Math.min(...along), 6);
    expect(s.hole.openingLength).toBeGreaterThan(12 / Math.sin(radians(35)));
  });

  it('kept run is never less than the way until the bit is buried, and the stop never leaves a through hole shut', () => {
    assert(property(
      double({ min: 0.05, max: 0.95, noNaN: true }), double({ min: -0.98, max: 0.98, noNaN: true }), double({ min: 15, max: 90, noNaN: true }),
      (share, beside, deg) => {
        const drill = 40 * share;
        const offset = (20 - drill / 2) * beside;
        const s = solved({ onto: round(40), drill, offset, angle: radians(deg), sole: 'flat' });
        const joint = jointOf({ kind: 'round', round: round(40), radius: 20, offset }, drill, s.angle);
        const heights = Array.from({ length: 360 }, (_, i) => saddleHeight(joint, radians(i)));
        expect(s.budget.run).toBeGreaterThan(Math.max(...heights) - Math.min(...heights) - 1e-6);
        // The exit is the entry mirrored through the round's axis: its last point lies as far beyond as the entry's first before.
        const entry = Math.sqrt(400 - offset ** 2) / Math.sin(s.angle);
        const overrun = s.budget.tipStop - s.budget.standoff - s.hole.depth - s.bit.point - 3;
        expect(overrun).toBeGreaterThan(Math.max(...heights) - entry - 1e-6);
        expect(overrun).toBeLessThan(Math.max(...heights) - entry + 0.05);
      },
    ), { numRuns: 60 });
  });

  it('square and blind leaves R − √(rim² + depth below the axis²)', () => {
    // 8 mm, square, 30 deep in Ø 40: rim 4 beside and 10 below the axis; the point, 3 mm, 13 below.
    expect(valuesOf({ onto: round(40), drill: 8, angle: Math.PI / 2, depth: 30 })['farWall']).toBeCloseTo(20 - 13, 6);
    expect(valuesOf({ onto: round(40), drill: 8, angle: Math.PI / 2, depth: 30, bit: { point: 0 } })['farWall']).toBeCloseTo(20 - Math.hypot(4, 10), 6);
  });
});

describe('the block', () => {
  it.each([[12, 38], [12.5, 38], [13, 39], [20, 60]])('for a drill of %d has a bore of %d mm: 38 mm and three diameters (common practice)', (drill, bore) => {
    expect(valuesOf({ drill })['boreLength']).toBeCloseTo(bore, close);
  });

  it('of a given height has the bore that the sole leaves', () => {
    const v = valuesOf({ block: { length: 60, width: 40, height: 80 } });
    expect(v['boreLength']).toBeCloseTo(80 - 30 / Math.tan(Math.PI / 3), close);
    expect(v['shortEnd']).toBeCloseTo(80 - 60 / Math.tan(Math.PI / 3), close);
    expect(v['soleLength']).toBeCloseTo(60 / Math.sin(Math.PI / 3), close);
    expect(v['blockHeight']).toBe(80);
  });

  it('with a 90° V stands R(√2 − 1) ÷ sin off a round on its axis; with a cove not at all', () => {
    for (const deg of [90, 60, 30]) {
      const v = valuesOf({ onto: round(40), angle: radians(deg), depth: 10 });
      expect(v['standoff']).toBeCloseTo((20 * (Math.SQRT2 - 1)) / Math.sin(radians(deg)), close);
      // Flanks of half-angle h touch the round: their point lies R ÷ sin h over its axis, and they fall by e ÷ tan h beside it.
      for (const [angle, offset] of [[60, 7], [110, -5], [90, 3]] as const) {
        const h = radians(angle / 2);
        const aside = valuesOf({ onto: round(40), drill: 6, depth: 10, angle: radians(deg), offset, groove: { includedAngle: radians(angle) } });
        const over = 20 / Math.sin(h) - Math.abs(offset) / Math.tan(h) - Math.sqrt(400 - offset * offset);
        expect(aside['standoff']).toBeCloseTo(over / Math.sin(radians(deg)), close);
      }
      expect(v['tipStop']).toBeCloseTo((v['standoff'] as number) + 13, close);
      expect(valuesOf({ onto: round(40), angle: radians(deg), depth: 10, sole: 'cove', offset: 5 })['standoff']).toBeCloseTo(0, close);
    }
  });

  it('with a 90° V has one 1/2.25 of the round deep, twice as wide as deep (common practice)', () => {
    const v = valuesOf({ onto: round(45), depth: 10 });
    expect(v['grooveDepth']).toBeCloseTo(20, close);
    expect(v['grooveWidth']).toBeCloseTo(40, close);
  });

  it('keeps 12 mm over its groove at the acute end however flat the angle', () => {
    for (const deg of [15, 20, 30, 45, 60, 90]) {
      for (const sole of ['v', 'cove', 'flat'] as const) {
        expect(solved({ onto: round(40), angle: radians(deg), depth: 10, sole }).block.shortEnd).toBeGreaterThan(12 - 1e-9);
      }
    }
  });
});

describe('rake and splay', () => {
  // Machinery's Handbook, 31st ed., p. 121, Fig. 6: tan C = √(tan²k + tan²s), tan R = tan s / tan k; figures worked at 30 digits.
  it.each([
    [5, 5, 7.0532267, 45], [10, 10, 14.001942, 45], [10, 15, 17.784244, 56.652635], [15, 15, 20.753571, 45],
    [12, 8, 14.29574, 33.472384], [14, 22, 25.396723, 58.320913], [20, 10, 22.020002, 25.848072],
  ])('%d° and %d° make %d° along a sight line at %d°', (rake, splay, resultant, sightLine) => {
    for (const written of [{ angle: { rake: radians(rake), splay: radians(splay) } }, { angle: undefined, rake: radians(rake), splay: radians(splay) }]) {
      const v = valuesOf(written);
      expect(v['resultantAngle']).toBeCloseTo(resultant, 5);
      expect(v['sightLine']).toBeCloseTo(sightLine, 5);
      expect(v['angle']).toBeCloseTo(90 - resultant, 5);
      expect(v['openingLength']).toBeCloseTo(12 / Math.cos(radians(v['resultantAngle'] as number)), close);
    }
  });

  it('10° and 15°: a second tilt that rides on the first is 14.782166°, not 15° (composition of rotations)', () => {
    expect(valuesOf({ angle: { rake: radians(10), splay: radians(15) } })['secondTilt']).toBeCloseTo(14.782166, 6);
  });
});
