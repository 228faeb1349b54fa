const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The parameter in `from`…`to` where `f` is least: the best of `samples` even steps, narrowed in by golden section between
 * its neighbours. Good to about 1e-8 of a step; `f` may have several dips, each wider than a step.
 */
export const minimise = (f: (t: number) => number, from: number, to: number, samples: number): number => {
  const step = (to - from) / samples;
  let at = from;
  let least = f(from);
  for (let i = 1; i <= samples; i += 1) {
    const t = i === samples ? to : from + i * step;
    const value = f(t);
    if (value < least) { least = value; at = t; }
  }
  let [low, high] = [Math.max(from, at - step), Math.min(to, at + step)];
  for (let i = 0; i < 60; i += 1) {
    const [m, n] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (f(m) < f(n)) high = n; else low = m;
  }
  const narrowed = (low + high) / 2;
  return f(narrowed) < least ? narrowed : at;
};
