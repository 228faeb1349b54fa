/** Parameters strictly inside 0…1, rising, where a coordinate of a cubic, given by its four Bézier ordinates, turns back. */
export const cubicTurns = (p0: number, p1: number, p2: number, p3: number): number[] => {
  const a = p3 - 3 * p2 + 3 * p1 - p0;
  const b = 2 * (p2 - 2 * p1 + p0);
  const c = p1 - p0;
  const inside = (t: number): boolean => t > 0 && t < 1;
  if (Math.abs(a) < 1e-14 * (Math.abs(b) + Math.abs(c))) return b === 0 ? [] : [-c / b].filter(inside);
  const root = b * b - 4 * a * c;
  if (root < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(root)) / 2;
  return (q === 0 ? [0] : [q / a, c / q]).filter(inside).sort((m, n) => m - n);
};

/** The root between `a` and `b` of 0…1, where `f` is monotone and changes sign: halved until doubles lie no closer. */
const rootBetween = (f: (t: number) => number, a: number, b: number): number => {
  let [low, high] = f(a) < 0 ? [a, b] : [b, a];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) < 0) low = middle; else high = middle;
  }
  return (low + high) / 2;
};

/**
 * Parameters in 0…1 where one coordinate of a cubic, given by its four Bézier ordinates, takes the value `level`; rising,
 * to 1e-12 where the crossing is not a touch. Each monotone stretch is searched apart, so no root pair is lost to
 * cancellation as in a closed formula.
 */
export const cubicRoots = (ordinates: readonly [number, number, number, number], level: number): readonly number[] => {
  const [p0, p1, p2, p3] = ordinates;
  const f = (t: number): number => {
    const k = 1 - t;
    return k * k * k * (p0 - level) + 3 * k * k * t * (p1 - level) + 3 * k * t * t * (p2 - level) + t * t * t * (p3 - level);
  };
  const knots = [0, ...cubicTurns(p0, p1, p2, p3), 1];
  const roots = knots.filter((t) => f(t) === 0);
  knots.slice(1).forEach((b, i) => {
    const a = knots[i]!;
    if (f(a) * f(b) < 0) roots.push(rootBetween(f, a, b));
  });
  return roots.sort((m, n) => m - n);
};
