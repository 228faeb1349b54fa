import { GeometryError } from '../errors/geometry-error.js';

/** Two round parts that meet: radii in mm, the angle between the axes in radians (0…π, the trade's joints 0…π/2), the least distance between the axes in mm. */
export interface SaddleJoint {
  /** Radius of the round that is met. */
  readonly main: number;
  /** Radius of the round that is cut. */
  readonly branch: number;
  readonly angle: number;
  /** Positive: the branch's axis lies to the right of the main's, seen from the acute side with the branch pointing up. */
  readonly offset: number;
}

const TURN = 2 * Math.PI;
const SLACK = 1e-12;

/** How far the branch stays inside the main on the right (φ = 90°) and on the left (φ = −90°), mm; zero there is a cusp. */
const margins = ({ main, branch, offset }: SaddleJoint): readonly [right: number, left: number] => {
  const slack = SLACK * main;
  const [right, left] = [main - offset - branch, main + offset - branch];
  return [right < 0 && right > -slack ? 0 : right, left < 0 && left > -slack ? 0 : left];
};

/** Throws GeometryError where no cut all round exists: |offset| + branch > main (an excess of 1e-12 counts as equal), or no such angle. */
export const requireSaddle = (joint: SaddleJoint): void => {
  const { main, branch, angle, offset } = joint;
  const figures = { main, branch, angle, offset };
  if (!(main > 0 && branch > 0 && angle > 0 && angle < Math.PI && Number.isFinite(main + offset))) {
    throw new GeometryError('saddle-request', 'A saddle needs radii above zero and an angle between the axes above 0° and below 180°.', figures);
  }
  if (Math.min(...margins(joint)) < 0) {
    throw new GeometryError(
      'branch-overhangs-main',
      'The branch does not meet the main all round: offset plus branch radius exceeds the main radius.',
      { ...figures, reach: Math.abs(offset) + branch, excess: Math.abs(offset) + branch - main },
    );
  }
};

/** The angle brought into −π…π. A quarter turn of any whole number of turns comes out exact where a double holds it. */
const wrapped = (angle: number): number => angle - TURN * Math.round(angle / TURN);

/**
 * √(R² − w²) with w = e + r·sin φ, from the products (R − w)(R + w), each a margin plus 2r·sin² of a half angle: without
 * the cancellation that costs half the digits near a cusp.
 */
const heightOverMain = (joint: SaddleJoint, phi: number): number => {
  const [right, left] = margins(joint);
  const a = Math.sin(wrapped(Math.PI / 2 - phi) / 2);
  const b = Math.sin(wrapped(Math.PI / 2 + phi) / 2);
  return Math.sqrt((right + 2 * joint.branch * a * a) * (left + 2 * joint.branch * b * b));
};

/** cos φ ÷ √(R² − w²), finite at a cusp, where `side` (−1 from below φ, 1 from above) chooses the limit. */
export const cosOverHeight = (joint: SaddleJoint, phi: number, side: -1 | 1 = -1): number => {
  const [right, left] = margins(joint);
  const before = wrapped(Math.PI / 2 - phi);
  const after = wrapped(Math.PI / 2 + phi);
  const nearRight = Math.abs(before) < Math.abs(after);
  const delta = nearRight ? before : after;
  if ((nearRight ? right : left) !== 0) return Math.sin(delta) / heightOverMain(joint, phi);
  const other = Math.sin((nearRight ? after : before) / 2);
  const rest = (nearRight ? left : right) + 2 * joint.branch * other * other;
  const towards = nearRight ? -side : side;
  const sign = Math.abs(delta) < 1e-14 ? towards : Math.sign(delta);
  return (sign * 2 * Math.cos(delta / 2)) / Math.sqrt(2 * joint.branch * rest);
};

/**
 * Where the cut edge stands along the branch, mm from the crossing of the axes (or their feet on the common normal),
 * growing away from the main: z(φ) = [√(R² − (e + r·sin φ)²) + r·cos φ·cos θ] ÷ sin θ, φ from the throat, growing to
 * the right. Exact. Throws where the joint cannot be cut all round. (Substitute the branch's point into y² + z² = R²;
 * cf. Apostol & Mnatsakanian, Amer. Math. Monthly 114 (2007), eq. 10.)
 */
export const saddleHeight = (joint: SaddleJoint, phi: number): number => {
  requireSaddle(joint);
  const { branch, angle } = joint;
  return (heightOverMain(joint, phi) + branch * Math.cos(phi) * Math.cos(angle)) / Math.sin(angle);
};

/** The derivative of `saddleHeight` by φ, mm per radian; exact. At a cusp the one from `side`: −1 from below φ, 1 from above. */
export const saddleSlope = (joint: SaddleJoint, phi: number, side: -1 | 1 = -1): number => {
  requireSaddle(joint);
  const { branch, angle, offset } = joint;
  const sin = Math.sin(phi);
  const hollow = -(offset + branch * sin) * branch * cosOverHeight(joint, phi, side);
  return (hollow - branch * sin * Math.cos(angle)) / Math.sin(angle);
};

/** Where φ of a cusp lies in 0…2π: ±90° where offset and branch radius just make up the main's radius; exact, rising. */
export const cuspParameters = (joint: SaddleJoint): readonly number[] => {
  const [right, left] = margins(joint);
  return [...(right === 0 ? [Math.PI / 2] : []), ...(left === 0 ? [1.5 * Math.PI] : [])];
};
