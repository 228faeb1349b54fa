import { describe, expect, it } from 'vitest';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { stream } from '../../support/any-spec.js';
import { testFont } from '../../support/font.js';
import { context, outcomeOf, type Given } from './rack.js';

const anyRack = (index: number): Given => {
  const next = stream(7919 + 104729 * index);
  const between = (a: number, b: number): number => a + (b - a) * next();
  const pick = <T>(...of: readonly T[]): T => of[Math.floor(next() * of.length)]!;
  const length = between(300, 1600);
  const width = between(100, 320);
  const at = (): readonly [number, number] => [between(0.05, 0.95) * length, between(0.15, 0.85) * width];
  return {
    board: { length, width, thickness: between(10, 40), ...pick({}, { cornerRadius: between(0, 60) }, { endRadius: between(0.5, 0.9) * width }) },
    slots: {
      count: Math.ceil(between(0.1, 6)), item: between(8, 40), pitch: between(30, 200), clearance: between(0, 2), liner: pick('none', 'leather', 'felt', 'thick-cork'),
      edge: pick('front', 'rear', 'alternate'), mouth: pick({}, { flare: between(3, 12) }, { ease: between(0, 9), flare: between(3, 12), run: between(10, 30) }),
    },
    holes: Array.from({ length: Math.floor(between(0, 3)) }, () => ({ round: between(15, 45), at: at(), lean: between(0, 30), toward: between(-360, 360) })),
    recesses: pick([], [{ circle: between(10, 60), at: at(), depth: between(3, 9) }], [{ path: 'M0 0 C30 -20 60 -20 90 0 L70 50 Q45 60 20 50 Z', size: between(30, 90), at: at(), turn: between(-90, 90), depth: 6, face: pick('top', 'under') }]),
    cutter: pick({ diameter: 8 }, { diameter: 6, bushing: 11 }),
  };
};

describe('any rack', () => {
  it('is either refused with figures or drawn with finite figures everywhere', () => {
    let drawn = 0;
    for (let index = 0; index < 120; index += 1) {
      const outcome = outcomeOf(anyRack(index));
      if ('refused' in outcome) {
        expect(outcome.refused.every((f) => f.severity === 'stop' && Number.isFinite(f.measured) && f.remedy !== '')).toBe(true);
        continue;
      }
      drawn += 1;
      const findings = rackTop.check(outcome.solution, context);
      expect(findings.every((f) => Number.isFinite(f.measured) && f.severity !== 'stop')).toBe(true);
      expect(JSON.stringify(rackTop.values(outcome.solution))).not.toContain('null');
      for (const pattern of rackTop.draw(outcome.solution, context, testFont).patterns) {
        expect(Object.values(itemsBounds(pattern.items, testFont)).every(Number.isFinite), `${index} ${pattern.name}`).toBe(true);
      }
    }
    expect(drawn).toBeGreaterThan(20);
  });
});
