import { describe, expect, it } from 'vitest';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { radians } from '../../../src/units/units.js';
import { woodToSlot } from '../../../src/jigs/rack-top/refuse-holes.js';
import { woodBetweenHoles } from '../../../src/jigs/rack-top/hole-webs.js';
import { asLine, expectFigures } from '../../support/remedy-figures.js';
import { cylinderSolid, sagitta, solids } from '../../support/solids.js';
import { board, codesOf, context, findingsOf, solved, type Given } from './rack.js';

/** A plain slot: 26 mm wide, its mouth not eased. */
const one = { count: 1, item: 24, depth: 60, mouth: { ease: 0 } };
const row = { ...one, count: 2, pitch: 100 };
const post = (along: number, across: number, more: Given = {}) => ({ round: 30, at: [along, across], ...more });
const round = (diameter: number, along: number, across: number, more: Given = {}) => ({ circle: diameter, at: [along, across], depth: 8, ...more });
/** At 45° the opening is √2 as long. */
const steep = { lean: 45, toward: 0 };

/** Code, what triggers it, what is just inside, and the remedy's figures in mm, worked out on paper: what is at least said, at most, below, or the figure itself. */
const cases: readonly (readonly [string, Given, Given, readonly string[]])[] = [
  ['ends-two-ways', { board: { ...board, endRadius: 100, cornerRadius: 10 } }, { board: { ...board, endRadius: 100 } }, []],
  ['end-radius-small', { board: { ...board, endRadius: 99.9 } }, { board: { ...board, endRadius: 100 } }, ['≥ 100']],
  ['corner-radius-large', { board: { ...board, cornerRadius: 100.1 } }, { board: { ...board, cornerRadius: 100 } }, ['≤ 100']],
  ['ends-meet', { board: { ...board, length: 199.9, endRadius: 100 } }, { board: { ...board, length: 200, endRadius: 100 } }, []],
  ['bushing-small', { cutter: { diameter: 12, bushing: 12 } }, { cutter: { diameter: 12, bushing: 12.5 } }, ['= 15']],
  ['slot-station-missing', { slots: [one, { ...one, at: 600 }] }, { slots: [{ ...one, at: 200 }, { ...one, at: 600 }] }, []],
  ['slot-narrower-than-item', { slots: { ...one, width: 23.9 } }, { slots: { ...one, width: 24 } }, ['≥ 26']],
  ['slot-narrower-than-item', { slots: { ...one, width: 27.3, liner: 'leather' } }, { slots: { ...one, width: 27.4, liner: 'leather' } }, ['≥ 29.4']],
  ['slot-tight', { slots: { ...one, width: 25.9 } }, { slots: { ...one, width: 26 } }, ['≥ 26']],
  ['cutter-too-large', { slots: one, cutter: { diameter: 26.1 } }, { slots: one, cutter: { diameter: 26 } }, ['≤ 25']],
  ['seat-tight-for-cutter', { slots: one, cutter: { diameter: 25.1 } }, { slots: one, cutter: { diameter: 25 } }, ['≤ 25', '≥ 13.05']],
  ['slot-shallow', { slots: { ...one, depth: 9.9, mouth: { ease: 10 } } }, { slots: { ...one, depth: 10, mouth: { ease: 10 } } }, ['≥ 10']],
  // 12·tan((90° − 10°)/2)·cos 10° = 9.9163 in from the edge; 12 of ease to a reach of 9.9163 is 10.891 to one of 9.
  ['ease-past-flare', { slots: { ...one, mouth: { ease: 12, flare: 10, run: 9 } } }, { slots: { ...one, mouth: { ease: 12, flare: 10, run: 9.92 } } }, ['≥ 9.9163', '≤ 10.891']],
  ['slot-through-board', { slots: { ...one, depth: 187 } }, { slots: { ...one, depth: 186.9 } }, ['≤ 160', '= 27', '< 187']],
  ['slot-deep', { slots: { ...one, depth: 160.1 } }, { slots: { ...one, depth: 160 } }, ['≤ 160']],
  // As shallow as the land asks for, 20, is less than the mouth alone takes: then the board grows, 60 + 27 − 17.
  ['slot-deep', { board: { ...board, width: 60 }, slots: { ...one, depth: 30, mouth: { flare: 5, run: 28 } } }, { board: { ...board, width: 70 }, slots: { ...one, depth: 30, mouth: { flare: 5, run: 28 } } }, ['≥ 70']],
  ['slot-off-board', { slots: { ...one, at: 12.9 } }, { slots: { ...one, at: 13 } }, ['≥ 13', '≤ 787']],
  ['slot-off-board', { slots: { ...one, at: 787.1 } }, { slots: { ...one, at: 787 } }, ['≥ 13', '≤ 787']],
  ['slots-overlap', { slots: { ...row, pitch: 26 } }, { slots: { ...row, pitch: 26.1 } }, ['≥ 27', '= 27']],
  ['mouths-overlap', { slots: { ...row, pitch: 37.9, mouth: { ease: 6 } } }, { slots: { ...row, pitch: 38, mouth: { ease: 6 } } }, ['≥ 65']],
  ['land-narrow', { slots: { ...row, pitch: 52.9 } }, { slots: { ...row, pitch: 53 } }, ['≥ 53']],
  ['end-land-narrow', { slots: { ...one, at: 39.9 } }, { slots: { ...one, at: 40 } }, ['≥ 0.1']],
  ['short-grain', { slots: { ...row, pitch: 62.4 } }, { slots: { ...row, pitch: 62.6 } }, ['≤ 72.8']],
  ['items-touch', { slots: { ...row, widest: 100.1 } }, { slots: { ...row, widest: 100 } }, ['≥ 112.1']],
  ['items-close', { slots: { ...row, widest: 88.1 } }, { slots: { ...row, widest: 88 } }, ['≥ 100.1']],
  ['items-touch', { slots: { ...row, pitch: 60, edge: 'alternate', widest: 100.1 } }, { slots: { ...row, pitch: 60, edge: 'alternate', widest: 100 } }, ['≥ 112.1']],
  ['items-touch', { slots: [{ ...one, at: 300, widest: 150 }, { ...one, at: 400, widest: 50.1 }] }, { slots: [{ ...one, at: 300, widest: 150 }, { ...one, at: 400, widest: 50 }] }, ['≥ 112.05']],
  ['item-past-end', { slots: { ...one, at: 99.9, widest: 200 } }, { slots: { ...one, at: 100, widest: 200 } }, ['≥ 100']],
  ['hole-too-large', { holes: [{ round: 200, at: [400, 100] }] }, { holes: [{ round: 199.9, at: [400, 100] }] }, []],
  ['hole-too-large', { holes: [{ round: 210, at: [400, 100] }] }, { holes: [{ round: 199.9, at: [400, 100] }] }, []],
  ['hole-off-board', { holes: [post(400, 15)] }, { holes: [post(400, 15.1)] }, ['≥ 8', '= 8']],
  ['hole-off-board', { holes: [post(15 * Math.SQRT2 + 26.9, 100, steep)] }, { holes: [post(15 * Math.SQRT2 + 27.1, 100, steep)] }, ['≥ 60.1', '= 60']],
  ['hole-near-edge', { holes: [post(400, 22.9)] }, { holes: [post(400, 23)] }, ['≥ 0.1']],
  ['hole-near-end', { holes: [post(74.9, 100)] }, { holes: [post(75, 100)] }, ['≥ 0.1']],
  ['hole-meets-slot', { slots: one, holes: [post(400, 88)] }, { slots: one, holes: [post(400, 88.1)] }, ['≥ 8', '= 8']],
  ['hole-near-slot', { slots: one, holes: [post(400, 95.9)] }, { slots: one, holes: [post(400, 96)] }, ['≥ 0.1']],
  ['hole-near-slot', { slots: one, holes: [post(400, 95.9 + 27 + 15 * (Math.SQRT2 - 1), { lean: 45, toward: 90, below: 0 })] }, { slots: one, holes: [post(400, 96 + 27 + 15 * (Math.SQRT2 - 1), { lean: 45, toward: 90, below: 0 })] }, ['≥ 0.1']],
  ['slot-under-leg', { slots: one, holes: [post(400, 98.9)] }, { slots: one, holes: [post(400, 99)] }, ['≥ 0.1']],
  ['slot-under-leg', { slots: one, holes: [post(480, 60, { lean: 20, toward: 180, above: 150, below: 0 })] }, { slots: one, holes: [post(480, 60, { lean: 20, toward: 180, above: 0, below: 0 })] }, ['≥ 14.558']],
  ['holes-meet', { holes: [post(400, 100), post(430, 100)] }, { holes: [post(400, 100), post(430.1, 100)] }, ['≥ 30', '= 30']],
  ['hole-near-hole', { holes: [post(400, 100), post(459.9, 100)] }, { holes: [post(400, 100), post(460, 100)] }, ['≥ 0.1']],
  ['recess-cutter-cannot-enter', { recesses: [round(11.9, 400, 100)] }, { recesses: [round(12, 400, 100)] }, ['≤ 10.9']],
  ['recess-cutter-cannot-enter', { recesses: [{ path: 'M0 0 H100 V11 H0 Z', size: 100, at: [400, 100], depth: 5 }] }, { recesses: [{ path: 'M0 0 H100 V13 H0 Z', size: 100, at: [400, 100], depth: 5 }] }, []],
  ['recess-through-board', { recesses: [round(40, 400, 100, { depth: 27 })] }, { recesses: [round(40, 400, 100, { depth: 26.9 })] }, ['≤ 21', '= 6']],
  ['recess-floor-thin', { recesses: [round(40, 400, 100, { depth: 21.1 })] }, { recesses: [round(40, 400, 100, { depth: 21 })] }, ['≤ 21']],
  ['recess-floor-thin', { recesses: [round(40, 400, 100, { depth: 11.1 }), round(40, 400, 100, { depth: 10, face: 'under' })] }, { recesses: [round(40, 400, 100, { depth: 11 }), round(40, 400, 100, { depth: 10, face: 'under' })] }, ['≤ 21']],
  ['recess-off-board', { recesses: [round(40, 400, 19.9)] }, { recesses: [round(40, 400, 20.1)] }, ['≥ 6.1', '= 6']],
  ['recess-near-edge', { recesses: [round(40, 400, 25.9)] }, { recesses: [round(40, 400, 26.02)] }, ['≥ 0.1']],
  ['recess-corner', { recesses: [{ box: { width: 60, height: 30, radius: 5.9 }, at: [400, 100], depth: 5 }] }, { recesses: [{ box: { width: 60, height: 30, radius: 6 }, at: [400, 100], depth: 5 }] }, ['≥ 6.5', '≤ 10.8']],
  ['recess-tight-for-cutter', { recesses: [{ box: { width: 60, height: 30, radius: 6.4 }, at: [400, 100], depth: 5 }] }, { recesses: [{ box: { width: 60, height: 30 }, at: [400, 100], depth: 5 }] }, ['≥ 6.5']],
  ['recess-near-slot', { slots: one, recesses: [round(40, 400, 98.9)] }, { slots: one, recesses: [round(40, 400, 99.02)] }, ['≥ 0.1']],
  ['recess-near-hole', { holes: [post(400, 100)], recesses: [round(40, 440.9, 100)] }, { holes: [post(400, 100)], recesses: [round(40, 441.02, 100)] }, ['≥ 0.1']],
  ['recess-meets-hole', { holes: [post(400, 100)], recesses: [round(100, 400, 100)] }, { holes: [post(400, 100)], recesses: [round(100, 500, 100)] }, ['≥ 71', '= 6']],
  ['recess-meets-hole', { holes: [post(400, 100)], recesses: [round(40, 434.9, 100)] }, { holes: [post(400, 100)], recesses: [round(40, 435.02, 100)] }, ['≥ 6.1', '= 6']],
  ['recess-meets-slot', { slots: one, recesses: [round(40, 400, 92.9)] }, { slots: one, recesses: [round(40, 400, 93.02)] }, ['≥ 6.1', '= 6']],
  ['recess-meets-slot', { slots: one, recesses: [round(40, 432.9, 40, { face: 'under' })] }, { slots: one, recesses: [round(40, 433.02, 40, { face: 'under' })] }, ['≥ 6.1', '= 6']],
  ['recess-meets-slot', { slots: one, recesses: [{ box: { width: 100, height: 100 }, at: [400, 60], depth: 5 }] }, { slots: one, recesses: [{ box: { width: 100, height: 100 }, at: [470, 60], depth: 5 }] }, ['≥ 69', '= 6']],
  ['slot-too-wide', { slots: { ...one, width: 400, depth: 0.1 } }, { slots: { ...one, width: 399.7, depth: 0.1 } }, ['≥ 227']],
  ['recess-near-recess', { recesses: [round(40, 400, 100), round(40, 445.8, 100)] }, { recesses: [round(40, 400, 100), round(40, 446.1, 100)] }, ['≥ 0.1']],
  ['split-through', { slots: one, split: [412.9] }, { slots: one, split: [413.1] }, ['≥ 27.1']],
  ['split-through', { holes: [post(400, 100)], split: [415] }, { holes: [post(400, 100)], split: [415.1] }, ['≥ 27']],
  ['split-through', { recesses: [round(40, 400, 100)], split: [420] }, { recesses: [round(40, 400, 100)], split: [420.1] }, ['≥ 27']],
  ['split-near', { slots: one, split: [439.9] }, { slots: one, split: [440] }, ['≥ 0.1']],
  ['joint-end-grain', { split: [400] }, {}, []],
  ['spline-thick', { split: [400], spline: { thickness: 27 } }, { split: [400], spline: { thickness: 26.9 } }, ['≤ 9']],
  ['bearing-over-template', { recesses: [round(40, 400, 100)], cutter: { diameter: 12, length: 20.1, templateThickness: 12 } }, { recesses: [round(40, 400, 100)], cutter: { diameter: 12, length: 20, templateThickness: 12 } }, ['≥ 12.1', '≤ 20']],
  ['index-holes-meet', { slots: row, indexPins: { spacing: 92 } }, { slots: row, indexPins: { spacing: 91 } }, []],
];

describe('findings', () => {
  it.each(cases)('%s is found, and not just inside its limit', (code, outside, inside) => {
    expect(codesOf(outside)).toContain(code);
    expect(codesOf(inside)).not.toContain(code);
  });

  it.each(cases)('%s has a remedy with the figures that it takes, rounded to the safe side', (code, outside, _inside, figures) => {
    expectFigures(findingsOf(outside).find((f) => f.code === code)!, figures);
  });

  it('say what they have said', async () => {
    await expect(cases.flatMap(([, outside]) => findingsOf(outside).map(asLine)).join('')).toMatchFileSnapshot('../kept/rack-top-findings.txt');
  });

  it('say what was measured, the limit and what would do, under the jig’s name', () => {
    for (const [, outside] of cases) {
      for (const f of findingsOf(outside)) {
        expect(f.jig).toBe('rack');
        expect([f.measured, f.limit].every(Number.isFinite), f.code).toBe(true);
        expect(f.message).toMatch(/^[A-Z]/);
        expect(`${f.message} ${f.remedy}`).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
  });

  it('that slots share are said once, with all their numbers', () => {
    const four = { ...one, count: 4, pitch: 150 };
    const found = (given: Given) => findingsOf(given).map((f) => [f.code, /[Ss]lots? [0-9–, ]*[0-9]/.exec(f.message)?.[0].toLowerCase()]);
    expect(found({ slots: { ...four, depth: 187 } })).toEqual([['slot-through-board', 'slots 1–4']]);
    expect(found({ slots: { ...four, width: 20 } })).toEqual([['slot-narrower-than-item', 'slots 1–4']]);
    expect(found({ slots: [{ ...four, width: 450, count: 2, at: 200 }, { ...one, at: 700 }] })).toEqual([['slot-too-wide', 'slots 1, 2']]);
    expect(found({ slots: { ...four, depth: 170 } }).filter(([code]) => code === 'slot-deep')).toEqual([['slot-deep', 'slots 1–4']]);
  });

  it('never advise a figure that cannot be', () => {
    const path = { path: 'M0 0 H80 V40 H0 Z', size: 80, at: [400, 100], depth: 5 };
    const given: Given[] = [
      { slots: { ...one, width: 600 } }, { slots: { ...one, width: 1 } }, { slots: { ...one, width: 3, liner: 'thick-cork' } }, { recesses: [path] },
      { board: { ...board, thickness: 4 }, recesses: [{ ...path, depth: 4 }] }, { board: { ...board, thickness: 4 }, recesses: [{ ...path, depth: 3 }] },
      { board: { ...board, width: 30 }, slots: { ...one, depth: 10 } }, { slots: { ...one, depth: 186.9 } },
    ];
    for (const each of [...given, ...cases.map(([, outside]) => outside)]) {
      for (const f of findingsOf(each)) expect(f.remedy, f.code).not.toMatch(/−|(?<![0-9.])0 mm/);
    }
    expect(findingsOf({ recesses: [path] })[0]!.remedy).toContain('chisel');
  });

  it('parts that just touch do not overlap, whatever arithmetic leaves behind', () =>
    expect(codesOf({ slots: { ...row, count: 3, at: 100.1, pitch: 152.4, widest: 152.4, gap: 0 } })).not.toContain('items-touch'));

  it('a land below 12 mm is held against 12 mm, above it against the board’s thickness', () => {
    const limit = (pitch: number) => findingsOf({ slots: { ...row, pitch } }).find((f) => f.code === 'land-narrow')?.limit;
    expect(limit(37.9)).toBe(12);
    expect(limit(38.1)).toBe(27);
  });

  it('a pin hole shared by neighbours is no clash', () => {
    expect(codesOf({ slots: row, indexPins: { spacing: 100 } })).not.toContain('index-holes-meet');
  });
});

describe('the shop', () => {
  const given = { slots: one, holes: [post(200, 100, { lean: 14 })] };
  const lean = radians(14);
  // Jaws to lips: the bore on its axis, half the run until the exit is open all round, 3 mm; the quill goes down from the rim's first touch, the other half.
  const reach = 27 / Math.cos(lean) + 15 * Math.tan(lean) + 3;
  const travel = reach + 15 * Math.tan(lean);
  const within = (shop: (typeof context)['shop']) => codesOf(given, { ...context, shop });
  it('is held against bits, table and quill where it is described', () => {
    const bit = (diameter: number, usableLength: number) => ({ bits: [{ diameter, usableLength, point: 2 }] });
    expect(within({})).not.toContain('bit-not-owned');
    expect(within(bit(32, 200))).toContain('bit-not-owned');
    // One size is within 0.05 mm, as in every kind.
    expect(within(bit(30.06, 200))).toContain('bit-not-owned');
    expect(within(bit(30.05, 200))).not.toContain('bit-not-owned');
    expect(within(bit(30, reach - 0.1))).toContain('bit-too-short');
    expect(within(bit(30, reach + 0.1)).filter((c) => c.includes('bit'))).toEqual([]);
    expect(within({ drillPress: { maxTableTilt: radians(13.9) } })).toContain('table-tilt-out-of-reach');
    expect(within({ drillPress: { maxTableTilt: radians(14) } })).not.toContain('table-tilt-out-of-reach');
    expect(within({ drillPress: { stroke: travel - 0.1 } })).toContain('stroke-short');
    expect(within({ drillPress: { stroke: travel + 0.1 } })).not.toContain('stroke-short');
    expect(within({ router: { maxBitDiameter: 11.9 } })).toContain('cutter-beyond-router');
    expect(within({ router: { maxBitDiameter: 12 } })).not.toContain('cutter-beyond-router');
    expect(codesOf({ holes: [post(400, 100, { lean: 45.1, above: 0, below: 0 })] })).toContain('table-tilt-unknown');
    expect(codesOf({ holes: [post(400, 100, { lean: 45, above: 0, below: 0 })] })).not.toContain('table-tilt-unknown');
  });
});

describe('webs against a mesh', () => {
  const facets = 256;
  const legSolid = (h: { at: readonly number[]; lean: number; toward: number }) => {
    const [l, t] = [radians(h.lean), radians(h.toward)];
    const slab = solids.cube([800, 200, 27]).translate([0, 0, -27]);
    return cylinderSolid({ at: [h.at[0]!, h.at[1]!, 0], axis: [Math.sin(l) * Math.cos(t), Math.sin(l) * Math.sin(t), Math.cos(l)], from: -100, to: 100, radius: 15, facets }).intersect(slab);
  };
  const a = { round: 30, at: [350, 120], lean: 20, toward: 40 };
  const b = { round: 30, at: [400, 135], lean: 12, toward: 190 };
  const error = 2 * sagitta(15, facets) / Math.cos(radians(20)) + 0.005;

  it('between two holes is not more than the mesh’s, and within its error of it', () => {
    const top = solved({ holes: [a, b] });
    const mesh = legSolid(a).minGap(legSolid(b), 100);
    const ours = woodBetweenHoles(top.holes[0]!, top.holes[1]!, top.board);
    expect(ours).toBeLessThan(mesh + 0.005);
    expect(mesh - ours).toBeLessThan(error);
  });

  it('between a hole and a slot is the mesh’s within its error', () => {
    const top = solved({ slots: { ...one, at: 330 }, holes: [{ ...a, at: [350, 120] }] });
    const slot = cylinderSolid({ at: [330, 60, 0], axis: [0, 0, 1], from: -27, to: 0, radius: 13, facets })
      .add(solids.cube([26, 60, 27]).translate([317, 0, -27]));
    expect(Math.abs(legSolid(a).minGap(slot, 100) - woodToSlot(top.holes[0]!, top.slots[0]!, top.board))).toBeLessThan(error);
  });
});

describe('the kind', () => {
  /** The starter, and the starter with each of its recesses no longer a comment. */
  const starters = [rackTop.starter, ...(rackTop.starter.match(/^ {4}# {3}- .*$/gm) ?? []).map((example) =>
    rackTop.starter.replace('    # recesses:', '    recesses:').replace(example, example.replace('# ', '  ')))];

  it.each(starters.map((text, i) => [i, text] as const))('has a starter that draws as it stands without a warning (%i)', async (i, text) => {
    const { parseSpec } = await import('../../../src/spec/parse-spec.js');
    const spec = parseSpec({ text, file: 'starter.yaml', kinds: { 'rack-top': rackTop } });
    const within = { ...context, units: spec.units, rounds: spec.rounds };
    const outcome = rackTop.solve(spec.jigs[0]!.fields as Parameters<typeof rackTop.solve>[0], within);
    if ('refused' in outcome) throw new Error(outcome.refused[0]!.message);
    expect(rackTop.check(outcome.solution, within)).toEqual([]);
    expect(outcome.solution.slots).toHaveLength(4);
    expect(outcome.solution.recesses).toHaveLength(Math.min(i, 1));
  });
});
