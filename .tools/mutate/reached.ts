// Runs before each test file: notes which switches the file passed, and has the commands that it starts note theirs.
import { appendFileSync } from 'node:fs';
import { afterAll, expect } from 'vitest';

const shared = globalThis as { mutants?: { on: number; reached: Set<number> } };
const mutants = (shared.mutants ??= { on: Number(process.env['MUTANT'] ?? 0), reached: new Set() });
const file = expect.getState().testPath;
const list = process.env['MUTANTS_REACHED'];
if (list !== undefined) {
  process.env['MUTANTS_REACHED_BY'] = file;
  afterAll(() => appendFileSync(list, `${JSON.stringify({ file, reached: [...mutants.reached] })}\n`));
}
