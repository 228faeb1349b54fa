import { describe, expect, it, test } from 'vitest';
import { carrierOf } from '../../../src/jigs/v-cradle/carrier.js';
import { expectFigures, figuresIn } from '../../support/remedy-figures.js';
import { cradle, findingsOf, type CradleText } from './cradle.js';
import { drawn } from './written.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;
const close = (value: number) => expect.closeTo(value, 9);
const found = (text: CradleText, code: string) => findingsOf(text).find((f) => f.code === code)!;
/** A round of 32 in a carrier for a sharp angle of 20°, the saw square. */
const steep = (more: string, sharp = 20) => `holds: [post], carrier: { sharpAngle: ${sharp}${more} }`;
const carrier = (more: string, sharp = 20) => cradle({ fields: steep(more, sharp) }).solution.carrier!;

describe('a carrier’s length', () => {
  it('leaves 50 mm of the short side beside its oblique end, however small its turn, and hands 150 mm', () => {
    for (const turn of [5, 8, 12, 20, 40, 70]) {
      const c = carrierOf({ round: { name: 'r', diameter: 20 }, sharpAngle: rad(20), sawReading: rad(70 - turn) }, 18, 'mm');
      const sideA = c.length - c.seatSide / Math.tan(c.turn);
      expect(c.turn).toBeCloseTo(rad(turn), 9);
      expect(sideA).toBeGreaterThanOrEqual(50 - 1e-9);
      expect(c.handDistance).toBeGreaterThanOrEqual(150 - 1e-9);
      // No longer than the next size up of whichever needs more.
      expect(Math.min(sideA - 50, (c.handDistance - 150) / Math.sin(rad(20)))).toBeLessThan(15);
    }
  });
});

describe('what is said of a carrier', () => {
  it('too short for hands: how near they come, and the length that keeps them off', () => {
    const c = carrier(', length: 500');
    const short = found({ fields: steep(', length: 500') }, 'carrier-short');
    // Along the carrier from the blade to its far end, turned by the sharp angle, less side B’s share.
    const near = (500 - c.endToBlade) * Math.sin(rad(20)) - c.bladeSide * Math.cos(rad(20));
    expect([short.measured, short.limit, figuresIn(short.message)]).toEqual([close(near), 150, [500, 20, expect.closeTo(near, 0), 150]]);
    expectFigures(short, [`≥ ${c.endToBlade + (150 + c.bladeSide * Math.cos(rad(20))) / Math.sin(rad(20))}`]);
    expect(short.would.map(({ field }) => field)).toEqual(['carrier.length']);
  });

  it('too short beside its oblique end, where hands would do', () => {
    // Turned by 20° and 320 wide: the oblique end takes seat side ÷ tan 20° of the one side.
    const more = (length: string) => `, sawReading: 50, width: 320${length}`;
    const c = carrier(more(''));
    const needed = c.seatSide / Math.tan(rad(20)) + 50;
    expect(c.endToBlade + (150 + c.bladeSide * Math.cos(rad(20))) / Math.sin(rad(20))).toBeLessThan(needed - 30);
    const length = Math.round(needed - 30);
    const short = found({ fields: steep(more(`, length: ${length}`)) }, 'carrier-short');
    expect([short.measured, short.limit, figuresIn(short.message)]).toEqual([close(length - needed + 50), 50, [length, 20, expect.closeTo(length - needed + 50, 0)]]);
    expectFigures(short, [`≥ ${needed}`]);
  });

  it('a seat on the fence that is short, by how much, and the width that makes it 25 mm', () => {
    const at = (width: number) => ({ c: carrier(`, width: ${width}`), finding: found({ fields: steep(`, width: ${width}`) }, 'carrier-seat-short') });
    // Blade's side, the way from the groove's middle to the blade at the fence, and 18 mm of seat at 70°.
    const whole = carrier('');
    const width = whole.bladeSide + whole.bladeToAxis * Math.sin(rad(20)) + 18 * Math.sin(rad(70));
    const { c, finding } = at(Number(width.toFixed(3)));
    expect(c.seat).toBeCloseTo(18, 2);
    expect([finding.severity, finding.measured, finding.limit, figuresIn(finding.message)]).toEqual(['warn', close(c.seat), 25, [expect.closeTo(c.seat, 0)]]);
    // The end stands square to its own cut, at 90° less the turn: a millimetre of width is 1 ÷ sin 70° of seat.
    expectFigures(finding, [`≥ ${width + 7 * Math.sin(rad(70))}`]);
    expect(finding.message).toContain('rocks');
    const little = at(Number((width - 17.5 * Math.sin(rad(70))).toFixed(3)));
    expect([little.c.seat, little.finding.severity, little.finding.message.includes('rocks')]).toEqual([expect.closeTo(0.5, 2), 'warn', true]);
    const gone = at(Number((width - 20).toFixed(3))).finding;
    expect([gone.severity, gone.measured < 0, gone.message.includes('takes away all')]).toEqual(['stop', true, true]);
  });

  it('a small turn: the reading that turns it by 20°, or none', () => {
    const small = found({ fields: steep(', sawReading: 58') }, 'turn-small');
    expect([small.measured, small.limit, figuresIn(small.message)]).toEqual([close(12), close(20), [12, 78]]);
    expectFigures(small, ['≤ 50']);
    expect(small.would).toEqual([{ field: 'carrier.sawReading', value: close(50), unit: 'degrees' }]);
    // At a sharp angle of 75° the whole turn is 15°: no reading makes it 20.
    const none = found({ fields: steep('', 75) }, 'turn-small');
    expect([none.would, figuresIn(none.remedy)]).toEqual([[], [15]]);
    // At 70° it is 20, square: nothing is said; at 69° with the saw at 5° it is 16, and 1° would do.
    expect(found({ fields: steep('', 70) }, 'turn-small')).toBeUndefined();
    expectFigures(found({ fields: steep(', sawReading: 5', 69) }, 'turn-small'), ['≤ 1']);
    expectFigures(found({ fields: steep(', sawReading: 5', 70) }, 'turn-small'), ['≤ 0']);
  });

  it('its own end’s cut beyond the saw: the reading that brings it back, with the shop’s reach or the usual one', () => {
    const shop = '{ saw: { maxReading: 30 } }';
    const far = found({ fields: steep(', sawReading: 15'), shop }, 'end-cut-out-of-reach');
    // 90° − 55° = 35° from square: 10° of reading would make it 30°.
    expect([far.severity, far.measured, far.limit, figuresIn(far.message)]).toEqual(['warn', close(35), close(30), [35, 30]]);
    expectFigures(far, ['≤ 10']);
    expect(far.would).toEqual([{ field: 'carrier.sawReading', value: close(10), unit: 'degrees' }]);
    // A sharp angle of 40° is itself more than the saw’s 30°.
    const none = found({ fields: steep('', 40), shop }, 'end-cut-out-of-reach');
    expect([none.measured, none.would, figuresIn(none.remedy)]).toEqual([close(40), [], []]);
    const usual = found({ fields: steep(', sawReading: 30') }, 'end-cut-out-of-reach');
    expect([usual.severity, usual.measured, usual.limit]).toEqual(['note', close(50), close(45)]);
    expectFigures(usual, ['≤ 25']);
  });

  it('the saw’s reach and depth: heel from the fence, and round and block under the blade', () => {
    const c = carrier('');
    const reach = found({ fields: steep(''), shop: '{ saw: { reach: 100 } }' }, 'saw-reach-short');
    expect([reach.measured, reach.limit, figuresIn(reach.message)]).toEqual([close(c.toeToFence + 32 / Math.sin(rad(20))), 100, [expect.closeTo(c.bladeReach, 0), 100]]);
    // Depth 14 in a block of 30: the axis 16·√2 over the V’s point at 16, the top 16 more, 22.627 proud of the block.
    const tall = (maxDepth: number) => found({ fields: `depth: 14, flat: 0, block: { height: 30 }, ${steep('')}`, shop: `{ saw: { maxDepth: ${maxDepth} } }` }, 'saw-depth-short');
    const top = 30 - 14 + 16 * Math.SQRT2 + 16;
    expect([tall(50).measured, tall(50).limit]).toEqual([close(top), 50]);
    expectFigures(tall(50), [`≤ ${30 - (top - 50)}`]);
    // 10 mm of floor under the groove is the least: 24 high; lower than that is no block.
    expect(tall(top - 6.5).would).toEqual([]);
    expect(tall(top - 5).would.map(({ field }) => field)).toEqual(['block.height']);
  });
});

test('a twist of nothing is drawn as none, one of a degree is shown', () => {
  const items = (twist: string) => drawn({ fields: `holds: [post], carrier: { sharpAngle: 20${twist} }` }).drawing.patterns.find(({ name }) => name === 'finished-end')!.items;
  expect(items(', twist: 0')).toEqual(items(''));
  expect(items(', twist: 1').length).toBeGreaterThan(items('').length);
  expect(items(', twist: -1').length).toBeGreaterThan(items('').length);
});
