/**
 * The turn at which lettering along a line reads from the bottom or from the right of the page (ISO 129-1), in
 * −π/2 … π/2, upright lines reading upwards; a line that would stand on its head is taken the other way round.
 */
export const readableTurn = (heading: number): number => {
  const turn = heading - 2 * Math.PI * Math.round(heading / (2 * Math.PI));
  const edge = Math.PI / 2 - 1e-9;
  if (turn >= edge) return turn - Math.PI;
  if (turn < -edge - 2e-9) return turn + Math.PI;
  return turn;
};

/** Clear distance from a line up to the base line of lettering above it, mm, so that tails of g and ( stay off the line. */
export const clearance = (height: number): number => 0.32 * height + 0.45;
