import { describe, expect, it } from 'vitest';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import { guideBlockWords } from '../../../src/jigs/rack-top/hole-set-up.js';
import { makeFieldReader } from '../../../src/spec/fields.js';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { pageFrame } from '../../../src/sheets/page-frame.js';
import { findingsOfSetUps } from '../../../src/sheets/set-ups/findings-of-set-up.js';
import { setUpSheets } from '../../../src/sheets/set-ups/set-up-sheets.js';
import { papers, type Paper } from '../../../src/units/paper.js';
import { testFont } from '../../support/font.js';
import { context, slots, solved, type Given } from './rack.js';

const paperOf: Readonly<Record<string, Paper | undefined>> = papers;
const margins = { top: 10, right: 10, bottom: 10, left: 10 };
const long = { board: { length: 1500, width: 200, thickness: 27 } };
const holes = [{ round: 35, at: [95, 110], lean: 14 }, { round: 35, at: [1400, 110], lean: 14, toward: 180 }];
const cases: readonly (readonly [string, Given])[] = [
  ['six slots, flush trim', { ...long, slots: { ...slots, count: 6, pitch: 200, liner: 'leather' }, holes, cutter: { diameter: 12 } }],
  ['nine slots, bushing, both edges', { ...long, slots: { ...slots, count: 9, liner: 'felt', edge: 'alternate' }, cutter: { diameter: 12, bushing: 17 } }],
  ['three slots, flared mouth, width given', { ...long, slots: { ...slots, count: 3, width: 30, liner: 'felt', mouth: { flare: 6 } }, cutter: { diameter: 12, bushing: 17 } }],
  ['a recess from below', { ...long, recesses: [{ box: { width: 120, height: 60, radius: 10 }, at: [700, 110], depth: 8, face: 'under' }], cutter: { diameter: 12, bushing: 17 } }],
];

describe.each(['letter', 'a4'] as const)('on %s', (name) => {
  it.each(cases)('each operation on a rack of %s fits one page, or two with cautions and steps on the first', (what, given) => {
    for (const units of ['mm', 'inch'] as const) {
      const jig = rackTop.draw(solved(given), { ...context, units }, testFont);
      expect(jig.setUps.length).toBeGreaterThan(0);
      const frame = pageFrame(paperOf[name]!, margins, false, units);
      for (const setUp of jig.setUps) {
        const sheets = setUpSheets({ jig, setUp, findings: [], units }, frame, testFont);
        // Nine stations in a table of their own do not fit under all the rest.
        expect(sheets.length, setUp.operation).toBeLessThanOrEqual(what.startsWith('nine') ? 2 : 1);
        expect(sheets[0]!.some((item) => item.part === 'cautions')).toBe(true);
        expect(sheets[0]!.some((item) => item.kind === 'lettering' && item.text === 'Steps')).toBe(true);
      }
    }
  });
});

describe('the words for a guide block', () => {
  it.each([['mm', 30, 27], ['inch', 31.75, 26.9875], ['inch', 30, 27]] as const)('in %s make a drill guide of the hole’s bit, lean and board', (units, round, thickness) => {
    const top = solved({ board: { length: 800, width: 200, thickness }, holes: [{ round, at: [400, 100], lean: 14, toward: 90 }] });
    const [, list] = /drill-guide with (.*?); on the top face/.exec(guideBlockWords(top.holes[0]!, thickness, units))!;
    const given = Object.fromEntries(list!.split(', ').map((pair) => pair.split(': ')).map(([key, value]) => [key, Number.isNaN(Number(value)) ? value : Number(value)]));
    const fields = drillGuide.schema(makeFieldReader(units, {})).parse(given);
    expect(fields.drill).toBeCloseTo(round, 6);
    expect(fields.thickness).toBeCloseTo(thickness, 6);
    expect(fields.angle).toBeCloseTo(Math.PI / 2 - top.holes[0]!.lean, 9);
    expect(fields.onto).toBe('flat');
  });
});

describe('findings', () => {
  it('stand with their own operation', () => {
    const recess = { path: 'M0 0 H80 V40 H0 Z', size: 80, at: [400, 140], depth: 5 };
    const top = solved({ slots, recesses: [recess], split: [100] });
    const findings = rackTop.check(top, context);
    const { setUps } = rackTop.draw(top, context, testFont);
    const found = findingsOfSetUps(setUps, findings).map((list, i) => [setUps[i]!.code, list.map((f) => f.code)]);
    expect(found).toEqual([['cut-slots', []], ['rout-recess', ['recess-corner']], ['join', ['joint-end-grain']]]);
  });
});

describe('a page with many findings', () => {
  it('says every finding above the steps', () => {
    const nearEdge = Array.from({ length: 14 }, (_, i) => ({ round: 20, at: [100 + 90 * i, 185] }));
    const top = solved({ ...long, slots, holes: nearEdge });
    const findings = rackTop.check(top, context);
    expect(findings.length).toBeGreaterThan(12);
    const jig = rackTop.draw(top, context, testFont);
    const setUp = jig.setUps.find((s) => s.code === 'drill-holes')!;
    const sheets = setUpSheets({ jig, setUp, findings, units: 'mm' }, pageFrame(paperOf['a4']!, margins, false, 'mm'), testFont);
    const texts = sheets.flat().flatMap((item) => (item.kind === 'lettering' ? [item.text] : []));
    for (const { message } of findings) expect(texts.join(' ')).toContain(message.slice(0, 40));
    expect(texts.indexOf('Before you cut')).toBeLessThan(texts.indexOf('Steps'));
  });
});
