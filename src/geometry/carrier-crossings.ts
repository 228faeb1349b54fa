import { cross, dot, type Point } from './point.js';

/** What a straight run or an arc lies on: a line through `at` along `along`, or a circle. */
export type Carrier =
  | { readonly kind: 'line'; readonly at: Point; readonly along: Point }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number };

/** A square root that forgives what rounding takes below zero where two carriers just touch; NaN where they stay apart. */
const touchRoot = (square: number, size: number): number => (square < 0 && square > -1e-9 * size ? 0 : Math.sqrt(square));

const lineAndLine = (at: Point, along: Point, at2: Point, along2: Point): Point[] => {
  const turn = cross(along, along2);
  if (Math.abs(turn) < 1e-12 * Math.sqrt(dot(along, along) * dot(along2, along2))) return [];
  const t = cross({ x: at2.x - at.x, y: at2.y - at.y }, along2) / turn;
  return [{ x: at.x + along.x * t, y: at.y + along.y * t }];
};

const lineAndCircle = (at: Point, along: Point, centre: Point, radius: number): Point[] => {
  const square = dot(along, along);
  const t = ((centre.x - at.x) * along.x + (centre.y - at.y) * along.y) / square;
  const foot = { x: at.x + along.x * t, y: at.y + along.y * t };
  const away = dot({ x: foot.x - centre.x, y: foot.y - centre.y }, { x: foot.x - centre.x, y: foot.y - centre.y });
  const half = touchRoot(radius * radius - away, radius * radius) / Math.sqrt(square);
  return Number.isNaN(half) ? [] : [-half, half].map((k) => ({ x: foot.x + along.x * k, y: foot.y + along.y * k }));
};

const circleAndCircle = (c1: Point, r1: number, c2: Point, r2: number): Point[] => {
  const apart = Math.hypot(c2.x - c1.x, c2.y - c1.y);
  if (apart === 0) return [];
  const d = { x: (c2.x - c1.x) / apart, y: (c2.y - c1.y) / apart };
  const a = (apart * apart + (r1 - r2) * (r1 + r2)) / (2 * apart);
  const h = touchRoot((r1 - a) * (r1 + a), r1 * r1);
  return Number.isNaN(h) ? [] : [-h, h].map((k) => ({ x: c1.x + a * d.x - k * d.y, y: c1.y + a * d.y + k * d.x }));
};

/** The points common to two carriers, in closed form; none where they are the same, parallel or apart. */
export const carrierCrossings = (one: Carrier, other: Carrier): readonly Point[] => {
  if (one.kind === 'line') {
    return other.kind === 'line'
      ? lineAndLine(one.at, one.along, other.at, other.along)
      : lineAndCircle(one.at, one.along, other.centre, other.radius);
  }
  return other.kind === 'line'
    ? lineAndCircle(other.at, other.along, one.centre, one.radius)
    : circleAndCircle(one.centre, one.radius, other.centre, other.radius);
};
