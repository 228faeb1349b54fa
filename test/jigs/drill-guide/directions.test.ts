import { describe, expect, test } from 'vitest';
import { check } from '../../../src/compile.js';
import { kinds } from '../../../src/jigs/index.js';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import { testFont } from '../../support/font.js';
import { figure, figureText, setUpOf, stepText } from '../../support/set-up-figures.js';
import { cylinderSolid } from '../../support/solids.js';
import { context, round, solved } from './guide.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;

test('the rim of a canted bit bites on the uphill side first, the side to which the shank leans', () => {
  // Work with its axis along X; the bit leans to +X by 90° − θ. A flat-ended bit comes down along its axis until it first touches.
  for (const theta of [40, 60, 75]) {
    const work = cylinderSolid({ at: [0, 0, 0], axis: [1, 0, 0], from: -100, to: 100, radius: 20, facets: 256 });
    const axis = [Math.cos(rad(theta)), 0, Math.sin(rad(theta))] as const;
    const bit = (lead: number) => cylinderSolid({ at: [0, 0, 0], axis, from: lead, to: lead + 60, radius: 6, facets: 256 });
    let [free, touching] = [60, 0];
    for (let i = 0; i < 40; i += 1) {
      const middle = (free + touching) / 2;
      if (bit(middle).intersect(work).volume() > 1e-6) touching = middle; else free = middle;
    }
    const first = bit(touching - 0.05).intersect(work).boundingBox();
    const entry = 20 / Math.tan(rad(theta));
    // The first bite lies beyond the mark where the axis enters, towards +X: where the shank leans. Seen square to the bit that is uphill.
    expect((first.min[0]! + first.max[0]!) / 2).toBeGreaterThan(entry);
  }
  for (const given of [{ angle: rad(60) }, { onto: round(40), angle: rad(60), depth: 15 }]) {
    const page = setUpOf(drillGuide.draw(solved(given), context, testFont), 'drill');
    expect(stepText(page, 'drill', 'mm')).toContain('bites on the uphill side first, the side to which the shank leans');
  }
});

test('a bevel that shows the hole too steep is mended at the acute end of the sole, too flat at the obtuse end', () => {
  // On paper: the block stands on its sole; planing its acute end lets that end down, and the bore, which leans towards it, leans further: flatter.
  const [theta, planed] = [rad(60), rad(1)];
  // The sole from its obtuse end (0, 0) to its acute end (80, 0); the bore leans towards the acute end at θ. Taking 1° off at the acute end turns the block
  // about its obtuse end by 1° towards the acute end.
  const leaned = Math.atan2(Math.sin(theta - planed), Math.cos(theta - planed));
  expect(leaned).toBeLessThan(theta);
  const page = setUpOf(drillGuide.draw(solved(), context, testFont), 'make-block');
  expect(stepText(page, 'test', 'mm')).toContain('Too steep: plane the sole at its acute end; too flat: at its obtuse end.');
});

test('at a saw the acute end lies to the left, the handle swings to the right, and the wedge comes free in front at the left', () => {
  // Block upright: x from the obtuse to the acute end, z up along the bore, y out of the left side as seen from the acute end, looking along −x.
  // Seen so, right is +y (x towards the eye, z up: y = z × x), so the left side is the one at −y.
  const cross = (a: readonly number[], b: readonly number[]) => [a[1]! * b[2]! - a[2]! * b[1]!, a[2]! * b[0]! - a[0]! * b[2]!, a[0]! * b[1]! - a[1]! * b[0]!] as const;
  const dot = (a: readonly number[], b: readonly number[]): number => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
  const [acute, top] = [[1, 0, 0], [0, 0, 1]] as const;
  const rightSide = cross(top, acute);
  // On the saw the left side lies on the table and the top against the fence: up is the right side, away from the maker is the top.
  const [up, away] = [rightSide, top];
  const right = cross(away, up);
  expect(dot(acute, right)).toBe(-1);
  // The sole falls from the acute end to the obtuse one; along it towards the maker, that is away from the top, the cut goes to the right.
  const theta = rad(40);
  const alongSole = [-Math.sin(theta), 0, -Math.cos(theta)];
  expect(dot(alongSole, away)).toBeLessThan(0);
  expect(dot(alongSole, right)).toBeCloseTo(Math.sin(theta), 12);
  // The waste lies under the sole: below the middle of the sole, at the acute end. In front of the maker's cut, to its left.
  const waste = [1, 0, -1];
  expect([dot(waste, right), dot(waste, away)]).toEqual([-1, -1]);
  const step = stepText(setUpOf(drillGuide.draw(solved({ angle: theta }), context, testFont), 'make-block'), 'saw-sole-at-saw', 'mm');
  expect(step).toContain('acute end to your left, the saw turned 40° from square, its handle swung to your right: the wedge in front at the left comes free');
});

test('of the block that is sawn from the long blank, the waste lies under the sole’s line and the blank goes on beyond the obtuse end', () => {
  const { picture } = setUpOf(drillGuide.draw(solved({ angle: rad(50) }), context, testFont), 'make-block');
  const xOf = (part: string): number[] => picture.items.flatMap((i) => (i.kind === 'shape' && i.part === part && i.path.segments[0]?.kind === 'line'
    ? [i.path.start.x, i.path.segments[0].to.x] : []));
  const acute = picture.items.find((i) => i.kind === 'lettering' && i.text === 'acute end');
  const cut = xOf('cut-off-last');
  expect(cut).toHaveLength(2);
  expect(Math.min(...xOf('long-blank'))).toBeLessThan(cut[0]! - 1);
  expect(Math.max(...xOf('long-blank'))).toBeCloseTo(cut[0]!, 9);
  expect(acute?.kind === 'lettering' ? acute.at.x : -Infinity).toBeGreaterThan(cut[0]!);
});

/** The branch of a cope as the maker sees it on the main: which side, where, how far. */
describe.each([['near', 3], ['near', -3], ['far', 4], ['far', -4]] as const)('a guide from the %s end of a cope with an offset of %d', (end, offset) => {
  const text = JSON.stringify({
    title: 't', units: 'mm', rounds: { rail: 24, post: 40, leg: 46 },
    jigs: [
      {
        kind: 'saddle-cope', name: 'cope', branch: 'rail', main: 'post', angle: 55, offset: end === 'near' ? offset : 0, centres: 300, pin: { diameter: 10 },
        farEnd: { main: 'leg', angle: 66, offset: end === 'far' ? offset : 0, twist: 40 },
      },
      { kind: 'drill-guide', name: 'guide', from: 'cope', end },
    ],
  });
  const [cope, guide] = check({ text, file: 'pair.yaml', kinds }).draw(testFont);
  const page = setUpOf(guide!, 'drill');
  const pin = setUpOf(cope!, 'drill-pin', end);
  const [R, theta] = end === 'near' ? [20, 55] : [23, 66];
  const height = Math.sqrt(R ** 2 - offset ** 2);

  test('says where the bit enters from crossing, throat and horn, as the cope’s own page does', () => {
    const z = (phi: number): number => (Math.sqrt(R ** 2 - (offset + 12 * Math.sin(phi)) ** 2) + 12 * Math.cos(phi) * Math.cos(rad(theta))) / Math.sin(rad(theta));
    const along = (phi: number): number => z(phi) * Math.cos(rad(theta)) + 12 * Math.cos(phi) * Math.sin(rad(theta));
    const station = height / Math.tan(rad(theta));
    const horn = Array.from({ length: 72_000 }, (_, i) => (i * Math.PI) / 36_000).reduce((best, phi) => (z(phi) < z(best) ? phi : best), 0);
    expect(figure(page, 'entry')[0]).toBeCloseTo(station, 9);
    expect(figure(page, 'entry-to-throat')[0]).toBeCloseTo(along(0) - station, 6);
    expect(figure(page, 'entry-to-horn')[0]).toBeCloseTo(Math.abs(station - along(horn)), 2);
    for (const code of ['entry', 'entry-to-throat', 'entry-to-horn']) expect(figure(page, code)[0]).toBeCloseTo(figure(pin, code)[0]!, 9);
    expect(figure(page, 'offset')[0]).toBeCloseTo(Math.abs(offset), 9);
    expect(figure(page, 'girth')[0]).toBeCloseTo(R * Math.asin(Math.abs(offset) / R), 9);
  });

  test('names the side as it is seen from the acute side with the work under the bit', () => {
    // On paper: at the near end that view has the far end up, so a positive offset lies to the right; at the far end it stands on its head.
    const side = (end === 'near') === (offset > 0) ? 'right' : 'left';
    expect(figureText(page, 'offset', 'mm')).toContain(`to the ${side}, seen from the acute side`);
    expect(stepText(page, 'mark', 'mm')).toContain(`to the ${side}, seen from the acute side`);
    expect(figureText(pin, 'offset', 'mm')).toContain(`to the ${side}, seen from the acute side`);
  });
});
