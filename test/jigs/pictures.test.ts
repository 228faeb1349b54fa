import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../src/drawing/drawing.js';
import type { LineType } from '../../src/drawing/line-types.js';
import type { Point } from '../../src/geometry/point.js';
import { endOf } from '../../src/geometry/path.js';
import { drillGuide } from '../../src/jigs/drill-guide/index.js';
import { rackTop } from '../../src/jigs/rack-top/index.js';
import { testFont } from '../support/font.js';
import { setUpOf } from '../support/set-up-figures.js';
import { context as guideContext, round, solved as solvedGuide } from './drill-guide/guide.js';
import { context as rackContext, solved as solvedRack } from './rack-top/rack.js';
import { drawn as drawnCradle } from './v-cradle/written.js';

/* Pictures of set-ups are not to scale but in true proportions: they are measured here against figures worked out on paper. */

const rad = (deg: number): number => (deg * Math.PI) / 180;
const shapes = (picture: Drawing, line: LineType): Shape[] => picture.items.filter((i): i is Shape => i.kind === 'shape' && i.line === line);
const points = ({ path }: Shape): Point[] => [path.start, ...path.segments.map(endOf)];
const xs = (shape: Shape): number[] => points(shape).map(({ x }) => x);
const ys = (shape: Shape): number[] => points(shape).map(({ y }) => y);
const texts = (picture: Drawing): string[] => picture.items.flatMap((i) => (i.kind === 'lettering' ? [i.text] : []));

describe('a round in the cradle under the bit', () => {
  test.each([[40, 90, 4], [60, 70, 2], [25, 120, 0]])('Ø %d in a V of %d° with a flat of %d', (diameter, angle, flat) => {
    const { drawing, solution: { block, groove } } = drawnCradle({ fields: `holds: [${diameter}], includedAngle: ${angle}, flat: ${flat}` });
    const { picture } = setUpOf(drawing, 'drill');
    const [outline, , circle] = shapes(picture, 'edge');
    const width = Math.max(...xs(outline!)) - Math.min(...xs(outline!));
    const k = width / block.width;
    expect(Math.max(...ys(outline!)) - Math.min(...ys(outline!))).toBeCloseTo(k * block.height, 9);
    const arc = circle!.path.segments[0]!;
    if (arc.kind !== 'arc') throw new Error('no circle');
    expect(Math.hypot(arc.u.x, arc.u.y)).toBeCloseTo((k * diameter) / 2, 9);
    // The flanks meet w/2 ÷ tan h below the top, flat or not; the axis lies R ÷ sin h above that.
    const h = rad(angle / 2);
    const axisUp = block.height - (2 * groove.depth * Math.tan(h) + flat) / 2 / Math.tan(h) + diameter / 2 / Math.sin(h);
    expect(Math.max(...ys(outline!)) - arc.centre.y).toBeCloseTo(k * axisUp, 9);
    expect(arc.centre.x).toBeCloseTo((Math.max(...xs(outline!)) + Math.min(...xs(outline!))) / 2, 9);
    // The same heights stand beside it, in mm.
    const said = texts(picture).map((text) => /^([\d.]+) mm$/.exec(text)?.[1]).filter((mm) => mm !== undefined).map(Number);
    expect(said).toHaveLength(2);
    expect([said[0], said[1]]).toEqual([axisUp, axisUp + diameter / 2].map((mm) => Number(mm.toFixed(1))));
    // The bit comes from above on the middle and ends short of the round.
    const [bit] = shapes(picture, 'bore');
    expect((Math.max(...xs(bit!)) + Math.min(...xs(bit!))) / 2).toBeCloseTo(arc.centre.x, 9);
    expect(Math.max(...ys(bit!))).toBeLessThan(arc.centre.y - (k * diameter) / 2);
    expect(Math.max(...ys(bit!))).toBeGreaterThan(arc.centre.y - (k * diameter) / 2 - 3);
  });
});

describe('the passes at the saw', () => {
  test.each([['saw-v', 90], ['saw-v', 70], ['saw-carrier-v', 90]])('%s at %d°: the blade stands at its fence distance, leans away from it and ends at the depth', (page, angle) => {
    const { drawing, solution } = drawnCradle({ fields: `holds: [post], includedAngle: ${angle}, flat: 6, carrier: { sharpAngle: 25 }`, shop: '{ saw: { kerf: 3 } }' });
    const { picture } = setUpOf(drawing, page);
    const { sawing, carrierSawing, block, carrier, groove } = solution;
    const [fences, width] = page === 'saw-v' ? [sawing, block.width] : [carrierSawing!, carrier!.width];
    const blades = shapes(picture, 'bore');
    const pieces = shapes(picture, 'edge').filter(({ path }) => path.closed);
    expect([blades.length, pieces.length]).toEqual([3, 3]);
    const h = rad(angle / 2);
    for (const [i, { fence, tilt }] of [{ fence: fences.fence.a, tilt: h }, { fence: fences.fence.b, tilt: h }, { fence: fences.flatFences[0]!.a, tilt: 0 }].entries()) {
      const [piece, blade] = [pieces[i]!, blades[i]!];
      const k = (Math.max(...xs(piece)) - Math.min(...xs(piece))) / width;
      expect(Math.max(...ys(piece)) - Math.min(...ys(piece))).toBeCloseTo(k * block.height, 9);
      const table = Math.max(...ys(piece));
      const [low, high] = points(blade) as [Point, Point];
      expect(Math.atan2(high.x - low.x, low.y - high.y)).toBeCloseTo(tilt, 9);
      expect(table - high.y).toBeCloseTo(k * groove.depth, 9);
      expect(low.y).toBeGreaterThan(table);
      // The near side's line at the table.
      expect(low.x + (low.y - table) * Math.tan(tilt) - Math.min(...xs(piece))).toBeCloseTo(k * fence, 9);
    }
  });
});

describe('the section through a canted hole', () => {
  test.each([[14, 27, 30], [0, 20, 25], [35, 40, 34]])('%d° through %d mm, bit %d mm: at true size', (lean, thickness, bit) => {
    const top = solvedRack({ board: { length: 800, width: 300, thickness }, holes: [{ round: bit, at: [400, 150], lean, toward: 90, below: 0 }] });
    const { picture } = setUpOf(rackTop.draw(top, rackContext, testFont), 'drill-holes');
    const [left, right] = shapes(picture, 'bore').map(points) as [Point[], Point[]];
    const open = bit / Math.cos(rad(lean));
    for (const [wall, x] of [[left, -open / 2], [right, open / 2]] as const) {
      const [upper, lower] = wall as [Point, Point];
      expect(lower.y - upper.y).toBeCloseTo(thickness, 9);
      expect(upper.x).toBeCloseTo(x, 9);
      // Going up the leg goes to the right.
      expect(upper.x - lower.x).toBeCloseTo(thickness * Math.tan(rad(lean)), 9);
    }
    // Both faces end at the opening.
    const faces = shapes(picture, 'edge').map(points);
    expect(faces.map(([a, b]) => [a!.y, b!.y])).toEqual([0, 0, thickness, thickness].map((y) => [y, y]));
    expect([faces[0]![1]!.x, faces[1]![0]!.x]).toEqual([left[0]!.x, right[0]!.x]);
    expect([faces[2]![1]!.x, faces[3]![0]!.x]).toEqual([left[1]!.x, right[1]!.x]);
    expect(texts(picture).includes('up this way')).toBe(lean > 0);
    expect(texts(picture).map((text) => /^([\d.]+) mm/.exec(text)?.[1]).filter((mm) => mm !== undefined).map(Number)).toEqual([thickness, Number(open.toFixed(1))]);
  });
});

describe('the guide block', () => {
  test.each([[60, 12, undefined], [40, 10, 40], [25, 8, 36], [90, 12, undefined]])('at %d°, drill %d, round %s: bore, sole and blank in proportion', (angleDeg, drill, diameter) => {
    const angle = rad(angleDeg);
    const s = solvedGuide({ drill, angle, ...(diameter === undefined ? {} : { onto: round(diameter), depth: 12 }) });
    const { picture } = setUpOf(drillGuide.draw(s, guideContext, testFont), 'make-block');
    const [outline] = shapes(picture, 'edge');
    const [topLeft, topRight, right, left] = points(outline!) as [Point, Point, Point, Point];
    const k = (topRight.x - topLeft.x) / s.block.length;
    // The sole falls from the acute end, on the right, to the obtuse end by length ÷ tan θ.
    expect(left.y - right.y).toBeCloseTo(angleDeg === 90 ? 0 : (k * s.block.length) / Math.tan(angle), 9);
    expect(left.y - topLeft.y).toBeCloseTo(k * s.block.height, 9);
    const bores = shapes(picture, 'hidden').filter((shape) => Math.abs(xs(shape)[0]! - xs(shape)[1]!) < 1e-9);
    expect(bores).toHaveLength(2);
    const [a, b] = bores.map((shape) => xs(shape)[0]!) as [number, number];
    expect(b - a).toBeCloseTo(k * drill, 9);
    expect((a + b) / 2).toBeCloseTo((topLeft.x + topRight.x) / 2, 9);
    for (const bore of bores) expect(Math.min(...ys(bore))).toBeCloseTo(topLeft.y, 9);
  });

  test.each([[60, undefined], [40, 40], [25, 36], [90, undefined]])('on the work at %d°, round %s: the bit leans to the right, its point as deep as the hole and the point go', (angleDeg, diameter) => {
    const angle = rad(angleDeg);
    const depth = 12;
    const s = solvedGuide({ drill: 10, angle, depth, thickness: diameter === undefined ? 40 : undefined, ...(diameter === undefined ? {} : { onto: round(diameter) }) });
    const { picture } = setUpOf(drillGuide.draw(s, guideContext, testFont), 'drill');
    const bit = shapes(picture, 'hidden').map(points).find((all) => all.length === 5)!;
    const [left, leftLip, tip, rightLip, right] = bit as [Point, Point, Point, Point, Point];
    const k = Math.hypot(rightLip.x - leftLip.x, rightLip.y - leftLip.y) / 10;
    for (const [low, high] of [[leftLip, left], [rightLip, right]] as const) expect(Math.atan2(low.y - high.y, high.x - low.x)).toBeCloseTo(angle, 9);
    // Work level: its face is the widest level line; the axis enters it where the bit's axis crosses it.
    const level = shapes(picture, 'edge').map(points).filter((all) => all.length === 2 && Math.abs(all[0]!.y - all[1]!.y) < 1e-9);
    const face = Math.min(...level.map((all) => all[0]!.y));
    expect(tip.y - face).toBeCloseTo(k * (depth + s.bit.point) * Math.sin(angle), 9);
    expect(Math.max(...level.map((all) => all[0]!.y)) - face).toBeCloseTo(k * (diameter ?? 40), 9);
    // The sole lies along the work.
    const block = shapes(picture, 'edge').find(({ path }) => path.closed)!;
    const sole = points(block).slice(2, 4) as [Point, Point];
    expect(sole[0].y).toBeCloseTo(sole[1].y, 9);
    expect(Math.abs(sole[0].x - sole[1].x)).toBeCloseTo((k * s.block.length) / Math.sin(angle), 9);
  });
});
