import { describe, expect, it } from 'vitest';
import { expectFigures, figuresIn } from '../../support/remedy-figures.js';
import { board, findingsOf, type Given } from './rack.js';

/** Findings of one code; the board is 800 × 200 × 27, the cutter 12 unless given. */
const found = (given: Given, code: string) => findingsOf(given).filter((f) => f.code === code);
const box = (width: number, height: number, along: number, across: number, more: Given = {}) => ({ box: { width, height, ...more }, at: [along, across], depth: 8 });
const close = (value: number) => expect.closeTo(value, 9);

describe('what is said of recesses', () => {
  it('a thin floor and the depth that leaves it sound, while that is a recess at all', () => {
    // 27 − 24 = 3 left, less than the least of 4; 6 are sound, so 21 at most. Of a board of 7, 1 mm; of one of 6.9, none worth cutting.
    const thin = (thickness: number, depth: number) => found({ board: { ...board, thickness }, recesses: [{ circle: 40, at: [400, 100], depth }] }, 'recess-floor-thin')[0]!;
    const deep = thin(27, 24);
    expect([deep.measured, deep.limit, figuresIn(deep.message)[0]]).toEqual([close(3), 4, 3]);
    expectFigures(deep, ['≤ 21']);
    expect(deep.would).toEqual([{ field: 'recesses.0.depth', value: close(figuresIn(deep.remedy)[0]!), unit: 'mm' }]);
    expectFigures(thin(7, 5), ['≤ 1']);
    expect(thin(7, 5).would).toHaveLength(1);
    expect([thin(6.9, 5).remedy, thin(6.9, 5).would]).toEqual(['A thicker board.', []]);
  });

  it('two that lie over each other by what is left between them', () => {
    const both = (thickness: number, a: number, b: number) => found({ board: { ...board, thickness }, recesses: [{ circle: 40, at: [400, 100], depth: a }, { circle: 40, at: [410, 100], depth: b, face: 'under' }] }, 'recess-floor-thin').find(({ about }) => about.parts?.length === 2)!;
    const pair = both(27, 14, 11);
    expect([pair.measured, pair.about.parts, figuresIn(pair.message)[0]]).toEqual([close(2), ['recess-1', 'recess-2'], 2]);
    expectFigures(pair, ['≤ 21']);
    expectFigures(both(8, 2.5, 2.5), ['≤ 2']);
    expect(both(7.9, 2.5, 2.5).remedy).toBe('A thicker board.');
  });

  it('a corner tighter than the cutter: what would do, by box, cutter or chisel', () => {
    const corner = (radius: number, height: number, diameter = 12) => [...found({ recesses: [box(60, height, 400, 100, { radius })], cutter: { diameter } }, 'recess-corner'), ...found({ recesses: [box(60, height, 400, 100, { radius })], cutter: { diameter } }, 'recess-tight-for-cutter')][0]!;
    // The cutter’s 6 and half a millimetre; a cutter of 2·(2 − 0.5).
    expectFigures(corner(2, 30), ['≥ 6.5', '≤ 3']);
    expect([corner(2, 30).measured, corner(2, 30).limit, figuresIn(corner(2, 30).message)]).toEqual([close(2), 6, [2, 6]]);
    // Less than half a millimetre over the thinnest cutter’s half, 0.75: no cutter would do; below that it is sharp.
    expectFigures(corner(1.25, 30), ['≥ 6.5', '≤ 1.5']);
    expectFigures(corner(1.24, 30), ['≥ 6.5']);
    expect(corner(0.75, 30).message).toContain('has a radius of');
    expect(corner(0.74, 30).message).toContain('sharp inside corner');
    // A box has room for such corners down to 13 mm high, and hardly more than the cutter’s own up to half a millimetre.
    expect(corner(2, 13).would).toEqual([{ field: 'recesses.0.box.radius', value: close(figuresIn(corner(2, 13).remedy)[0]!), unit: 'mm' }]);
    expect(corner(2, 12.9).would).toEqual([]);
    expect(corner(0.5, 12.9).would).toEqual([]);
    const tight = corner(6.2, 30);
    expect([tight.code, tight.measured, tight.limit, figuresIn(tight.message)]).toEqual(['recess-tight-for-cutter', close(6.2), 6.5, [6.2, 6]]);
    expectFigures(tight, ['≥ 6.5']);
  });

  it('where on the board the tightest corner of path data is, along and across', () => {
    // A square notch in the middle of a 100 × 40 rectangle’s upper side: its two inner corners, across 65, turn the other way and ask nothing of the cutter.
    const path = { path: 'M0 0 H40 V15 H60 V0 H100 V40 H0 Z', size: 100, at: [400, 60], depth: 5 };
    const [sharp] = found({ recesses: [path] }, 'recess-corner');
    const [, along, across] = /along ([\d.]+) mm.*across ([\d.]+) mm/.exec(sharp!.message)!;
    expect(['350 40', '450 40', '350 80', '390 80', '410 80', '450 80']).toContain(`${along} ${across}`);
    expect(sharp!.would).toEqual([]);
  });

  it('what stands too near on any side, by how much wood is between', () => {
    // A box 300 × 90 about (400, 100): holes of 30 beside each corner, 3 mm off along the board and level with the corner’s edge.
    const recess = box(300, 90, 400, 100, { radius: 6 });
    const corners = [[-1, -1], [1, -1], [-1, 1], [1, 1]] as const;
    for (const [right, up] of corners) {
      const hole = { round: 30, at: [400 + right * (150 + 3 + 15), 100 + up * 30], below: 0 };
      const [near, ...more] = found({ recesses: [recess], holes: [hole] }, 'recess-near-hole');
      expect([near!.measured, near!.about.parts, figuresIn(near!.message).at(-2), more]).toEqual([expect.closeTo(3, 2), ['hole-1', 'recess-1'], 3, []]);
      expectFigures(near!, ['≥ 3']);
    }
    // Slots of 26 with their seats 80 in, past the box’s lower edge: left of the box, right of it, and over its middle, 3 mm off each.
    for (const [at, given] of [[250 - 3 - 13, recess], [550 + 3 + 13, recess], [400, box(300, 40, 400, 80 + 13 + 3 + 20, { radius: 6 })]] as const) {
      const [near, ...more] = found({ slots: { count: 1, item: 24, depth: 80, mouth: { ease: 0 }, at }, recesses: [given] }, 'recess-near-slot');
      expect([near!.measured, near!.about.parts, more]).toEqual([expect.closeTo(3, 2), ['slot-1', 'recess-1'], []]);
      expectFigures(near!, ['≥ 3']);
    }
    const [edge] = found({ recesses: [box(60, 30, 400, 18)] }, 'recess-near-edge');
    expect([edge!.measured, edge!.about.parts]).toEqual([expect.closeTo(3, 2), ['recess-1']]);
    expectFigures(edge!, ['≥ 3']);
  });

  it('two that come near each other, or run into each other', () => {
    const pair = (along: number) => found({ recesses: [box(60, 30, 300, 100), box(60, 30, along, 100)] }, 'recess-near-recess')[0]!;
    const near = pair(363);
    expect([near.measured, near.about.parts, figuresIn(near.message)[0]]).toEqual([expect.closeTo(3, 9), ['recess-1', 'recess-2'], 3]);
    expectFigures(near, ['≥ 3']);
    // One above the other, off by less than their size; and corner to corner, 0.2 and 0.3 off: the middles of their arcs of 6 stand 12.2 and 12.3 apart.
    expect(found({ recesses: [box(60, 30, 300, 60), box(60, 30, 320, 93.5)] }, 'recess-near-recess')[0]!.measured).toBeCloseTo(3.5, 9);
    const diagonal = found({ recesses: [box(60, 30, 300, 60, { radius: 6 }), box(60, 30, 300 + 60 + 0.2, 60 + 30 + 0.3, { radius: 6 })] }, 'recess-near-recess')[0]!;
    expect(diagonal.measured).toBeCloseTo(Math.hypot(12.2, 12.3) - 12, 1);
    // Corners that use up the sides, and a point written twice: the rounded end, 10 about 320, is 3 off a round of 16 about 341.
    const ends = [box(60, 20, 300, 100, { radius: 10 }), box(60, 20, 300, 100, { radius: 15 }), { path: 'M0 10A10 10 0 0 1 10 0L10 0L50 0A10 10 0 0 1 50 20L50 20H10A10 10 0 0 1 0 10Z', size: 60, at: [300, 100], depth: 8 }];
    for (const end of ends) expect(found({ recesses: [end, { circle: 16, at: [341, 100], depth: 8 }] }, 'recess-near-recess')[0]!.measured).toBeCloseTo(3, 1);
    // In different faces, half a millimetre beside each other seen from above: wood between them, not a floor.
    const faces = [box(60, 30, 300, 100), box(60, 30, 360.5, 100, {})].map((of, i) => ({ ...of, depth: 14, face: i === 0 ? 'top' : 'under' }));
    expect(found({ recesses: faces }, 'recess-near-recess')[0]!.measured).toBeCloseTo(0.5, 9);
    expect(found({ recesses: faces }, 'recess-floor-thin')).toEqual([]);
    // Neither has a corner within the other, as two boards laid over each other crosswise; one within the other; and the same.
    // To clear, as little as half of both one way or the other: 75 + 10 along; 30 + 6 across; 60 across.
    for (const [other, way] of [[box(20, 120, 400, 100), 85], [box(30, 12, 400, 100, { radius: 6 }), 36], [box(150, 60, 400, 100), 60]] as const) {
      for (const recesses of [[box(150, 60, 400, 100), other], [other, box(150, 60, 400, 100)]]) {
        const over = found({ recesses }, 'recess-near-recess')[0]!;
        expect(over.measured).toBeCloseTo(-way, 1);
        expectFigures(over, [`≥ ${way + 6}`]);
      }
    }
    expect(pair(350).message).toBe('Recesses 1 and 2 run into each other.');
    expect(pair(350).measured).toBeCloseTo(-10, 6);
    expectFigures(pair(350), ['≥ 16']);
  });
});

describe('what is refused of recesses', () => {
  it('one that meets a slot or a hole, and how far they must move apart: moved so far, whichever way it is nearest, they are clear', () => {
    // A round of 100 over a hole of 30: 50 + 15, and 6 of wood. A box of 100 over the middle of a slot 26 wide: 50 + 13.
    const hole = (by: number) => ({ holes: [{ round: 30, at: [400, 100], below: 0 }], recesses: [{ circle: 100, at: [400 + by, 100], depth: 8 }] });
    const slot = (by: number) => ({ slots: { count: 1, item: 24, depth: 60, mouth: { ease: 0 } }, recesses: [box(100, 100, 400 + by, 60)] });
    for (const [given, code, way] of [[hole, 'recess-meets-hole', 65], [slot, 'recess-meets-slot', 63]] as const) {
      const meets = found(given(0), code)[0]!;
      expect(meets.measured).toBeCloseTo(-way, 1);
      expectFigures(meets, [`≥ ${way + 6}`, '= 6']);
      const after = findingsOf(given(figuresIn(meets.remedy)[0]!)).map((f) => f.code);
      expect(after.filter((each) => each.startsWith('recess-'))).toEqual(after.filter((each) => each === 'recess-corner'));
    }
    // A recess from 10 across over a slot that ends at 33: 23 farther in it is clear.
    expect(found({ slots: { count: 1, item: 24, depth: 20, mouth: { ease: 0 } }, recesses: [box(300, 120, 400, 70)] }, 'recess-meets-slot')[0]!.measured).toBeCloseTo(-23, 6);
  });

  const refused = (given: Given, code: string) => found(given, code)[0]!;
  const round = (diameter: number, more: Given = {}) => ({ recesses: [{ circle: diameter, at: [400, 100], depth: 8, ...more }] });

  it('one that the cutter does not go into: a cutter a millimetre thinner', () => {
    const narrow = (diameter: number, bushing?: number) => refused({ ...round(diameter), cutter: { diameter: 12, ...(bushing !== undefined && { bushing }) } }, 'recess-cutter-cannot-enter');
    expect([narrow(10).measured, narrow(10).limit, figuresIn(narrow(10).message)]).toEqual([12, 10, [12, 10]]);
    expectFigures(narrow(10), ['≤ 9']);
    expect(narrow(10).would).toEqual([{ field: 'cutter.diameter', value: close(figuresIn(narrow(10).remedy)[0]!), unit: 'mm' }]);
    expect(narrow(10, 30).would).toEqual([]);
    // As narrow as a recess may be.
    expectFigures(narrow(3), ['≤ 2']);
    // The lesser side of a box, whichever it is.
    for (const [width, height] of [[10, 40], [40, 10]] as const) expectFigures(refused({ recesses: [box(width, height, 400, 100)] }, 'recess-cutter-cannot-enter'), ['≤ 9']);
  });

  it('one as deep as the board, and the depth that leaves a sound floor of 6 mm', () => {
    const deep = (thickness: number) => refused({ board: { ...board, thickness }, ...round(40, { depth: 30 }) }, 'recess-through-board');
    expect([deep(27).measured, deep(27).limit, figuresIn(deep(27).message)]).toEqual([30, 27, [30, 27]]);
    expectFigures(deep(27), ['≤ 21', '= 6']);
    expect(deep(27).would.map(({ field }) => field)).toEqual(['recesses.0.depth']);
    expectFigures(deep(7), ['≤ 1', '= 6']);
    expect([deep(6.9).would, figuresIn(deep(6.9).remedy)]).toEqual([[], []]);
  });

  it('one that breaks out of the board, by how much', () => {
    for (const at of [[400, 17], [17, 100], [400, 183], [783, 100]]) {
      const off = refused({ recesses: [{ circle: 40, at, depth: 8 }] }, 'recess-off-board');
      expect([off.measured, figuresIn(off.message)]).toEqual([expect.closeTo(-3, 2), [3]]);
      expectFigures(off, ['≥ 9', '= 6']);
    }
  });
});

describe('what is refused of slots', () => {
  const slot = { count: 1, item: 24, depth: 60, mouth: { ease: 0 } };

  it('a cutter that does not go in: as much thinner as leaves half a millimetre a side, or a slot as much wider', () => {
    const [thick] = found({ slots: slot, cutter: { diameter: 30 } }, 'cutter-too-large');
    expect([thick!.measured, thick!.limit, figuresIn(thick!.message)]).toEqual([30, 26, [30, 26]]);
    expectFigures(thick!, ['≤ 25']);
    const narrow = (width: number) => found({ slots: { ...slot, item: 3, width }, cutter: { diameter: 12 } }, 'cutter-too-large')[0]!;
    // 2.5 wide leaves the thinnest cutter, 1.5; 2.4 does not.
    expectFigures(narrow(2.5), ['≤ 1.5']);
    expectFigures(narrow(2.4), ['≥ 13']);
  });

  it('a slot that its lining fills: what is left, the width that would do; and where it takes up all', () => {
    // Cork of 3.2 a side, and 0.1 of glue: 2·(13 − 3.3) = 19.4 for 24; 24 + 2·(3.3 + 1) in all.
    const cork = (width: number) => found({ slots: { ...slot, width, liner: 'thick-cork' }, cutter: { diameter: 3 } }, 'slot-narrower-than-item')[0]!;
    expect([cork(26).measured, cork(26).limit, figuresIn(cork(26).message)]).toEqual([close(19.4), 24, [26, 19.4, 24]]);
    expectFigures(cork(26), ['≥ 32.6']);
    expect([cork(6.4).measured, figuresIn(cork(6.4).message)]).toEqual([close(-0.2), [6.4]]);
    expect(cork(6.4).message).toContain('the lining takes up');
    expect(figuresIn(cork(6.8).message)).toEqual([6.8, 0.2, 24]);
  });

  it('a station off the board: from where to where, or a longer board', () => {
    const off = (length: number, at: number) => found({ board: { ...board, length }, slots: { ...slot, at } }, 'slot-off-board')[0]!;
    expectFigures(off(800, 5), ['≥ 13', '≤ 787']);
    expect([off(800, 5).limit, off(800, 795).limit]).toEqual([close(13), close(787)]);
    // A board as long as the mouth is wide has one station; a shorter one has none.
    const wide = (length: number) => found({ board: { ...board, length }, slots: { ...slot, item: 58, at: 5 } }, 'slot-off-board')[0]!;
    expectFigures(wide(61), ['≥ 30', '≤ 31']);
    expect(wide(59.9).remedy).toBe('A longer board or a narrower mouth.');
    expect(wide(50).remedy).toBe('A longer board or a narrower mouth.');
  });
});
