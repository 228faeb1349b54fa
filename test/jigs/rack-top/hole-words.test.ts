import { describe, expect, it } from 'vitest';
import { expectFigures } from '../../support/remedy-figures.js';
import { board, codesOf, findingsOf, type Given } from './rack.js';

/** A hole for a leg of 30 mm, upright unless given; the board is 800 × 200 × 27. */
const post = (along: number, across: number, more: Given = {}) => ({ round: 30, at: [along, across], below: 0, ...more });
const slot = { count: 1, item: 24, depth: 60, mouth: { ease: 0 } };
const found = (given: Given, code: string) => findingsOf(given).filter((f) => f.code === code);
const close = (value: number) => expect.closeTo(value, 9);
/** The figures said in mm, in order; the diameter that names a hole left out. */
const said = (message: string): number[] => [...message.replace(/hole \d+ \([^)]*(?:\([^)]*\))?[^)]*\)/gi, '').replace(/ \([^)]*″\)/g, '').matchAll(/([\d.]+) mm/g)].map((m) => Number(m[1]));
const rad = (deg: number): number => (deg * Math.PI) / 180;

describe('what is refused of holes', () => {
  it('a hole that takes more of the board across than there is, whichever way it leans', () => {
    // Leaning by 60° through 27 mm the faces’ openings stand 27·tan 60° = 46.765 apart, each 30/cos 60° = 60 long: 106.765 across.
    const across = 27 * Math.tan(rad(60)) + 60;
    for (const toward of [90, 270]) {
      const large = (width: number) => found({ board: { ...board, width }, holes: [post(400, width / 2, { lean: 60, toward })] }, 'hole-too-large');
      expect(large(across + 0.1)).toEqual([]);
      // So little more that it still breaks out wherever it stands is not too large, and half a millimetre less is.
      expect(found({ board: { ...board, width: across + 0.5 }, holes: [post(400, (across + 0.5) / 2, { lean: 60, toward })] }, 'hole-off-board')).toHaveLength(1);
      const [report] = large(across - 0.5);
      expect([report!.measured, report!.limit]).toEqual([close(across), close(across - 0.5)]);
      expect(said(report!.message)).toEqual([expect.closeTo(across, 0), expect.closeTo(across - 0.5, 0)]);
    }
    // Along the board the same lean takes 30 across.
    expect(codesOf({ board: { ...board, width: 31 }, holes: [post(400, 15.5, { lean: 60, toward: 0 })] })).not.toContain('hole-too-large');
  });

  it('one that breaks out of an edge or an end, and how far inwards it must go', () => {
    for (const [along, across] of [[400, 10], [400, 190]] as const) {
      const [report] = found({ holes: [post(along, across)] }, 'hole-off-board');
      expect([report!.measured, said(report!.message)]).toEqual([close(-5), [5]]);
      expect(report!.message).toContain('the edge of the board');
      expectFigures(report!, ['≥ 13', '= 8']);
    }
    for (const [along, across] of [[10, 100], [790, 100], [10, 13]] as const) {
      const [report] = found({ holes: [post(along, across)] }, 'hole-off-board');
      expect([report!.measured, said(report!.message)]).toEqual([close(-5), [5]]);
      expect(report!.message).toContain('the end of the board');
      // Twice the bit to the end.
      expectFigures(report!, ['≥ 65', '= 60']);
    }
    // 2 short of the edge, but 5 of wood to the end: the edge, though the end is near.
    expect(found({ holes: [post(20, 13)] }, 'hole-off-board')[0]!.message).toContain('the edge of the board');
  });

  it('two that meet and one that meets a slot, not a hair’s breadth more', () => {
    expect(codesOf({ holes: [post(400, 100), post(430.5, 100)] })).not.toContain('holes-meet');
    const [meet] = found({ holes: [post(400, 100), post(428, 100, { round: 26 })] }, 'holes-meet');
    expect([meet!.measured, said(meet!.message)]).toEqual([close(0), [0]]);
    // The larger hole’s diameter is kept along the grain.
    expectFigures(found({ holes: [post(400, 100), post(425, 100, { round: 26 })] }, 'holes-meet')[0]!, ['≥ 33', '= 30']);
    expect(codesOf({ slots: slot, holes: [post(400, 88.5)] })).not.toContain('hole-meets-slot');
    for (const at of [430 - 5, 370 + 5]) {
      const [into] = found({ slots: { ...slot, at: 400 }, holes: [post(at, 40)] }, 'hole-meets-slot');
      expect([into!.measured, said(into!.message)]).toEqual([close(-3), [3]]);
      expectFigures(into!, ['≥ 11', '= 8']);
    }
  });
});

describe('what is said of holes', () => {
  it('wood to a slot on either side, of as many slots as are near', () => {
    const slots = [200, 400].map((at) => ({ ...slot, at }));
    for (const [at, part] of [[200 - 13 - 5 - 15, 'slot-1'], [200 + 13 + 5 + 15, 'slot-1'], [400 - 13 - 5 - 15, 'slot-2'], [400 + 13 + 5 + 15, 'slot-2']] as const) {
      const [near, ...more] = found({ slots, holes: [post(at, 40)] }, 'hole-near-slot');
      expect([near!.measured, near!.about.parts?.slice().sort(), said(near!.message)[0], more]).toEqual([close(5), ['hole-1', part], 5, []]);
      expectFigures(near!, ['≥ 3']);
    }
  });

  it('wood between holes as wide as the wider of them is, however wide', () => {
    const pair = (apart: number) => found({ board: { ...board, width: 400, length: 2000 }, holes: [post(900, 200, { round: 80 }), post(900 + apart, 200, { round: 20 })] }, 'hole-near-hole');
    expect(pair(80 + 50)).toEqual([]);
    const [near] = pair(79 + 50);
    expect([near!.measured, near!.limit, said(near!.message)[0]]).toEqual([close(79), 80, 79]);
    expectFigures(near!, ['≥ 1']);
  });

  it('moves a hole inwards, away from whichever edge or end it is near', () => {
    for (const [at, field, value] of [[[400, 20], 'holes.0.at.1', 23], [[400, 180], 'holes.0.at.1', 177], [[70, 100], 'holes.0.at.0', 75], [[730, 100], 'holes.0.at.0', 725]] as const) {
      const [report] = findingsOf({ holes: [post(at[0], at[1])] });
      expect(report!.would.map((cure) => [cure.field, cure.value])).toEqual([[field, expect.closeTo(value, 0)]]);
      const [, cure] = [report, report!.would[0]!];
      // Rounded so that it lies farther in, never nearer.
      expect(Math.sign(cure.value - value) * Math.sign(value - at[field.endsWith('0') ? 0 : 1])).toBeGreaterThanOrEqual(0);
    }
  });

  it('a leg in the way of what goes into a slot, or near it, above or below', () => {
    // The leg’s edge passes at 480 − 15 − (400 + 12) = 53 − lean’s run; upright it keeps 12 down to 12 + 12 + 15 from the axis.
    const beside = (along: number) => found({ slots: { ...slot, at: 400 }, holes: [post(along, 40)] }, 'slot-under-leg');
    expect(beside(439)).toEqual([]);
    const [near] = beside(437);
    expect([near!.measured, near!.limit]).toEqual([close(10), 12]);
    expect(near!.message).toContain('less than');
    expectFigures(near!, ['≥ 2']);
    // Leaning by 30° towards the slot, 200 above: 200·tan 30° = 115.47 nearer, its own edge 15/cos 30° ahead.
    const over = found({ slots: { ...slot, at: 400 }, holes: [post(530, 40, { lean: 30, toward: 180, above: 200 })] }, 'slot-under-leg')[0]!;
    expect(over.measured).toBeCloseTo(130 - 12 - 200 * Math.tan(rad(30)) - 15 / Math.cos(rad(30)), 6);
    expect(over.message).toContain('stands in the way');
  });
});
