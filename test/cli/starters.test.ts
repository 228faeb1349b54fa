import { expect, test } from 'vitest';
import { kinds } from '../../src/jigs/index.js';
import { emptyFolder, roundwright } from './run-command.js';

test.each(Object.keys(kinds))('what new %s prints draws as it stands, without a stop', (kind) => {
  const folder = emptyFolder();
  const starter = roundwright(folder, ['new', kind]);
  expect([starter.code, starter.err]).toEqual([0, '']);
  const { code, err } = roundwright(folder, ['draw', '-', '--out', 'x', '--format', 'svg'], starter.out);
  // The paper's own warnings aside.
  expect([code, err.replaceAll(/^warning: .*(?:\n {2}.*)*\n/gm, '')]).toEqual([0, '']);
});

test.each(Object.keys(kinds))('fields %s lists every field with what it is', (kind) => {
  const { code, out } = roundwright(emptyFolder(), ['fields', kind]);
  expect(code).toBe(0);
  expect(out).toMatch(/^ {2}\w+ {3}.*(required|optional|default)/m);
  expect(out).not.toMatch(/undefined|\[object|NaN/);
});

test('fields lists the spec and all kinds', () => {
  const { out } = roundwright(emptyFolder(), ['fields']);
  for (const kind of Object.keys(kinds)) expect(out).toContain(kind);
  for (const key of ['title', 'units', 'paper', 'rounds', 'shop', 'sheets', 'jigs']) expect(out).toMatch(new RegExp(`^  ${key} `, 'm'));
});
