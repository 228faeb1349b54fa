import { entryHeight } from '../../geometry/far-wall.js';
import type { Round } from '../../spec/spec.js';

/*
 * The frame of the work: x along it, towards the side to which the bit's shank leans (the acute side); y to the right,
 * seen from that side; z up, off the work. Flat work: z = 0 is its face and the bit's axis enters at the origin. A round:
 * the x axis is its axis, and the bit's axis passes x = 0 at z = 0. The bit's axis runs along (cos θ, 0, sin θ).
 * In the block: u square to the bore in the plane of the tilt, along (sin θ, 0, −cos θ); v = y; w up along the bore.
 */

/** A round that is drilled, mm; `offset` of the bit's axis from its own, as `y`. */
export interface RoundWork {
  readonly kind: 'round';
  readonly round: Round;
  readonly radius: number;
  readonly offset: number;
}

/** What is drilled, mm. */
export type Work = RoundWork | { readonly kind: 'flat'; readonly thickness?: number };

/** How far the bit's axis passes beside the round's, mm; 0 on flat work. */
export const offsetOf = (work: Work): number => (work.kind === 'round' ? work.offset : 0);

/**
 * Height of the work's surface over y = `across`, mm; exact. Callers stay on the round; a bit that just grazes its side may
 * stand past it by rounding alone, and that counts as 0.
 */
export const surfaceHeight = (work: Work, across: number): number =>
  work.kind === 'flat' ? 0 : entryHeight(work.radius, across);
