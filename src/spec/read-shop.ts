import { posix } from 'node:path';
import type { Mistake } from '../errors/user-error.js';
import { makeFieldReader } from './fields.js';
import { mistakeAt, mistakesFromIssues } from './mistakes-from-issues.js';
import { quote } from '../errors/quote.js';
import { readYaml, type YamlFile } from './read-yaml.js';
import { schemaKeys } from './schema-keys.js';
import { shopFileSchema } from './shop-schema.js';
import type { Shop } from './shop.js';

/** Reads a file that the spec names; throws what node:fs throws. */
export type ReadFile = (path: string) => string;

/** A shop file's content and its text, which counts towards the digest. */
export type ShopRead = { readonly shop: Shop; readonly text: string } | { readonly mistakes: readonly Mistake[] };

/** Reads the shop file that a spec names, its path taken from the spec's folder. Its mistakes carry its own name. */
export function readShop(path: string, spec: YamlFile, readFile: ReadFile | undefined): ShopRead {
  const file = posix.isAbsolute(path) ? path : posix.join(posix.dirname(spec.source.file.replace(/\\/g, '/')), path);
  if (!readFile) return { mistakes: [cannotRead('files cannot be read here', path, spec)] };
  let text: string;
  try {
    text = readFile(file);
  } catch (error) {
    return { mistakes: [cannotRead(error instanceof Error ? error.message : String(error), path, spec)] };
  }
  const read = isShopLike(text) ? parseShop(file, text) : { mistakes: [notAShop] };
  return 'shop' in read ? { ...read, text } : { mistakes: read.mistakes.map((mistake) => ({ ...mistake, file })) };
}

const cannotRead = (why: string, path: string, spec: YamlFile): Mistake =>
  mistakeAt({ code: 'cannot-read', message: `the shop file cannot be read (${why})`, got: quote(path), allowed: 'a path from the spec’s folder' }, ['shop'], spec);

/** Whether a text is meant as a shop file: of any other nothing is told but that it is none, for a spec may name what is not the reader's to see. */
const isShopLike = (text: string): boolean => /^(?:units|saw|drillPress|router|bits|formRadii)[ \t]*:/m.test(text);

const notAShop: Mistake = {
  code: 'not-a-shop-file', path: '', message: 'is no shop file', allowed: 'a YAML mapping with units, and what the shop has under saw, drillPress, router, bits and formRadii',
};

/** The shop that a shop file's text gives, or all its mistakes. Its `units` is required: a shop file is shared by specs of both. */
function parseShop(file: string, text: string): { readonly shop: Shop } | { readonly mistakes: readonly Mistake[] } {
  const yaml = readYaml(file, text);
  if ('mistakes' in yaml) return yaml;
  const schema = shopFileSchema(makeFieldReader(yaml.data['units'] === 'inch' ? 'inch' : 'mm', {}));
  const read = schema.safeParse(yaml.data, { jitless: true });
  if (read.success && yaml.duplicates.length === 0) return { shop: read.data };
  const issues = read.error?.issues ?? [];
  return { mistakes: [...yaml.duplicates, ...mistakesFromIssues(issues, yaml, { at: [], keysAt: (path) => schemaKeys(schema, path) })] };
}
