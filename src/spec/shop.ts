/** What the shop has; every part may be absent, and then nothing is checked against it. mm, radians. */
export interface Shop {
  readonly saw?: {
    /** Furthest the saw's own gauge turns from square. */
    readonly maxReading?: number;
    /** Furthest the blade tilts from upright. */
    readonly maxTilt?: number;
    /** Depth of cut with the blade upright. */
    readonly maxDepth?: number;
    readonly kerf?: number;
    /** How far across the table from the fence a mitre or sliding saw cuts. */
    readonly reach?: number;
  };
  readonly drillPress?: {
    readonly stroke?: number;
    readonly maxTableTilt?: number;
    /** Quill centre to column. */
    readonly throat?: number;
  };
  readonly router?: { readonly maxBitDiameter?: number };
  readonly bits?: readonly Bit[];
  readonly formRadii?: readonly number[];
}

/** A drill bit owned. */
export interface Bit {
  readonly diameter: number;
  /** From the chuck jaws to the corners of the lips. */
  readonly usableLength: number;
  /** How far the point stands out beyond the lips. */
  readonly point: number;
}
