/** One tilt from square to a face: how far, and towards where, radians. */
export interface Tilt {
  /** C, from the face's normal: tan C = √(tan²rake + tan²splay). */
  readonly resultant: number;
  /** Direction of the lean from the rake plane, atan2(tan splay, tan rake). */
  readonly sightLine: number;
}

/** Rake and splay, the slopes from square seen in side and front view, as one tilt. Exact. (Machinery's Handbook, 31st ed., p. 121, fig. 6.) */
export const resultantTilt = (rake: number, splay: number): Tilt => ({
  resultant: Math.atan(Math.hypot(Math.tan(rake), Math.tan(splay))),
  sightLine: Math.atan2(Math.tan(splay), Math.tan(rake)),
});

/** The rake and splay of a single tilt; the inverse of `resultantTilt`. Exact. */
export const rakeAndSplay = ({ resultant, sightLine }: Tilt): { readonly rake: number; readonly splay: number } => ({
  rake: Math.atan(Math.tan(resultant) * Math.cos(sightLine)),
  splay: Math.atan(Math.tan(resultant) * Math.sin(sightLine)),
});

/** What to set on a gimbal that is tilted by the rake first: atan(tan splay · cos rake), not the splay. Exact. */
export const gimballedSecondTilt = (rake: number, splay: number): number => Math.atan(Math.tan(splay) * Math.cos(rake));
