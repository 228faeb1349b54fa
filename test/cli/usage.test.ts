import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { emptyFolder, roundwright, saddleSpec } from './run-command.js';

describe('wrong use ends with 2, one message and the nearest that would do', () => {
  const cases: readonly (readonly [name: string, args: readonly string[], said: readonly string[]])[] = [
    ['no command', [], ['no command given', 'draw']],
    ['an unknown command', ['chek', 'a.yaml'], ['“chek”', 'check']],
    ['an unknown option', ['draw', 'a.yaml', '--papr', 'a4'], ['“--papr”', '--paper']],
    ['an option of another command', ['check', 'a.yaml', '--out', 'x'], ['“--out”']],
    ['an option without its value', ['draw', 'a.yaml', '--paper'], ['--paper needs a value']],
    ['no spec', ['draw'], ['draw needs a spec']],
    ['a word too many', ['new', 'saddle-cope', 'x'], ['“x”']],
    ['an unknown kind', ['new', 'sadle-cope'], ['“sadle-cope”', 'saddle-cope']],
    ['an unknown kind of fields', ['fields', 'v-cradel'], ['“v-cradel”']],
    ['a spec that is not there', ['check', 'gone.yaml'], ['gone.yaml', 'no such file']],
    ['a folder as spec', ['check', '.'], ['folder']],
    ['standard input twice', ['check', '-', '-'], ['only once']],
  ];
  test.each(cases)('%s', (_, args, said) => {
    const { code, out, err } = roundwright(emptyFolder(), args);
    expect(code).toBe(2);
    expect(out).toBe('');
    for (const words of said) expect(err).toContain(words);
    expect(err).not.toMatch(/\n\s+at /);
  });
});

test('--help names every command and ends with 0', () => {
  const { code, out, err } = roundwright(emptyFolder(), ['--help']);
  expect([code, err]).toEqual([0, '']);
  for (const name of ['draw', 'check', 'print-test', 'printer', 'new', 'fields']) expect(out).toContain(`roundwright ${name}`);
});

test.each(['draw', 'check', 'print-test', 'printer', 'new', 'fields'])('%s --help shows examples', (name) => {
  const { code, out } = roundwright(emptyFolder(), [name, '--help']);
  expect(code).toBe(0);
  expect(out).toMatch(new RegExp(`Examples:\\s+.*roundwright ${name}`));
});

test('--version prints the version of the package', async () => {
  const { default: description } = await import('../../package.json', { with: { type: 'json' } });
  expect(roundwright(emptyFolder(), ['--version'])).toEqual({ code: 0, out: `${description.version}\n`, err: '' });
});

test('what stands behind -- is a file, be its name like an option or a single dash', () => {
  const folder = emptyFolder();
  for (const name of ['-r.yaml', '--json', 'r.yaml']) writeFileSync(join(folder, name), saddleSpec());
  for (const args of [['check', '--', '-r.yaml'], ['check', '--', '--json'], ['check', '--json', '--', 'r.yaml', '-r.yaml']]) {
    const { code, out, err } = roundwright(folder, args);
    expect([args, code, err]).toEqual([args, 0, '']);
    expect(out).toContain('brace saddle');
  }
  expect(roundwright(folder, ['check', '--', '-'], saddleSpec()).out).toContain('brace saddle');
  expect(roundwright(folder, ['check', '--']).err).toContain('check needs a spec');
});
