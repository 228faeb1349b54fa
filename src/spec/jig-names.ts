import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import { shown } from './field.js';
import { fileName } from './file-name.js';
import type { FieldIssue } from './issue.js';

/** Longest name of a jig, letters. */
export const longestJigName = 80;

/** Names for the jigs in order: those given, else the kind's name, numbered from the second of a kind on; a number that is taken is passed over. */
export function jigNames(jigs: readonly { readonly kind: string; readonly given: string | undefined }[]): readonly string[] {
  const taken = new Set(jigs.flatMap(({ given }) => (given === undefined ? [] : [asFile(given)])));
  return jigs.map(({ kind, given }) => {
    if (given !== undefined) return given;
    let [name, number] = [kind, 1];
    while (taken.has(asFile(name))) name = `${kind} ${++number}`;
    taken.add(asFile(name));
    return name;
  });
}

const asFile = (name: string): string => fileName(name) ?? name;

/** What is wrong with a jig's name beside those before it: it makes no file name, or the file name of another. */
export function nameIssue(name: string, before: readonly string[]): FieldIssue | undefined {
  const file = fileName(name);
  if (file === undefined) {
    return { code: 'no-file-name', message: 'makes no file name', got: quote(name), allowed: 'a name with a letter or a digit, at most 120 bytes in UTF-8' };
  }
  const same = before.find((other) => fileName(other) === file);
  if (same === undefined) return undefined;
  return {
    code: 'same-name', message: `makes the same file name as ${quote(same)}: ${file}`, got: quote(name),
    allowed: 'a name of its own, capitals and signs aside', nearest: freeName(name, before),
  };
}

function freeName(name: string, before: readonly string[]): string {
  const files = new Set(before.map(fileName));
  let number = 2;
  while (files.has(fileName(`${name} ${number}`))) number++;
  return `${name} ${number}`;
}

/** What is wrong with the kind of a jig, with the nearest kind there is. */
export function kindIssue(kind: unknown, kinds: readonly string[]): FieldIssue | undefined {
  if (typeof kind === 'string' && kinds.includes(kind)) return undefined;
  const allowed = kinds.join(', ');
  if (kind === undefined || kind === null) return { code: 'missing-key', message: 'is missing', allowed };
  if (typeof kind !== 'string') return { code: 'unknown-kind', message: 'is not a kind of jig', got: shown(kind), allowed };
  const near = nearest(kind, kinds);
  return { code: 'unknown-kind', message: 'is not a kind of jig', got: quote(kind), allowed, ...(near === undefined ? {} : { nearest: near }) };
}
