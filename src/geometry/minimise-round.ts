const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Closes in on the least value between `low` and `high` by golden section, to the last bit or so. */
const narrow = (f: (t: number) => number, low: number, high: number): number => {
  for (let i = 0; i < 60; i += 1) {
    const [m, n] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (f(m) < f(n)) high = n; else low = m;
  }
  return (low + high) / 2;
};

/**
 * The parameter where `f`, which repeats after `period`, is least: the best of `samples` even steps from 0, narrowed in by
 * golden section between its neighbours, which may lie before 0. Good to about 1e-8 of a step; `f` may have several dips,
 * each wider than a step.
 */
export const minimiseRound = (f: (t: number) => number, period: number, samples: number): number => {
  const step = period / samples;
  let [least, at] = [f(0), 0];
  for (let i = 1; i < samples; i += 1) {
    const value = f(i * step);
    if (value < least) [least, at] = [value, i * step];
  }
  const narrowed = narrow(f, at - step, at + step);
  return f(narrowed) < least ? narrowed : at;
};
