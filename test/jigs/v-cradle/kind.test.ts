import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemBounds } from '../../../src/drawing/item-bounds.js';
import { vCradle } from '../../../src/jigs/v-cradle/index.js';
import type { VCradleFields } from '../../../src/jigs/v-cradle/schema.js';
import type { Value } from '../../../src/jigs/jig.js';
import { parseSpec } from '../../../src/spec/parse-spec.js';
import { testFont } from '../../support/font.js';
import { found } from './cradle.js';
import { drawn } from './written.js';

const numbersIn = (value: Value): number[] => typeof value === 'number' ? [value] : Object.values(value as Readonly<Record<string, Value>>).flatMap(numbersIn);

describe('the v-cradle kind', () => {
  it('has a starter that reads, solves and draws with nothing found', () => {
    const spec = parseSpec({ text: vCradle.starter, file: 'starter.yaml', kinds: { 'v-cradle': vCradle } });
    const context = { name: 'drilling cradle', units: spec.units, rounds: spec.rounds, shop: spec.shop, drawingArea: { width: 180, height: 240 }, jig: () => undefined, mistaken: () => { throw new Error('mistaken'); } };
    const outcome = vCradle.solve(spec.jigs[0]!.fields as VCradleFields, context);
    if ('refused' in outcome) throw new Error('refused');
    expect(vCradle.check(outcome.solution, context)).toEqual([]);
    expect(vCradle.draw(outcome.solution, context, testFont).patterns.map((p) => p.name)).toEqual(['end-section', 'rounds', 'plan']);
  });

  it('has a starter whose commented lines read too', () => {
    const text = vCradle.starter.split('\n').map((line) => line.replace(/^( +)# (includedAngle|depth|flat|block|stop|carrier|  sharpAngle|  sawReading|  twist)/, '$1$2')).join('\n');
    const spec = parseSpec({ text, file: 'starter.yaml', kinds: { 'v-cradle': vCradle } });
    expect(spec.jigs[0]!.fields).toMatchObject({ depth: 24, flat: 4, stop: 10, carrier: { sawReading: 0 } });
  });

  it('adds carrier patterns and page only where a carrier is asked for', () => {
    const { drawing } = drawn({ fields: 'holds: [post], carrier: { sharpAngle: 25 }' });
    expect(drawing.patterns.map((p) => p.name)).toEqual(['end-section', 'rounds', 'plan', 'carrier-section', 'carrier', 'finished-end']);
    expect(drawing.setUps.map((s) => s.code)).toEqual(['saw-v', 'saw-carrier-v', 'drill', 'carrier']);
  });

  it('makes the carrier alone where that is asked for: no block, nothing to drill in, its own fences', () => {
    const { drawing, findings } = drawn({ fields: 'holds: [post], make: [carrier], block: { width: 30 }, carrier: { sharpAngle: 25 }' });
    expect(drawing.patterns.map((p) => p.name)).toEqual(['carrier-section', 'carrier', 'finished-end']);
    expect(drawing.setUps.map((s) => s.code)).toEqual(['saw-carrier-v', 'carrier']);
    // A block so narrow would be refused; it is not made.
    expect(findings.filter((f) => f.severity !== 'note')).toEqual([]);
    expect(drawn({ fields: 'holds: [post], make: [block], carrier: { sharpAngle: 25 }' }).drawing.setUps.map((s) => s.code)).toEqual(['saw-v', 'drill']);
  });

  it('says of each finding on which page it belongs', () => {
    const { findings } = drawn({ fields: 'holds: [post], block: { height: 20 }, carrier: { sharpAngle: 20, sawReading: 55 }' });
    const on = (code: string): string[] => findings.filter((f) => f.code === code).map((f) => f.about.operation);
    expect([on('floor-thin'), on('turn-small')]).toEqual([['saw-v'], ['saw-carrier-v']]);
  });

  it('is refused or drawn in finite numbers, whatever the spec says', () => {
    const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
    fc.assert(fc.property(fc.record({
      rounds: fc.uniqueArray(tenths(3, 300), { minLength: 1, maxLength: 4 }), angle: tenths(20, 160), flat: tenths(0, 40), sharp: tenths(5, 89), reading: tenths(0, 80),
    }), ({ rounds, angle, flat, sharp, reading }) => {
      const fields = `holds: [${rounds.join(', ')}], includedAngle: ${angle}, flat: ${flat}, carrier: { sharpAngle: ${sharp}, sawReading: ${reading} }`;
      if (found({ fields }).some((f) => f.endsWith('stop'))) return;
      const { drawing, values } = drawn({ fields });
      expect(numbersIn(values).every(Number.isFinite)).toBe(true);
      for (const p of [...drawing.patterns, ...drawing.setUps.map((s) => s.picture)]) {
        for (const item of p.items) expect(Object.values(itemBounds(item, testFont)).every(Number.isFinite)).toBe(true);
      }
    }), { numRuns: 60, seed: 11 });
  });

  it('never stops a cradle that it sized itself for one round', () => {
    fc.assert(fc.property(fc.integer({ min: 120, max: 3000 }), fc.integer({ min: 60, max: 150 }), fc.integer({ min: 12, max: 70 }), (d, angle, sharp) => {
      // A flat of 4 mm leaves a round of 12 mm its flanks at 60° and more; wider V's need a narrower one.
      const fields = `holds: [${d / 10}], includedAngle: ${angle}, flat: ${(d / 10) * 0.12 * (1 - Math.sin((angle * Math.PI) / 360))}, carrier: { sharpAngle: ${sharp} }`;
      // A carrier longer than a bench is stopped: no size of its own would do.
      expect(found({ fields }).filter((f) => f !== 'carrier-too-long stop' && /stop$|groove-shallow|below-top|wall-thin|floor-thin|block-short/.test(f))).toEqual([]);
    }), { numRuns: 100, seed: 3 });
  });
});
