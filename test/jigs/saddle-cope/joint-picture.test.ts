import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../../src/drawing/drawing.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { endOf, type Path } from '../../../src/geometry/path.js';
import type { Point } from '../../../src/geometry/point.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import type { SaddleCopeSolution, SaddleEnd } from '../../../src/jigs/saddle-cope/solve.js';
import { testFont } from '../../support/font.js';
import { labelCrossings } from '../../support/label-crossings.js';
import { figureText, setUpOf, stepText } from '../../support/set-up-figures.js';
import { cross3, dot3, jointFrame, plus, times, type Vector } from './joint-frame.js';
import { context, fields, sampled, solved } from './written.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;
const centres = 320;

const copeWith = (offset: number, farOffset: number): SaddleCopeSolution => solved(fields({
  mainDiameter: 44, branchDiameter: 26, angle: rad(55), offset, centres, pin: { diameter: 10 },
  farEnd: { main: { name: 'leg', diameter: 50 }, angle: rad(70), offset: farOffset, twist: rad(40) },
}));

const shapes = (drawing: Drawing, part: string): Path[] => drawing.items.filter((i): i is Shape => i.kind === 'shape' && i.part === part).map((i) => i.path);

/** The joint as the reader of a picture sees it: the branch going up from the main, the throat at the right, or seen from the throat. */
const seen = (end: SaddleEnd) => {
  const frame = jointFrame(end, centres);
  const up: Vector = [0, 0, end.name === 'near' ? 1 : -1];
  // Whoever looks along d with u up has d × u at his right.
  const rightFromThroat = cross3(times(-1, frame.throat), up);
  const intoPage = cross3(up, frame.throat);
  const mainToBranch = plus([0, 0, frame.mainPoint[2]], times(-1, frame.mainPoint));
  return { rightFromThroat, intoPage, beside: dot3(mainToBranch, rightFromThroat), throat: frame.throat, right: cross3([0, 0, 1], frame.throat) };
};

const cases = [[4, -5], [-4, 5], [3, 3]].flatMap(([near, far]) => (['near', 'far'] as const).map((end) => ({ near: near!, far: far!, end })));

describe.each(cases)('the picture of the $end joint, offsets $near and $far', ({ near, far, end: name }) => {
  const s = copeWith(near, far);
  const end = s[name]!;
  const drawing = saddleCope.draw(s, context, testFont).patterns.find((p) => p.name === (name === 'near' ? 'joint' : 'far-joint'))!;
  const circle = pathBounds(shapes(drawing, 'end-view-main')[0]!);
  const k = (circle.x1 - circle.x0) / (2 * end.joint.main);

  test('shows the branch on the side of the main where a reader at the throat sees it, by as much', () => {
    const sides = shapes(drawing, 'end-view-side').map((path) => path.start.x);
    const middle = (Math.min(...sides) + Math.max(...sides)) / 2 - (circle.x0 + circle.x1) / 2;
    expect(middle / k).toBeCloseTo(seen(end).beside, 6);
    expect(Math.abs(seen(end).beside)).toBeCloseTo(Math.abs(end.joint.offset), 9);
  });

  test('draws in full the half of the edge that faces the reader, the other in dashes', () => {
    const { intoPage, right } = seen(end);
    // φ = 90° of the end's own clock lies at its right; it faces the reader where it does not look into the page.
    const facing = dot3(right, intoPage) < 0 ? Math.PI / 2 : -Math.PI / 2;
    const height = (phi: number): number => {
      const { main, branch, angle, offset } = end.joint;
      return (Math.sqrt(main ** 2 - (offset + branch * Math.sin(phi)) ** 2) + branch * Math.cos(phi) * Math.cos(angle)) / Math.sin(angle);
    };
    const axis = shapes(drawing, 'joint-branch-axis')[0]!;
    const level = shapes(drawing, 'joint-main-axis')[0]!.start.y;
    const [a, b] = [axis.start, endOf(axis.segments[0]!)];
    const onAxis = (path: Path): number => {
      // Where the edge passes the branch's axis: its wing, seen in the middle.
      const off = ({ x, y }: Point): number => Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
      const nearest = sampled(path, 200).reduce((best, p) => (off(p) < off(best) ? p : best));
      return (level - nearest.y) / k / Math.sin(end.joint.angle);
    };
    expect(onAxis(shapes(drawing, 'joint-edge')[0]!)).toBeCloseTo(height(facing), 1);
    expect(onAxis(shapes(drawing, 'joint-edge-behind')[0]!)).toBeCloseTo(height(-facing), 1);
  });

  test('the words on both pages name the side that the picture shows', () => {
    const side = seen(end).beside > 0 ? 'to the right' : 'to the left';
    const made = saddleCope.draw(s, context, testFont);
    expect(figureText(setUpOf(made, 'hollow', name), 'offset', 'mm')).toContain(`${side}, seen from the acute side, the main below`);
    expect(figureText(setUpOf(made, 'drill-pin', name), 'entry-girth', 'mm')).toContain(side);
    expect(stepText(setUpOf(made, 'drill-pin', name), 'mark-main', 'mm')).toContain(`round ${side} of the line along its top, seen from the acute side`);
    expect(stepText(setUpOf(made, 'drill-pin', name), 'drill-main', 'mm')).toContain(`${side} of the round’s middle, seen from the acute side`);
  });

  test('no label touches a line', () => {
    expect(labelCrossings(drawing.items, testFont)).toEqual([]);
  });
});

test('the rim of a canted bit bites on the uphill side first: of the pin’s rim on the main, the point on the throat’s side is highest along the bit', () => {
  // The main lies along the tilt, throat side uphill; the bit comes straight down. Along the bit, wood on the throat's side is met first.
  const { joint } = copeWith(0, 0).near;
  const along = (phi: number): number => (Math.sqrt(joint.main ** 2 - (5 * Math.sin(phi)) ** 2) + 5 * Math.cos(phi) * Math.cos(joint.angle)) / Math.sin(joint.angle);
  const highest = Array.from({ length: 360 }, (_, i) => i).reduce((best, i) => (along(rad(i)) > along(rad(best)) ? i : best), 90);
  expect(highest).toBe(0);
  // Uphill is where the main's surface rises towards: a table tilted by 90° − θ lifts the side towards which the branch leans.
  expect(stepText(setUpOf(saddleCope.draw(copeWith(0, 0), context, testFont), 'drill-pin', 'near'), 'drill-main', 'mm'))
    .toMatch(/throat side uphill.*The rim bites on the uphill side first/);
});

test('the pin in the picture reaches from the bottom of its hole in the main to its end in the branch, along the branch’s axis', () => {
  const s = copeWith(4, -5);
  const { joint, pin } = s.near;
  const drawing = saddleCope.draw(s, context, testFont).patterns.find((p) => p.name === 'joint')!;
  const circle = pathBounds(shapes(drawing, 'end-view-main')[0]!);
  const k = (circle.x1 - circle.x0) / (2 * joint.main);
  const corners = [shapes(drawing, 'joint-pin')[0]!].flatMap((path) => [path.start, ...path.segments.flatMap((g) => ('to' in g ? [g.to] : []))]);
  const level = shapes(drawing, 'joint-main-axis')[0]!.start.y;
  const heights = corners.map((p) => (level - p.y) / k);
  const entry = Math.sqrt(joint.main ** 2 - joint.offset ** 2) / Math.sin(joint.angle);
  const [low, high] = [(entry - pin!.intoMain), (entry + pin!.intoBranch)].map((along) => along * Math.sin(joint.angle));
  const lean = (pin!.diameter / 2) * Math.cos(joint.angle);
  expect(Math.min(...heights)).toBeCloseTo(low! - lean, 6);
  expect(Math.max(...heights)).toBeCloseTo(high! + lean, 6);
});

test('the main reaches 1.8 of its radius to either side of the crossing, and 0.8 beyond the branch where that is farther', () => {
  for (const angle of [16, 30, 45, 70, 90]) {
    const s = solved(fields({ mainDiameter: 44, branchDiameter: 36, angle: rad(angle), pin: { diameter: 0 } }));
    const drawing = saddleCope.draw(s, context, testFont).patterns.find((p) => p.name === 'joint')!;
    const [axis, branch] = [shapes(drawing, 'joint-main-axis')[0]!, shapes(drawing, 'joint-branch-axis')[0]!];
    // The branch's axis begins 0.3 of the main's radius short of the crossing of the axes and runs up at the angle between them.
    const circle = pathBounds(shapes(drawing, 'end-view-main')[0]!);
    const k = (circle.x1 - circle.x0) / 44;
    const crossing = { x: branch.start.x + 0.3 * 22 * k * Math.cos(rad(angle)), y: axis.start.y };
    expect(branch.start.y - crossing.y).toBeCloseTo(0.3 * 22 * k * Math.sin(rad(angle)), 6);
    const along = (height: number, across: number): number => k * (height * Math.cos(rad(angle)) + across * Math.sin(rad(angle)));
    // The axis is drawn 3 mm past the main at either end.
    expect(axis.start.x + 3 - crossing.x).toBeCloseTo(Math.min(-1.8 * k * 22, along(s.near.longPoint, -18) - 0.8 * k * 22), 6);
    expect(endOf(axis.segments[0]!).x - 3 - crossing.x).toBeCloseTo(Math.max(1.8 * k * 22, along(s.near.throat, 18) + 0.8 * k * 22), 6);
  }
});
