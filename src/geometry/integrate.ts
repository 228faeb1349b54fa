/** Nodes (positive half) and weights of the ten-point Gauss–Legendre rule on −1…1 (Abramowitz & Stegun table 25.4). */
const RULE: readonly (readonly [node: number, weight: number])[] = [
  [0.14887433898163122, 0.29552422471475287],
  [0.4333953941292472, 0.26926671930999635],
  [0.6794095682990244, 0.21908636251598204],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.06667134430868814],
];

/** A panel narrower than this part of the range is not halved again: below what a double tells apart in a sum of lengths. */
const NARROWEST = 1e-12;

const gauss = (f: (t: number) => number, a: number, b: number): number => {
  const middle = (a + b) / 2;
  const half = (b - a) / 2;
  let sum = 0;
  for (const [node, weight] of RULE) sum += weight * (f(middle - half * node) + f(middle + half * node));
  return sum * half;
};

/**
 * The integral of `f` from `a` to `b` by ten-point Gauss–Legendre, halved where a panel and its two halves disagree by
 * more than `relative` of the whole. Suited to a positive smooth integrand with a few kinks, such as a speed.
 */
export const integrate = (f: (t: number) => number, a: number, b: number, relative = 1e-12): number => {
  const refine = (from: number, to: number, whole: number): number => {
    const middle = (from + to) / 2;
    const left = gauss(f, from, middle);
    const right = gauss(f, middle, to);
    if (Math.abs(left + right - whole) <= allowed || Math.abs(to - from) < narrowest) return left + right;
    return refine(from, middle, left) + refine(middle, to, right);
  };
  const first = gauss(f, a, b);
  const allowed = relative * Math.abs(first);
  const narrowest = NARROWEST * Math.abs(b - a);
  return refine(a, b, first);
};
