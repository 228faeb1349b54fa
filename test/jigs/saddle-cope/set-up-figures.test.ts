import { describe, expect, test } from 'vitest';
import type { SetUp } from '../../../src/drawing/set-up.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import type { SaddleCopeFields } from '../../../src/jigs/saddle-cope/schema.js';
import { testFont } from '../../support/font.js';
import { codesWithFigures, columnFigures, figure, figureText, setUpOf, stepFigures, stepText } from '../../support/set-up-figures.js';
import { context, fields, solved } from './written.js';

/*
 * Every figure of the pages, worked out again from the closed forms of the joint (the branch's point put into y² + z² = R²;
 * cf. Apostol & Mnatsakanian 2007, eq. 10), by its code. Heights are along the branch from the crossing of the axes.
 */

const rad = (deg: number): number => (deg * Math.PI) / 180;
const deg = (r: number): number => (r * 180) / Math.PI;

interface Joint {
  readonly R: number;
  readonly r: number;
  /** Degrees. */
  readonly theta: number;
  readonly e: number;
}

const z = ({ R, r, theta, e }: Joint, phi: number): number =>
  (Math.sqrt(R ** 2 - (e + r * Math.sin(phi)) ** 2) + r * Math.cos(phi) * Math.cos(rad(theta))) / Math.sin(rad(theta));

/** The edge in 36 000 steps: its lowest and highest, and where the lowest is. */
const extremes = (joint: Joint): { low: number; high: number; at: number } => {
  let [low, high, at] = [Infinity, -Infinity, 0];
  for (let i = 0; i < 36_000; i += 1) {
    const phi = (i * Math.PI) / 18_000;
    const height = z(joint, phi);
    if (height < low) [low, at] = [height, phi];
    high = Math.max(high, height);
  }
  return { low, high, at };
};

/** Along the main, towards the throat, from the crossing to the edge at φ: the branch's direction leans θ from the main's. */
const along = (joint: Joint, phi: number): number =>
  z(joint, phi) * Math.cos(rad(joint.theta)) + joint.r * Math.cos(phi) * Math.sin(rad(joint.theta));

const firstCut = ({ R, r, theta, e }: Joint, phi: number, allowance: number): number =>
  (Math.sqrt(R ** 2 - (Math.abs(e) + r) ** 2) + r * Math.cos(phi) * Math.cos(rad(theta))) / Math.sin(rad(theta)) - allowance;

const close = (got: readonly number[], want: readonly number[], tolerance = 1e-4): void => {
  expect(got.length).toBe(want.length);
  want.forEach((value, i) => expect(Math.abs(got[i]! - value)).toBeLessThan(tolerance));
};

interface Case {
  readonly name: string;
  readonly near: Joint;
  readonly far?: Joint & { readonly twist: number };
  readonly centres?: number;
  readonly pin: { readonly diameter: number; readonly intoBranch: number; readonly intoMain: number };
  readonly paper: number;
  readonly abrasive: number;
  readonly allowance: number;
}

const cases: readonly Case[] = [
  { name: 'a brace at 26°', near: { R: 17.4625, r: 14.2875, theta: 26, e: 0 }, pin: { diameter: 11.1125, intoBranch: 34.925, intoMain: 31.75 }, paper: 0.1, abrasive: 0.5, allowance: 1 },
  {
    name: 'two ends, offsets and a twist', near: { R: 20, r: 14, theta: 50, e: 3 }, far: { R: 24, r: 14, theta: 72, e: -4, twist: 35 }, centres: 320,
    pin: { diameter: 10, intoBranch: 32, intoMain: 20 }, paper: 0.2, abrasive: 0.8, allowance: 1.5,
  },
  {
    name: 'two ends, twisted the other way', near: { R: 22, r: 14, theta: 64, e: -2 }, far: { R: 24, r: 14, theta: 40, e: 5, twist: -110 }, centres: 400,
    pin: { diameter: 9, intoBranch: 30, intoMain: 18 }, paper: 0.1, abrasive: 0.5, allowance: 0.5,
  },
  { name: 'square with an offset', near: { R: 28, r: 12, theta: 90, e: 6 }, pin: { diameter: 8, intoBranch: 30, intoMain: 25 }, paper: 0.1, abrasive: 0.5, allowance: 1 },
  { name: 'square', near: { R: 25, r: 12.5, theta: 90, e: 0 }, pin: { diameter: 10, intoBranch: 30, intoMain: 25 }, paper: 0.1, abrasive: 0.5, allowance: 1 },
];

const asked = ({ near, far, centres, pin, paper, abrasive, allowance }: Case): SaddleCopeFields => fields({
  branchDiameter: 2 * near.r, mainDiameter: 2 * near.R, angle: rad(near.theta), offset: near.e, pin,
  paperThickness: paper, abrasive, wingAllowance: allowance, centres,
  farEnd: far && { main: { name: 'leg', diameter: 2 * far.R }, angle: rad(far.theta), offset: far.e, twist: rad(far.twist) },
});

const pageOf = (of: Case, code: string, end: 'near' | 'far'): SetUp =>
  setUpOf(saddleCope.draw(solved(asked(of)), context, testFont), code, end);

const ends = cases.flatMap((of) => [
  { title: `${of.name}, near`, of, end: 'near' as const, joint: of.near }, ...(of.far === undefined ? [] : [{ title: `${of.name}, far`, of, end: 'far' as const, joint: of.far }]),
]);

describe.each(ends)('the page for hollowing: $title', ({ of, end, joint }) => {
  const page = pageOf(of, 'hollow', end);
  const { R, r, theta, e } = joint;
  const { low, high } = extremes(joint);
  const square = theta === 90;
  const toe = low - firstCut(joint, Math.PI, of.allowance);
  const wrap = Math.PI * (2 * r + of.paper);

  test('every figure is worked out again', () => {
    const done: string[] = [];
    const is = (code: string, ...want: number[]): void => { done.push(`number ${code}`); close(figure(page, code), want); };
    is('angle', theta);
    if (!square) is('off-square', 90 - theta);
    if (e !== 0) is('offset', Math.abs(e));
    if (end === 'far') is('twist', Math.abs(of.far!.twist), (Math.abs(of.far!.twist) * wrap) / 360);
    is('saddle-depth', R - Math.sqrt(R ** 2 - (Math.abs(e) + r) ** 2));
    is('wing-angle', deg(Math.acos((Math.abs(e) + r) / R)));
    is('form-radius', R - of.abrasive);
    if (square) is('crest', high);
    else { is('throat', z(joint, 0)); is('long-point', z(joint, Math.PI)); }
    if (square || z(joint, Math.PI) - low >= 0.05) is('horn', low);
    is('wing-allowance', of.allowance, (r * rad(0.5)) / Math.sin(rad(theta)) ** 2);
    is('toe-beyond-horn', toe);
    if (of.centres !== undefined && of.far !== undefined) {
      const [nearLow, farLow] = [extremes(of.near).low, extremes(of.far).low];
      const toes = [of.near, of.far].reduce((sum, j) => sum + extremes(j).low - firstCut(j, Math.PI, of.allowance), 0);
      is('centres', of.centres);
      is('horn-to-horn', of.centres - nearLow - farLow);
      is('toe-to-toe', of.centres - nearLow - farLow + toes);
      is('throat-to-throat', of.centres - z(of.near, 0) - z(of.far, 0));
    }
    is('wrap-length', wrap);
    const step = (code: string, ...want: number[]): void => { done.push(`step ${code}`); close(stepFigures(page, code), want); };
    if (square) step('first-cut', toe, of.allowance);
    else step('first-cut', 90 - theta, toe, of.allowance);
    step('finish', R - of.abrasive);
    step('allowances', of.paper, of.allowance, of.abrasive);
    done.push(...['clock', 'along', 'to-line'].flatMap((what) => [`table ordinates ${what}-1`, `table ordinates ${what}-2`]));
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test('the ordinates count from this end’s own throat', () => {
    const column = (name: string): number[] => columnFigures(page, 'ordinates', name).flat();
    const clocks = [...column('clock-1'), ...column('clock-2')];
    close(clocks, Array.from({ length: 24 }, (_, i) => 15 * i));
    close([...column('along-1'), ...column('along-2')], clocks.map((clock) => (clock / 360) * wrap));
    const toLine = [...column('to-line-1'), ...column('to-line-2')];
    const ring = /Rule a ring round the branch ([\d.]+) mm/.exec(page.tables[0]!.note!.map((part) => (typeof part === 'string' ? part : `${(part as { mm: number }).mm} mm`)).join(''));
    // Near: from a ring on the branch down to the line. Far: from a ring at the horn back to it.
    close(toLine, clocks.map((clock) => (end === 'near' ? Number(ring![1]) - (z(joint, rad(clock)) - low) : z(joint, rad(clock)) - low)));
    const words = page.tables[0]!.note!.filter((part) => typeof part === 'string').join('');
    expect(words).toContain('growing to the right on the strip, far end up');
    if (!square) expect(words).toContain(of.far === undefined ? 'Clock 0 at the throat' : `Clock 0 at this, the ${end}, throat`);
  });
});

describe.each(ends)('the page for the pin: $title', ({ of, end, joint }) => {
  const page = pageOf(of, 'drill-pin', end);
  const { R, theta, e } = joint;
  const { pin } = of;
  const s = Math.sin(rad(theta));
  const entry = Math.sqrt(R ** 2 - e ** 2);
  const { low, at } = extremes(joint);
  const square = theta === 90;
  const inBranch = entry / s - low + pin.intoBranch + 1.5;
  const inMain = pin.intoMain + 1.5;
  const station = square ? 0 : entry / Math.tan(rad(theta));
  const toe = low - firstCut(joint, Math.PI, of.allowance);
  // The pin's own rim on the main is the edge of a saddle with the pin for its branch.
  const rim = extremes({ ...joint, r: pin.diameter / 2 }).high - entry / s;

  /** Wood beyond the hole: least distance from the flat end's rim and from the point's tip, 3 mm on, to the far surface. */
  const wall = (): number => {
    const left = (x: number, y: number): number => R - (y < 0 ? Math.hypot(x, y) : Math.abs(x));
    const bottom = entry - inMain * s;
    const rims = Array.from({ length: 3600 }, (_, i) => (i * Math.PI) / 1800)
      .map((phi) => left(e + (pin.diameter / 2) * Math.sin(phi), bottom - (pin.diameter / 2) * Math.cos(phi) * Math.cos(rad(theta))));
    return Math.min(left(e, entry - (inMain + 3) * s), ...rims);
  };

  test('every figure is worked out again', () => {
    const done: string[] = [];
    const is = (code: string, ...want: number[]): void => { done.push(`number ${code}`); close(figure(page, code), want, 1e-3); };
    const step = (code: string, ...want: number[]): void => { done.push(`step ${code}`); close(stepFigures(page, code), want, 1e-3); };
    is('pin', pin.diameter);
    is('pin-length', pin.intoBranch + pin.intoMain, pin.intoBranch, pin.intoMain);
    is('hole-in-branch', inBranch);
    is('hole-in-branch-sum', entry / s - low, pin.intoBranch, 1.5);
    is('hole-in-main', inMain);
    if (!square) {
      is('entry', station);
      is('entry-to-throat', along(joint, 0) - station);
      is('entry-to-horn', Math.abs(station - along(joint, at)));
    }
    const girth = R * Math.asin(Math.abs(e) / R);
    if (e !== 0) { is('offset', Math.abs(e)); is('entry-girth', girth); }
    is('angle', theta);
    if (!square) is('off-square', 90 - theta);
    is('wall', wall());
    is('skin', R - Math.abs(e) - pin.diameter / 2);
    step('drill-branch', inBranch, inBranch + toe);
    const aside = e === 0 ? [] : [girth];
    if (!square || e !== 0) step('mark-main', ...(square ? [] : [station]), ...aside);
    if (!square || e !== 0) step('drill-main', ...(square ? [] : [90 - theta]), ...(e === 0 ? [] : [Math.abs(e)]));
    step('depth', inMain, inMain + rim);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test('a sheet offers a guide block besides the table', () => {
    expect(stepText(page, 'drill-main', 'mm')).toContain('guide block made from this cope');
  });
});

test('the toe of the first cut lies 16.9 mm beyond the horn on a 1-1/8 in brace on 1-3/8 at 26°, 43.6 on 1-1/4 on 1-1/4 at 20°', () => {
  const beyond = (R: number, r: number, theta: number): number =>
    solved(fields({ mainDiameter: 2 * R, branchDiameter: 2 * r, angle: rad(theta), wingAllowance: 0, pin: { diameter: 0 } })).near.firstCut.toeBeyondHorn;
  expect(beyond(17.4625, 14.2875, 26)).toBeCloseTo(16.9, 1);
  // Equal rounds: the horn is the cusp at 0, the toe −r·cos θ ÷ sin θ.
  expect(beyond(15.875, 15.875, 20)).toBeCloseTo(15.875 / Math.tan(rad(20)), 6);
  expect(beyond(15.875, 15.875, 20)).toBeCloseTo(43.616, 3);
});

test('where the shop’s table does not tilt so far, the step asks for the guide block and not for the table', () => {
  const drawn = (maxTableTilt: number) => {
    const spec = fields({ angle: rad(65), centres: 500, farEnd: { main: { name: 'post', diameter: 50 }, angle: rad(30), offset: 0, twist: 0 } });
    return saddleCope.draw(solved(spec), { ...context, shop: { drillPress: { maxTableTilt: rad(maxTableTilt) } } }, testFont);
  };
  const step = (tilt: number, end: 'near' | 'far'): string => stepText(setUpOf(drawn(tilt), 'drill-pin', end), 'drill-main', 'mm');
  expect(step(25, 'near')).toMatch(/^Tilt the table 25°/);
  expect(step(24.9, 'near')).toMatch(/^Drill the main by hand in a guide block .*\(drill-guide, from: brace saddle\): the hole leans 25°.* off square, and the shop’s table tilts to 24.9°/);
  expect(step(45, 'far')).toMatch(/^Drill the main by hand .*\(drill-guide, from: brace saddle, end: far\): the hole leans 60°/);
  expect(step(24.9, 'near')).not.toContain('Tilt the table');
});

test('a cope at 12° has no hole to drill and no guide to offer: the page of its hollow says what holds the joint', () => {
  const findingsAt = (angleDeg: number, pin = {}) => saddleCope.check(solved(fields({ angle: rad(angleDeg), mainDiameter: 34, branchDiameter: 28, pin })), context);
  const drawn = saddleCope.draw(solved(fields({ angle: rad(12), mainDiameter: 34, branchDiameter: 28 })), context, testFont);
  expect(drawn.setUps.map(({ code }) => code)).toEqual(['hollow']);
  const [flat, ...more] = findingsAt(12).filter((f) => f.about.operation !== 'hollow' || f.code.startsWith('pin'));
  expect(flat).toMatchObject({ code: 'pin-too-flat', measured: expect.closeTo(12, 9), limit: expect.closeTo(15, 9), about: { operation: 'hollow', end: 'near' } });
  expect(more).toEqual([]);
  expect(flat!.remedy).toContain('a pin square through branch and main');
  expect(flat!.would).toEqual([{ field: 'pin.diameter', value: 0, unit: 'mm' }]);
  expect(findingsAt(15).map(({ code }) => code)).not.toContain('pin-too-flat');
  expect(findingsAt(12, { diameter: 0 }).map(({ code }) => code)).not.toContain('pin-too-flat');
});

test('a square joint says nothing of throat, long point, acute side, uphill or tilt', () => {
  const drawing = saddleCope.draw(solved(fields({ offset: 3 })), context, testFont);
  const texts = [
    ...drawing.setUps.flatMap(({ numbers, steps, tables, picture }) => [
      ...numbers.flatMap(({ label, value }) => [...label, ...value]), ...steps.flatMap((step) => step.words), ...tables.flatMap((t) => [...t.heading, ...(t.note ?? [])]),
      ...picture.items.map((item) => (item.kind === 'lettering' ? item.text : '')),
    ]),
    ...drawing.patterns.flatMap(({ items }) => items.map((item) => (item.kind === 'lettering' ? item.text : ''))), ...drawing.cautions,
  ].filter((part): part is string => typeof part === 'string').join(' ');
  expect(texts).not.toMatch(/throat|long point|acute|obtuse|uphill|tilt/i);
});

test('a round called “rail at the far end” keeps its near end’s warning on the near end’s page', () => {
  const rail = solved(fields({
    branch: { name: 'rail at the far end', diameter: 45 }, pin: { diameter: 0 }, centres: 300, farEnd: { main: { name: 'leg', diameter: 90 }, angle: rad(60), offset: 0, twist: 0 },
  }));
  const thin = saddleCope.check(rail, context).filter((f) => f.code === 'wing-thin');
  expect(thin.map((f) => f.about)).toEqual([{ jig: 'brace saddle', operation: 'hollow', end: 'near', round: 'rail at the far end' }]);
});

test('which way the twist goes is said with its sign: forward to the right, back to the left, far end up', () => {
  const text = (twist: number): string => figureText(pageOf({ ...cases[1]!, far: { ...cases[1]!.far!, twist } }, 'hollow', 'far'), 'twist', 'mm');
  expect(text(35)).toMatch(/counter-clockwise seen from the far end.*35°.*to the right/);
  expect(text(-35)).toMatch(/, clockwise seen from the far end.*35°.*to the left/);
  expect(text(0)).toContain('both throats on one line');
});
