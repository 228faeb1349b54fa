import { GeometryError } from '../../errors/geometry-error.js';
import { boxHeight, boxWidth } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { flattenPath } from '../../geometry/flatten-path.js';
import { offsetFreeForm } from '../../geometry/offset-free-form.js';
import { isArcOutline, offsetPath } from '../../geometry/offset-path.js';
import type { Path } from '../../geometry/path.js';
import { pathsFromSvg } from '../../geometry/path-from-svg.js';
import type { Point } from '../../geometry/point.js';
import { polyline } from '../../geometry/shapes.js';
import { after, scaling, transformPath, translation } from '../../geometry/transform.js';
import type { Cutter } from './rack-top.js';
import { radiusToSpare } from '../../shop/router.js';
import { disc, roundedBox, tightestInside } from './recess.js';
import type { RecessFields } from './schema.js';

/** A recess's shape about the origin before it is turned and placed, mm. */
export interface RecessShape {
  readonly outline: Path;
  readonly width: number;
  readonly height: number;
  readonly insideRadius: number;
  readonly tightestAt: Point | undefined;
  readonly reached: Path | undefined;
  readonly template: Path | undefined;
}

const circleShape = (diameter: number, { offset }: Cutter): RecessShape => ({
  outline: disc(diameter), width: diameter, height: diameter, insideRadius: diameter / 2, tightestAt: undefined,
  reached: undefined, template: offset > 0 ? disc(diameter + 2 * offset) : undefined,
});

const boxShape = (box: NonNullable<RecessFields['box']>, cutter: Cutter): RecessShape => {
  const { width, height, radius: given = cutter.diameter / 2 + radiusToSpare } = box;
  const radius = Math.min(given, width / 2, height / 2);
  const cut = Math.max(radius, cutter.diameter / 2);
  const o = cutter.offset;
  return {
    outline: roundedBox(width, height, radius), width, height, insideRadius: radius, tightestAt: undefined,
    reached: cut > radius ? roundedBox(width, height, cut) : undefined,
    template: o > 0 ? roundedBox(width + 2 * o, height + 2 * o, cut + o) : undefined,
  };
};

/** The one closed outline of path data that `outlineIssue` has passed, its middle at the origin, `size` wide. Arcs stay arcs. Throws GeometryError where there is none such. */
export const scaledOutline = (data: string, size: number): Path => {
  const [path, ...others] = pathsFromSvg(data);
  if (path === undefined || others.length > 0) throw new GeometryError('path-not-one-outline', `The path data holds ${others.length + (path ? 1 : 0)} outlines, not one.`, {});
  const box = pathBounds({ ...path, closed: true });
  const k = size / boxWidth(box);
  if (!(boxWidth(box) > 0 && boxHeight(box) > 0)) throw new GeometryError('path-encloses-nothing', 'The path data encloses nothing.', {});
  const middle = translation(-(box.x0 + box.x1) / 2, -(box.y0 + box.y1) / 2);
  return transformPath(after(middle, scaling(k, k)), { ...path, closed: true });
};

/** What a cutter of this radius leaves of an outline: inwards by the radius and out again, as straight runs within 10 µm. */
const reachedBy = (outline: Path, radius: number): Path =>
  offsetFreeForm(offsetFreeForm(polyline(flattenPath(outline, 0.002), true), -radius), radius);

const pathShape = (data: string, size: number, cutter: Cutter): RecessShape => {
  const outline = scaledOutline(data, size);
  const box = pathBounds(outline);
  const { radius: inside, at } = tightestInside(outline);
  const reached = inside < cutter.diameter / 2 - 1e-9 ? reachedBy(outline, cutter.diameter / 2) : undefined;
  const outwards = (path: Path): Path => (isArcOutline(outline) && reached === undefined ? offsetPath(path, cutter.offset) : offsetFreeForm(path, cutter.offset));
  return {
    outline, width: boxWidth(box), height: boxHeight(box), insideRadius: inside, tightestAt: at, reached,
    template: cutter.offset > 0 ? outwards(reached ?? outline) : undefined,
  };
};

/** The shape of a recess from its fields, of which exactly one says it. Throws GeometryError where path data give none, or where the cutter does not pass. */
export const recessShape = ({ path, circle, box, size }: RecessFields, cutter: Cutter): RecessShape => {
  if (circle !== undefined) return circleShape(circle, cutter);
  if (box !== undefined) return boxShape(box, cutter);
  return pathShape(path ?? '', size ?? 0, cutter);
};
