import type { Board } from './board.js';
import type { LegHole } from './hole.js';
import type { Recess } from './recess.js';
import type { Slot } from './slot.js';

/** The cutter that follows the template, mm. */
export interface Cutter {
  readonly diameter: number;
  readonly bushing: number | undefined;
  /** Length of its cutting edges, where the spec says it; and thickness of the sheet that templates are made of. */
  readonly length: number | undefined;
  readonly templateThickness: number;
  /** How far the template's edge stands from the finished one, into the wood: (bushing − cutter)/2; 0 for flush trim. */
  readonly offset: number;
}

/** The two pins of a one-slot template, mm. */
export interface IndexPins {
  readonly diameter: number;
  /** Given in the spec; else it follows from each slot's mouth. */
  readonly spacing: number | undefined;
  /** What a spacing that follows is rounded up to. */
  readonly step: number;
}

/** Loose spline of the joints, mm. */
export interface Spline {
  readonly thickness: number;
  /** Depth of the groove in each half; the spline is narrower than both together. */
  readonly groove: number;
  readonly margin: number;
}

/** The nearest pair of slots. */
export interface Land {
  readonly between: readonly [Slot, Slot];
  readonly width: number;
}

/** A rack top, solved: mm and radians; points on paper, seen from above. */
export interface RackTop {
  readonly board: Board;
  readonly slots: readonly Slot[];
  /** Whether all slots come from one row, whose fields a remedy can then name. */
  readonly oneRow: boolean;
  readonly holes: readonly LegHole[];
  readonly recesses: readonly Recess[];
  readonly cutter: Cutter;
  readonly pins: IndexPins;
  /** Stations of the joints, from the left end. */
  readonly splits: readonly number[];
  readonly spline: Spline;
  /** The narrowest land; undefined with fewer than two slots. */
  readonly land: Land | undefined;
}
