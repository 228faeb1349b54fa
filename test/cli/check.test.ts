import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyFolder, roundwright, saddleSpec } from './run-command.js';

interface Report {
  readonly title: string;
  readonly digest: string;
  readonly jigs: readonly { readonly name: string; readonly kind: string; readonly values: Readonly<Record<string, unknown>>; readonly findings: readonly Readonly<Record<string, unknown>>[] }[];
}

test('check --json prints one object for one spec, mm and degrees', () => {
  const { code, out, err } = roundwright(emptyFolder(), ['check', '-', '--json'], saddleSpec());
  const report = JSON.parse(out) as Report;
  expect([code, err]).toEqual([0, '']);
  expect(Object.keys(report)).toEqual(['title', 'digest', 'jigs']);
  expect(report.title).toBe('Brace on post');
  expect(report.digest).toMatch(/^[0-9a-f]{8}$/);
  expect(report.jigs.map(({ name, kind }) => [name, kind])).toEqual([['brace saddle', 'saddle-cope']]);
  // π(d + t), d = 1-1/8 in, t = 0.1 mm.
  expect(report.jigs[0]!.values['wrapLength']).toBeCloseTo(Math.PI * (1.125 * 25.4 + 0.1), 6);
});

test('check --json prints a list for several specs', () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'a.yaml'), saddleSpec({ title: 'A' }));
  writeFileSync(join(folder, 'b.yaml'), saddleSpec({ title: 'B' }));
  const { code, out } = roundwright(folder, ['check', 'a.yaml', 'b.yaml', '--json']);
  expect(code).toBe(0);
  expect((JSON.parse(out) as Report[]).map(({ title }) => title)).toEqual(['A', 'B']);
});

test('a spec with mistakes does not hide the next one, and the exit code is 2', () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'bad.yaml'), 'title: Bad\njigs: 7\n');
  writeFileSync(join(folder, 'good.yaml'), saddleSpec({ title: 'Good' }));
  const { code, out, err } = roundwright(folder, ['check', 'bad.yaml', 'good.yaml', '--json']);
  expect(code).toBe(2);
  expect(err).toContain('bad.yaml:2:');
  expect((JSON.parse(out) as Report[]).map(({ title }) => title)).toEqual(['Good']);
});

test('check prints lengths in both units, the spec’s own first', () => {
  const { code, out } = roundwright(emptyFolder(), ['check', '-'], saddleSpec());
  expect(code).toBe(0);
  expect(out).toMatch(/wrap length +3 35⁄64″ +90\.09 mm/);
});

test('all mistakes of a spec are told together, each with line and column', () => {
  const spec = `titel: Rack
units: inches
rounds: { post: 1-3/8x }
jigs:
  - { kind: sadle-cope, branch: brace, main: post, angle: 24 }
`;
  const { code, out, err } = roundwright(emptyFolder(), ['check', '-'], spec);
  expect([code, out]).toEqual([2, '']);
  for (const place of ['1:1', '2:8', '3:17', '5:13']) expect(err).toMatch(new RegExp(`:${place}:`));
  expect(err).toContain('saddle-cope');
});

test('a finding that stops a jig ends check with 1, and is in the JSON', () => {
  // Axes further apart than the main's radius less the branch's: 7/8 + 9/16 > 11/16 in.
  const { code, out } = roundwright(emptyFolder(), ['check', '-', '--json'], saddleSpec({ jig: ', offset: 7/8' }));
  const [jig] = (JSON.parse(out) as Report).jigs;
  expect(code).toBe(1);
  expect(jig!.values).toEqual({});
  expect(jig!.findings[0]).toMatchObject({ jig: 'brace saddle', severity: 'stop' });
  expect(Object.keys(jig!.findings[0]!).sort()).toEqual(['about', 'code', 'jig', 'limit', 'measured', 'message', 'remedy', 'severity', 'would']);
});

test('check writes nothing', async () => {
  const { readdirSync } = await import('node:fs');
  const folder = emptyFolder();
  roundwright(folder, ['check', '-'], saddleSpec());
  expect(readdirSync(folder)).toEqual([]);
});

test.each([
  ['over 1 MiB', Buffer.alloc(1024 * 1024 + 1, 0x23), '1 MiB'],
  ['not UTF-8', Buffer.from([0x74, 0xff, 0xfe]), 'not text'],
  ['empty', Buffer.alloc(0), ''],
])('standard input that is %s ends with 2', (_, bytes, said) => {
  const { code, out, err } = roundwright(emptyFolder(), ['check', '-'], bytes);
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(said);
});
