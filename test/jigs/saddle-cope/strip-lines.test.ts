import { expect, test } from 'vitest';
import type { Shape } from '../../../src/drawing/drawing.js';
import { itemBounds } from '../../../src/drawing/item-bounds.js';
import { endOf } from '../../../src/geometry/path.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import { testFont } from '../../support/font.js';
import { labelCrossings } from '../../support/label-crossings.js';
import { context, fields, solved } from './written.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Height of the saddle at φ over the crossing of the axes: (√(R² − (e + r·sin φ)²) + r·cos φ·cos θ) ÷ sin θ. */
const height = (R: number, r: number, e: number, theta: number, phi: number): number =>
  (Math.sqrt(R * R - (e + r * Math.sin(rad(phi))) ** 2) + r * Math.cos(rad(phi)) * Math.cos(rad(theta))) / Math.sin(rad(theta));

test.each([0, 40, 180, -110, -40])('the far throat stands at the twist on the strip, %i°, the near one at its left edge, and their edges as far apart as the throats', (twist) => {
  const spec = fields({ branchDiameter: 28, mainDiameter: 40, angle: rad(65), offset: 3, centres: 400, farEnd: { main: { name: 'leg', diameter: 48 }, angle: rad(50), offset: -4, twist: rad(twist) } });
  const { items } = saddleCope.draw(solved(spec), context, testFont).patterns.find(({ name }) => name === 'wrap')!;
  const part = (name: string): Shape => items.find((item): item is Shape => item.kind === 'shape' && item.part === name)!;
  const wrap = Math.PI * (28 + spec.paperThickness);
  const [throat, long, farThroat, farLong] = ['throat', 'long-point', 'far-throat', 'far-long-point'].map((name) => part(name).path.start);
  expect([throat!.x, long!.x].map((x) => (x + wrap) % wrap)).toEqual([0, expect.closeTo(wrap / 2, 9)]);
  const at = (deg: number): number => (wrap * ((deg + 720) % 360)) / 360;
  expect(farThroat!.x % wrap).toBeCloseTo(at(twist), 9);
  expect(farLong!.x % wrap).toBeCloseTo(at(twist + 180), 9);
  // The far end lies up the paper, y down.
  const near = (phi: number): number => height(20, 14, 3, 65, phi);
  const far = (phi: number): number => height(24, 14, -4, 50, phi);
  expect(throat!.y - farThroat!.y).toBeCloseTo(400 - near(0) - far(0), 9);
  expect(long!.y - farLong!.y).toBeCloseTo(400 - near(180) - far(180), 9);
  expect(long!.y - throat!.y).toBeCloseTo(near(0) - near(180), 9);
  // Every line of an end runs straight along the branch; horns run straight across it, as far apart as the finished branch is long.
  for (const { path } of [part('throat'), part('far-throat')]) expect(endOf(path.segments[0]!).x).toBe(path.start.x);
  const horn = (of: (phi: number) => number): number => Math.min(...Array.from({ length: 36_000 }, (_, i) => of(i / 100)));
  const [nearHorn, farHorn] = ['horn', 'far-horn'].map((name) => part(name).path);
  expect(nearHorn!.start.y - farHorn!.start.y).toBeCloseTo(400 - horn(near) - horn(far), 6);
  for (const path of [nearHorn!, farHorn!]) expect([path.start.x, endOf(path.segments[0]!).x, path.start.y]).toEqual([0, expect.closeTo(wrap, 9), endOf(path.segments[0]!).y]);
});

test('the word of a horn’s line stands clear of the edge and of the saw’s line, whatever the twist', () => {
  for (let twist = -180; twist <= 180; twist += 15) {
    for (const angle of [12, 30, 50, 70, 85]) {
      const spec = fields({ branchDiameter: 28, mainDiameter: 40, angle: rad(65), offset: 3, centres: 500, farEnd: { main: { name: 'leg', diameter: 48 }, angle: rad(angle), offset: -4, twist: rad(twist) } });
      const { items } = saddleCope.draw(solved(spec), context, testFont).patterns.find(({ name }) => name === 'wrap')!;
      const lines = items.filter((item) => item.kind === 'shape' && /saddle-line|first-cut|horn|wrap-edge/.test(item.part ?? ''));
      const words = items.filter((item) => item.kind === 'lettering' && /^(?:far )?horn$/.test(item.text));
      expect(words).toHaveLength(2);
      expect({ twist, angle, crossed: labelCrossings([...lines, ...words], testFont) }).toEqual({ twist, angle, crossed: [] });
    }
  }
});

test.each([1, 0])('the words on the datum line are the longest that fit the strip, 2.5 mm high with 2 mm at each end, else 1.8 with 1 (far end %d)', (far) => {
  const heights = new Set<number>();
  let none = 0;
  for (let diameter = 3; diameter <= 60; diameter += 0.5) {
    const spec = fields({ branchDiameter: diameter, mainDiameter: 64, angle: rad(65), offset: 0, ...(far === 1 && { centres: 400, farEnd: { main: { name: 'leg', diameter: 64 }, angle: rad(50), offset: 0, twist: 0 } }) });
    const s = solved(spec);
    const { items } = saddleCope.draw(s, context, testFont).patterns.find(({ name }) => name === 'wrap')!;
    const wrap = Math.PI * (diameter + spec.paperThickness);
    const text = items.find((item) => item.kind === 'lettering' && /horn|^[\d.]+ mm$/.test(item.text) && !/^(?:far )?horn$/.test(item.text) && item.anchor === 'middle' && item.turn === 0);
    if (text?.kind !== 'lettering') { none += 1; expect(testFont.width('40.0 mm', 1.8)).toBeGreaterThan(wrap - 2); continue; }
    heights.add(text.height);
    const room = text.height === 2.5 ? wrap - 4 : wrap - 2;
    expect(text.height === 2.5 || text.height === 1.8).toBe(true);
    expect(testFont.width(text.text, text.height)).toBeLessThanOrEqual(room);
    expect(text.at.x).toBeCloseTo(wrap / 2, 9);
    // What would say more is too long.
    const end = far === 1 ? 'near ' : '';
    const figure = /[\d.]+ mm/.exec(text.text)![0];
    const longer = [` to the ${end}horn`, `DATUM: ${figure} (`, 'DATUM LINE: '].find((words) => !text.text.includes(words.slice(0, 8)));
    if (text.height === 1.8) expect(testFont.width(figure, 2.5)).toBeGreaterThan(wrap - 4);
    if (longer?.startsWith(' to')) expect(testFont.width(`${figure}${longer}`, text.height)).toBeGreaterThan(room);
    if (longer === 'DATUM LINE: ' && text.text.startsWith('DATUM: ')) expect(testFont.width(text.text.replace('DATUM:', 'DATUM LINE:') + ', the tip of the finished end', text.height)).toBeGreaterThan(room);
  }
  expect([...heights].sort()).toEqual([1.8, 2.5]);
  expect(none).toBeLessThan(10);
});

test('the glue tab says where it goes wherever its words keep a millimetre off its chamfers, and nowhere else', () => {
  const words = testFont.width('glue tab: under the left edge', 2.5);
  const seen = new Set<boolean>();
  for (let centres = 18; centres <= 80; centres += 0.5) {
    for (const diameter of [6, 10]) {
      const far = { main: { name: 'leg', diameter: 12 }, angle: rad(90), offset: 0, twist: 0 };
      const { items } = saddleCope.draw(solved(fields({ branchDiameter: diameter, mainDiameter: 12, angle: rad(90), centres, farEnd: far })), context, testFont).patterns.find(({ name }) => name === 'wrap')!;
      const tab = items.find((item): item is Shape => item.kind === 'shape' && item.part === 'glue-tab')!;
      // Its outer side, between the two chamfers.
      const [, from, to] = [tab.path.start, ...tab.path.segments.map(endOf)];
      const room = Math.abs(to!.y - from!.y);
      const label = items.find((item) => item.kind === 'lettering' && item.text.startsWith('glue tab'));
      expect(label !== undefined).toBe(words < room - 2);
      seen.add(label !== undefined);
      if (label?.kind === 'lettering') {
        const { x0, x1, y0, y1 } = itemBounds(label, testFont);
        expect(x0 >= tab.path.start.x && x1 <= from!.x && y0 > Math.min(from!.y, to!.y) && y1 < Math.max(from!.y, to!.y)).toBe(true);
      }
    }
  }
  expect(seen.size).toBe(2);
});
