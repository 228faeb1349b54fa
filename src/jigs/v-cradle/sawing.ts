import type { Groove } from './held-round.js';

/** A figure for the pass with side A of the block to the fence, and for the one with side B. */
export interface BySide {
  readonly a: number;
  readonly b: number;
}

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
  readonly fence: BySide;
  /** Upright passes for the flat: none for a sharp V or a flat narrower than the kerf. */
  readonly flatFences: readonly BySide[];
  /** Whether the two tilted cuts meet, so that the strip between them comes free: flat ≤ 2·kerf·cos h. */
  readonly freesInPass2: boolean;
  /** How high above the flat a square tooth scores the opposite flank; 0 where it does not. */
  readonly toothPast: number;
  /** Least flat at which it does not: kerf·cos 2h / cos h. */
  readonly flatForTooth: number;
}

/** Fence distances of the upright passes; each setting is cut with either side to the fence, walking in by a kerf at most. */
const flatFences = (sides: BySide, flat: number, kerf: number): BySide[] => {
  if (flat < kerf) return [];
  const settings = Math.ceil(flat / kerf / 2 - 1e-9);
  return Array.from({ length: settings }, (_, k) => {
    const walk = Math.min(k * kerf, flat - kerf) - flat / 2;
    return { a: sides.a + walk, b: sides.b + walk };
  });
};

/** The saw's settings for the groove; `sides` are the distances from its middle to the two sides of the block. */
export const sawingOf = (groove: Groove, sides: BySide, kerf: { width: number; assumed: boolean }): Sawing => {
  const h = groove.halfAngle;
  const k = kerf.width;
  const flatForTooth = Math.max(0, (k * Math.cos(2 * h)) / Math.cos(h));
  return {
    kerf: k, kerfAssumed: kerf.assumed, tilt: h, height: groove.depth,
    fence: { a: sides.a - groove.width / 2, b: sides.b - groove.width / 2 },
    flatFences: flatFences(sides, groove.flat, k),
    flatForTooth,
    freesInPass2: groove.flat <= 2 * k * Math.cos(h) + 1e-9,
    // 1e-9: at 45° the tooth's top lies along the other flank, whatever cos 90° comes out as.
    toothPast: groove.flat < flatForTooth - 1e-9 ? k * Math.sin(h) : 0,
  };
};
