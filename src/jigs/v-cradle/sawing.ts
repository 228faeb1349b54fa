import type { Groove } from './held-round.js';

/**
 * Two tilted passes, block face down, blade leaning away from the fence; then upright passes clear the flat. mm, radians.
 * Fence distances run from the fence's face to the near side of the blade, at the table.
 */
export interface Sawing {
  readonly kerf: number;
  /** True where the shop names no kerf. */
  readonly kerfAssumed: boolean;
  readonly tilt: number;
  /** Blade's highest point above the table: the depth of cut. */
  readonly height: number;
  readonly fence: number;
  /** Upright passes for the flat: none for a sharp V or a flat narrower than the kerf. */
  readonly flatFences: readonly number[];
  /** How high above the flat a square tooth scores the opposite flank; 0 where it does not. */
  readonly toothPast: number;
  /** Least flat at which it does not: kerf·cos 2h / cos h. */
  readonly flatForTooth: number;
}

/** Fence distances of the upright passes; each is cut with either side to the fence, walking in by a kerf at most. */
const flatFences = (width: number, flat: number, kerf: number): number[] => {
  if (flat < kerf) return [];
  const settings = Math.ceil(flat / kerf / 2 - 1e-9);
  return Array.from({ length: settings }, (_, k) => (width - flat) / 2 + Math.min(k * kerf, flat - kerf));
};

/** The saw's settings for the groove in a block `width` wide. */
export const sawingOf = (groove: Groove, width: number, kerf: { width: number; assumed: boolean }): Sawing => {
  const h = groove.halfAngle;
  const k = kerf.width;
  const flatForTooth = Math.max(0, (k * Math.cos(2 * h)) / Math.cos(h));
  return {
    kerf: k, kerfAssumed: kerf.assumed, tilt: h, height: groove.depth,
    fence: (width - groove.width) / 2,
    flatFences: flatFences(width, groove.flat, k),
    flatForTooth,
    toothPast: groove.flat < flatForTooth ? k * Math.sin(h) : 0,
  };
};
