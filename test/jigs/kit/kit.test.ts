import { describe, expect, test } from 'vitest';
import { angleFigures, isSquareAngle } from '../../../src/jigs/kit/angle-figures.js';
import { checkBit } from '../../../src/jigs/kit/check-bit.js';
import { checkBladeTilt, checkSawDepth, checkSawReading, checkStroke, checkTableTilt, sawDepth } from '../../../src/jigs/kit/reach.js';
import { below, cureAngle, cureLength, findingsFrom, remediesIn, type Report } from '../../../src/jigs/kit/report.js';
import type { Shop } from '../../../src/spec/shop.js';
import { lengthOf, sayWords, words } from '../../../src/units/quantity.js';
import { numbersIn } from '../../support/set-up-figures.js';

const radians = (deg: number): number => (deg * Math.PI) / 180;
const about = { operation: 'drill' };
const asked = { about, what: ['the hole'], remedy: ['A guide block.'] };
const said = (reports: readonly Report[]): [string, string, number, number][] =>
  reports.map(({ code, severity, measured, limit }) => [code, severity, Number(measured.toFixed(9)), Number(limit.toFixed(9))]);

describe('what the shop’s machines reach', () => {
  const shop: Shop = { saw: { maxReading: radians(50), maxTilt: radians(46), maxDepth: 80 }, drillPress: { maxTableTilt: radians(30), stroke: 60 } };
  const kinds = [
    { name: 'saw-reading', check: checkSawReading, most: 50 }, { name: 'blade-tilt', check: checkBladeTilt, most: 46 }, { name: 'table-tilt', check: checkTableTilt, most: 30 },
  ];

  test.each(kinds)('$name: its own limit passes, a tenth of a degree more is warned of', ({ name, check, most }) => {
    expect(check(radians(most), asked, { shop })).toEqual([]);
    expect(said(check(radians(most + 0.1), asked, { shop }))).toEqual([[`${name}-out-of-reach`, 'warn', most + 0.1, most]]);
  });

  test.each(kinds)('$name: without a shop 45° passes, and beyond it a note says what to measure', ({ name, check }) => {
    expect(check(radians(45), asked, { shop: {} })).toEqual([]);
    const [note] = check(radians(64), asked, { shop: {} });
    expect(said([note!])).toEqual([[`${name}-unknown`, 'note', 64, 45]]);
    expect(sayWords(note!.message, 'mm')).toMatch(/^the hole needs the .* 64°: see how far your \w+ (turns|tilts) before you start; many go to 45° only\.$/);
  });

  test('a stroke as long as the hole passes, a shorter one is warned of with both figures', () => {
    expect(checkStroke(60, asked, { shop })).toEqual([]);
    expect(said(checkStroke(60.5, asked, { shop }))).toEqual([['stroke-short', 'warn', 60, 60.5]]);
    expect(checkStroke(1000, asked, { shop: {} })).toEqual([]);
  });

  test('a tilted blade reaches depth × cos tilt', () => {
    expect(sawDepth({ shop }, radians(60))).toBeCloseTo(40, 9);
    expect(sawDepth({ shop: {} })).toBeUndefined();
    expect(checkSawDepth(40, radians(60), asked, { shop })).toEqual([]);
    const [short] = checkSawDepth(41, radians(60), asked, { shop });
    expect(said([short!])).toEqual([['saw-depth-short', 'warn', 41, 40]]);
    expect(numbersIn(short!.message).map((n) => Number(n.toFixed(6)))).toEqual([41, 40, 60]);
    expect(checkSawDepth(1000, 0, asked, { shop: {} })).toEqual([]);
  });
});

describe('the bit that a hole asks for', () => {
  const bits = [{ diameter: 12, usableLength: 100, point: 3 }, { diameter: 12.04, usableLength: 114, point: 3 }, { diameter: 16, usableLength: 200, point: 3 }];
  const context = { shop: { bits }, units: 'mm' as const };
  const bit = { diameter: 12, reach: 114, about, forWhat: ['for the pin'], otherwise: ['drill in two steps'] };

  test('the longest owned that just reaches is enough', () => {
    expect(checkBit(bit, context)).toEqual([]);
    expect(said(checkBit({ ...bit, reach: 114.2 }, context))).toEqual([['bit-too-short', 'warn', 114, 114.2]]);
  });

  test('a bit too short is answered with a length that reaches, as printed, and with another way', () => {
    const [short] = checkBit({ ...bit, reach: 114.23 }, context);
    // 114.3 mm prints as 4 1/2 in, which is 114.3 mm: no less than 114.23 in either unit.
    expect(sayWords(short!.remedy, 'mm')).toBe('A bit that reaches 114.3 mm (4 1⁄2″); or drill in two steps.');
  });

  test('no bit of the size is answered with the nearest', () => {
    const [none] = checkBit({ ...bit, diameter: 13 }, context);
    expect(said([none!])).toEqual([['bit-not-owned', 'warn', 13, 12.04]]);
    expect(numbersIn(none!.remedy).at(-1)).toBe(12.04);
  });

  test('nothing is said where the shop lists no bits, and no size is near where it lists none at all', () => {
    expect(checkBit(bit, { ...context, shop: {} })).toEqual([]);
    expect(said(checkBit(bit, { ...context, shop: { bits: [] } }))).toEqual([['bit-not-owned', 'warn', 12, 0]]);
  });
});

describe('reports', () => {
  test('a figure below what is sound names that limit, one below the least names the least', () => {
    const make = (limit: number) => ({ code: 'thin', about, message: words`left ${lengthOf(limit)}`, remedy: ['More.'] });
    const limits = { sound: 6, least: 4 };
    expect([6, 5.9, 4, 3.9].map((mm) => below(mm, limits, make).map((r) => r.limit))).toEqual([[], [6], [6], [4]]);
  });

  test('a finding is said in the piece’s units, begins with a capital and carries its jig', () => {
    const report: Report = { code: 'x', severity: 'note', measured: 1, limit: 2, about: { operation: 'saw-v' }, message: words`wall of ${lengthOf(25.4)}`, remedy: [] };
    expect(findingsFrom([report], { name: 'cradle', units: 'inch' })).toEqual([{
      jig: 'cradle', code: 'x', severity: 'note', measured: 1, limit: 2, about: { jig: 'cradle', operation: 'saw-v' }, message: 'Wall of 1″ (25.4 mm)', remedy: '', would: [],
    }]);
  });

  test('remedies round towards the side that clears, and fields take them as they are written', () => {
    const { atLeast, atMost } = remediesIn('mm');
    expect([atLeast(10.01) >= 10.01, atMost(10.09) <= 10.09]).toEqual([true, true]);
    expect(cureLength('block.width', 40)).toEqual({ field: 'block.width', value: 40, unit: 'mm' });
    expect(cureAngle('angle', radians(30)).value).toBeCloseTo(30, 9);
    expect(cureAngle('angle', 1).unit).toBe('degrees');
  });
});

describe('one angle in the ways that shops read it', () => {
  test('both readings, square at 90 and square at 0, each with rise over run', () => {
    const figures = angleFigures(radians(26), 'Between the axes');
    expect(figures.map(({ code }) => code)).toEqual(['angle', 'off-square']);
    expect(figures.map(({ value }) => Number(numbersIn(value)[0]!.toFixed(9)))).toEqual([26, 64]);
    // tan 26° = 0.48773, tan 64° = 2.05030 (any table of tangents).
    expect(figures.map(({ value }) => sayWords(value, 'mm'))).toEqual(['26°: 48.8 mm in 100 mm', '64°: 205.0 mm in 100 mm']);
  });

  test('a square one is said to be square, and nothing else', () => {
    expect(angleFigures(Math.PI / 2, 'Between the axes').map(({ value }) => sayWords(value, 'mm'))).toEqual(['90°, square']);
    expect([isSquareAngle(Math.PI / 2 - 1e-12), isSquareAngle(Math.PI / 2 - 1e-6)]).toEqual([true, false]);
  });
});
