import { describe, expect, it } from 'vitest';
import { asLine, expectFigures } from '../../support/remedy-figures.js';
import { type CradleText, cradle, findingsOf, found } from './cradle.js';

interface Case {
  readonly code: string;
  readonly triggers: CradleText;
  readonly inside: CradleText;
  /** The remedy's figures, worked out on paper. */
  readonly figures: readonly string[];
}

const saw = (shop: string): string => `{ saw: { ${shop} } }`;
const steep = 'holds: [post], carrier: { sharpAngle: 20';

/** Each finding with figures just past its limit, and just inside it. Limits: common practice, unless geometry sets them. */
const cases: Case[] = [
  // 90°: the contacts of D lie D / 2.828 above the V's point; sharp, so the depth is the same.
  { code: 'rests-on-edges stop', triggers: { fields: 'holds: [post], flat: 0, depth: 11.313' }, inside: { fields: 'holds: [post], flat: 0, depth: 11.314' }, figures: ['≥ 14.2222', '= 11.3'] },
  { code: 'groove-shallow warn', triggers: { fields: 'holds: [post], flat: 0, depth: 14.222' }, inside: { fields: 'holds: [post], flat: 0, depth: 14.223' }, figures: ['≥ 14.2222'] },
  { code: 'contacts-leave-flanks stop', triggers: { fields: 'holds: [post, 10], flat: 7.072, depth: 12' }, inside: { fields: 'holds: [post, 10], flat: 7.071, depth: 12' }, figures: ['≤ 3.1421', '= 4.1'] },
  { code: 'contacts-leave-flanks stop', triggers: { fields: 'holds: [10], flat: 8.89' }, inside: { fields: 'holds: [post], flat: 8.89' }, figures: ['≤ 3.1421', '= 7.1'] },
  // Over the flat: r·(√2 − 1) = 2.0711 for D 10, half the flat at 90°.
  { code: 'rides-on-flat stop', triggers: { fields: 'holds: [post, 10], flat: 4.143, depth: 12' }, inside: { fields: 'holds: [post, 10], flat: 4.142, depth: 12' }, figures: ['≤ 3.1421', '= 4.1'] },
  { code: 'gap-small warn', triggers: { fields: 'holds: [post, 10], flat: 3.143, depth: 12' }, inside: { fields: 'holds: [post, 10], flat: 3.142, depth: 12' }, figures: ['≤ 3.1421'] },
  // D 32, 90°, sharp: top 38.627 above the V's point.
  { code: 'below-top warn', triggers: { fields: 'holds: [post], flat: 0, depth: 38.628' }, inside: { fields: 'holds: [post], flat: 0, depth: 38.627' }, figures: ['≤ 38.627'] },
  { code: 'block-narrow stop', triggers: { fields: 'holds: [post], depth: 14, block: { width: 31.999 }' }, inside: { fields: 'holds: [post], depth: 14, block: { width: 32.001 }' }, figures: ['≥ 56'] },
  { code: 'wall-thin warn', triggers: { fields: 'holds: [post], depth: 14, block: { width: 43.999 }' }, inside: { fields: 'holds: [post], depth: 14, block: { width: 44 }' }, figures: ['≥ 44'] },
  { code: 'groove-through stop', triggers: { fields: 'holds: [post], depth: 14, block: { height: 13.999 }' }, inside: { fields: 'holds: [post], depth: 14, block: { height: 14.001 }' }, figures: ['≥ 26'] },
  { code: 'floor-thin warn', triggers: { fields: 'holds: [post], depth: 14, block: { height: 23.999 }' }, inside: { fields: 'holds: [post], depth: 14, block: { height: 24 }' }, figures: ['≥ 24'] },
  { code: 'block-short warn', triggers: { fields: 'holds: [post], block: { length: 149.999 }' }, inside: { fields: 'holds: [post], block: { length: 150 }' }, figures: ['≥ 150'] },
  { code: 'block-short warn', triggers: { fields: 'holds: [50], block: { length: 199.999 }' }, inside: { fields: 'holds: [50], block: { length: 200 }' }, figures: ['≥ 200'] },
  { code: 'block-short warn', triggers: { fields: 'holds: [50], stop: 10, block: { length: 209.999 }' }, inside: { fields: 'holds: [50], stop: 10, block: { length: 210 }' }, figures: ['≥ 210'] },
  { code: 'stop-off-block stop', triggers: { fields: 'holds: [post], stop: 200, block: { length: 200 }' }, inside: { fields: 'holds: [post], stop: 199.999, block: { length: 200 }' }, figures: ['≥ 350'] },
  { code: 'blade-tilt-out-of-reach warn', triggers: { fields: 'holds: [post]', shop: saw('maxTilt: 44.99') }, inside: { fields: 'holds: [post]', shop: saw('maxTilt: 45') }, figures: ['≤ 89.98'] },
  { code: 'blade-tilt-unknown note', triggers: { fields: 'holds: [post], includedAngle: 90.1' }, inside: { fields: 'holds: [post]' }, figures: ['≤ 90'] },
  // 14 mm with the blade at 45° takes 19.799 mm of reach.
  { code: 'saw-depth-short warn', triggers: { fields: 'holds: [post], depth: 14', shop: saw('maxDepth: 19.798') }, inside: { fields: 'holds: [post], depth: 14', shop: saw('maxDepth: 19.8') }, figures: ['≤ 13.9993'] },
  // 3 mm tooth at 60°: 3·cos 60° / cos 30° = 1.7321 of flat.
  { code: 'tooth-past-flank note', triggers: { fields: 'holds: [post], includedAngle: 60, flat: 1.732', shop: saw('kerf: 3') }, inside: { fields: 'holds: [post], includedAngle: 60, flat: 1.7321', shop: saw('kerf: 3') }, figures: ['≥ 1.7321'] },
  // Sharp angle and reading of 90° lie along the fence; 3° past it either way is no turn to make a carrier for (common practice).
  { code: 'no-carrier-needed stop', triggers: { fields: `${steep}, sawReading: 67.01 }` }, inside: { fields: `${steep}, sawReading: 66.99 }` }, figures: ['= 70', '≤ 50'] },
  { code: 'no-carrier-needed stop', triggers: { fields: `${steep}, sawReading: 72.99 }` }, inside: { fields: `${steep}, sawReading: 73.01 }` }, figures: ['= 70', '≤ 50'] },
  { code: 'reading-past-angle stop', triggers: { fields: `${steep}, sawReading: 73.01 }` }, inside: { fields: `${steep}, sawReading: 72.99 }` }, figures: ['= 70', '≤ 50'] },
  // Hands 150 mm off a blade at 6°: 150/sin 6° = 1435 and the way to the blade; at 5° 1721: longer than a bench.
  { code: 'carrier-too-long stop', triggers: { fields: 'holds: [10], flat: 1, carrier: { sharpAngle: 5 }' }, inside: { fields: 'holds: [10], flat: 1, carrier: { sharpAngle: 7 }' }, figures: [] },
  { code: 'carrier-round-not-held stop', triggers: { fields: `${steep}, round: rail }` }, inside: { fields: `${steep}, round: post }` }, figures: [] },
  // Waste room of 30 mm along the round: the toe stands 30·sin 70° off the fence; the blade's line to the groove's end (16/sin 20° + 28.191)/sin 70° = 79.783. Side B, 35.642 off the groove's middle, comes 35.642·cos 20° nearer to the blade: (150 + 33.492)/sin 20° = 536.497.
  { code: 'carrier-short stop', triggers: { fields: `${steep}, length: 616.27 }` }, inside: { fields: `${steep}, length: 616.29 }` }, figures: ['≥ 616.279'] },
  { code: 'turn-small warn', triggers: { fields: `${steep}, sawReading: 50.1 }` }, inside: { fields: `${steep}, sawReading: 50 }` }, figures: ['≤ 50'] },
  { code: 'saw-reading-out-of-reach warn', triggers: { fields: `${steep}, sawReading: 20 }`, shop: saw('maxReading: 19.9') }, inside: { fields: `${steep}, sawReading: 20 }`, shop: saw('maxReading: 20') }, figures: ['≤ 19.9'] },
  { code: 'end-cut-out-of-reach warn', triggers: { fields: `${steep}, sawReading: 20 }`, shop: saw('maxReading: 39.9') }, inside: { fields: `${steep}, sawReading: 20 }`, shop: saw('maxReading: 40') }, figures: ['≤ 19.9'] },
  { code: 'saw-reading-unknown note', triggers: { fields: `${steep}, sawReading: 45.1 }` }, inside: { fields: `${steep}, sawReading: 45 }` }, figures: ['≤ 45'] },
  { code: 'end-cut-out-of-reach note', triggers: { fields: `${steep}, sawReading: 25.1 }` }, inside: { fields: `${steep}, sawReading: 25 }` }, figures: ['≤ 25'] },
  // Fence to heel along the blade: 28.191 + 32/sin 20° = 121.752.
  { code: 'saw-reach-short warn', triggers: { fields: `${steep} }`, shop: saw('reach: 121.7') }, inside: { fields: `${steep} }`, shop: saw('reach: 121.8') }, figures: [] },
  { code: 'carrier-not-needed note', triggers: { fields: 'holds: [post], carrier: { sharpAngle: 40 }', shop: saw('maxReading: 50') }, inside: { fields: 'holds: [post], carrier: { sharpAngle: 39.9 }', shop: saw('maxReading: 50') }, figures: [] },
  // Block 26 high, groove 14 deep with its point at 16: the top of D 32 stands 22.627 proud.
  { code: 'saw-depth-short warn', triggers: { fields: `depth: 14, block: { height: 26 }, ${steep} }`, shop: saw('maxDepth: 48.62') }, inside: { fields: `depth: 14, block: { height: 26 }, ${steep} }`, shop: saw('maxDepth: 48.63') }, figures: ['≤ 25.993'] },
];

/** Seat of the carrier that the cases above would give at a width: the blade's side and the blade's own room come off. */
const seatAt = (width: number): number => cradle({ fields: `${steep}, width: ${width} }` }).solution.carrier!.seat;

describe('check(a V-cradle)', () => {
  it.each(cases)('finds $code just past the limit and not just inside', ({ code, triggers, inside }) => {
    expect(found(triggers)).toContain(code);
    expect(found(inside)).not.toContain(code);
  });

  it.each(cases)('gives for $code the figures that it takes', ({ code, triggers, figures }) => {
    expectFigures(findingsOf(triggers).find((f) => `${f.code} ${f.severity}` === code)!, figures);
  });

  it('says what it has said', async () => {
    await expect(cases.flatMap(({ triggers }) => findingsOf(triggers).map(asLine)).join('')).toMatchFileSnapshot('../kept/v-cradle-findings.txt');
  });

  it('warns of a carrier whose seat on the fence is under 25 mm, and stops where the blade takes it all', () => {
    const slope = seatAt(101) - seatAt(100);
    const width = (seat: number): number => 100 + (seat - seatAt(100)) / slope;
    const at = (seat: number): string[] => found({ fields: `${steep}, width: ${width(seat)} }` });
    expect(at(24.999)).toContain('carrier-seat-short warn');
    expect(at(25.001)).not.toContain('carrier-seat-short warn');
    expect(at(-0.001)).toContain('carrier-seat-short stop');
    expect(at(0.001)).not.toContain('carrier-seat-short stop');
    const short = findingsOf({ fields: `${steep}, width: ${width(18)} }` }).find((f) => f.code === 'carrier-seat-short')!;
    expectFigures(short, [`≥ ${width(25)}`]);
  });

  it('turns the tooth’s note into a warning where a round rests on the scored wood', () => {
    const fields = (d: number): string => `holds: [${d}], includedAngle: 40, flat: 0, depth: 30`;
    // Kerf 12: scored 12·sin 20° = 4.1042 up; contacts r·cos²h/sin h = 2.5818·r: 3.873 for D 3, 5.164 for D 4.
    expect(found({ fields: fields(3), shop: saw('kerf: 12') })).toContain('tooth-past-flank warn');
    expect(found({ fields: fields(4), shop: saw('kerf: 12') })).toContain('tooth-past-flank note');
  });

  it('finds nothing in a usual cradle, inch or mm, in a usual shop', () => {
    const shop = saw('maxTilt: 46, maxReading: 52, maxDepth: 80 mm, kerf: 3 mm, reach: 300 mm');
    expect(found({ fields: `holds: [post, rail], ${steep.slice(15)} }`, shop })).toEqual([]);
    expect(found({ fields: `holds: [leg, rail], ${steep.slice(15)} }`, shop, units: 'inch' })).toEqual([]);
  });

  it('says the nearest that would do: cut to the remedy’s figure, the finding is gone', () => {
    const deep = cradle({ fields: 'holds: [post], flat: 0, depth: 13' }).findings.find((f) => f.code === 'groove-shallow')!;
    // 32/2.25 = 14.222: the least that clears it and prints so.
    expect(deep.remedy).toContain('14.3 mm');
    expect(deep.would).toEqual([{ field: 'depth', value: 14.3, unit: 'mm' }]);
    expect(deep.measured).toBeCloseTo(32 / 2 / Math.SQRT2, 9);
    expect(deep.limit).toBeCloseTo((13 * 2.25) / (2 * Math.SQRT2), 9);
  });
});

describe('reading a V-cradle', () => {
  it.each([
    ['holds: []', /jigs\[0\]\.holds/], ['holds: [post, post]', /a round is named twice/], ['holds: [post], flat: -1', /flat/],
    ['holds: [post], includedAngle: 190', /includedAngle/], ['holds: [post], carrier: {}', /sharpAngle/],
    ['holds: [post], block: { wide: 3 }', /wide/], ['holds: [nothing]', /holds\[0\]/], ['depth: 12', /holds/],
  ])('refuses %s and says which field', (fields, message) => {
    expect(() => found({ fields })).toThrow(message);
  });
});
