import { describe, expect, it } from 'vitest';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import type { Context } from '../../../src/jigs/jig.js';
import { radians } from '../../../src/units/units.js';
import { context, fields } from './written.js';

type Given = Parameters<typeof fields>[0];

const codes = (given: Given, within: Context = context): readonly string[] => {
  const outcome = saddleCope.solve(fields(given), within);
  return ('refused' in outcome ? outcome.refused : saddleCope.check(outcome.solution, within)).map((f) => f.code);
};

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
  ['pin-wall-thin', { pin: { diameter: 10, intoMain: 42 } }, { pin: { diameter: 10, intoMain: 41.5 } }],
  ['pin-breaks-out', { pin: { diameter: 10, intoMain: 48.5 } }, { pin: { diameter: 10, intoMain: 47.5 } }],
  ['pin-skin-thin', { pin: { diameter: 8 }, branchDiameter: 16, offset: 16.1 }, { pin: { diameter: 8 }, branchDiameter: 16, offset: 15.9 }],
  ['pin-bit-short', { pin: { diameter: 10 } }, { pin: { diameter: 10 } }, [bits(34.8), bits(34.9)]],
  ['pin-bit-not-owned', { pin: { diameter: 9 } }, { pin: { diameter: 10 } }, [bits(60), bits(60)]],
  ['saw-out-of-reach', { ...noPin, angle: radians(39.9) }, { ...noPin, angle: radians(40.1) },
    [{ ...context, shop: { saw: { maxReading: radians(50) } } }, { ...context, shop: { saw: { maxReading: radians(50) } } }]],
  ['ends-meet', { ...noPin, ...ends(54.9) }, { ...noPin, ...ends(55.1) }],
  ['branch-short', { ...noPin, ...ends(200), branch: { name: 'rail', diameter: 25, length: 156.6 } }, { ...noPin, ...ends(200), branch: { name: 'rail', diameter: 25, length: 156.8 } }],
  ['wrap-over-one-sheet', { ...noPin, branchDiameter: 78, mainDiameter: 120 }, { ...noPin, branchDiameter: 77, mainDiameter: 120 }],
];

function ends(centres: number): Given {
  return { centres, farEnd: { main: { name: 'post', diameter: 50 }, angle: Math.PI / 2, offset: 0, twist: 0 } };
}

describe('check', () => {
  it.each(cases)('reports %s, and just inside the limit does not', (code, out, within, contexts) => {
    expect(codes(out, contexts?.[0])).toContain(code);
    expect(codes(within, contexts?.[1])).not.toContain(code);
  });

  it('names the excess, and the nearest offset and diameters that would do', () => {
    const outcome = saddleCope.solve(fields({ offset: 12.6 }), context);
    if (!('refused' in outcome)) throw new Error('expected a refusal');
    expect(outcome.refused).toEqual([{
      jig: 'brace saddle', code: 'branch-overhangs-main', severity: 'stop', measured: 25.1, limit: 25,
      message: expect.stringContaining('0.10 mm over'), remedy: expect.stringContaining('an offset of up to 12.5 mm'),
    }]);
  });
});
