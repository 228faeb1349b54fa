import { isAlias, isMap, isNode, isPair, isScalar, isSeq, type Document, type Node, type YAMLMap, type YAMLSeq } from 'yaml';
import { quote, visible } from '../errors/quote.js';
import type { Mistake } from '../errors/user-error.js';
import { formatPath, type Path } from './path.js';
import { placeAt, type SourceText } from './source-text.js';

/** Mistakes that plain data no longer shows: keys given twice, keys that are not plain names, aliases inside their own anchor. */
export function checkNodes(document: Document, source: SourceText): readonly Mistake[] {
  const mistakes: Mistake[] = [];
  let aliases = 0;
  // A list of what is left to do, not recursion: depth is the user's to choose.
  const left: { readonly node: unknown; readonly path: Path }[] = [{ node: document.contents, path: [] }];
  for (let next = left.pop(); next; next = left.pop()) {
    const { node, path } = next;
    if ((isMap(node) || isSeq(node)) && node.items.length > mostEntries) return [tooManyEntries(node, path, source)];
    const tag = tagOf(node);
    if (tag !== undefined && !plainTags.has(tag)) {
      mistakes.push({ code: 'tagged', path: formatPath(path), ...at(node as Node, source), message: `carries the tag ${visible(shortTag(tag))}`, allowed: 'plain text, numbers, lists and mappings, without a tag' });
      continue;
    }
    if (isMap(node)) {
      mistakes.push(...keyMistakes(node, path, source));
      for (const pair of node.items) left.push({ node: pair.value, path: [...path, keyOf(pair.key)] });
    } else if (isSeq(node)) {
      node.items.forEach((item, index) => left.push({ node: isPair(item) ? item.value : item, path: [...path, index] }));
    } else if (isAlias(node)) {
      // Each look-up walks the document.
      if (++aliases > mostAliases) return [tooManyAliases(placeAt(source, node.range?.[0] ?? 0))];
      if (!node.resolve(document)) mistakes.push({ code: 'unknown-anchor', path: formatPath(path), ...at(node, source), message: `is an alias, and no anchor ${quote(node.source)} stands before it` });
    }
  }
  return mistakes.sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
}

const core = 'tag:yaml.org,2002:';
/** Tags that say no more than what a value is by itself. */
const plainTags = new Set(['str', 'int', 'float', 'bool', 'null', 'map', 'seq'].map((name) => `${core}${name}`));
const tagOf = (node: unknown): string | undefined => (isNode(node) ? (node as { readonly tag?: string }).tag : undefined);
const shortTag = (tag: string): string => (tag.startsWith(core) ? `!!${tag.slice(core.length)}` : tag);

/** Entries of one list or mapping: more than any piece has of anything, and few enough to be worked on. */
export const mostEntries = 2000;

const tooManyEntries = (node: YAMLMap | YAMLSeq, path: Path, source: SourceText): Mistake => ({
  code: 'too-many-entries', path: formatPath(path), ...at(node, source), message: `has ${node.items.length} entries`, allowed: `at most ${mostEntries}`,
});

/** Aliases that one file may spend; a hundred repeat any honest block. */
export const mostAliases = 100;

/** Anchors used more often than `mostAliases`, by themselves or through one another. */
export const tooManyAliases = (place: ReturnType<typeof placeAt>): Mistake => ({
  code: 'anchors-multiply', path: '', ...place, message: 'anchors and aliases multiply', allowed: `at most ${mostAliases} aliases in a file, those inside what they repeat counted too`,
});

/** A mapping's key as plain data spells it. */
export const keyOf = (key: unknown): string => (isScalar(key) ? String(key.value) : String(key));

function keyMistakes(map: YAMLMap, path: Path, source: SourceText): readonly Mistake[] {
  const seen = new Set<string>();
  return map.items.flatMap(({ key }): readonly Mistake[] => {
    const name = keyOf(key);
    const where = { path: formatPath(isScalar(key) && key.value !== null ? [...path, name] : path), ...at(key as Node, source) };
    if (!isScalar(key) || key.value === null) return [{ code: 'not-a-key', ...where, message: 'holds a key that is not a plain name', allowed: 'name: value' }];
    // Plain data in JavaScript cannot carry this key without harm.
    if (name === '__proto__') return [{ code: 'not-a-key', ...where, message: 'is a name kept back', got: quote(name), allowed: 'any other name' }];
    if (seen.has(name)) return [{ code: 'duplicate-key', ...where, message: 'is given twice in one mapping', allowed: 'each key once' }];
    seen.add(name);
    return [];
  });
}

const at = (node: Node | null, source: SourceText) => placeAt(source, node?.range?.[0] ?? 0);
