/** A point or a vector of the drawing plane: mm, x right, y down (as SVG and as the page is read). */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The point (x, y), mm. */
export const point = (x: number, y: number): Point => ({ x, y });

/** Sum of two vectors. */
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });

/** The first less the second. */
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/** A vector times a number. */
export const scale = (a: Point, k: number): Point => ({ x: a.x * k, y: a.y * k });

/** Dot product. */
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** z component of a × b; positive when b lies clockwise of a as seen on the page (y down). */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;

/** Distance of two points. */
export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

/** The point a fraction `t` of the way from `a` to `b`. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** The unit vector at `angle` radians from +x towards +y (clockwise on the page). */
export const polar = (angle: number, length = 1): Point => ({ x: length * Math.cos(angle), y: length * Math.sin(angle) });
