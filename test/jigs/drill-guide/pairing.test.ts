import { describe, expect, it } from 'vitest';
import { check, compile, type Source } from '../../../src/compile.js';
import { UserError } from '../../../src/errors/user-error.js';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import type { DrillGuideSolution } from '../../../src/jigs/drill-guide/solve.js';
import { registered, type Context } from '../../../src/jigs/jig.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import type { SaddleCopeSolution } from '../../../src/jigs/saddle-cope/solve.js';
import { radians } from '../../../src/units/units.js';
import { testFont } from '../../support/font.js';
import { cylinderSolid } from '../../support/solids.js';
import { cross3, dot3, jointFrame, length3, plus, times, type Vector } from '../saddle-cope/joint-frame.js';
import { codesOf, context, fields } from './guide.js';
import { placeBlock, readBlock } from './written-block.js';

const kinds = Object.fromEntries([registered(saddleCope), registered(drillGuide)].map((kind) => [kind.kind, kind]));

const spec = (saddle: string, guide: string): Source => ({
  file: 'pair.yaml', kinds,
  text: `title: pair\nunits: mm\npaper: a4\nrounds: { post: 38, rail: 25, other: 50 }\njigs:\n  - { kind: drill-guide, name: guide, from: saddle${guide} }\n  - { kind: saddle-cope, name: saddle, branch: rail, main: post${saddle} }\n`,
});

/** A saddle cope and the guide that takes its figures, solved as `compile` would. */
const pair = (given: { angle: number; offset: number; far?: { angle: number; offset: number; twist: number } }, end: 'near' | 'far' = 'near') => {
  const outcome = saddleCope.solve({
    branch: { name: 'rail', diameter: 25 }, main: { name: 'post', diameter: 38 }, angle: given.angle, offset: given.offset,
    paperThickness: 0.1, abrasive: 0.5, wingAllowance: 1, ordinates: false, pin: { diameter: 10 },
    ...(given.far === undefined ? {} : { centres: 500, farEnd: { main: { name: 'other', diameter: 50 }, ...given.far } }),
  }, context);
  if ('refused' in outcome) throw new Error(outcome.refused[0]!.message);
  const within: Context = { ...context, jig: () => outcome.solution };
  const guide = drillGuide.solve({ ...fields({ drill: undefined, angle: undefined, onto: undefined, thickness: undefined, from: 'saddle' }), end }, within);
  if ('refused' in guide) throw new Error(guide.refused[0]!.message);
  return { saddle: outcome.solution, guide: guide.solution };
};

/** A place of the guide's work in the frame of the branch: its axis Z, the near throat towards +X. */
const intoBranch = (saddle: SaddleCopeSolution, end: 'near' | 'far') => {
  const { throat, mainPoint, mainAxis } = jointFrame(saddle[end]!, saddle.centres ?? 0);
  // The work's frame: x along the main to the acute side, which is the throat's; y to the right seen from there, the branch pointing away; z the third.
  const x = dot3(mainAxis, throat) > 0 ? mainAxis : times(-1, mainAxis);
  const y = times(end === 'near' ? 1 : -1, cross3([0, 0, 1], throat));
  const z = cross3(x, y);
  return { turn: (v: Vector): Vector => plus(times(v[0], x), times(v[1], y), times(v[2], z)), origin: mainPoint };
};

/** The bore's axis of the block as written, set on the main, in the frame of the branch. */
const boreOfWritten = async (guide: DrillGuideSolution, saddle: SaddleCopeSolution, end: 'near' | 'far') => {
  const block = await readBlock(guide);
  const { boreAt, boreAlong, place } = placeBlock(block, guide);
  // The maker slides the block along the main until its station mark stands at the ring where the axis enters.
  const { main, offset, angle } = saddle[end]!.joint;
  const entry = Math.sqrt(main ** 2 - offset ** 2) / Math.tan(angle);
  const onSole = block.sole.obtuse + (block.station! / block.length) * (block.sole.acute - block.sole.obtuse);
  const slide = entry - place([block.station!, 0, onSole])[0];
  const { turn, origin } = intoBranch(saddle, end);
  return { at: plus(origin, turn(plus(boreAt, [slide, 0, 0]))), along: turn(boreAlong) };
};

const joints = [
  { angle: radians(90), offset: 0 }, { angle: radians(64), offset: 0 }, { angle: radians(38), offset: 3 }, { angle: radians(26), offset: -4.5 },
];

describe('a guide paired with a saddle cope', () => {
  it.each(joints)('bores on the axis of the branch: $angle rad, offset $offset', async (given) => {
    const { saddle, guide } = pair(given);
    const { at, along } = await boreOfWritten(guide, saddle, 'near');
    expect(Math.hypot(along[0], along[1])).toBeLessThan(2e-5);
    expect(along[2]).toBeGreaterThan(0);
    // Where the bore's axis passes the level of the pin's two ends.
    for (const level of [-30, 0, 60]) {
      const p = plus(at, times((level - at[2]) / along[2], along));
      expect(Math.hypot(p[0], p[1])).toBeLessThan(2e-3);
    }
  });

  it.each([0.7, -2.1, 3])('at the far end, twisted by %d rad, too', async (twist) => {
    const { saddle, guide } = pair({ ...joints[1]!, far: { angle: radians(50), offset: 4, twist } }, 'far');
    expect(guide.work).toMatchObject({ kind: 'round', radius: 25, offset: -4 });
    const { at, along } = await boreOfWritten(guide, saddle, 'far');
    expect(Math.hypot(along[0], along[1])).toBeLessThan(2e-5);
    expect(along[2]).toBeLessThan(0);
    const p = plus(at, times((500 - at[2]) / along[2], along));
    expect(Math.hypot(p[0], p[1])).toBeLessThan(2e-3);
  });

  it.each(joints)('drills a hole into which the pin goes from the branch, in a mesh (manifold-3d): $angle rad, offset $offset', async (given) => {
    const { saddle, guide } = pair(given);
    const { pin, joint } = saddle.near;
    const { at, along } = await boreOfWritten(guide, saddle, 'near');
    const { mainPoint, mainAxis } = jointFrame(saddle.near, 0);
    const post = cylinderSolid({ at: mainPoint, axis: mainAxis, from: -300, to: 300, radius: joint.main, facets: 192 });
    // From far outside the post to where the lips stop: the stated depth from where the axis enters.
    const entry = Math.sqrt(joint.main ** 2 - joint.offset ** 2) / Math.sin(joint.angle);
    const foot = plus(at, times(-at[2] / along[2], along));
    const hole = cylinderSolid({ at: foot, axis: along, from: entry - guide.hole.depth, to: 400, radius: guide.drill / 2 + 0.02, facets: 192 });
    const drilled = post.subtract(hole);
    const rod = cylinderSolid({ at: [0, 0, 0], axis: [0, 0, 1], from: entry - pin!.intoMain, to: entry + pin!.intoBranch, radius: pin!.diameter / 2, facets: 192 });
    expect(rod.intersect(post).volume()).toBeGreaterThan(0.7 * Math.PI * 25 * pin!.intoMain);
    expect(rod.intersect(drilled).volume()).toBeLessThan(1e-2);
    // 1.5 mm deeper than the pin, for glue and air; no more.
    expect(guide.hole.depth).toBeCloseTo(pin!.intoMain + 1.5, 9);
    expect(rod.translate([0, 0, -1.6]).intersect(drilled).volume()).toBeGreaterThan(1);
    expect(length3(along)).toBeCloseTo(1, 9);
  });
});

describe('from, in a spec', () => {
  it('takes drill, angle, offset and round from the saddle cope, wherever it stands in the file', () => {
    const { report, draw } = check(spec(', angle: 64, offset: 2, pin: { diameter: 9 }', ''));
    const guide = report.jigs.find((jig) => jig.name === 'guide')!;
    expect(guide.values['angle']).toBeCloseTo(64, 9);
    expect(guide.values['depth']).toBeCloseTo((2 / 3) * 38 + 1.5, 6);
    expect(guide.values['skin']).toBeCloseTo(19 - 2 - 4.5, 9);
    expect(guide.values['openingLength']).toBeGreaterThan(9 / Math.sin(radians(64)));
    expect(draw(testFont, ['guide'])[0]!.assumed).toEqual(['drill Ø 9 mm (23⁄64″)', 'post Ø 38 mm (1 1⁄2″)']);
  });

  it('lets the depth be chosen, and refuses what the saddle cope gives already', () => {
    expect(check(spec(', angle: 64', ', depth: 20')).report.jigs[0]!.values['depth']).toBe(20);
    expect(() => compile(spec(', angle: 64', ', angle: 60, drill: 10'), testFont)).toThrow(/given twice/);
  });

  /** The first mistake of a spec. */
  const mistakeOf = (source: Source) => {
    try {
      check(source);
    } catch (error) {
      if (error instanceof UserError) return error.mistakes[0]!;
    }
    throw new Error('no mistake');
  };

  it('points at the field’s own line and column where the name is misspelt or of another kind', () => {
    const source = spec(', angle: 64', '');
    expect(mistakeOf({ ...source, text: source.text.replace('from: saddle', 'from: sadle') }))
      .toMatchObject({ code: 'unknown-jig', path: 'jigs[0].from', line: 6, column: 45, nearest: 'saddle' });
    expect(mistakeOf({ ...source, text: source.text.replace('from: saddle', 'from: guide') })).toMatchObject({ path: 'jigs[0].from' });
  });

  it('pair-refused where the saddle cope was', () => {
    const paired = { drill: undefined, angle: undefined, onto: undefined, thickness: undefined, from: 'saddle' };
    expect(codesOf(paired, { ...context, jig: () => undefined })).toEqual(['pair-refused']);
  });

  it('a saddle cope without a pin is a mistake at from, an end that it has not one at end', () => {
    expect(mistakeOf(spec(', angle: 64, pin: { diameter: 0 }', ''))).toMatchObject({ code: 'pair-has-no-pin', path: 'jigs[0].from', line: 6 });
    expect(mistakeOf(spec(', angle: 64', ', end: far'))).toMatchObject({ code: 'pair-has-no-far-end', path: 'jigs[0].end', line: 6 });
    expect(check(spec(', angle: 64, centres: 500, farEnd: { main: other, angle: 70 }', ', end: far')).report.jigs).toHaveLength(2);
  });

  it('a cope at 12° is no pair: the guide is refused, and the cope has not offered one', () => {
    const found = check(spec(', angle: 12', '')).report.jigs.flatMap((jig) => jig.findings);
    expect(found.filter((f) => f.severity === 'stop').map((f) => [f.jig, f.code])).toEqual([['guide', 'angle-too-flat']]);
    expect(found.some((f) => f.jig === 'saddle' && f.remedy.includes('drill-guide'))).toBe(false);
  });
});
