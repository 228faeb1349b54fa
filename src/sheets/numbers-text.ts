/** Numbers in their order, runs of three and more by their ends: `3, 6, 9–12`. */
export const numbersText = (numbers: readonly number[]): string => {
  const runs: { from: number; to: number }[] = [];
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last?.to === number - 1) last.to = number;
    else runs.push({ from: number, to: number });
  }
  return runs
    .map(({ from, to }) => (to === from ? `${from}` : `${from}${to === from + 1 ? ', ' : '–'}${to}`))
    .join(', ');
};
