import { describe, expect, test } from 'vitest';
import type { SetUp } from '../../../src/drawing/set-up.js';
import { codesWithFigures, columnFigures, figure, figureText, setUpOf, stepFigures, stepText } from '../../support/set-up-figures.js';
import { drawn } from './written.js';

/* Every figure of the four pages, worked out again by its code from closed forms of the V and of the plan on the saw. */

const rad = (deg: number): number => (deg * Math.PI) / 180;

const close = (got: readonly number[], want: readonly number[], tolerance = 1e-6): void => {
  expect(got.length).toBe(want.length);
  want.forEach((value, i) => expect(Math.abs(got[i]! - value)).toBeLessThan(tolerance));
};

interface Case {
  readonly name: string;
  readonly fields: string;
  readonly kerf: number;
  /** Degrees. */
  readonly angle: number;
  readonly flat: number;
  readonly depth: number;
  /** Thickest first. */
  readonly rounds: readonly number[];
  readonly block: readonly [number, number, number];
  readonly stop?: number;
  readonly carrier?: { readonly sharp: number; readonly reading: number; readonly round: number; readonly twist?: number; readonly width?: number; readonly length?: number };
}

const cases: readonly Case[] = [
  {
    name: 'a block with all sizes given, two rounds and a stop', fields: 'holds: [post, rail], depth: 14, flat: 4, block: { length: 200, width: 60, height: 30 }, stop: 20',
    kerf: 3, angle: 90, flat: 4, depth: 14, rounds: [32, 24], block: [200, 60, 30], stop: 20,
  },
  {
    name: 'a wide flat cleared in passes, a carrier at 15°', kerf: 3, angle: 70, flat: 8, depth: 20, rounds: [32], block: [180, 70, 36],
    fields: 'holds: [post], includedAngle: 70, flat: 8, depth: 20, block: { length: 180, width: 70, height: 36 }, carrier: { sharpAngle: 22, sawReading: 15, twist: 40, width: 150, length: 620 }',
    carrier: { sharp: 22, reading: 15, round: 32, twist: 40, width: 150, length: 620 },
  },
  {
    name: 'a sharp V, a carrier at 60° that sizes itself, twisted back', kerf: 2.4, angle: 90, flat: 0, depth: 16, rounds: [32, 24], block: [160, 60, 30],
    fields: 'holds: [post, rail], flat: 0, depth: 16, block: { length: 160, width: 60, height: 30 }, carrier: { sharpAngle: 10, sawReading: 60, round: rail, twist: -30 }',
    carrier: { sharp: 10, reading: 60, round: 24, twist: -30 },
  },
];

const made = (of: Case) => drawn({ fields: of.fields, shop: `{ saw: { kerf: ${of.kerf} } }` }).drawing;

/** Closed forms of the groove. */
const groove = ({ angle, flat, depth }: Case) => {
  const h = rad(angle / 2);
  const flatHeight = flat / 2 / Math.tan(h);
  return { h, flatHeight, apex: depth + flatHeight, width: 2 * depth * Math.tan(h) + flat };
};
const proud = (of: Case, d: number): number => d / 2 / Math.sin(groove(of).h) + d / 2 - groove(of).apex;
const contact = (of: Case, d: number): number => (d / 2) * Math.cos(groove(of).h);

/** Closed forms of the carrier on the saw's table: the fence along x, the blade's line through the origin, μ from square. */
const plan = (of: Case) => {
  const { sharp, reading, round, width, length } = of.carrier!;
  const [a, m, k] = [rad(sharp), rad(reading), rad(90 - sharp - reading)];
  const face = round / Math.sin(a);
  // Along the round, one millimetre off the fence on the blade's line is cos μ/sin κ: 30 mm of room for the waste, 10 mm off at least.
  const along = Math.cos(m) / Math.sin(k);
  const toe = Math.max(10, 30 / along);
  const axis = toe + face / 2;
  const bladeSide = Math.max(groove(of).width / 2 + 12, axis * Math.sin(a) + 10);
  const up = (mm: number): number => Math.ceil(mm / 5 - 1e-9) * 5;
  const wide = width ?? up(50 * Math.sin(k) + axis * Math.sin(a) + bladeSide);
  const seatSide = wide - bladeSide;
  // The far end's corner on side B is nearer to the blade than the groove's middle by the side's distance · cos α; side A keeps 50 beside the oblique end.
  const long = length ?? up(Math.max(axis * along + (150 + bladeSide * Math.cos(a)) / Math.sin(a), seatSide / Math.tan(k) + 50));
  return {
    a, k, face, along, toe, axis, reach: toe + face, waste: toe * along, wide, long, bladeSide, seatSide, blank: long + bladeSide / Math.tan(k),
    seat: (wide - bladeSide - axis * Math.sin(a)) / Math.sin(k), hand: (long - axis * along) * Math.sin(a) - bladeSide * Math.cos(a),
  };
};

type Check = (code: string, ...want: number[]) => void;

const both = (a: number, b: number): number[] => (Math.abs(a - b) < 1e-9 ? [a] : [a, b]);

/** The figures that both V pages share. */
const sawn = (of: Case, sides: readonly [number, number], size: readonly [number, number, number], is: Check, step: Check): void => {
  const { h, flatHeight, width } = groove(of);
  const [thick, thin] = [of.rounds[0]!, of.rounds.at(-1)!];
  is('number', 1);
  is('size', ...size);
  is('blank', Math.max(300, size[0]));
  is('tilt', of.angle / 2);
  is('height', of.depth);
  is('fence', ...both(sides[0] - width / 2, sides[1] - width / 2));
  if (of.flat >= of.kerf) {
    // From both sides, walking in by a kerf at most until the passes meet in the middle.
    const settings = Math.ceil(of.flat / of.kerf / 2 - 1e-9);
    for (let i = 0; i < settings; i += 1) {
      const walk = Math.min(i * of.kerf, of.flat - of.kerf) - of.flat / 2;
      is(`flat-fence-${i + 1}`, ...both(sides[0] + walk, sides[1] + walk));
    }
  } else if (of.flat > 0) step('flat', of.flat);
  is('groove', ...(of.flat === 0 ? [width] : [width, of.flat]));
  is('kerf', of.kerf);
  step('wide-board', size[1]);
  step('test-height', thick, proud(of, thick), size[2] + proud(of, thick), Math.tan(h));
  if (of.rounds.length > 1) step('test-tilt', proud(of, thick) - proud(of, thin));
  const contactHeight = ((thick / 2) * Math.cos(h) ** 2) / Math.sin(h);
  const part = 2.25 / 2.8284271247461903;
  const air = thin / 2 / Math.sin(h) - thin / 2 - flatHeight;
  step('allowances', thick, contactHeight / part, 100 * part, flatHeight, of.depth, air, size[2] - of.depth);
};

const checked = (page: SetUp): { is: Check; step: Check; column: (table: string, name: string, ...want: number[]) => void; done: string[] } => {
  const done: string[] = [];
  return {
    done,
    is: (code, ...want) => { done.push(`number ${code}`); close(figure(page, code), want); },
    step: (code, ...want) => { done.push(`step ${code}`); close(stepFigures(page, code), want); },
    column: (table, name, ...want) => { done.push(`table ${table} ${name}`); close(columnFigures(page, table, name).flat(), want); },
  };
};

describe.each(cases)('every figure is worked out again: $name', (of) => {
  const drawing = made(of);

  test('sawing the block', () => {
    const page = setUpOf(drawing, 'saw-v');
    const { is, step, done } = checked(page);
    sawn(of, [of.block[1] / 2, of.block[1] / 2], of.block, is, step);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test('drilling in it', () => {
    const page = setUpOf(drawing, 'drill');
    const { is, step, column, done } = checked(page);
    is('bit-from-side', of.block[1] / 2);
    is('floor', of.block[2] - of.depth);
    is('bearing', of.block[0] - (of.stop ?? 0));
    if (of.stop !== undefined) is('stop', of.stop);
    step('fence', of.block[1] / 2);
    column('heights', 'diameter', ...of.rounds);
    column('heights', 'axis', ...of.rounds.map((d) => of.block[2] - groove(of).apex + d / 2 / Math.sin(groove(of).h)));
    column('heights', 'top', ...of.rounds.map((d) => of.block[2] + proud(of, d)));
    column('heights', 'proud', ...of.rounds.map((d) => proud(of, d)));
    column('heights', 'contact', ...of.rounds.map((d) => contact(of, d)));
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test.runIf(of.carrier !== undefined)('sawing the carrier’s V: its own fences', () => {
    const page = setUpOf(drawing, 'saw-carrier-v');
    const { is, step, done } = checked(page);
    const p = plan(of);
    sawn(of, [p.seatSide, p.bladeSide], [p.blank, p.wide, of.block[2]], is, step);
    is('middle-from-a', p.seatSide);
    is('own-end', of.carrier!.sharp + of.carrier!.reading);
    step('own-end', of.carrier!.sharp + of.carrier!.reading, p.bladeSide / Math.tan(p.k));
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test.runIf(of.carrier !== undefined)('the steep cut', () => {
    const page = setUpOf(drawing, 'carrier');
    const { is, step, column, done } = checked(page);
    const { sharp, reading, round, twist } = of.carrier!;
    const p = plan(of);
    const shift = (d: number): number => (d * rad(0.5)) / Math.sin(p.a) ** 2;
    is('from-axis', sharp);
    is('from-square', 90 - sharp);
    is('reading', reading);
    is('turn', 90 - sharp - reading);
    is('end-cut', sharp + reading);
    is('length', p.long);
    is('width', p.wide);
    is('axis-from-fence', p.axis);
    is('blade-reach', p.reach);
    is('waste', 10, p.waste);
    is('seat', p.seat);
    is('hands', p.hand);
    is('twist', Math.abs(twist!), (rad(Math.abs(twist!)) * round) / 2);
    step('clamp', reading);
    step('mark', 10, p.waste);
    step('test', p.face, round / Math.tan(p.a), shift(round));
    column('ends', 'diameter', ...of.rounds);
    column('ends', 'face', ...of.rounds.map((d) => d / Math.sin(p.a)));
    column('ends', 'heel-to-toe', ...of.rounds.map((d) => d / Math.tan(p.a)));
    column('ends', 'toe-shift', ...of.rounds.map(shift));
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
    expect(p.hand).toBeGreaterThanOrEqual(150);
  });
});

test('the carrier’s pages show the carrier: its fence figures stand on its own page, none on the block’s', () => {
  const drawing = made(cases[1]!);
  expect(figure(setUpOf(drawing, 'saw-v'), 'fence')).toHaveLength(1);
  expect(figure(setUpOf(drawing, 'saw-carrier-v'), 'fence')).toHaveLength(2);
  expect(figureText(setUpOf(drawing, 'saw-carrier-v'), 'size', 'mm')).toContain('Carrier');
});

test('V cuts name guard and riving knife as the manual has them, and a length to saw them in', () => {
  for (const code of ['saw-v', 'saw-carrier-v']) {
    const page = setUpOf(made(cases[1]!), code);
    expect(page.cautions.join(' ')).toMatch(/Guard and riving knife as the machine’s manual has them/);
    expect(figureText(page, 'blank', 'mm')).toContain('to length last');
  }
});

test('a clamped block gets a fence: the block slides along it under the rod', () => {
  expect(stepText(setUpOf(made(cases[0]!), 'drill'), 'fence', 'mm')).toMatch(/fence .* side A against it.*slid along the fence, at the other/);
});

test('the drilling page has no word of a band saw, the carrier’s none of a drill', () => {
  const drawing = made(cases[1]!);
  expect(setUpOf(drawing, 'drill').cautions.join(' ')).not.toMatch(/band saw/);
  expect(setUpOf(drawing, 'carrier').cautions.join(' ')).not.toMatch(/drill|chuck/);
});
