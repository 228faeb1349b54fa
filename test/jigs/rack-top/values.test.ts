import { describe, expect, it } from 'vitest';
import { pathLength } from '../../../src/geometry/length.js';
import { openingPath } from '../../../src/jigs/rack-top/draw-holes.js';
import { boardPieces } from '../../../src/jigs/rack-top/outline.js';
import { pathArea } from '../../../src/geometry/path-area.js';
import { resultantTilt } from '../../../src/geometry/tilt.js';
import { degrees, radians } from '../../../src/units/units.js';
import { board, slots, solved, valuesOf } from './rack.js';

describe('slots', () => {
  it('take item/2 + clearance + lining squeezed + glue on each side', () => {
    const v = valuesOf({ slots: { ...slots, clearance: 1.25, liner: 'felt', glue: 0.2 } });
    // Felt 2 mm gives a third: common practice.
    expect(v['slotRadius']).toBeCloseTo(12 + 1.25 + 4 / 3 + 0.2, 9);
    expect(v['slotWidth']).toBeCloseTo(2 * (12 + 1.25 + 4 / 3 + 0.2), 9);
    expect(v['innerRadius']).toBeCloseTo(12 + 1.25 + 4 / 3 + 0.2, 9);
  });

  it.each([['none', 0, 0], ['leather', 1.6, 0.1], ['cork', 1.6, 0.1], ['thick-cork', 3.2, 0.1], ['2.4 mm', 2.4, 0.1]])('lined with %s grow by the lining and its glue', (liner, squeezed, glue) => {
    expect(valuesOf({ slots: { ...slots, liner } })['slotRadius']).toBeCloseTo(13 + squeezed + glue, 9);
  });

  it('stand in the middle of the board, or from their station, one pitch apart', () => {
    expect(valuesOf({ slots })['stations']).toEqual([175, 325, 475, 625]);
    expect(valuesOf({ slots: { ...slots, at: 100 } })['stations']).toEqual([100, 250, 400, 550]);
  });

  it('take their pitch from the widest part and the gap, or from a sound land', () => {
    expect(valuesOf({ slots: { count: 3, item: 24, widest: 90, gap: 20, depth: 60 } })['stations']).toEqual([290, 400, 510]);
    // 26 mm of slot, its mouth eased by 6 on both sides, and a land as wide as the board is thick where what hangs is no wider than that.
    expect(valuesOf({ slots: { count: 3, item: 24, depth: 60 } })['stations']).toEqual([335, 400, 465]);
  });

  it('leave a land of pitch − mouth on one edge, eased corners and flares counted, and the slant between alternate edges', () => {
    expect(valuesOf({ slots })['land']).toBeCloseTo(150 - 26 - 2 * 6, 9);
    expect(valuesOf({ slots: { ...slots, mouth: { ease: 0 } } })['land']).toBeCloseTo(150 - 26, 9);
    expect(valuesOf({ slots: { ...slots, mouth: { flare: 8, run: 30 } } })['land']).toBeCloseTo(150 - 26 - 2 * 30 * Math.tan(radians(8)), 9);
    expect(valuesOf({ slots: { ...slots, pitch: 60, edge: 'alternate' } })['land']).toBeCloseTo(Math.hypot(60, 80) - 26, 9);
  });

  it('of a list are numbered by station and told apart', () => {
    const v = valuesOf({ slots: [{ at: 600, item: 30, depth: 70 }, { at: 200, item: 20, depth: 50 }] });
    expect(v['stations']).toEqual([200, 600]);
    expect(v['slotWidth']).toEqual({ 1: 22, 2: 32 });
    expect(v['land']).toBeCloseTo(400 - 11 - 16 - 2 * 6, 9);
  });
});

describe('holes', () => {
  const lean = 14;
  const hole = { round: 34.925, at: [300, 120], lean, toward: 30 };

  it('open b × b/cos λ on both faces, the underside back from the way uphill by T·tan λ', () => {
    const v = valuesOf({ holes: [hole] }) as unknown as { holes: Record<string, Record<'top' | 'under', Record<string, number>> & { boreLength: number }> };
    const { top, under, boreLength } = v.holes['1']!;
    const shift = 27 * Math.tan(radians(lean));
    for (const face of [top, under]) {
      expect(face['minor']).toBeCloseTo(34.925, 9);
      expect(face['major']).toBeCloseTo(34.925 / Math.cos(radians(lean)), 9);
      expect(face['turn']).toBeCloseTo(30, 9);
    }
    expect([top['along'], top['across']]).toEqual([300, 120]);
    // Seen from above, counter-clockwise: 30° points right and to the rear.
    expect(under['along']).toBeCloseTo(300 - shift * Math.cos(radians(30)), 9);
    expect(under['across']).toBeCloseTo(120 - shift * Math.sin(radians(30)), 9);
    expect(boreLength).toBeCloseTo(27 / Math.cos(radians(lean)), 9);
  });

  it('have the perimeter of a plane cut through a cylinder: 9.68844822 r at 60°, 6.54458864 r at 22.5°', () => {
    // 4 sec θ E(sin² θ), NIST DLMF 19.30; the first is the 2 × 1 ellipse.
    for (const [tilt, perimeter] of [[60, 9.68844822], [22.5, 6.54458864]] as const) {
      const [drilled] = solved({ board: { ...board, width: 400 }, holes: [{ round: 40, at: [400, 200], lean: tilt }] }).holes;
      expect(pathLength(openingPath(drilled!, drilled!.top)) / 20).toBeCloseTo(perimeter, 7);
    }
  });

  it('leaning by a rake and a splay of 10 and 15° lean 17.784244° towards 56.652635°', () => {
    // Machinery's Handbook, 31st ed., p. 121, "Formulas for Compound Angles", fig. 6; figures worked from them.
    const { resultant, sightLine } = resultantTilt(radians(10), radians(15));
    expect(degrees(resultant)).toBeCloseTo(17.784244, 6);
    expect(degrees(sightLine)).toBeCloseTo(56.652635, 6);
    const [drilled] = solved({ holes: [{ round: 30, at: [400, 100], lean: degrees(resultant), toward: degrees(sightLine) }] }).holes;
    // Seen along the board the leg stands off square by the rake, seen across it by the splay.
    expect(drilled!.top.x - drilled!.under.x).toBeCloseTo(27 * Math.tan(radians(10)), 9);
    expect(drilled!.under.y - drilled!.top.y).toBeCloseTo(27 * Math.tan(radians(15)), 9);
  });
});

describe('the board', () => {
  it.each([
    ['square', {}, 800 * 200], ['with corners', { cornerRadius: 40 }, 800 * 200 - (4 - Math.PI) * 1600], ['half round', { endRadius: 100 }, 600 * 200 + Math.PI * 1e4],
  ])('%s has its area to the last square millimetre', (_, ends, area) => {
    const top = solved({ board: { ...board, ...ends } });
    const [outline] = boardPieces(top.board, []);
    expect(Math.abs(pathArea(outline!.path))).toBeCloseTo(area, 6);
  });

  it('of 40 m with 200 slots solves in time that grows no faster than its slots', () => {
    const time = (count: number): number => {
      const given = { board: { ...board, length: 200 * count }, slots: { ...slots, count, pitch: 190 } };
      const runs = Array.from({ length: 5 }, () => {
        const start = performance.now();
        solved(given);
        return performance.now() - start;
      });
      return Math.min(...runs);
    };
    time(200);
    expect(solved({ board: { ...board, length: 40_000 }, slots: { ...slots, count: 200, pitch: 190 } }).slots).toHaveLength(200);
    // Twice linear, for the clock's sake; work on all pairs would take 25 times as long.
    expect(time(200)).toBeLessThan(10 * Math.max(time(40), 0.2));
  });
});
