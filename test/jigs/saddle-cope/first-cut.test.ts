import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../../src/drawing/drawing.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { endOf, type Path } from '../../../src/geometry/path.js';
import type { Point } from '../../../src/geometry/point.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import { testFont } from '../../support/font.js';
import { labelCrossings, labelOverlaps } from '../../support/label-crossings.js';
import { setUpOf, stepText } from '../../support/set-up-figures.js';
import { cylinderSolid, solids } from '../../support/solids.js';
import { context, fields, solved } from './written.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;

type Vector = readonly [number, number, number];

/*
 * The finished brace as a solid, its own axis level along X, and the blade as a half space that takes the off-cut away. In
 * the machine's frame X runs along the fence to the right, Y from the maker to the fence, Z up.
 *
 * On paper: the branch's end lies at its right, its far end at the left. The main crosses the end. The blade that leaves a
 * part on the left has the normal n, to the right, and takes away all with (p − p₀)·n > 0.
 */

const R = 17.4625;
const r = 14.2875;
const theta = 26;

/** The finished end, its axis along −X away from the main (crossing at 0), the throat towards `throat`, square to X. */
const finished = (throat: Vector) => {
  const rod = cylinderSolid({ at: [0, 0, 0], axis: [-1, 0, 0], from: -60, to: 160, radius: r, facets: 96 });
  // The main leans towards the throat by θ from the branch: cos θ along the branch, away from the crossing, and sin θ to the throat.
  const axis: Vector = [-Math.cos(rad(theta)), Math.sin(rad(theta)) * throat[1], Math.sin(rad(theta)) * throat[2]];
  const main = cylinderSolid({ at: [0, 0, 0], axis, from: -400, to: 400, radius: R, facets: 192 });
  const [kept] = rod.subtract(main).decompose().sort((a, b) => b.volume() - a.volume());
  // What lies beyond the main is waste: of the parts that the main leaves, the branch is the one that holds the far end.
  return kept!;
};

/** All that a blade through `at` with the normal `n` takes away: a great box on that side. */
const beyondBlade = (at: Vector, n: Vector) => {
  const size = 2000;
  const box = solids.cube([size, size, size], true).translate([size / 2, 0, 0]);
  const yaw = (Math.atan2(n[1], n[0]) * 180) / Math.PI;
  const pitch = (-Math.asin(n[2]) * 180) / Math.PI;
  return box.rotate([0, pitch, 0]).rotate([0, 0, yaw]).translate([...at] as [number, number, number]);
};

/** Finished wood that a blade takes, mm³, the blade passing through the axis where the first cut's plane does. */
const lost = (throat: Vector, n: Vector): number => {
  // The plane crosses the branch's axis at √(R² − r²)/sin θ from the crossing, less 1 mm left at the wings.
  const onAxis = Math.sqrt(R ** 2 - r ** 2) / Math.sin(rad(theta)) - 1;
  return finished(throat).intersect(beyondBlade([-onAxis, 0, 0], n)).volume();
};

const sin = Math.sin(rad(theta));
const cos = Math.cos(rad(theta));
/** Toe at the fence: the kept part's right end is longest at +Y, so the blade's normal looks right and to the maker. */
const turnedToeAtFence: Vector = [sin, -cos, 0];
/** A blade whose top leans to the left: the kept left part's end is longest at the table, its normal looks right and up. */
const leaningLeft: Vector = [sin, 0, cos];
/** The same blade, the kept part on its right. The brace then lies the other way round: seen from behind it lies left, the blade leaning right. */
const leaningRight: Vector = [sin, 0, -cos];

const towards: Readonly<Record<'fence' | 'maker' | 'up' | 'down', Vector>> = { fence: [0, 1, 0], maker: [0, -1, 0], up: [0, 0, 1], down: [0, 0, -1] };

describe('the first cut leaves the finished wood whole only as the sheet says', () => {
  const slack = 1;

  test('turned blade: throat and long point level, the long point at the fence', () => {
    expect(lost(towards.maker, turnedToeAtFence)).toBeLessThan(slack);
    expect(lost(towards.up, turnedToeAtFence)).toBeGreaterThan(1000);
    expect(lost(towards.down, turnedToeAtFence)).toBeGreaterThan(1000);
    expect(lost(towards.fence, turnedToeAtFence)).toBeGreaterThan(1000);
  });

  test('tilted blade, the kept part on the side that it leans to: throat up', () => {
    expect(lost(towards.up, leaningLeft)).toBeLessThan(slack);
    expect(lost(towards.down, leaningLeft)).toBeGreaterThan(1000);
    expect(lost(towards.maker, leaningLeft)).toBeGreaterThan(1000);
  });

  test('tilted blade, the kept part on the other side: throat down', () => {
    expect(lost(towards.down, leaningRight)).toBeLessThan(slack);
    expect(lost(towards.up, leaningRight)).toBeGreaterThan(1000);
  });
});

const page = (angle: number, end: 'near' | 'far' = 'near') => setUpOf(saddleCope.draw(solved(fields({
  angle: rad(angle), pin: { diameter: 0 }, centres: 300, farEnd: { main: { name: 'leg', diameter: 60 }, angle: rad(angle), offset: 0, twist: 0.5 },
})), context, testFont), 'hollow', end);

const shapeOf = (picture: Drawing, part: string): Path => picture.items.find((i): i is Shape => i.kind === 'shape' && i.part === part)!.path;
const points = (path: Path): Point[] => [path.start, ...path.segments.map((segment) => ('to' in segment ? segment.to : path.start))];

describe.each([60, 75])('the picture of the first cut at %i° shows what the solids decide', (angle) => {
  const { picture } = page(angle);

  /** The slanting side that both parts share, from top to bottom, and how far the kept part reaches at each. */
  const cut = (way: string, kept: 'left' | 'right') => {
    const all = points(shapeOf(picture, `${way}-kept-part`));
    const box = pathBounds(shapeOf(picture, `${way}-kept-part`));
    const far = kept === 'left' ? box.x0 : box.x1;
    const ends = all.filter((p) => Math.abs(p.x - far) > 1e-6);
    const top = ends.find((p) => p.y < (box.y0 + box.y1) / 2)!;
    const bottom = ends.find((p) => p.y > (box.y0 + box.y1) / 2)!;
    return { top, bottom, reachTop: Math.abs(top.x - far), reachBottom: Math.abs(bottom.x - far) };
  };

  test.each([
    ['turned', 'left', 'top'], ['tilted-towards', 'left', 'bottom'], ['tilted-away', 'right', 'top'],
  ] as const)('%s: kept on the %s, its toe at the %s, the cut at the saw’s own reading', (way, kept, toe) => {
    const { top, bottom, reachTop, reachBottom } = cut(way, kept);
    expect(toe === 'top' ? reachTop - reachBottom : reachBottom - reachTop).toBeGreaterThan(0);
    expect(Math.atan2(Math.abs(top.x - bottom.x), bottom.y - top.y)).toBeCloseTo(rad(90 - angle), 9);
    const blade = shapeOf(picture, `${way}-blade`);
    const end = endOf(blade.segments[0]!);
    const cross = (p: Point): number => (end.x - blade.start.x) * (p.y - blade.start.y) - (end.y - blade.start.y) * (p.x - blade.start.x);
    expect(Math.abs(cross(top)) + Math.abs(cross(bottom))).toBeLessThan(1e-6);
    const [keptBox, offBox] = [pathBounds(shapeOf(picture, `${way}-kept-part`)), pathBounds(shapeOf(picture, `${way}-off-cut`))];
    expect(kept === 'left' ? keptBox.x0 < offBox.x0 : keptBox.x1 > offBox.x1).toBe(true);
  });

  test('the fence lies above the round seen from above, the table under it seen along the feed', () => {
    expect(pathBounds(shapeOf(picture, 'turned-fence')).y1).toBeCloseTo(pathBounds(shapeOf(picture, 'turned-kept-part')).y0, 9);
    expect(pathBounds(shapeOf(picture, 'tilted-towards-table')).y0).toBeCloseTo(pathBounds(shapeOf(picture, 'tilted-towards-kept-part')).y1, 9);
  });

  test('both tilted blades lean to the left', () => {
    for (const way of ['tilted-towards', 'tilted-away']) {
      const ends = [shapeOf(picture, `${way}-blade`).start, endOf(shapeOf(picture, `${way}-blade`).segments[0]!)].sort((a, b) => a.y - b.y);
      expect(ends[0]!.x).toBeLessThan(ends[1]!.x);
    }
  });
});

test('the steps say level, up and down as the solids decide', () => {
  const near = page(60);
  expect(stepText(near, 'first-cut-turned', 'mm')).toContain('throat and long point LEVEL, the long point at the fence');
  expect(stepText(near, 'first-cut-tilted', 'mm')).toMatch(/throat UP if the kept part lies on the side that the blade leans to, throat DOWN if it lies on the other/);
});

test('steeper than any blade leans, no tilted blade is drawn or told of', () => {
  const steep = page(30);
  expect(steep.picture.items.some((i) => i.kind === 'shape' && i.part === 'tilted-towards-blade')).toBe(false);
  expect(steep.steps.map(({ code }) => code)).not.toContain('first-cut-tilted');
});

test.each([20, 45, 60, 75, 88, 90])('no label of the page’s picture touches a line at %i°', (angle) => {
  for (const end of ['near', 'far'] as const) {
    const { items } = page(angle, end).picture;
    expect(labelCrossings(items, testFont)).toEqual([]);
    expect(labelOverlaps(items, testFont)).toEqual([]);
  }
});
