import { EndType, inflatePathsD, JoinType, simplifyPathsD, type PathsD } from 'clipper2-ts';
import { GeometryError } from '../errors/geometry-error.js';
import { flattenPath } from './flatten-path.js';
import { minimumRadius } from './minimum-radius.js';
import { pathArea } from './path-area.js';
import type { Path } from './path.js';
import { reversePath } from './reverse-path.js';
import { polyline } from './shapes.js';

/** Chords of the outline and of the arcs about its corners keep within these, mm: together well within 10 µm. */
const CHORD = 0.002;
const CORNER = 0.002;
/** Decimals that clipper keeps of a millimetre. */
const DECIMALS = 5;

/** Refuses a bend of the outline tighter than the move: no round tool of that radius follows it. A sharp corner is no bend, it is cut off. */
const requireRoom = (path: Path, by: number): void => {
  const radii = minimumRadius(path);
  const inward = (by < 0 ? radii.clockwise : radii.anticlockwise).radius;
  if (inward > 0 && inward < Math.abs(by)) {
    throw new GeometryError('bend-tighter-than-offset', 'A bend of the outline is tighter than the offset.', { radius: inward, offset: Math.abs(by) });
  }
};

/** From so many corners on, an inward move goes in steps. */
const MANY = 1000;
/** In steps the arcs about corners keep within this of true, and corners within as much of the run between their neighbours are left out, mm: 10 µm with the chords. */
const FINE = 0.001;

const move = (parts: PathsD, by: number, corner: number): PathsD => inflatePathsD(parts, by, JoinType.Round, EndType.Polygon, 2, DECIMALS, corner);

/**
 * Inwards by an eighth, an eighth, a quarter, a half: the same as in one go, for a disc of the whole radius is the sum of those.
 * In one go the arcs about all the little bends of a long outline cross each other, and clipper's time goes with their square.
 */
const moveInSteps = (corners: PathsD, by: number): PathsD =>
  [1 / 8, 1 / 8, 1 / 4, 1 / 2].reduce<PathsD>((parts, share) => simplifyPathsD(move(parts, by * share, FINE), FINE, true), corners);

/** The parallel of a free-form closed outline as straight runs within 10 µm of the true one; see `offsetPath`. */
export const offsetFreeForm = (path: Path, by: number): Path => {
  if (!path.closed) throw new GeometryError('outline-open', 'Only a closed outline can be offset.', { offset: by });
  const area = pathArea(path);
  const clockwise = area > 0 ? path : reversePath(path);
  requireRoom(clockwise, by);
  const corners = flattenPath(clockwise, CHORD).map(({ x, y }) => ({ x, y }));
  const moved = by < 0 && corners.length > MANY ? moveInSteps([corners], by) : move([corners], by, CORNER);
  const [only] = moved;
  if (only === undefined || moved.length > 1) {
    throw new GeometryError('offset-closes-up', 'The offset outline closes up on itself.', { offset: by, parts: moved.length });
  }
  const outline = polyline(only.map(({ x, y }) => ({ x, y })), true);
  return pathArea(outline) > 0 === area > 0 ? outline : reversePath(outline);
};
