import { saddleHeight, type SaddleJoint } from '../../geometry/saddle.js';

const steps = 720;

/**
 * The lowest (`sense` −1) or highest (1) point of the cut edge, mm along the branch from the crossing. Looked for every
 * half degree, then closed in on by golden section to 1e-9 rad: the height there is flat, so it is right to 1e-12 mm,
 * and at a cusp, which falls on a looked-at φ, exact.
 */
export const hornHeight = (joint: SaddleJoint, sense: -1 | 1): number => {
  const value = (phi: number): number => sense * saddleHeight(joint, phi);
  let best = 0;
  for (let i = 1; i < steps; i += 1) if (value((i * 2 * Math.PI) / steps) > value((best * 2 * Math.PI) / steps)) best = i;
  const at = (best * 2 * Math.PI) / steps;
  let [low, high] = [at - (2 * Math.PI) / steps, at + (2 * Math.PI) / steps];
  const golden = (Math.sqrt(5) - 1) / 2;
  while (high - low > 1e-9) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (value(a) > value(b)) high = b;
    else low = a;
  }
  return sense * Math.max(value(at), value((low + high) / 2));
};
