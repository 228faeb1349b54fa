/** A blind hole is drilled this much deeper than the pin that goes into it, for glue and air, mm. Common practice. */
export const holeAllowance = 1.5;

/** A through hole is drilled on this much after it is open all round, mm. Common practice. */
export const throughAllowance = 3;

/** The way of a bit from the jaws to the end of its hole, mm along its axis. */
export interface BitWay {
  /** In a guide block or through waste that is cut away later; 0 without. */
  readonly guide?: number;
  /** Free between the guide and where the axis enters the wood; 0 without. */
  readonly standoff?: number;
  /** From where the axis enters the wood. The run on which a canted bit is not yet buried lies inside it and is not added. */
  readonly depth: number;
  /** Beyond the depth until a through hole is open all round and clear; 0 for a blind hole. */
  readonly overrun?: number;
}

/** Length of bit from the jaws to the corners of the lips, mm: guide, stand-off, depth and overrun, each once. Exact. */
export function reachToLips({ guide = 0, standoff = 0, depth, overrun = 0 }: BitWay): number {
  return guide + standoff + depth + overrun;
}

/** The same to the tip, the point's stand-out added, mm. Exact. */
export function reachToTip(way: BitWay, point: number): number {
  return reachToLips(way) + point;
}
