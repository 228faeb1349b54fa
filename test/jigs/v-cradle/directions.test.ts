import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../../src/drawing/drawing.js';
import { check } from '../../../src/compile.js';
import { UserError } from '../../../src/errors/user-error.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { kinds } from '../../../src/jigs/index.js';
import { testFont } from '../../support/font.js';
import { labelCrossings, labelOverlaps } from '../../support/label-crossings.js';
import { figure, setUpOf, stepFigures, stepText } from '../../support/set-up-figures.js';
import { cylinderSolid, solids } from '../../support/solids.js';
import { cradle } from './cradle.js';
import { corners, drawn } from './written.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Both tilted cuts as the page sets them, as a section: x from the fence, y up from the table; what is left of the wood. */
const afterPass2 = (fields: string, kerf: number) => {
  const { drawing, solution } = drawn({ fields, shop: `{ saw: { kerf: ${kerf} } }` });
  const page = setUpOf(drawing, 'saw-v');
  const [length, width, height] = figure(page, 'size') as [number, number, number];
  const [tilt, deep, fence] = [rad(figure(page, 'tilt')[0]!), figure(page, 'height')[0]!, figure(page, 'fence')[0]!];
  // The blade leans away from the fence; its near side meets the table at the fence distance, its tip stands square at the height.
  const up = [Math.sin(tilt), Math.cos(tilt)] as const;
  const across = [Math.cos(tilt), -Math.sin(tilt)] as const;
  const at = (along: number, off: number): [number, number] => [fence + along * up[0] + off * across[0], along * up[1] + off * across[1]];
  const blade = [at(-20, 0), at(-20, kerf), at(deep / Math.cos(tilt), kerf), at(deep / Math.cos(tilt), 0)];
  const cut = solids.extrude([blade], 10);
  const mirrored = cut.mirror([1, 0, 0]).translate([width, 0, 0]);
  const wood = solids.cube([width, height, 10]);
  expect(length).toBeGreaterThan(0);
  return { pieces: wood.subtract(cut).subtract(mirrored).decompose(), page, solution };
};

describe('what comes free in pass 2 is decided by a solid', () => {
  test.each([
    ['holds: [post], flat: 0', 3], ['holds: [post], flat: 4', 3.175], ['holds: [post], flat: 4', 3], ['holds: [post], flat: 4.4', 3], ['holds: [post], flat: 6', 3],
    ['holds: [post], includedAngle: 60, flat: 5', 3], ['holds: [post], includedAngle: 60, flat: 5.5', 3],
  ])('%s, kerf %d', (fields, kerf) => {
    const { pieces, page, solution } = afterPass2(fields, kerf);
    // Slivers of rounding aside, the strip between the cuts is a piece of its own or it is not.
    const free = pieces.filter((piece) => piece.volume() > 1).length > 1;
    expect(solution.sawing.freesInPass2).toBe(free);
    expect(stepText(page, 'passes', 'mm')).toContain(free ? 'Pass 2 frees the strip' : 'Nothing comes free in pass 2');
  });
});

describe('what the test cut tells', () => {
  test('a round that stands 1 too high asks for the fence tan h nearer to the blade: the groove grows and the round sinks by 1', () => {
    for (const angle of [60, 90, 120]) {
      const top = (wall: number): number => {
        // Half the mouth is what the block has beside the wall; the V's point lies mouth/tan h down, the round's top r/sin h + r over it.
        const h = rad(angle / 2);
        return 16 / Math.sin(h) + 16 - (40 - wall) / Math.tan(h);
      };
      const page = setUpOf(drawn({ fields: `holds: [post], includedAngle: ${angle}, flat: 0` }).drawing, 'saw-v');
      const nearer = stepFigures(page, 'test-height').at(-1)!;
      expect(top(20) - top(20 - nearer)).toBeCloseTo(1, 9);
      expect(stepText(page, 'test-height', 'mm')).toMatch(/too high set the fence .* nearer to the blade; too low: as much away/);
    }
  });

  test('tops that differ by more ask for more tilt', () => {
    const differ = (tilt: number): number => (16 - 12) * (1 / Math.sin(rad(tilt)) + 1);
    expect(differ(44)).toBeGreaterThan(differ(45));
    expect(stepText(setUpOf(drawn({ fields: 'holds: [post, rail]' }).drawing, 'saw-v'), 'test-tilt', 'mm')).toMatch(/More: tilt further; less: tilt less/);
  });

  test('a face too long is mended by turning the carrier less from the fence', () => {
    const face = (turn: number): number => 32 / Math.sin(rad(90 - 15 - turn));
    expect(face(55)).toBeGreaterThan(face(54));
    expect(stepText(setUpOf(drawn({ fields: 'holds: [post], carrier: { sharpAngle: 20, sawReading: 15 }' }).drawing, 'carrier'), 'test', 'mm'))
      .toContain('Too long: cut too sharp, turn the carrier a little less from the fence');
  });
});

const shapeOf = (picture: Drawing, part: string): Shape['path'] => picture.items.find((i): i is Shape => i.kind === 'shape' && i.part === part)!.path;

const readings: readonly (readonly [number, number, number])[] = [[20, 0, 32], [26, 40, 28.6], [20, 60, 32], [12, 60, 28], [12, 20, 24], [45, 10, 60], [30, 50, 12]];

describe.each(readings)('the carrier on the saw, sharp angle %d°, reading %d°, round %d', (sharp, reading, diameter) => {
  const { drawing, solution } = drawn({ fields: `holds: [${diameter}], flat: 1, carrier: { sharpAngle: ${sharp}, sawReading: ${reading} }` });
  const page = setUpOf(drawing, 'carrier');
  const { picture } = page;
  const c = solution.carrier!;
  // The picture's own scale, from the carrier's printed width: both long sides run along the groove.
  const outline = corners(shapeOf(picture, 'carrier-outline'));
  const side = { x: outline[1]!.x - outline[0]!.x, y: outline[1]!.y - outline[0]!.y };
  const off = { x: outline[2]!.x - outline[1]!.x, y: outline[2]!.y - outline[1]!.y };
  const k = Math.hypot(off.x, off.y) / c.width;

  test('leads away from the fence at the printed turn, the blade at the saw’s own reading', () => {
    expect(Math.atan2(side.y, -side.x)).toBeCloseTo(rad(figure(page, 'turn')[0]!), 6);
    const [a, b] = corners(shapeOf(picture, 'blade-line'));
    expect(Math.atan2(-(b!.x - a!.x), b!.y - a!.y)).toBeCloseTo(rad(reading), 6);
  });

  test('keeps the finished part on the left, its toe at the fence’s side, the off-cut right of the blade', () => {
    const [, toe, heel] = corners(shapeOf(picture, 'kept-part')) as [unknown, { x: number; y: number }, { x: number; y: number }];
    expect(toe.y).toBeLessThan(heel.y);
    expect(Math.hypot(toe.x - heel.x, toe.y - heel.y) / k).toBeCloseTo(diameter / Math.sin(rad(sharp)), 4);
    const [a, b] = corners(shapeOf(picture, 'blade-line')) as [{ x: number; y: number }, { x: number; y: number }];
    const sideOf = (p: { x: number; y: number }): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
    const kept = corners(shapeOf(picture, 'kept-part')).map(sideOf);
    const off = corners(shapeOf(picture, 'off-cut')).map(sideOf);
    // Left of the blade's line, seen along it from the fence to the maker, is the other sign.
    expect(Math.min(...kept)).toBeGreaterThan(-1e-6);
    expect(Math.max(...off)).toBeLessThan(1e-6);
    expect(sideOf({ x: -1000, y: 0 })).toBeGreaterThan(0);
  });

  test('a stick with the greatest waste just touches the fence, with one more millimetre it strikes it', () => {
    const [away, mu] = [rad(90 - sharp - reading), rad(reading)];
    // The printed figures alone: blade through the origin on the fence, axis so far along it, the stick at the printed turn.
    const axis = figure(page, 'axis-from-fence')[0]!;
    const crossing = [-axis * Math.sin(mu), axis * Math.cos(mu)] as const;
    const direction = [-Math.cos(away), Math.sin(away)] as const;
    const toeAlong = -diameter / Math.tan(rad(sharp)) / 2;
    const nearest = (waste: number): number => {
      const stick = cylinderSolid({ at: [crossing[0], crossing[1], 0], axis: [direction[0], direction[1], 0], from: toeAlong - waste, to: 200, radius: diameter / 2, facets: 512 });
      return stick.boundingBox().min[1]!;
    };
    const most = figure(page, 'waste')[1]!;
    expect(Math.abs(nearest(most))).toBeLessThan(0.02);
    expect(nearest(most + 1)).toBeLessThan(-0.05);
    expect(most).toBeGreaterThan(figure(page, 'waste')[0]! + 5);
  });

  test('the hands’ line starts at the fence’s face, runs 150 mm off the blade and leaves the carrier on the maker’s side, its words beyond', () => {
    const [start, end] = corners(shapeOf(picture, 'hands-line')) as [{ x: number; y: number }, { x: number; y: number }];
    expect(start.y).toBeCloseTo(0, 6);
    const fence = pathBounds(shapeOf(picture, 'fence-edge'));
    expect(fence.y1).toBeCloseTo(0, 6);
    expect(fence.x0).toBeLessThan(start.x);
    const distance = (p: { x: number; y: number }): number => Math.abs(p.x * Math.cos(rad(reading)) + p.y * Math.sin(rad(reading))) / k;
    expect(distance(start)).toBeCloseTo(150, 4);
    expect(distance(end)).toBeCloseTo(150, 4);
    // Beyond every place where the line crosses the carrier.
    const crossings = outline.flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      const signed = (p: { x: number; y: number }): number => -(p.x * Math.cos(rad(reading)) + p.y * Math.sin(rad(reading))) / k - 150;
      const [da, db] = [signed(a), signed(b)];
      return da * db < 0 ? [a.y + (da / (da - db)) * (b.y - a.y)] : [];
    });
    expect(end.y).toBeGreaterThan(Math.max(0, ...crossings) + 3);
    const words = picture.items.find((i) => i.kind === 'lettering' && i.text === 'hands this side');
    expect(words?.kind === 'lettering' ? words.at.y : 0).toBeGreaterThan(end.y);
    expect(words?.kind === 'lettering' ? words.at.x : Infinity).toBeLessThan(end.x);
  });

  test('no label touches a line or another label', () => {
    expect(labelCrossings(picture.items, testFont)).toEqual([]);
    expect(labelOverlaps(picture.items, testFont)).toEqual([]);
  });
});

test('the first cut frees the carrier’s wedge between blade and fence, so both sides are clamped', () => {
  const c = cradle({ fields: 'holds: [post], carrier: { sharpAngle: 20, sawReading: 15 }' }).solution.carrier!;
  const [mu, k] = [c.sawReading, c.turn];
  const base = solids.cube([c.length, c.width, 20]).translate([-c.length, -c.seatSide, 0]);
  // Its own end cut along the fence: a carrier laid out in its own frame, then turned onto the saw.
  const turned = base.translate([0, 0, 0]).rotate([0, 0, (-k * 180) / Math.PI]);
  const placed = turned.translate([-c.bladeToAxis * Math.sin(mu), c.bladeToAxis * Math.cos(mu), 0]);
  const onTable = placed.trimByPlane([0, 1, 0], 0);
  const blade = solids.cube([3, 4000, 40]).translate([-1.5, -10, -10]).rotate([0, 0, (mu * 180) / Math.PI]);
  expect(onTable.subtract(blade).decompose().filter((p) => p.volume() > 100).length).toBe(2);
  expect(stepText(setUpOf(drawn({ fields: 'holds: [post], carrier: { sharpAngle: 20, sawReading: 15 }' }).drawing, 'carrier'), 'clamp', 'mm')).toContain('on BOTH sides of the blade’s line');
});

test('the carrier’s own end reaches furthest along side B, the blade’s', () => {
  const { drawing, solution } = drawn({ fields: 'holds: [post], carrier: { sharpAngle: 26, sawReading: 20 }' });
  const c = solution.carrier!;
  const outline = corners(shapeOf(setUpOf(drawing, 'carrier').picture, 'carrier-outline'));
  const [seat, farSeat, farBlade, blade] = outline as [{ x: number; y: number }, { x: number; y: number }, { x: number; y: number }, { x: number; y: number }];
  expect(Math.hypot(blade.x - farBlade.x, blade.y - farBlade.y)).toBeGreaterThan(Math.hypot(seat.x - farSeat.x, seat.y - farSeat.y));
  expect(c.bladeSide).toBeGreaterThan(0);
  expect(stepText(setUpOf(drawing, 'saw-carrier-v'), 'own-end', 'mm')).toContain('reaches furthest along side B, the blade’s');
});

const pair = (end: 'near' | 'far', more = ''): string => `title: t
units: mm
rounds: { post: 36, rail: 26, leg: 44 }
jigs:
  - { kind: saddle-cope, name: cope, branch: rail, main: post, angle: 24, centres: 400, farEnd: { main: leg, angle: 30, twist: 50 } }
  - { kind: v-cradle, name: cradle, holds: [post, rail], carrier: { from: cope, end: ${end}, sawReading: 20${more} } }
`;

describe.each([['near', 24, 18], ['far', 30, 22]] as const)('a carrier from a cope, %s end', (end, theta, R) => {
  const drawing = check({ text: pair(end), file: 'pair.yaml', kinds }).draw(testFont)[1]!;
  const page = setUpOf(drawing, 'carrier');

  test('takes sharp angle, round, toe and twist from it', () => {
    const z = (phi: number): number => (Math.sqrt(R ** 2 - (13 * Math.sin(phi)) ** 2) + 13 * Math.cos(phi) * Math.cos(rad(theta))) / Math.sin(rad(theta));
    const horn = Math.min(...Array.from({ length: 36_000 }, (_, i) => z((i * Math.PI) / 18_000)));
    const toe = (Math.sqrt(R ** 2 - 169) - 13 * Math.cos(rad(theta))) / Math.sin(rad(theta)) - 1;
    expect(figure(page, 'from-axis')[0]).toBeCloseTo(theta, 9);
    expect(figure(page, 'toe-beyond-horn')[0]).toBeCloseTo(horn - toe, 4);
    expect(stepFigures(page, 'mark')[0]).toBeCloseTo(horn - toe, 4);
    expect(figure(page, 'twist')).toEqual([expect.closeTo(50, 9), expect.closeTo(rad(50) * 13, 9)]);
    expect(drawing.assumed).toContain('rail Ø 26 mm (1 1⁄32″)');
  });

  test('lays throat and long point level, the long point to the fence: no other way leaves the finished end whole', () => {
    expect(stepText(page, 'mark', 'mm')).toContain('throat and long point lie LEVEL, the long point towards the fence, the throat towards you');
    // The branch along −X with its end at the right, the carrier turned: in the round's own frame the blade takes all beyond a plane that makes the sharp
    // angle with the axis, its toe on the fence's side (+Y). The cut passes the axis where the first cut does.
    const rod = cylinderSolid({ at: [0, 0, 0], axis: [-1, 0, 0], from: -80, to: 200, radius: 13, facets: 96 });
    const lost = (throat: readonly [number, number, number]): number => {
      const axis = [-Math.cos(rad(theta)), Math.sin(rad(theta)) * throat[1], Math.sin(rad(theta)) * throat[2]] as const;
      const main = cylinderSolid({ at: [0, 0, 0], axis, from: -500, to: 500, radius: R, facets: 192 });
      const [finished] = rod.subtract(main).decompose().sort((a, b) => b.volume() - a.volume());
      const onAxis = Math.sqrt(R ** 2 - 169) / Math.sin(rad(theta)) - 1;
      return finished!.trimByPlane([Math.sin(rad(theta)), -Math.cos(rad(theta)), 0], -onAxis * Math.sin(rad(theta))).volume();
    };
    expect(lost([0, -1, 0])).toBeLessThan(1);
    for (const wrong of [[0, 1, 0], [0, 0, 1], [0, 0, -1]] as const) expect(lost(wrong)).toBeGreaterThan(500);
  });
});

const mistakeOf = (text: string) => {
  try {
    check({ text, file: 'pair.yaml', kinds });
  } catch (error) {
    if (error instanceof UserError) return error.mistakes[0]!;
  }
  throw new Error('no mistake');
};

test('a misspelt cope, an end that it has not, a figure given twice: each at its own field', () => {
  expect(mistakeOf(pair('near').replace('from: cope', 'from: cop'))).toMatchObject({ code: 'unknown-jig', path: 'jigs[1].carrier.from', line: 6, nearest: 'cope' });
  expect(mistakeOf(pair('far').replace(', farEnd: { main: leg, angle: 30, twist: 50 }', ''))).toMatchObject({ code: 'pair-has-no-far-end', path: 'jigs[1].carrier.end' });
  expect(mistakeOf(pair('near', ', sharpAngle: 20'))).toMatchObject({ path: 'jigs[1].carrier.sharpAngle' });
  const stops = check({ text: pair('near').replace('holds: [post, rail]', 'holds: [post]'), file: 'x', kinds }).report.jigs[1]!.findings;
  expect(stops.map((f) => f.code)).toEqual(['carrier-round-not-held']);
});
