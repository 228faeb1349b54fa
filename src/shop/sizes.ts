import type { Units } from '../units/units.js';

/** Steps that sizes which a spec leaves out are rounded up to, mm. Common practice. */
const steps = {
  /** A depth of cut: what a rule shows. */
  depth: { mm: 0.5, inch: 25.4 / 32 },
  /** A block or blank: sizes to which stock is sawn. */
  sawn: { mm: 5, inch: 25.4 / 4 },
} as const;

/** The next size up that a rule shows (`depth`) or that stock is sawn to (`sawn`), mm. A size on the step stays there. */
export function nextSize(mm: number, size: keyof typeof steps, units: Units): number {
  const step = steps[size][units];
  // 1e-9: a size that is on the step already stays there however it was worked out.
  return Math.ceil(mm / step - 1e-9) * step;
}
