import type { Units } from '../../units/units.js';

/** Steps that sizes which the spec leaves out are rounded up to, mm. */
const steps = { depth: { mm: 0.5, inch: 25.4 / 32 }, block: { mm: 5, inch: 25.4 / 4 } } as const;

/** The next size up that is marked on a rule: depths to 0.5 mm or 1/32 in, block sizes to 5 mm or 1/4 in. mm. */
export const roundUp = (mm: number, size: keyof typeof steps, units: Units): number => {
  const step = steps[size][units];
  // 1e-9: a size that is on the step already stays there however it was worked out.
  return Math.ceil(mm / step - 1e-9) * step;
};
