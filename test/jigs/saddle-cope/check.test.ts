import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/errors/finding.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import type { Context } from '../../../src/jigs/jig.js';
import { radians } from '../../../src/units/units.js';
import { asLine, expectFigures } from '../../support/remedy-figures.js';
import { context, fields } from './written.js';

type Given = Parameters<typeof fields>[0];

const findings = (given: Given, within: Context = context): readonly Finding[] => {
  const outcome = saddleCope.solve(fields(given), within);
  return 'refused' in outcome ? outcome.refused : saddleCope.check(outcome.solution, within);
};
const codes = (given: Given, within?: Context): readonly string[] => findings(given, within).map((f) => f.code);

const noPin = { pin: { diameter: 0 } };
const bits = (usableLength: number): Context => ({ ...context, shop: { bits: [{ diameter: 10, usableLength, point: 2 }] } });

/** A code, a spec that brings it out, and one just inside that does not. Limits are common practice. */
const cases: readonly [code: string, out: Given, within: Given, context?: readonly [Context, Context]][] = [
  ['branch-overhangs-main', { ...noPin, branchDiameter: 40.02, mainDiameter: 40 }, { ...noPin, branchDiameter: 40, mainDiameter: 40 }],
  ['branch-overhangs-main', { ...noPin, offset: 12.51 }, { ...noPin, offset: -12.5 }],
  ['wing-thin', { ...noPin, branchDiameter: 42.6 }, { ...noPin, branchDiameter: 42.4 }],
  ['wing-knife-edge', { ...noPin, branchDiameter: 47.6 }, { ...noPin, branchDiameter: 47.4 }],
  ['wing-knife-edge', { ...noPin, offset: 11.3 }, { ...noPin, offset: 11.2 }],
  ['measured-stock-tight', { ...noPin, branchDiameter: 49.7 }, { ...noPin, branchDiameter: 49.5 }],
  ['pin-over-branch', { pin: { diameter: 21.1 } }, { pin: { diameter: 21 } }],
  ['pin-thick', { pin: { diameter: 12.6 } }, { pin: { diameter: 12.5 } }],
  ['pin-thin', { pin: { diameter: 8.2 } }, { pin: { diameter: 8.3 } }],
  ['pin-short', { pin: { diameter: 10, intoBranch: 29.9 } }, { pin: { diameter: 10, intoBranch: 30 } }],
  // A hole square to the main of 50, rim of radius 5: √(25² − …) leaves 25 + (depth + 3) … the bit's point decides, 3 mm beyond the lips.
  ['pin-wall-thin', { pin: { diameter: 10, intoMain: 39.6 } }, { pin: { diameter: 10, intoMain: 39.4 } }],
  ['pin-breaks-out', { pin: { diameter: 10, intoMain: 45.6 } }, { pin: { diameter: 10, intoMain: 45.4 } }],
  ['pin-skin-thin', { pin: { diameter: 8 }, branchDiameter: 16, offset: 16.1 }, { pin: { diameter: 8 }, branchDiameter: 16, offset: 15.9 }],
  // Square, branch 25 on main 50: horn √(25² − 12.5²) = 21.651, bottom of the hollow 25; 3.349 + 30 + 1.5 from the horn, and 1 of the first cut beyond it.
  ['bit-too-short', { pin: { diameter: 10 } }, { pin: { diameter: 10 } }, [bits(35.8), bits(35.9)]],
  ['bit-not-owned', { pin: { diameter: 9 } }, { pin: { diameter: 10 } }, [bits(60), bits(60)]],
  ['saw-reading-out-of-reach', { ...noPin, angle: radians(39.9) }, { ...noPin, angle: radians(40.1) },
    [{ ...context, shop: { saw: { maxReading: radians(50) } } }, { ...context, shop: { saw: { maxReading: radians(50) } } }]],
  ['saw-reading-unknown', { ...noPin, angle: radians(44.9) }, { ...noPin, angle: radians(45) }],
  ['table-tilt-unknown', { angle: radians(44.9) }, { angle: radians(45) }],
  ['table-tilt-out-of-reach', { angle: radians(59.9) }, { angle: radians(60) },
    [{ ...context, shop: { drillPress: { maxTableTilt: radians(30) } } }, { ...context, shop: { drillPress: { maxTableTilt: radians(30) } } }]],
  ['saw-depth-short', noPin, noPin, [{ ...context, shop: { saw: { maxDepth: 24.9 } } }, { ...context, shop: { saw: { maxDepth: 25 } } }]],
  // The hole in the branch takes 35.849 from a blank cut off 1 mm beyond the horn.
  ['stroke-short', { pin: { diameter: 10, intoMain: 20 } }, { pin: { diameter: 10, intoMain: 20 } },
    [{ ...context, shop: { drillPress: { stroke: 35.8 } } }, { ...context, shop: { drillPress: { stroke: 35.9 } } }]],
  ['ends-meet', { ...noPin, ...ends(54.9) }, { ...noPin, ...ends(55.1) }],
  ['branch-short', { ...noPin, ...ends(200), branch: { name: 'rail', diameter: 25, length: 156.6 } }, { ...noPin, ...ends(200), branch: { name: 'rail', diameter: 25, length: 156.8 } }],
  ['branch-ends-before-toe', { ...noPin, ...ends(200), branch: { name: 'rail', diameter: 25, length: 158.6 } }, { ...noPin, ...ends(200), branch: { name: 'rail', diameter: 25, length: 158.8 } }],
  ['wrap-over-one-sheet', { ...noPin, branchDiameter: 78, mainDiameter: 120 }, { ...noPin, branchDiameter: 77, mainDiameter: 120 }],
];

/** The figures of each case's remedy, worked out on paper. */
const figures: readonly (readonly string[])[] = [
  // Sound up to 0.85 of the main's radius, closed up to all of it.
  ['≤ 34', '≥ 47.0824', '≤ 40', '≥ 40.02'], ['≤ 8.75', '≤ 17.48', '≥ 58.8471', '≤ 12.5', '≤ 24.98', '≥ 50.02'],
  ['≤ 42.5', '≥ 50.1176'], ['≤ 42.5', '≥ 56'], ['≤ 19.9', '≥ 56'], [],
  // A third to a half of the branch; three diameters and 30 mm; 50 − 6 − 3 − 1.5; 2 (25 − 16.1 − 5).
  ['≥ 8.3333', '≤ 12.5'], ['≥ 8.3333', '≤ 12.5'], ['≥ 8.3333', '≤ 12.5'], ['≥ 30', '= 30'], ['≤ 39.5'], ['≤ 39.5'], ['≤ 7.8'],
  ['≥ 35.8494'], ['≥ 35.8494', '= 10'], [], [], [], [], [], [],
  // 25 + 25 + 5; from horn to horn 200 − 2·21.651, and 1 beyond it at either end.
  ['≥ 55'], ['≥ 158.699'], ['≥ 158.699'], [],
];

function ends(centres: number): Given {
  return { centres, farEnd: { main: { name: 'post', diameter: 50 }, angle: Math.PI / 2, offset: 0, twist: 0 } };
}

describe('check', () => {
  it.each(cases)('reports %s, and just inside the limit does not', (code, out, within, contexts) => {
    expect(codes(out, contexts?.[0])).toContain(code);
    expect(codes(within, contexts?.[1])).not.toContain(code);
  });

  it.each(cases.map((of, i) => [of[0], of, figures[i]!] as const))('%s has a remedy with the figures that it takes', (code, [, out, , contexts], worked) => {
    expectFigures(findings(out, contexts?.[0]).find((f) => f.code === code)!, worked);
  });

  it('says what it has said', async () => {
    await expect(cases.flatMap(([, out, , contexts]) => findings(out, contexts?.[0]).map(asLine)).join('')).toMatchFileSnapshot('../kept/saddle-cope-findings.txt');
  });

  it('names the field that a written diameter stands in: the end’s own main', () => {
    const unnamed = (diameter: number) => ({ name: `Ø ${diameter} mm`, diameter, unnamed: true as const });
    const far = (main: ReturnType<typeof unnamed>) => ({ ...noPin, centres: 300, farEnd: { main, angle: Math.PI / 2, offset: 0, twist: 0 } });
    const [thin] = findings(far(unnamed(28))).filter((f) => f.code === 'wing-thin');
    expect(thin!.about).toMatchObject({ operation: 'hollow', end: 'far' });
    expect(thin!.would.map(({ field }) => field)).toEqual(['rounds.brace', 'farEnd.main']);
    const [near] = findings({ ...noPin, main: unnamed(28) }).filter((f) => f.code === 'wing-thin');
    expect(near!.would.map(({ field }) => field)).toEqual(['rounds.brace', 'main']);
  });

  it('says how much wood two hollows leave between them, or how far they run into each other', () => {
    const said = (centres: number): string => findings({ ...noPin, ...ends(centres) }).find((f) => f.code === 'ends-meet')!.message;
    expect(said(54)).toContain('leave 4 mm (5⁄32″) of wood between them, less than 5 mm');
    expect(said(40)).toContain('run 10 mm (25⁄64″) into each other');
  });

  it('names the excess, and the nearest offset and diameters that would do', () => {
    const outcome = saddleCope.solve(fields({ offset: 12.6 }), context);
    if (!('refused' in outcome)) throw new Error('expected a refusal');
    expect(outcome.refused).toEqual([{
      jig: 'brace saddle', code: 'branch-overhangs-main', severity: 'stop', measured: 25.1, limit: 25,
      about: { jig: 'brace saddle', operation: 'hollow', end: 'near', round: 'brace' },
      message: expect.stringContaining('0.10 mm over'), remedy: expect.stringMatching(/offset of up to 8.7 mm.*branch of up to Ø 17.2 mm.*main of at least Ø 59.1 mm.*just closes.*offset of up to 12.5 mm.*branch of up to Ø 24.8 mm/),
      would: [
        { field: 'offset', value: expect.closeTo(8.7, 9), unit: 'mm' }, { field: 'rounds.brace', value: expect.closeTo(17.2, 9), unit: 'mm' }, { field: 'rounds.post', value: expect.closeTo(59.1, 9), unit: 'mm' },
      ],
    }]);
  });
});
