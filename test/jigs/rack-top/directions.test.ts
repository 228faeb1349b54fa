import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../../src/drawing/drawing.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { flattenPath } from '../../../src/geometry/flatten-path.js';
import type { Point } from '../../../src/geometry/point.js';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { testFont } from '../../support/font.js';
import { figure, setUpOf, stepText } from '../../support/set-up-figures.js';
import { cylinderSolid, solids } from '../../support/solids.js';
import { partShapes } from '../../support/read-svg.js';
import { context, findingsOf, patternsOf, slots, solved, writeAndRead, type Given } from './rack.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;

const draw = (given: Given) => rackTop.draw(solved(given), context, testFont);
const shapeOf = (drawing: Drawing, part: string): Shape['path'] => {
  const found = drawing.items.find((i): i is Shape => i.kind === 'shape' && i.part === part);
  if (found === undefined) throw new Error(`no ${part} in ${drawing.name}`);
  return found.path;
};

describe('a canted hole at the drill press', () => {
  // A board tilted about its own X axis so that +Y goes up, the bit plumb through the origin on its top face.
  const tilt = 20;
  const board = solids.cube([200, 200, 27], true).translate([0, 0, -13.5]).rotate([tilt, 0, 0]);

  test('with the arrow uphill the leg goes up the arrow: the bit leans uphill in the board', () => {
    // In the board's own frame the plumb line is turned back by the tilt about X.
    const inBoard = cylinderSolid({ at: [0, 0, 0], axis: [0, 0, 1], from: -60, to: 100, radius: 1, facets: 64 }).rotate([-tilt, 0, 0]).boundingBox();
    expect(inBoard.max[1]!).toBeGreaterThan(30);
    expect(stepText(setUpOf(draw({ holes: [{ round: 30, at: [400, 100], lean: 20, toward: 90, below: 0 }] }), 'drill-holes'), 'tilt', 'mm'))
      .toContain('Turn the board until the printed arrow points straight UPHILL: the leg goes up that way');
  });

  test('the rim bites on the uphill side first', () => {
    let [free, touching] = [60, 0];
    const bit = (low: number) => cylinderSolid({ at: [0, 0, 0], axis: [0, 0, 1], from: low, to: low + 80, radius: 15, facets: 256 });
    for (let i = 0; i < 40; i += 1) {
      const middle = (free + touching) / 2;
      if (bit(middle).intersect(board).volume() > 1e-6) touching = middle; else free = middle;
    }
    const first = bit(touching - 0.05).intersect(board).boundingBox();
    expect((first.min[1]! + first.max[1]!) / 2).toBeGreaterThan(5);
    const page = setUpOf(draw({ holes: [{ round: 30, at: [400, 100], lean: 20, toward: 90, below: 0 }] }), 'drill-holes');
    expect(stepText(page, 'mark', 'mm')).toContain('bites on the uphill side first');
    // From that touch to where the exit is open all round: the quill's travel, less the 3 mm in hand.
    const through = (low: number): boolean => bit(low).translate([0, 0, 0]).intersect(board.translate([0, 0, -400]).add(board)).volume() >= 0;
    expect(through(0)).toBe(true);
    const last = board.boundingBox();
    expect(last.min[2]!).toBeLessThan(0);
    const travel = 27 / Math.cos(rad(tilt)) + 30 * Math.tan(rad(tilt)) + 3;
    expect(figure(page, 'travel')[0]).toBeCloseTo(travel, 9);
    // The board's underside rises uphill: the rim leaves it last on the downhill side.
    const left = board.subtract(cylinderSolid({ at: [0, 0, 0], axis: [0, 0, 1], from: touching - (travel - 3) - 0.02, to: 60, radius: 15.01, facets: 256 }));
    const shy = board.subtract(cylinderSolid({ at: [0, 0, 0], axis: [0, 0, 1], from: touching - (travel - 3) + 0.5, to: 60, radius: 15.01, facets: 256 }));
    expect(left.genus()).toBe(1);
    expect(shy.volume()).toBeGreaterThan(left.volume() + 1e-3);
  });

  test.each([0, 45, 90, 200, 300])('towards %d°: the underside’s mark stands back against the arrow by the printed shift', (toward) => {
    const { holes } = solved({ holes: [{ round: 30, at: [400, 100], lean: 20, toward, below: 0 }] });
    const [hole] = holes;
    // Seen from above the compass turns counter-clockwise, paper has y down.
    const back = { x: hole!.top.x - hole!.under.x, y: -(hole!.top.y - hole!.under.y) };
    expect(Math.atan2(back.y, back.x)).toBeCloseTo(Math.atan2(Math.sin(rad(toward)), Math.cos(rad(toward))), 9);
    expect(Math.hypot(back.x, back.y)).toBeCloseTo(figure(setUpOf(draw({ holes: [{ round: 30, at: [400, 100], lean: 20, toward, below: 0 }] }), 'drill-holes'), 'shift')[0]!, 9);
  });
});

describe.each([{ diameter: 6 }, { diameter: 6, bushing: 10 }])('an unsymmetrical recess in the underside, cutter %o', (cutter) => {
  const given = { board: { length: 800, width: 200, thickness: 27 }, recesses: [{ path: 'M0 0 L60 0 L60 12 L22 12 L22 40 L0 40 Z', size: 60, at: [300, 120], depth: 6, face: 'under' }], cutter };
  const patterns = patternsOf(given);
  const template = patterns.get('recess-1')!;
  const patch = patterns.get('underside-1')!;
  const middle = (path: Shape['path']): Point => {
    const { x0, x1, y0, y1 } = pathBounds(path);
    return { x: (x0 + x1) / 2, y: (y0 + y1) / 2 };
  };
  const offsets = (path: Shape['path']): Point[] => flattenPath(path, 0.01).map((p) => ({ x: p.x - middle(path).x, y: p.y - middle(path).y }));
  const apart = (a: readonly Point[], b: readonly Point[]): number => Math.max(...a.map((p) => Math.min(...b.map((q) => Math.hypot(p.x - q.x, p.y - q.y)))));
  const name = 'bushing' in cutter ? ['finished-recess-1', 'underside-recess-1'] : ['template-of-recess-1', 'underside-recess-1'];

  test('its template lies on the underside’s patch as printed, without being turned over', () => {
    const [own, below] = [offsets(shapeOf(template, name[0]!)), offsets(shapeOf(patch, name[1]!))];
    expect(apart(own, below)).toBeLessThan(0.05);
    // Turned over it would not.
    expect(apart(own.map((p) => ({ x: p.x, y: -p.y })), below)).toBeGreaterThan(5);
  });

  test('and is the mirror image of what is seen from above', () => {
    const top = patterns.get('top')!;
    const above = offsets(shapeOf(top, 'recess-1'));
    expect(apart(offsets(shapeOf(template, name[0]!)).map((p) => ({ x: p.x, y: -p.y })), above)).toBeLessThan(0.05);
  });

  test('says that it is seen from below, the left end left', () => {
    const words = template.items.flatMap((i) => (i.kind === 'lettering' ? [i.text] : [])).join(' ');
    expect(words).toContain('UNDERSIDE, seen from below: lay it on as it is, left end left');
    expect(words).not.toContain('turn the paper over');
  });
});

describe.each([{ diameter: 12 }, { diameter: 12, bushing: 17 }, { diameter: 25, bushing: 40 }, { diameter: 6 }])('the one-slot template, cutter %o', (cutter) => {
  const given = { board: { length: 1200, width: 220, thickness: 27 }, slots: { ...slots, item: 40, pitch: 250, depth: 90, mouth: { flare: 7, ease: 4 } }, cutter };
  const template = patternsOf(given).get('slot-template-1')!;
  const opening = pathBounds(shapeOf(template, 'template-slot-1'));
  const stick = shapeOf(template, 'template-stick-edge').start.y;
  const guide = ('bushing' in cutter ? cutter.bushing! : cutter.diameter) / 2;

  test('lets the cutter run out of the mouth and never into the pitch stick or its pins', () => {
    // The guide rolls inside the opening: the cutter's axis keeps its radius from the closed front, the cutter its own beyond that.
    const farthest = opening.y1 - guide + cutter.diameter / 2;
    expect(farthest).toBeLessThanOrEqual(stick - 3 + 1e-9);
    expect(shapeOf(template, 'template-slot-1').closed).toBe(true);
    // The board's edge lies at y = 0: the whole cutter leaves the wood.
    expect(opening.y1 - guide - cutter.diameter / 2).toBeGreaterThanOrEqual(-1e-9);
    for (const pin of ['template-pin-1', 'template-pin-2']) expect(pathBounds(shapeOf(template, pin)).y0).toBeGreaterThan(stick);
    expect(stick).toBeCloseTo(figure(setUpOf(draw(given), 'cut-slots'), 'stand-off')[0]!, 9);
  });

  test('keeps wood of its own between the opening and its front', () => {
    expect(pathBounds(shapeOf(template, 'template-edge')).y1).toBeCloseTo(stick + 40, 9);
    const words = patternsOf(given).get('pitch-stick-front')!.items.flatMap((i) => (i.kind === 'lettering' ? [i.text] : [])).join(' ');
    expect(words).toContain('off the edge of the board: spacers between');
  });
});

test('a spline in grooves that nearly meet in the middle is rounded by no more than half its length', () => {
  // 60 wide less two margins of 20: 20 long, and 26.5 wide: corners of radius 10.
  const joint = patternsOf({ board: { length: 800, width: 60, thickness: 27 }, split: [400], spline: { groove: 14, margin: 20 } }).get('joint-1')!;
  const spline = joint.items.find((item) => item.kind === 'shape' && item.part === 'spline-1');
  if (spline?.kind !== 'shape') throw new Error('no spline');
  const radii = spline.path.segments.flatMap((s) => (s.kind === 'arc' ? [Math.hypot(s.u.x, s.u.y)] : []));
  expect(Math.max(...radii)).toBeCloseTo(10, 9);
  const box = pathBounds(spline.path);
  expect([box.x1 - box.x0, box.y1 - box.y0].map((mm) => Number(mm.toFixed(6)))).toEqual([26.5, 20]);
});

test('the spline is drawn and cut 1.5 mm narrower than its grooves together', () => {
  const joint = patternsOf({ split: [400], spline: { groove: 14 } }).get('joint-1')!;
  const width = (part: string): number => pathBounds(shapeOf(joint, part)).x1 - pathBounds(shapeOf(joint, part)).x0;
  expect(width('spline-1')).toBeCloseTo(26.5, 9);
  expect(width('grooves-1')).toBeCloseTo(28, 9);
  expect(width('joint-spline')).toBeCloseTo(26.5, 9);
  expect(width('joint-grooves')).toBeCloseTo(28, 9);
});

test('a sharp inside corner says where on the board it is, kinks under 1° are none', () => {
  const sharp = findingsOf({ recesses: [{ path: 'M0 0 H80 V40 H0 Z', size: 80, at: [400, 100], depth: 5 }] }).find((f) => f.code === 'recess-corner')!;
  expect(sharp.message).toMatch(/along (360|440) mm .*across (80|120) mm/);
  const count = 720;
  const traced = Array.from({ length: count }, (_, i) => `${(40 + 40 * Math.cos((2 * Math.PI * i) / count)).toFixed(5)} ${(40 + 40 * Math.sin((2 * Math.PI * i) / count)).toFixed(5)}`);
  const round = findingsOf({ recesses: [{ path: `M${traced.join(' L')} Z`, size: 80, at: [400, 100], depth: 5 }] });
  expect(round.map((f) => f.code)).toEqual([]);
});

test('cautions stay with their operation', () => {
  const drawing = draw({ slots, holes: [{ round: 30, at: [60, 150] }], recesses: [{ circle: 40, at: [720, 150], depth: 5 }], split: [100] });
  const of = (code: string): string => setUpOf(drawing, code).cautions.join(' ');
  expect(of('drill-holes')).toMatch(/chuck key/);
  expect(of('rout-recess')).toMatch(/Plunge/);
  for (const code of ['cut-slots', 'rout-recess']) expect(of(code)).not.toMatch(/chuck|starting pin/);
  expect(of('join')).not.toMatch(/Plunge|chuck/);
});

test.each([['right', 1, 0], ['rear', 0, -1], ['left', -1, 0], ['front', 0, 1]] as const)('a leg that leans toward the %s as it goes up enters the underside on the other side, and the words may be written for degrees', async (word, right, down) => {
  const hole = (toward: unknown) => ({ holes: [{ round: 30, at: [400, 100], lean: 20, toward, below: 0 }] });
  const top = patternsOf(hole(word)).values().next().value!;
  // On paper the rear is up: y grows downwards. As written and read back.
  const { svg } = await writeAndRead(top);
  const middle = (part: string): Point => {
    const { x0, y0, x1, y1 } = pathBounds(partShapes(svg, part)[0]!.subpaths[0]!);
    return { x: (x0 + x1) / 2, y: (y0 + y1) / 2 };
  };
  const [above, under] = [middle('hole-1-top'), middle('hole-1-under')];
  const run = 27 * Math.tan(rad(20));
  expect(under.x - above.x).toBeCloseTo(-right * run, 3);
  expect(under.y - above.y).toBeCloseTo(-down * run, 3);
  expect(solved(hole(word)).holes[0]!.toward).toBeCloseTo(solved(hole({ right: 0, rear: 90, left: 180, front: 270 }[word])).holes[0]!.toward, 12);
  expect(() => solved(hole('reer'))).toThrow(/is not an angle/);
});
