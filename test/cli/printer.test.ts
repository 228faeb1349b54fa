import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyFolder, roundwright, saddleSpec } from './run-command.js';

const profiles = (folder: string): string => join(folder, 'config/roundwright/printers');

// On letter the x-bar is 7 in and the y-bar 9 in, the longest round lengths in the live area (8.5 × 11 in less 10 mm all round and the strips).
test('printer keeps measured ÷ nominal, and draw --printer takes it', () => {
  const folder = emptyFolder();
  const said = roundwright(folder, ['print-test']).out;
  const [, x, y] = /x-bar should measure (\d+)″, the y-bar (\d+)″/.exec(said)!;
  const kept = roundwright(folder, ['printer', 'office', '--x-bar', `${Number(x) * 0.99} in`, '--y-bar', `${Number(y) * 1.01} in`]);
  expect([kept.code, kept.err]).toEqual([0, '']);
  const profile = JSON.parse(readFileSync(join(profiles(folder), 'office.json'), 'utf8')) as { x: number; y: number };
  expect(profile.x).toBeCloseTo(0.99, 12);
  expect(profile.y).toBeCloseTo(1.01, 12);
  writeFileSync(join(folder, 'piece.yaml'), saddleSpec());
  expect(roundwright(folder, ['draw', 'piece.yaml', '--printer', 'office', '--out', 'x', '--format', 'svg']).code).toBe(0);
  expect(readFileSync(join(folder, 'x/sheets-letter/01.svg'), 'utf8')).toContain('office');
});

test('printer without measures shows what is kept', () => {
  const folder = emptyFolder();
  expect(roundwright(folder, ['printer']).out).toContain('No printer is kept');
  roundwright(folder, ['printer', 'shed', '--x-bar', '178 mm', '--y-bar', '228.5 mm']);
  expect(roundwright(folder, ['printer']).out).toMatch(/^shed: prints/);
});

test('a scale that is a print setting is refused, and nothing is kept', () => {
  const folder = emptyFolder();
  const { code, err } = roundwright(folder, ['printer', 'office', '--x-bar', '167.4 mm', '--y-bar', '215 mm']);
  expect(code).toBe(2);
  expect(err).toMatch(/a setting that makes (?:Letter )?pages smaller/);
  expect(existsSync(profiles(folder))).toBe(false);
});

test.each(['../up', 'a/b', '', '.hidden', 'x'.repeat(61)])('the printer’s name %j is refused', (name) => {
  const folder = emptyFolder();
  mkdirSync(join(folder, 'config'));
  expect(roundwright(folder, ['printer', name, '--x-bar', '178 mm', '--y-bar', '228.5 mm']).code).toBe(2);
  expect(readdirSync(folder)).toEqual(['config']);
});

test.each([
  [['--x-bar', '7 in'], '--y-bar is missing'],
  [['--x-bar', '7 in', '--y-bar', 'nine'], 'not a length'],
  [['--printer', 'gone'], 'no printer'],
  [['--printer', 'gone', '--x-bar', '7 in', '--y-bar', '9 in'], 'one of the two'],
])('draw with %j is refused', (options, said) => {
  const { code, err } = roundwright(emptyFolder(), ['draw', '-', ...options], saddleSpec());
  expect(code).toBe(2);
  expect(err).toContain(said);
});

test('print-test writes one PDF for the paper asked for', () => {
  const folder = emptyFolder();
  expect(roundwright(folder, ['print-test', '--paper', 'a4', '--out', 'x']).code).toBe(0);
  expect(readdirSync(join(folder, 'x'))).toEqual(['print-test-a4.pdf']);
});

const measured = (folder: string, name: string): void => { expect(roundwright(folder, ['printer', name, '--x-bar', '178 mm', '--y-bar', '228.5 mm']).code).toBe(0); };
const spoil = (folder: string, name: string, change: (profile: Record<string, unknown>) => unknown): void => {
  const file = join(profiles(folder), `${name}.json`);
  writeFileSync(file, JSON.stringify(change(JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>)));
};

test.each<[string, (profile: Record<string, unknown>) => unknown, RegExp]>([
  ['bars twice as long', (p) => ({ ...p, measured: { xBar: 356, yBar: 457 } }), /x-bar came out at 2\d\d\.\d %.*print again at 100 %/s],
  ['bars of nothing', (p) => ({ ...p, measured: { xBar: 0, yBar: 228.5 } }), /is no length/],
  ['a bar of 1e308', (p) => ({ ...p, measured: { xBar: 1e308, yBar: 228.5 } }), /x-bar came out/],
  ['a bar in words', (p) => ({ ...p, measured: { xBar: 'long', yBar: 228.5 } }), /does not hold what was measured/],
  ['no measures', ({ measured: _, ...p }) => p, /does not hold/],
  ['no paper', ({ paper: _, ...p }) => p, /does not hold/],
  ['a paper that is none', (p) => ({ ...p, paper: 'quarto' }), /does not hold/],
  ['units that are none', (p) => ({ ...p, units: 'cubit' }), /does not hold/],
  ['one diagonal', (p) => ({ ...p, measured: { ...p['measured'] as object, diagonals: [141] } }), /does not hold/],
  ['another printer’s name', (p) => ({ ...p, name: 'shop\u001b[2J' }), /does not hold/],
  ['a list', () => [1, 2], /does not hold/], ['nothing', () => null, /does not hold/],
])('a profile with %s is refused where it is used and told in the list, which shows the others', (_, change, said) => {
  const folder = emptyFolder();
  measured(folder, 'office');
  measured(folder, 'shed');
  spoil(folder, 'office', change);
  const drawn = roundwright(folder, ['draw', '-', '--printer', 'office'], saddleSpec());
  expect([drawn.code, existsSync(join(folder, 'output'))]).toEqual([2, false]);
  expect(drawn.err).toMatch(said);
  expect(drawn.err).toContain('office.json');
  const list = roundwright(folder, ['printer']);
  expect(list.code).toBe(2);
  expect(list.out).toMatch(/^shed: prints/);
  expect(list.err).toMatch(said);
  expect(`${drawn.err}${list.err}${list.out}`).not.toContain('\u001b');
  // Measured again it is whole.
  expect(roundwright(folder, ['printer', 'office', '--x-bar', '178 mm', '--y-bar', '228.5 mm']).out).toContain('In place of what could not be read');
  expect(roundwright(folder, ['printer']).code).toBe(0);
});

test('factors and lean that a profile says of itself are not believed: they are worked out from its measures', () => {
  const folder = emptyFolder();
  measured(folder, 'office');
  const before = roundwright(folder, ['printer', 'office']).out;
  spoil(folder, 'office', (p) => ({ ...p, x: 2, y: 0.01, skewDeg: 'abc' }));
  expect(roundwright(folder, ['printer', 'office']).out).toBe(before);
});

test.skipIf(process.platform === 'win32')('a profile that is a pipe, a link to a device, a folder or longer than 64 KiB is refused at once', () => {
  const folder = emptyFolder();
  measured(folder, 'shed');
  expect(spawnSync('mkfifo', [join(profiles(folder), 'pipe.json')]).status).toBe(0);
  symlinkSync('/dev/zero', join(profiles(folder), 'zero.json'));
  mkdirSync(join(profiles(folder), 'folder.json'));
  writeFileSync(join(profiles(folder), 'long.json'), ' '.repeat(65 * 1024));
  for (const [name, reason] of [['pipe', 'no regular file'], ['zero', 'no regular file'], ['folder', 'a folder'], ['long', 'longer than 64 KiB']] as const) {
    const { code, err } = roundwright(folder, ['draw', '-', '--printer', name], saddleSpec());
    expect([name, code]).toEqual([name, 2]);
    expect(err).toContain(reason);
  }
  expect(roundwright(folder, ['printer']).out).toMatch(/^shed: prints/m);
});

test('a printer measured again under other capitals says what it takes the place of', () => {
  const folder = emptyFolder();
  measured(folder, 'office');
  expect(roundwright(folder, ['printer', 'Office', '--x-bar', '177 mm', '--y-bar', '228 mm']).out).toContain('In place of office: prints');
  expect(readdirSync(profiles(folder))).toEqual(['office.json']);
});
