import { offsetFreeForm } from './offset-free-form.js';
import { offsetArcOutline } from './offset-arc-outline.js';
import { isCircular } from './length.js';
import type { Path } from './path.js';

/** Whether a path is made of straight runs and circular arcs alone. */
export const isArcOutline = (path: Path): boolean =>
  path.segments.every((segment) => segment.kind === 'line' || (segment.kind === 'arc' && isCircular(segment)));

/**
 * A closed outline moved square to itself by `by` mm, outwards where positive, inwards where negative; outer corners of the
 * move become arcs about the corner, as a round cutter or bushing leaves them. Outlines of lines and circular arcs keep
 * them, exact; others (ellipses, cubics) come as straight runs within 10 µm of the true parallel. Throws GeometryError where a
 * bend is tighter than the move, or where the moved outline closes up on itself.
 */
export const offsetPath = (path: Path, by: number): Path =>
  isArcOutline(path) ? offsetArcOutline(path, by) : offsetFreeForm(path, by);
