/**
 * Moves labels apart along a column so that no two stand closer than `gap`, each as near its wish as a pass in order allows;
 * the order of `wishes`, which must rise, is kept, so leaders do not cross. mm.
 */
export const spreadLabels = (wishes: readonly number[], gap: number): number[] => {
  const placed: number[] = [];
  for (const wish of wishes) placed.push(Math.max(wish, (placed.at(-1) ?? -Infinity) + gap));
  // The pass only pushes down: centre the column on its wishes again.
  const shift = placed.reduce((sum, y, i) => sum + (y - wishes[i]!), 0) / Math.max(placed.length, 1);
  return placed.map((y) => y - shift);
};
