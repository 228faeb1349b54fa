import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { faultsOf } from './faults.js';
import { families, fuzzCase } from './fuzz-case.js';
import { finds } from './finds.js';
import { loadCommand, runCase } from './run-case.js';
import { tryCase } from './try-case.js';

// A draw of `npm run fuzz`, which runs many more: 500 specs by a seed, sound and broken, and those that once broke something.
const command = loadCommand(join(dirname(fileURLToPath(import.meta.url)), '../..'));
const folder = mkdtempSync(join(tmpdir(), 'roundwright-fuzz-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const perBatch = 50;

describe('any spec is drawn or refused, and what is written is sound', () => {
  it.each(Array.from({ length: 500 / perBatch }, (_, i) => i * perBatch))('cases from %i', async (first) => {
    const found: string[] = [];
    for (let number = first; number < first + perBatch; number += 1) {
      const { faults, family } = await tryCase(command, folder, 1, number);
      found.push(...faults.map((fault) => `case ${number} (${family}): ${fault}`));
    }
    expect(found).toEqual([]);
  });

  it('cases repeat, each by itself, and differ by number and seed', () => {
    expect(fuzzCase(3, 17)).toEqual(fuzzCase(3, 17));
    expect(
      new Set(
        [
          [3, 17],
          [3, 18],
          [4, 17],
        ].map(([seed, number]) => Buffer.from(fuzzCase(seed!, number!).spec).toString('latin1')),
      ).size,
    ).toBe(3);
    expect(families.map((_, number) => fuzzCase(1, number).family)).toEqual([...families]);
  });
});

describe('what once broke the program', () => {
  it.each(finds.map((find) => [find.name, find] as const))('%s', async (_name, { spec, code }) => {
    const run = await runCase(command, folder, Buffer.from(spec()), []);
    expect([run.code, run.err.slice(0, run.code === code ? 0 : 400)]).toEqual([code, '']);
    expect(await faultsOf(run, { readPdf: true, json: false, margin: 10 })).toEqual([]);
  });
});
