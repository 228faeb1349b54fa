import type { Random } from './random.js';

const signs = [
  '\u0000',
  '\u001b[31m',
  '\u202e',
  '\ufeff',
  '\u2028',
  '😀',
  'É',
  'ﬀ',
  '木',
  '\\',
  '"',
  "'",
  '<',
  '&',
  ']]>',
  '%',
  '\n',
  '\t',
];

/** Text that titles, names and paths may be given. */
export const wildText = ({ pick, below, chance }: Random): string =>
  chance(0.1)
    ? pick(['A', 'Ä', 'x ']).repeat(1 + below(3000))
    : Array.from({ length: below(6) }, () =>
        pick([...signs, 'Brace', 'flat', '..', '/', '-', 'con', '__proto__', 'constructor', ' ']),
      ).join('');

const figures: readonly unknown[] = [
  0,
  -0,
  1,
  -1,
  1e-9,
  1e-6,
  0.05,
  0.1,
  1e3,
  1e5,
  1e6,
  1e8,
  1e9,
  1e11,
  1e16,
  1e300,
  1e308,
  -1e308,
  '1e309',
  '.inf',
  '-.inf',
  '.nan',
  '0x10',
  '0o17',
  '1_000',
  '0 mm',
  '-5 mm',
  '1e-6 mm',
  '1e9 mm',
  '1/0',
  '0/5',
  '1-3/0',
  '5/64 in',
  '3\' 2-1/2"',
  '1⅜"',
  '12 furlong',
  '24°',
  '90°',
  '-90°',
  '360°',
  '1e9°',
  '1:0',
  '0:1',
  '1:1e9',
  '1:6',
];
const others: readonly unknown[] = [
  null,
  true,
  false,
  '',
  ' ',
  [],
  {},
  [[]],
  [null],
  { a: 1 },
  '~',
  'on',
  'no',
  '2026-11-27',
  '*a',
  '&a 1',
  '!!set {}',
  '!!binary AA==',
  '<<',
];

/** A value that a hurried or hostile hand may put where something else belongs. */
export const wildValue = (random: Random): unknown =>
  random.chance(0.55) ? random.pick(figures) : random.chance(0.6) ? random.pick(others) : wildText(random);

/** Figures at and beside a limit: of the length that stood there, or where kinds of geometry change. */
export const nearFigure = (old: unknown, { pick }: Random): unknown => {
  const [, figure = '10', unit = ''] = /^(-?[\d.]+)\s*(mm|in|°)?$/.exec(String(old)) ?? [];
  const value = Number(figure);
  const near = pick([
    0,
    value * (1 + 1e-12),
    value * (1 - 1e-9),
    value / 2,
    value * 2,
    value * 10,
    -value,
    Math.round(value),
    90,
    89.999999,
    90.000001,
    45,
    30,
    0.1,
    3,
    300,
  ]);
  return unit === '' ? near : `${near} ${unit}`;
};
