import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { formatMistakes } from '../../src/errors/format-mistakes.js';
import { UserError } from '../../src/errors/user-error.js';
import { parseSpec } from '../../src/spec/parse-spec.js';
import { toyKinds } from './toy-kinds.js';

const folder = fileURLToPath(new URL('./mistakes/', import.meta.url));
const names = readdirSync(folder).filter((file) => file.endsWith('.yaml')).map((file) => file.replace('.yaml', ''));

const mistakesOf = (file: string, text: string): UserError => {
  try {
    parseSpec({ text, file, kinds: toyKinds });
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
  throw new Error(`${file} has no mistake`);
};

describe('a file with mistakes is refused with every one of them in its place', () => {
  it.each(names)('%s', async (name) => {
    const error = mistakesOf(`${name}.yaml`, readFileSync(`${folder}${name}.yaml`, 'utf8'));
    await expect(formatMistakes(error)).toMatchFileSnapshot(`${folder}${name}.txt`);
    expect(error.mistakes.length).toBeGreaterThan(0);
  });
});
