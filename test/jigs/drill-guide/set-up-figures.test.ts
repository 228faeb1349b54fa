import { describe, expect, test } from 'vitest';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import type { DrillGuideFields } from '../../../src/jigs/drill-guide/schema.js';
import type { Context } from '../../../src/jigs/jig.js';
import { testFont } from '../../support/font.js';
import { codesWithFigures, columnFigures, figure, figureText, numbersIn, setUpOf, stepFigures, stepText } from '../../support/set-up-figures.js';
import { context, round, solved } from './guide.js';

/* Every figure of both pages, worked out again by its code from closed forms: flat faces from right triangles, rounds from chords. */

const rad = (deg: number): number => (deg * Math.PI) / 180;
const deg = (r: number): number => (r * 180) / Math.PI;

const close = (got: readonly number[], want: readonly number[], tolerance = 1e-4): void => {
  expect(got.length).toBe(want.length);
  want.forEach((value, i) => expect(Math.abs(got[i]! - value)).toBeLessThan(tolerance));
};

interface Case {
  readonly name: string;
  readonly given: Partial<DrillGuideFields>;
  /** Degrees. */
  readonly theta: number;
  readonly drill: number;
  readonly point: number;
}

const cases: readonly Case[] = [
  { name: 'through flat work at 60°', given: { bit: { point: 2.5 } }, theta: 60, drill: 12, point: 2.5 },
  { name: 'into flat work at 34°', given: { angle: rad(34), drill: 8, depth: 20, bit: { point: 2, usableLength: 200 } }, theta: 34, drill: 8, point: 2 },
  { name: 'square into flat work of unknown thickness', given: { angle: Math.PI / 2, drill: 10, depth: 20, thickness: undefined, bit: { point: 0 } }, theta: 90, drill: 10, point: 0 },
  { name: 'blind into a round, V sole, offset right', given: { onto: round(40), angle: rad(50), offset: 4, depth: 18, bit: { point: 3 } }, theta: 50, drill: 12, point: 3 },
  { name: 'blind into a round, V sole, offset left', given: { onto: round(40), angle: rad(40), drill: 9, offset: -5, depth: 15, bit: { point: 3 } }, theta: 40, drill: 9, point: 3 },
  { name: 'through a round, cove sole', given: { onto: round(36), angle: rad(64), drill: 10, sole: 'cove', bit: { point: 3 } }, theta: 64, drill: 10, point: 3 },
  { name: 'square into a round, offset', given: { onto: round(50), angle: Math.PI / 2, drill: 10, offset: 6, depth: 25, bit: { point: 3 } }, theta: 90, drill: 10, point: 3 },
];

const pages = ({ given }: Case, within: Context = context) => {
  const s = solved(given, within);
  const drawing = drillGuide.draw(s, within, testFont);
  return { s, block: setUpOf(drawing, 'make-block'), drill: setUpOf(drawing, 'drill') };
};

/** The work as the case has it: its radius, the bit's offset, and where the axis enters above the round's own. */
const workOf = ({ given }: Case) => {
  const R = given.onto === undefined || given.onto === 'flat' ? undefined : given.onto.diameter / 2;
  const e = given.offset ?? 0;
  return { R, e, height: R === undefined ? 0 : Math.sqrt(R ** 2 - e ** 2) };
};

/** The sole that seats soundly: a 90° V for a round of 2.25 × its depth, a cove half the radius deep (common practice). */
const soleOf = (of: Case) => {
  const { R, e } = workOf(of);
  if (R === undefined) return { kind: 'flat' as const, depth: 0, mouth: 0, above: 0, contact: 0 };
  if (of.given.sole === 'cove') return { kind: 'cove' as const, depth: R / 2, mouth: Math.sqrt(R ** 2 - (R / 2) ** 2), above: 0, contact: 0 };
  const depth = (2 * R) / 2.25;
  // The V's point stands R√2 over the axis; e beside the middle its flank is e lower. Contacts lie R/√2 over the axis.
  return { kind: 'v' as const, depth, mouth: depth, above: R * Math.SQRT2 - Math.abs(e) - Math.sqrt(R ** 2 - e ** 2), contact: depth - (R * Math.SQRT2 - R * Math.SQRT1_2) };
};

describe.each(cases)('making the block: $name', (of) => {
  const { s, block: page } = pages(of);
  const { theta, drill } = of;
  const { e } = workOf(of);
  const sole = soleOf(of);
  const square = theta === 90;
  const up = (mm: number): number => Math.ceil(mm / 5 - 1e-9) * 5;
  // Common practice: 75 mm of sole, 10 mm beside the bore; wide enough for drill, offset and groove with 10 mm beside them, 38 at least.
  const length = up(Math.max(drill + 20, 75 * Math.sin(rad(theta))));
  const width = up(Math.max(38, 2 * Math.abs(e) + drill + 20, sole.mouth === 0 ? 0 : 2 * sole.mouth + 20));

  test('every figure is worked out again', () => {
    const done: string[] = [];
    const is = (code: string, ...want: number[]): void => { done.push(`number ${code}`); close(figure(page, code), want); };
    const step = (code: string, ...want: number[]): void => { done.push(`step ${code}`); close(stepFigures(page, code), want); };
    const rise = square ? 0 : length / 2 / Math.tan(rad(theta));
    // The sole at the bore: the groove is e off its crown there.
    const groove = sole.kind === 'v' ? sole.depth - Math.abs(e) : sole.kind === 'cove' ? sole.depth : 0;
    const inGroove = groove / Math.sin(rad(theta));
    const crown = sole.depth / Math.sin(rad(theta)) - inGroove;
    const bore = Math.max(38, 3 * drill, rise + crown + 12);
    const height = bore + rise + inGroove;
    is('number', 1);
    is('block', length, width, height);
    const sawn = !square || sole.depth > 0;
    if (sawn) is('long-blank', up(Math.max(300, length + 150)));
    is('bore-from-front', length / 2);
    is('bore-from-left', width / 2 + e);
    is('angle', theta);
    if (!square) is('off-square', 90 - theta);
    is('bore', bore);
    if (sole.kind === 'v') { is('flank', 45); is('groove-size', sole.depth, 2 * sole.mouth); is('contact', sole.contact); }
    if (sole.kind === 'cove') { is('cove-radius', workOf(of).R!); is('groove-size', sole.depth, 2 * sole.mouth); }
    if (sawn) { step('glue', up(Math.max(300, length + 150))); step('cut-off', length); }
    if (!square) step('saw-sole', 90 - theta);
    if (theta <= 45) step('saw-sole-at-saw', theta);
    if (sole.kind === 'v') step('saw-v', 45);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
    expect(s.block.boreLength).toBeCloseTo(bore, 6);
  });
});

describe.each(cases)('drilling: $name', (of) => {
  const { s, drill: page } = pages(of);
  const { theta, drill, point, given } = of;
  const { R, e, height } = workOf(of);
  const [sin, tan] = [Math.sin(rad(theta)), Math.tan(rad(theta))];
  const square = theta === 90;
  const r = drill / 2;
  const chord = (w: number): number => Math.sqrt(R! ** 2 - w ** 2);
  const turns = Array.from({ length: 36_000 }, (_, i) => (i * Math.PI) / 18_000);

  /** The opening's edge on a round: along the bit and along the round, at each turn about the bit. */
  const edge = turns.map((phi) => {
    const z = R === undefined ? (r * Math.cos(phi)) / tan : (chord(e + r * Math.sin(phi)) + r * Math.cos(phi) * Math.cos(rad(theta))) / sin;
    return { z, x: z * Math.cos(rad(theta)) + r * Math.cos(phi) * sin };
  });
  const spread = (key: 'z' | 'x'): number => edge.reduce((m, p) => Math.max(m, p[key]), -Infinity) - edge.reduce((m, p) => Math.min(m, p[key]), Infinity);

  const thickness = R === undefined ? given.thickness ?? (given.depth !== undefined && 'thickness' in given ? undefined : 30) : 2 * height;
  const through = given.depth === undefined;
  const depth = given.depth ?? thickness! / sin;
  const opening = R === undefined ? drill / sin : spread('x');
  const standoff = soleOf(of).above / sin;
  // From where the axis comes out until the last of the rim is out, and 3 mm.
  const rimAfter = R === undefined ? r / tan : edge.reduce((m, p) => Math.max(m, p.z), -Infinity) - height / sin;
  const overrun = through ? rimAfter + 3 : 0;
  const tipStop = standoff + depth + overrun + point;

  const wall = (): number | undefined => {
    if (through) return undefined;
    if (R === undefined) return thickness === undefined ? undefined : thickness - depth * sin - Math.max(r * Math.cos(rad(theta)), point * sin);
    const left = (x: number, y: number): number => R - (y < 0 ? Math.hypot(x, y) : Math.abs(x));
    const bottom = height - depth * sin;
    return Math.min(left(e, height - (depth + point) * sin), ...turns.filter((_, i) => i % 10 === 0)
      .map((phi) => left(e + r * Math.sin(phi), bottom - r * Math.cos(phi) * Math.cos(rad(theta)))));
  };

  test('every figure is worked out again', () => {
    const done: string[] = [];
    const is = (code: string, ...want: number[]): void => { done.push(`number ${code}`); close(figure(page, code), want, 1e-3); };
    is('depth', depth);
    is('opening', opening);
    if (!square && (through || (R === undefined && thickness === undefined))) is('mark-shift', thickness === undefined ? depth * Math.cos(rad(theta)) : thickness / tan);
    const left = wall();
    if (left !== undefined) is('far-wall', left);
    if (R !== undefined) {
      is('skin', R - Math.abs(e) - r);
      if (!square) is('entry', height / tan);
      if (e !== 0) { is('offset', Math.abs(e)); is('girth', R * Math.asin(Math.abs(e) / R)); }
    }
    is('angle', theta);
    if (!square) is('off-square', 90 - theta);
    // Where a rule lies: across the edges of a grooved sole. A V's edges lie its depth under its point, R√2 over the axis; a cove's R/2 over it.
    const edges = soleOf(of).kind === 'v' ? R! * Math.SQRT2 - (2 * R!) / 2.25 : soleOf(of).kind === 'cove' ? R! / 2 : undefined;
    const past = edges === undefined ? tipStop : (edges - height) / sin + depth + overrun + point;
    is('tip-stop', Math.abs(past));
    expect(figureText(page, 'tip-stop', 'mm')).toContain(edges === undefined ? 'out of the sole' : past >= 0 ? 'past a straight-edge' : 'inside the groove');
    is('collar', s.block.boreLength + tipStop);
    // The shop's sum, b/tan + sagitta, is a safe bound above the way itself, which decides only far off the axis.
    const sum = square ? 0 : drill / tan;
    is('run', R === undefined ? sum : Math.max(sum + R - chord(r), e === 0 ? 0 : spread('z')));
    is('point-leads', deg(Math.atan((2 * point) / drill)));
    close(numbersIn(page.numbers.find(({ code }) => code === 'point-leads')!.label), [point]);
    const step = (code: string, ...want: number[]): void => { done.push(`step ${code}`); close(stepFigures(page, code), want, 1e-3); };
    if (R !== undefined && (!square || e !== 0)) step('mark', ...(square ? [] : [height / tan]), ...(e === 0 ? [] : [Math.abs(e)]));
    step('drill', s.block.boreLength + tipStop);
    done.push('table bit-length length', 'table bit-length sum');
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test('the bit’s length is the sum of guide, standoff, depth, overrun and point, each once', () => {
    const terms = [s.block.boreLength, standoff, depth, ...(through ? [overrun] : []), point];
    const usable = given.bit?.usableLength;
    close(columnFigures(page, 'bit-length', 'length').flat(), terms, 1e-3);
    const sums = terms.map((_, i) => terms.slice(0, i + 1).reduce((a, b) => a + b, 0));
    close(columnFigures(page, 'bit-length', 'sum').flat(), [...sums, sums.at(-1)! - point, ...(usable === undefined ? [] : [usable])], 1e-3);
  });
});

test('a sound 114 mm bit is long enough: the run is not counted twice', () => {
  // At 60° into thick flat work: bore and depth make 113 mm; the run of 12/tan 60° = 6.9, which lies inside the depth, made 120 of it.
  const bore = solved({ depth: 60, thickness: 120 }).block.boreLength;
  const given: Partial<DrillGuideFields> = { depth: 113 - bore, thickness: 120, bit: { point: 3, usableLength: 114 } };
  const s = solved(given);
  expect(s.budget.neededToLips).toBeCloseTo(113, 9);
  expect(s.budget.neededToLips + s.budget.run).toBeGreaterThan(114);
  expect(drillGuide.check(s, context).map((f) => f.code)).not.toContain('bit-too-short');
});

describe('at 90° nothing is said of an acute side, a throat, uphill, a tilt or a lean', () => {
  test.each([{ onto: round(40), depth: 20 }, { depth: 20 }, { onto: round(40), sole: 'cove' as const, offset: 3 }])('%o', (given) => {
    const drawing = drillGuide.draw(solved({ angle: Math.PI / 2, ...given }), context, testFont);
    const texts = [
      ...drawing.setUps.flatMap(({ numbers, steps, picture, pictureNote }) => [
        ...pictureNote, ...numbers.flatMap(({ label, value }) => [...label, ...value]), ...steps.flatMap(({ code, words }) => (code === 'test' ? [] : words)),
        ...picture.items.map((item) => (item.kind === 'lettering' ? item.text : '')),
      ]),
      ...drawing.patterns.flatMap(({ items }) => items.map((item) => (item.kind === 'lettering' ? item.text : ''))),
    ].filter((part): part is string => typeof part === 'string').join(' ');
    expect(texts).not.toMatch(/acute|obtuse|throat|uphill|tilt|leans/i);
  });
});

test('a blind hole has no marks on two faces', () => {
  const { drill } = pages(cases[3]!);
  expect(drill.numbers.map(({ code }) => code)).not.toContain('mark-shift');
  // In flat work of unknown thickness the end of a blind hole can only be said from the mark; through it there are marks on both faces.
  const label = (given: Parameters<typeof solved>[0]): string =>
    setUpOf(drillGuide.draw(solved(given), context, testFont), 'drill').numbers.find(({ code }) => code === 'mark-shift')!.label.join('');
  expect(label({ angle: rad(60), thickness: 30 })).toBe('Marks on the two faces, apart, back from the acute side');
  expect(label({ angle: rad(60), thickness: undefined, depth: 20 })).toBe('Hole’s end from the mark, back from the acute side');
});

test('nothing is stood on end, and a saw is named only where the sole is within its turn and its depth', () => {
  const steps = (theta: number, shop: Context['shop'] = {}): string[] => {
    const drawing = drillGuide.draw(solved({ angle: rad(theta) }), { ...context, shop }, testFont);
    return setUpOf(drawing, 'make-block').steps.map(({ code }) => code);
  };
  expect(steps(45)).toContain('saw-sole-at-saw');
  expect(steps(45.1)).not.toContain('saw-sole-at-saw');
  expect(steps(50, { saw: { maxReading: rad(50) } })).toContain('saw-sole-at-saw');
  expect(steps(40, { saw: { maxReading: rad(39) } })).not.toContain('saw-sole-at-saw');
  // The blank lies on its side: what the saw must cut through is its width, 40 here.
  expect(steps(40, { saw: { maxDepth: 40 } })).toContain('saw-sole-at-saw');
  expect(steps(40, { saw: { maxDepth: 39 } })).not.toContain('saw-sole-at-saw');
});

test('at a saw with the blank’s top to the fence, the cut stands θ from square', () => {
  // On paper: the sole makes θ with the bore, the bore stands square on the top, so the sole makes 90° − θ with the top and the
  // fence along it; a saw that reads 0 at 90° to the fence reads θ.
  const { block } = pages({ ...cases[1]!, given: { angle: rad(34) } });
  close(stepFigures(block, 'saw-sole-at-saw'), [34]);
  close(stepFigures(block, 'saw-sole'), [56]);
  expect(stepText(block, 'saw-sole', 'mm')).toContain('from the blank’s length');
});

describe('two leans', () => {
  const lean = (rake: number, splay: number) => {
    const drawing = drillGuide.draw(solved({ angle: { rake: rad(rake), splay: rad(splay) } }), context, testFont);
    return setUpOf(drawing, 'drill');
  };

  /** From above, rear +y and right +x: going up by 1 the shank goes tan(rake) to the rear and tan(splay) to the right. */
  const heading = (rake: number, splay: number): [number, number] => [Math.tan(rad(splay)), Math.tan(rad(rake))];

  test.each([[10, 15], [-10, 15], [10, -15], [-10, -15], [6, 5], [-20, 4], [0, 12], [12, 0]])('rake %d, splay %d: the words and the arrow lead where the shank leans', (rake, splay) => {
    const page = lean(rake, splay);
    const [x, y] = heading(rake, splay);
    const text = figureText(page, 'sight-line', 'mm');
    const [, from, towards] = /from the (rear|front) towards the (right|left)/.exec(text)!;
    const [angle] = figure(page, 'sight-line') as [number];
    const start = from === 'rear' ? Math.PI / 2 : -Math.PI / 2;
    // From the rear towards the right is clockwise seen from above, from the front towards the right the other way.
    const sense = (from === 'rear') === (towards === 'right') ? -1 : 1;
    const said = [Math.cos(start + sense * rad(angle)), Math.sin(start + sense * rad(angle))] as const;
    expect(said[0]).toBeCloseTo(x / Math.hypot(x, y), 9);
    expect(said[1]).toBeCloseTo(y / Math.hypot(x, y), 9);
    const arrow = page.picture.items.find((i) => i.kind === 'shape' && i.part === 'plan-lean');
    if (arrow?.kind !== 'shape' || arrow.path.segments[0]?.kind !== 'line') throw new Error('no arrow');
    const { start: a } = arrow.path;
    const b = arrow.path.segments[0].to;
    // The rear is up on paper.
    expect(Math.atan2(-(b.y - a.y), b.x - a.x)).toBeCloseTo(Math.atan2(y, x), 9);
    close(figure(page, 'resultant'), [deg(Math.atan(Math.hypot(x, y)))]);
    close(figure(page, 'second-tilt'), [deg(Math.atan(Math.tan(rad(Math.abs(splay))) * Math.cos(rad(rake))))]);
    close(figure(page, 'rake'), [Math.abs(rake)]);
    close(figure(page, 'splay'), [Math.abs(splay)]);
    expect(figureText(page, 'rake', 'mm')).toContain(rake >= 0 ? 'to the rear' : 'to the front');
    expect(figureText(page, 'splay', 'mm')).toContain(splay >= 0 ? 'to the right' : 'to the left');
    close(stepFigures(page, 'mark'), [angle, deg(Math.atan(Math.hypot(x, y)))]);
  });

  test('the published worked figures: 10° and 15° make 17.8° on a line 56.7° from the rake (Machinery’s Handbook’s formula)', () => {
    const page = lean(10, 15);
    close(figure(page, 'resultant'), [17.78], 0.01);
    close(figure(page, 'sight-line'), [56.65], 0.01);
  });
});
