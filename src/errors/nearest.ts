/**
 * The name nearest to `word` by edit distance (insert, drop, replace, swap neighbours), capitals and dashes aside; undefined
 * where none is within a third of its letters, or within 2. The first of equals.
 */
export function nearest(word: string, names: Iterable<string>): string | undefined {
  const plain = fold(word.slice(0, longest));
  let best: string | undefined;
  let least = Math.max(2, Math.floor(plain.length / 3)) + 1;
  for (const name of names) {
    const distance = editDistance(plain, fold(name));
    // Two letters of two are not a likeness.
    if (distance < least && distance < Math.max(plain.length, 1)) [best, least] = [name, distance];
  }
  return best;
}

/** Names are shorter; a longer word is compared by its beginning. */
const longest = 80;

const fold = (word: string): string => word.toLowerCase().replace(/[-_ ]/g, '');

/** Optimal string alignment distance, in two kept rows. */
export function editDistance(a: string, b: string): number {
  let [before, row] = [[] as number[], Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = at(row, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? at(before, j - 2) + 1 : Infinity;
      next.push(Math.min(replaced, swapped, at(row, j) + 1, at(next, j - 1) + 1));
    }
    [before, row] = [row, next];
  }
  return at(row, b.length);
}

const at = (row: readonly number[], index: number): number => row[index] ?? Infinity;
