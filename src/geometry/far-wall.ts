import { minimiseRound } from './minimise-round.js';

/** A blind hole in a round: mm and radians. */
export interface BlindHole {
  /** Radius of the round, and the least distance of the bit's axis from its own. */
  readonly round: number;
  readonly offset: number;
  /** Between the bit and the round's axis. */
  readonly angle: number;
  /** Radius of the bit, and how far its point stands out beyond the lips. */
  readonly bit: number;
  readonly point: number;
}

/** Height over the round's axis at which a line `offset` beside it enters the surface, mm; exact. */
export function entryHeight(round: number, offset: number): number {
  // A line that just grazes the side may stand past it by rounding alone, and that counts as 0.
  return Math.sqrt(Math.max(0, (round - offset) * (round + offset)));
}

/** What is left from a place in a round to its surface, on the far half or, before that, straight out to the side, mm. */
const leftOver = (round: number, across: number, height: number): number =>
  round - (height < 0 ? Math.hypot(across, height) : Math.abs(across));

/**
 * Least wood beyond the end of a blind hole, mm: from the rim of its flat end or the tip of the point, square to the far
 * surface. Below 0 the hole comes out. `depth` along the axis from where it enters, to the lips. To 1e-6 mm.
 */
export function farWallInRound({ round, offset, angle, bit, point }: BlindHole, depth: number): number {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const entry = entryHeight(round, offset);
  const end = entry - depth * sin;
  const rim = (phi: number): number => leftOver(round, offset + bit * Math.sin(phi), end - bit * Math.cos(phi) * cos);
  const tip = leftOver(round, offset, entry - (depth + point) * sin);
  return Math.min(tip, rim(minimiseRound(rim, 2 * Math.PI, 720)));
}

/**
 * The greatest depth that leaves `wall` of wood, mm, to 1e-6; undefined where even the shortest hole does not. `left` gives
 * what a depth leaves and shrinks as the hole deepens, so halving finds it between 0 and `most`.
 */
export function depthLeaving(wall: number, most: number, left: (depth: number) => number): number | undefined {
  if (left(0) < wall) return undefined;
  let [low, high] = [0, most];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (left(middle) >= wall) low = middle;
    else high = middle;
  }
  return low;
}
