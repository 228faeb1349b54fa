import { requireSaddle, type SaddleJoint } from './saddle.js';

/** How high the hollow stands over the main's axis at the thinner wing, square to the main, mm; zero at a cusp. */
const wingHeight = ({ main, branch, offset }: SaddleJoint): number => {
  const reach = Math.abs(offset) + branch;
  return Math.sqrt(Math.max(0, (main - reach) * (main + reach)));
};

/**
 * The first, plane saw cut that keeps all of both wings, along the branch as `saddleHeight`, mm:
 * z(φ) = [√(R² − (|e| + r)²) + r·cos φ·cos θ] ÷ sin θ. The saw stands 90° − θ from square. Exact.
 */
export const sawCutHeight = (joint: SaddleJoint, phi: number): number => {
  requireSaddle(joint);
  const { branch, angle } = joint;
  return (wingHeight(joint) + branch * Math.cos(phi) * Math.cos(angle)) / Math.sin(angle);
};

/** How deep the hollow goes below the first saw cut, square to the main, mm; R − √(R² − r²) for crossing axes. Exact. */
export const hollowDepth = (joint: SaddleJoint): number => {
  requireSaddle(joint);
  const nearest = Math.max(0, Math.abs(joint.offset) - joint.branch);
  return Math.sqrt(joint.main * joint.main - nearest * nearest) - wingHeight(joint);
};
