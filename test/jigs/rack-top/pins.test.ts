import { expect, test } from 'vitest';
import { closestPins, pinStations, templateGroups } from '../../../src/jigs/rack-top/pins.js';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { sayWords } from '../../../src/units/quantity.js';
import { testFont } from '../../support/font.js';
import { context, patternsOf, solved } from './rack.js';

const one = { count: 1, item: 24, depth: 60, mouth: { ease: 0 } };
/** Two kinds of slot in turn, on both edges: numbered from the left 1 … 6. */
const mixed = { slots: [100, 200, 300, 400, 500, 600].map((at, i) => ({ ...one, at, depth: i % 2 === 0 ? 60 : 50, edge: i % 3 === 0 ? 'rear' : 'front' })), indexPins: { spacing: 90 } };

test('one template serves all slots of a kind, in the order of their numbers', () => {
  const groups = templateGroups(solved(mixed));
  expect(groups.map(({ number, slots }) => [number, slots.map((s) => s.number)])).toEqual([[1, [1, 3, 5]], [2, [2, 4, 6]]]);
});

test('pin holes stand half the spacing to either side of each slot of their edge, in order, those that fall together once', () => {
  const groups = templateGroups(solved(mixed));
  // Front: slots at 200, 300, 500 and 600; rear: 100 and 400.
  expect(pinStations(groups, 'front')).toEqual([155, 245, 255, 345, 455, 545, 555, 645]);
  expect(pinStations(groups, 'rear')).toEqual([55, 145, 355, 445]);
  expect(closestPins(solved(mixed))).toBe(10);
  const shared = solved({ slots: { ...one, count: 3, pitch: 100, at: 200 }, indexPins: { spacing: 100 } });
  expect(pinStations(templateGroups(shared), 'front')).toHaveLength(4);
  expect(closestPins(shared)).toBe(100);
});

test('a template’s two pin holes are drawn left and right of its slot, each with a name of its own', () => {
  const { items } = patternsOf(mixed).get('slot-template-1')!;
  const holes = items.filter((item) => item.kind === 'shape' && item.part?.startsWith('template-pin-'));
  expect(holes.map(({ part }) => part)).toEqual(['template-pin-1', 'template-pin-2']);
  const xs = holes.map((item) => (item.kind === 'shape' ? item.path.segments.reduce((sum, s) => sum + (s.kind === 'arc' ? s.centre.x : 0), 0) / item.path.segments.length : NaN));
  expect(xs).toEqual([-45, 45]);
});

test('joints are named in their order on the underside too', () => {
  const patterns = patternsOf({ board: { length: 1600, width: 200, thickness: 27 }, split: [500, 1100], recesses: [{ circle: 60, at: [535, 100], depth: 8, face: 'under' }, { circle: 60, at: [1065, 100], depth: 8, face: 'under' }] });
  const parts = [...patterns.values()].flatMap(({ items }) => items.flatMap(({ part }) => (part?.startsWith('underside-joint') === true ? [part] : [])));
  expect([...new Set(parts)]).toEqual(['underside-joint-1', 'underside-joint-2']);
});

test('a bushing of half a millimetre is a bushing on every page: thin line, bushing and its figures are named', () => {
  const given = { ...mixed, cutter: { diameter: 12, bushing: 13 }, recesses: [{ circle: 40, at: [700, 100], depth: 8 }] };
  const { patterns, setUps } = rackTop.draw(solved(given), context, testFont);
  const words = (name: string) => patterns.find((p) => p.name === name)!.items.flatMap((item) => (item.kind === 'lettering' ? [item.text] : [])).join(' ');
  expect(words('slot-template-1')).toContain('thin line: finished wood, 0.5 mm');
  expect(words('slot-template-1')).toContain('bushing Ø 13 mm');
  const rout = setUps.find(({ code }) => code === 'cut-slots')!.steps.find(({ code }) => code === 'rout')!;
  expect(sayWords(rout.words, 'mm')).toContain('the bushing on its edge');
  const shape = setUps.find(({ code }) => code === 'rout-recess')!.numbers;
  expect(sayWords(shape.find(({ code }) => code === 'bushing')!.value, 'mm')).toContain('0.5 mm');
  expect(sayWords(shape.find(({ code }) => code === 'inside-radius')!.value, 'mm')).toContain('20 mm');
});

test('a corner of less than a twentieth of a millimetre is said to be sharp, one of more has its radius', () => {
  const said = (radius: number) => {
    const { setUps } = rackTop.draw(solved({ recesses: [{ box: { width: 60, height: 30, radius }, at: [400, 100], depth: 8 }] }), context, testFont);
    return sayWords(setUps.find(({ code }) => code === 'rout-recess')!.numbers.find(({ code }) => code === 'inside-radius')!.value, 'mm');
  };
  expect([said(0.04), said(0)]).toEqual(['sharp: left with the cutter’s', 'sharp: left with the cutter’s']);
  expect(said(0.06)).toContain('R ');
});
