import { isAlias, isMap, isScalar, isSeq, type Document, type Node, type Pair, type YAMLMap } from 'yaml';
import { keyOf } from './check-nodes.js';
import type { Path } from './path.js';

/** Finds the places of values and keys in one document, as offsets. Aliases are followed; of a key given twice, the last counts, as in plain data. */
export interface Locator {
  /** Offset of the value at a path; of the nearest thing above it that is there, where it is not. */
  readonly value: (path: Path) => number;
  /** Offset of the key at the end of a path; of its value in a list. */
  readonly key: (path: Path) => number;
}

/** The locator of a document; each mapping that is asked about is indexed once, since a bad file may hold thousands of mistakes. */
export function makeLocator(document: Document): Locator {
  const indices = new Map<YAMLMap, ReadonlyMap<string, Pair>>();

  const pairsOf = (map: YAMLMap): ReadonlyMap<string, Pair> => {
    const known = indices.get(map) ?? new Map(map.items.map((pair) => [keyOf(pair.key), pair]));
    indices.set(map, known);
    return known;
  };

  const stepInto = (from: unknown, step: string | number): Found | undefined => {
    const node = isAlias(from) ? from.resolve(document) : from;
    if (isMap(node)) return pairsOf(node).get(String(step));
    return isSeq(node) && typeof step === 'number' && step < node.items.length ? { value: node.items[step] } : undefined;
  };

  const value = (path: Path): number => {
    let node: unknown = document.contents;
    let offset = startOf(node) ?? 0;
    for (const step of path) {
      const found = stepInto(node, step);
      if (!found) break;
      node = found.value;
      // An empty value (`angle:`) has no place of its own that shows.
      offset = (isEmpty(node) ? startOf(found.key) : startOf(node)) ?? startOf(found.key) ?? offset;
    }
    return offset;
  };

  const key = (path: Path): number => {
    const above = path.slice(0, -1).reduce<unknown>((node, step) => stepInto(node, step)?.value, document.contents);
    return startOf(stepInto(above, path.at(-1) ?? '')?.key) ?? value(path);
  };

  return { value, key };
}

interface Found {
  readonly key?: unknown;
  readonly value: unknown;
}

const isEmpty = (node: unknown): boolean => node === null || (isScalar(node) && node.value === null && node.source === '');

const startOf = (node: unknown): number | undefined => (node as Node | null | undefined)?.range?.[0];
