import { runOnFlat, runOnRound, sagitta, throughLength as throughThickness } from '../../geometry/bore.js';
import { depthLeaving, farWallInRound } from '../../geometry/far-wall.js';
import { minimiseRound } from '../../geometry/minimise-round.js';
import { offsetOf, surfaceHeight, type Work } from './work.js';

/** The bit as it stands in the work. mm, radians. */
export interface Drilling {
  readonly work: Work;
  readonly angle: number;
  readonly radius: number;
  /** How far the point stands out beyond the lips. */
  readonly point: number;
}

/** The greatest value of a smooth function of the turn about the bit; to 1e-9 of its size. */
const greatest = (value: (phi: number) => number): number => value(minimiseRound((phi) => -value(phi), 2 * Math.PI, 720));

/** How far the far surface lies below where the axis enters, square to the work, mm; undefined on flat work of unknown thickness. */
export const thicknessUnder = (work: Work): number | undefined =>
  work.kind === 'flat' ? work.thickness : 2 * surfaceHeight(work, work.offset);

/** How far along the bit its axis goes from one surface to the other, mm; undefined on flat work of unknown thickness. */
export const throughLength = (work: Work, angle: number): number | undefined => {
  const across = thicknessUnder(work);
  return across === undefined ? undefined : throughThickness(across, angle);
};

/**
 * Kept in hand for the way on which the bit is buried on one side only: b/tan θ, and on a round the shop's sum with the
 * sagitta r − √(r² − (b/2)²). Never less than the way itself: for a bit off the round's axis, where the surface falls
 * faster than the sagitta says, the way is taken. mm; exact, or to 1e-9 where the way decides.
 */
export const runOf = ({ work, angle, radius }: Omit<Drilling, 'point'>): number => {
  const bore = { bit: 2 * radius, angle };
  if (work.kind === 'flat') return runOnFlat(bore);
  const sum = runOnFlat(bore) + sagitta(work.radius, bore.bit);
  return work.offset === 0 ? sum : Math.max(sum, runOnRound(bore, work.radius, work.offset));
};

/** How much further than its axis the lips must go until a through hole is open all round, mm; to 1e-9. */
export const overrunOf = ({ work, angle, radius }: Omit<Drilling, 'point'>): number => {
  if (work.kind === 'flat') return radius / Math.tan(angle);
  const far = surfaceHeight(work, work.offset);
  return greatest((phi) => (surfaceHeight(work, work.offset + radius * Math.sin(phi)) - far
    + radius * Math.cos(phi) * Math.cos(angle)) / Math.sin(angle));
};

/**
 * Least wood beyond the end of a blind hole, mm: from the rim of its flat end or the tip of the point, square to the far
 * surface. Below 0 the hole comes out. Undefined on flat work of unknown thickness. To 1e-6 mm.
 */
export const farWall = ({ work, angle, radius, point }: Drilling, depth: number): number | undefined => {
  if (work.kind === 'round') return farWallInRound({ round: work.radius, offset: work.offset, angle, bit: radius, point }, depth);
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return work.thickness === undefined ? undefined : work.thickness - depth * sin - Math.max(radius * cos, point * sin);
};

/** Least wood beside the hole on a round, where it passes closest to the surface, mm; exact. Undefined on flat work. */
export const skinOf = ({ work, radius }: Pick<Drilling, 'work' | 'radius'>): number | undefined =>
  work.kind === 'flat' ? undefined : work.radius - Math.abs(offsetOf(work)) - radius;

/** The greatest depth that leaves `wall` of wood beyond the end, mm, to 1e-6; undefined where even the shortest hole does not. */
export const depthFor = (wall: number, drilling: Drilling): number | undefined => {
  const through = throughLength(drilling.work, drilling.angle);
  return through === undefined ? undefined : depthLeaving(wall, through, (depth) => farWall(drilling, depth)!);
};
