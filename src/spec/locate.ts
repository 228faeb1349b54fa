import { isAlias, isMap, isScalar, isSeq, type Document, type Node, type Pair } from 'yaml';
import { keyOf } from './check-nodes.js';
import type { Path } from './path.js';

/** Offset of the value at a path; of the nearest thing above it that is there, where it is not. Aliases are followed; of a key given twice, the last counts, as in plain data. */
export function locateValue(document: Document, path: Path): number {
  let node: unknown = document.contents;
  let offset = startOf(node) ?? 0;
  for (const step of path) {
    const found = stepInto(document, node, step);
    if (!found) break;
    node = found.value;
    // An empty value (`angle:`) has no place of its own that shows.
    offset = (isEmpty(node) ? startOf(found.key) : startOf(node)) ?? startOf(found.key) ?? offset;
  }
  return offset;
}

/** Offset of the key at the end of a path; of its value in a list. */
export function locateKey(document: Document, path: Path): number {
  const last = path.at(-1);
  if (last === undefined) return locateValue(document, path);
  const found = stepInto(document, nodeAt(document, path.slice(0, -1)), last);
  return startOf(found?.key) ?? locateValue(document, path);
}

const nodeAt = (document: Document, path: Path): unknown =>
  path.reduce<unknown>((node, step) => stepInto(document, node, step)?.value, document.contents);

function stepInto(document: Document, from: unknown, step: string | number): { readonly key?: unknown; readonly value: unknown } | undefined {
  const node = isAlias(from) ? from.resolve(document) : from;
  if (isMap(node)) return node.items.findLast((pair: Pair) => keyOf(pair.key) === String(step));
  if (isSeq(node) && typeof step === 'number' && step < node.items.length) return { value: node.items[step] };
  return undefined;
}

const isEmpty = (node: unknown): boolean => node === null || (isScalar(node) && node.value === null && node.source === '');

const startOf = (node: unknown): number | undefined => (node as Node | null | undefined)?.range?.[0];
