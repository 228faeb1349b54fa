import { minimiseRound } from './minimise-round.js';
import { requireSaddle, saddleHeight, type SaddleJoint } from './saddle.js';

/** Heights of the cut edge along the branch, mm from the crossing of the axes, growing away from the main. */
export interface SaddleHeights {
  /** At φ = 0, on the acute side. */
  readonly throat: number;
  /** At φ = 180°, on the obtuse side. */
  readonly longPoint: number;
  /** At φ = 90° and φ = −90°. */
  readonly rightWing: number;
  readonly leftWing: number;
  /** Anywhere on the edge: nearest to the main's axis (the horn) and farthest from it. */
  readonly least: number;
  readonly greatest: number;
}

/** The heights that a saddle is laid out and checked by. Throat, long point and wings exact; least and greatest to 1e-9 mm. */
export const saddleHeights = (joint: SaddleJoint): SaddleHeights => {
  const z = (phi: number): number => saddleHeight(joint, phi);
  const [right, left] = [z(Math.PI / 2), z(1.5 * Math.PI)];
  return {
    throat: z(0),
    longPoint: z(Math.PI),
    rightWing: right,
    leftWing: left,
    least: Math.min(right, left, z(minimiseRound(z, 2 * Math.PI, 720))),
    greatest: z(minimiseRound((phi) => -z(phi), 2 * Math.PI, 720)),
  };
};

/**
 * The angle of wood left at the cut edge, radians, between the branch's side and the hollow, square to the edge; exact. For
 * crossing axes 180° − θ at the throat, θ at the long point and acos(r/R) at the wings.
 */
export const woodAngle = (joint: SaddleJoint, phi: number): number => {
  requireSaddle(joint);
  const { main, branch, angle, offset } = joint;
  const side = offset + branch * Math.sin(phi);
  const up = Math.sqrt(Math.max(0, main * main - side * side));
  const cos = (Math.sin(phi) * side - Math.cos(phi) * Math.cos(angle) * up) / main;
  return Math.acos(Math.min(1, Math.max(-1, cos)));
};

/** The thinnest wing's angle of wood, radians: acos((|e| + r)/R); zero is a knife edge. Exact. */
export const wingAngle = (joint: SaddleJoint): number => {
  requireSaddle(joint);
  return Math.acos(Math.min(1, (Math.abs(joint.offset) + joint.branch) / joint.main));
};
