import type { ZodType } from 'zod';
import type { Mistake } from '../errors/user-error.js';
import { wrongSort } from './field.js';
import type { FieldReader } from './fields.js';
import type { FieldIssue } from './issue.js';
import { jigNames, kindIssue, longestJigName, nameIssue } from './jig-names.js';
import { mistakeAt, mistakesFromIssues } from './mistakes-from-issues.js';
import type { Path } from './path.js';
import { readText } from './plain-fields.js';
import type { YamlFile } from './read-yaml.js';
import { schemaKeys } from './schema-keys.js';
import { mostJigs } from './piece-schema.js';
import { placeAt, positionAt } from './source-text.js';
import type { JigEntry } from './spec.js';

/** The kinds of jig that a spec may name, each with its schema. */
export type Kinds = Readonly<Record<string, { readonly schema: (fields: FieldReader) => ZodType }>>;

type Entry = Readonly<Record<string, unknown>>;

/** Every jig that reads well, and the mistakes of all the others. */
export interface JigsRead {
  readonly jigs: readonly JigEntry[];
  readonly mistakes: readonly Mistake[];
}

/** Reads each jig with its own kind's schema; a schema is made only for kinds that are used, once. */
export function readJigs(yaml: YamlFile, kinds: Kinds, fields: FieldReader): JigsRead {
  const given: readonly unknown[] = Array.isArray(yaml.data['jigs']) ? yaml.data['jigs'] : [];
  // More than there may be are counted, by the schema of the whole, and not worked on.
  const entries = given.length > mostJigs ? [] : given;
  const names = jigNames(entries.map((entry) => ({ kind: String(isEntry(entry) ? entry['kind'] : ''), given: givenName(entry) })));
  const schemas = new Map<string, ZodType>();
  const jigs: JigEntry[] = [];
  const mistakes: Mistake[] = [];
  entries.forEach((entry, index) => {
    const wrong = entryMistakes(entry, index, { yaml, kinds, names });
    mistakes.push(...wrong.mistakes);
    const kind = wrong.kind;
    if (kind === undefined || !isEntry(entry)) return;
    const schema = schemas.get(kind) ?? kinds[kind]?.schema(fields);
    if (!schema) return;
    schemas.set(kind, schema);
    const read = readFields(entry, index, schema, yaml);
    if ('mistakes' in read) mistakes.push(...read.mistakes);
    else jigs.push({ kind, name: names[index] ?? kind, fields: read.fields, ...placesOf(entry, index, yaml) });
  });
  return { jigs, mistakes };
}

const isEntry = (entry: unknown): entry is Entry => typeof entry === 'object' && entry !== null && !Array.isArray(entry);

/** A name given and fit to be read; what is wrong with any other is told apart. */
function givenName(entry: unknown): string | undefined {
  if (!isEntry(entry) || entry['name'] === undefined) return undefined;
  const read = readText(entry['name'], longestJigName);
  return 'value' in read ? read.value : undefined;
}

/** Where the entry and every text in it stand. */
function placesOf(entry: Entry, index: number, yaml: YamlFile): Pick<JigEntry, 'position' | 'textPlaces'> {
  const at: Path = ['jigs', index];
  const texts = (value: unknown, path: Path): [string, Path][] => {
    if (typeof value === 'string') return [[path.join('.'), path]];
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value).flatMap(([key, inner]) => texts(inner, [...path, Array.isArray(value) ? Number(key) : key]));
  };
  const places = texts(entry, []).map(([name, path]) => [name, placeAt(yaml.source, yaml.locate.value([...at, ...path]))] as const);
  return { position: positionAt(yaml.source, yaml.locate.value(at)), textPlaces: Object.fromEntries(places) };
}

interface Around {
  readonly yaml: YamlFile;
  readonly kinds: Kinds;
  readonly names: readonly string[];
}

/** What is wrong with an entry's kind and name; the kind where it is sound. */
function entryMistakes(entry: unknown, index: number, around: Around): { readonly kind?: string; readonly mistakes: readonly Mistake[] } {
  const { yaml, kinds, names } = around;
  const at = ['jigs', index] as const;
  if (!isEntry(entry)) return { mistakes: [mistakeAt(wrongSort('not-a-mapping', entry, 'a mapping', 'a mapping with kind and its fields').issue, at, yaml)] };
  const kind = Object.hasOwn(entry, 'kind') ? entry['kind'] : undefined;
  const wrongKind = kindIssue(kind, Object.keys(kinds));
  const wrongName = nameOf(entry, names[index] ?? '', names.slice(0, index));
  return {
    ...(wrongKind ? {} : { kind: kind as string }),
    mistakes: [
      ...(wrongKind ? [mistakeAt(wrongKind, [...at, 'kind'], yaml)] : []),
      ...(wrongName ? [mistakeAt(wrongName, [...at, 'name'], yaml)] : []),
    ],
  };
}

function nameOf(entry: Entry, name: string, before: readonly string[]): FieldIssue | undefined {
  if (entry['name'] === undefined) return undefined;
  const read = readText(entry['name'], longestJigName);
  return 'issue' in read ? read.issue : nameIssue(name, before);
}

function readFields(entry: Entry, index: number, schema: ZodType, yaml: YamlFile): { readonly fields: unknown } | { readonly mistakes: readonly Mistake[] } {
  const { kind: _kind, name: _name, ...own } = entry;
  const read = schema.safeParse(own, { jitless: true });
  if (read.success) return { fields: read.data };
  const keysAt = (path: readonly (string | number)[]) => [...(path.length === 0 ? ['kind', 'name'] : []), ...schemaKeys(schema, path)];
  return { mistakes: mistakesFromIssues(read.error.issues, yaml, { at: ['jigs', index], keysAt }) };
}
