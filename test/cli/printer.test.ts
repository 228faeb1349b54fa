import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
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
  expect(err).toMatch(/fit to page|shrunk/);
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
