import type { z } from 'zod';
import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import type { Mistake } from '../errors/user-error.js';
import { shown } from './field.js';
import { sortOf, type FieldIssue, type IssueParams } from './issue.js';
import { formatPath, type Path } from './path.js';
import type { YamlFile } from './read-yaml.js';
import { placeAt } from './source-text.js';

/** Where a piece of a file was read with a schema: its path in the file, and the keys that the schema knows. */
export interface Reading {
  readonly at: Path;
  /** The keys allowed at a path below `at`, for the nearest to an unknown one. */
  readonly keysAt: (path: Path) => readonly string[];
}

type Issue = z.core.$ZodIssue;

/** Every mistake that zod found in a piece of a YAML file, each with its place, what was got and what would do. */
export function mistakesFromIssues(issues: readonly Issue[], yaml: YamlFile, reading: Reading): readonly Mistake[] {
  const mistakes = issues.flatMap((issue) => fromIssue(issue, yaml, reading));
  return mistakes.filter((mistake) => !isMisspelt(mistake, mistakes));
}

/** A key that is missing because it stands there misspelt: said once is enough. */
const isMisspelt = ({ code, path }: Mistake, all: readonly Mistake[]): boolean =>
  code === 'missing-key' && all.some((other) => other.code === 'unknown-key' && other.nearest !== undefined && sibling(other.path, other.nearest) === path);

const sibling = (path: string, key: string): string => (path.includes('.') ? path.replace(/\.[^.]*$/, `.${key}`) : key);

function fromIssue(issue: Issue, yaml: YamlFile, reading: Reading): readonly Mistake[] {
  const below = issue.path as Path;
  const path = [...reading.at, ...below];
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(key, path, yaml, reading.keysAt(below)));
  if (issue.code === 'invalid_union') {
    const branch = likeliest(issue.errors);
    const inner = branch?.map((one) => ({ ...one, path: [...below, ...one.path] }) as Issue) ?? [];
    const mistakes = inner.flatMap((one) => fromIssue(one, yaml, reading));
    return inner.length === 1 && inner[0]?.path.length === below.length ? mistakes.map((mistake) => withOthers(mistake, issue.errors)) : mistakes;
  }
  const params = paramsOf(issue, valueAt(yaml.data, path));
  return params.follows ? [] : [mistakeAt(params, path, yaml)];
}

/** A field's refusal as a mistake at its path in the file: at the value, or at what should hold it where it is missing. */
export function mistakeAt(issue: FieldIssue, path: Path, yaml: YamlFile): Mistake {
  const { follows: _, ...rest } = issue;
  return { ...rest, path: formatPath(path), ...placeAt(yaml.source, yaml.locate.value(path)) };
}

function unknownKey(key: string, parent: Path, yaml: YamlFile, known: readonly string[]): Mistake {
  const path = [...parent, key];
  const near = nearest(key, known);
  return {
    code: 'unknown-key', path: formatPath(path), ...placeAt(yaml.source, yaml.locate.key(path)),
    message: 'is not a key that can stand here', got: quote(key),
    ...(known.length > 0 ? { allowed: known.join(', ') } : {}), ...(near === undefined ? {} : { nearest: near }),
  };
}

/**
 * The branch of a union that the writer most likely meant: the one that got furthest in, then the one with fewest mistakes, then one
 * that knows something near. A branch that only follows from a mistake told elsewhere goes first: nothing is to be said.
 */
function likeliest(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const depth = (issues: readonly Issue[]) => Math.min(...issues.map((issue) => issue.path.length + (issue.code === 'unrecognized_keys' ? 1 : 0)));
  const blind = (issues: readonly Issue[]) => Number(issues.every((issue) => carriedBy(issue)?.nearest === undefined));
  const told = (issues: readonly Issue[]) => Number(!issues.some((issue) => carriedBy(issue)?.follows));
  return [...branches]
    .filter((issues) => issues.length > 0)
    .sort((a, b) => told(a) - told(b) || depth(b) - depth(a) || a.length - b.length || blind(a) - blind(b))[0];
}

/** What would do in the other branches of a union too, where the value is of the wrong sort for all. */
function withOthers(mistake: Mistake, branches: readonly (readonly Issue[])[]): Mistake {
  if (mistake.code === 'unknown-key' || mistake.allowed === undefined) return mistake;
  const others = branches.flatMap(([one, ...more]) => (one && more.length === 0 && one.path.length === 0 ? (carriedBy(one)?.allowed ?? wantedBy(one) ?? []) : []));
  return { ...mistake, allowed: [...new Set([mistake.allowed, ...others])].join(', or ') };
}

const carriedBy = (issue: Issue): IssueParams | undefined =>
  issue.code === 'custom' ? (issue.params?.['mistake'] as IssueParams | undefined) : undefined;

function paramsOf(issue: Issue, input: unknown): FieldIssue {
  const carried = carriedBy(issue);
  if (carried) return { ...carried, message: issue.message };
  // A kind's own refinement has said what is wrong in words of its own.
  if (issue.code === 'custom') return { code: input === undefined ? 'missing-key' : 'not-allowed', message: issue.message, ...(input === undefined ? {} : { got: shown(input) }) };
  const wanted = wantedBy(issue);
  if (input === undefined) return { code: 'missing-key', message: 'is missing', ...(wanted ? { allowed: wanted } : {}) };
  if (input === null) return { code: 'empty-value', message: 'is empty', got: 'nothing', ...(wanted ? { allowed: wanted } : {}) };
  if (issue.code === 'too_small' && issue.origin === 'array') return listLength(`has fewer than ${issue.minimum}`, `at least ${issue.minimum}`, input);
  if (issue.code === 'too_big' && issue.origin === 'array') return listLength(`has more than ${issue.maximum}`, `at most ${issue.maximum}`, input);
  return { code: codes[issue.code] ?? 'not-allowed', message: wanted ? `is ${sortOf(input)}, not ${wanted}` : lowered(issue.message), got: shown(input), ...(wanted ? { allowed: wanted } : {}) };
}

const listLength = (message: string, allowed: string, input: unknown): FieldIssue => ({
  code: 'list-length', message: Array.isArray(input) && input.length === 0 ? 'is an empty list' : `${message} entries`, allowed: `a list of ${allowed}`,
});

const codes: Readonly<Record<string, string>> = {
  invalid_type: 'wrong-sort', invalid_value: 'unknown-choice', too_small: 'too-small', too_big: 'too-large',
};

const sorts: Readonly<Record<string, string>> = { object: 'a mapping', record: 'a mapping', array: 'a list', tuple: 'a list', string: 'text', number: 'a number', boolean: 'true or false', int: 'a whole number' };

function wantedBy(issue: Issue): string | undefined {
  if (issue.code === 'invalid_type') return sorts[issue.expected] ?? issue.expected;
  if (issue.code === 'invalid_value') return `one of ${issue.values.map(String).join(', ')}`;
  return undefined;
}

const lowered = (message: string): string => message.charAt(0).toLowerCase() + message.slice(1);

/** What stands at a path in plain data. */
export const valueAt = (data: unknown, path: Path): unknown =>
  path.reduce<unknown>((value, step) => (typeof value === 'object' && value !== null && Object.hasOwn(value, step) ? (value as Record<string | number, unknown>)[step] : undefined), data);
