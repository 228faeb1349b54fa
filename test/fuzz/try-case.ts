import { join } from 'node:path';
import { differences, faultsOf } from './faults.js';
import { fuzzCase, type Family } from './fuzz-case.js';
import { runCase, type loadCommand } from './run-case.js';

/** What came of one case. */
export interface Tried {
  readonly number: number;
  readonly family: Family;
  readonly code: number;
  readonly seconds: number;
  readonly readPdf: boolean;
  readonly twice: boolean;
  readonly faults: readonly string[];
}

/** Runs one case in a folder of its own and looks at all that it left. */
export async function tryCase(
  command: ReturnType<typeof loadCommand>,
  folder: string,
  seed: number,
  number: number,
): Promise<Tried> {
  const { spec, words, family, readPdf, twice, margin } = fuzzCase(seed, number);
  const run = await runCase(command, join(folder, 'first'), spec, words);
  const faults = [...(await faultsOf(run, { readPdf, margin, json: words.includes('--json') }))];
  if (twice) faults.push(...differences(run, await runCase(command, join(folder, 'second'), spec, words)));
  return { number, family, code: run.code, seconds: run.seconds, readPdf, twice, faults };
}
