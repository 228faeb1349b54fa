/** A point or a vector in space, mm. */
export interface Vector3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A vector from its three coordinates. */
export const vector3 = (x: number, y: number, z: number): Vector3 => ({ x, y, z });

/** Sum of two vectors. */
export const add3 = (a: Vector3, b: Vector3): Vector3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });

/** The first less the second. */
export const subtract3 = (a: Vector3, b: Vector3): Vector3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });

/** A vector times a number. */
export const scale3 = (a: Vector3, k: number): Vector3 => ({ x: a.x * k, y: a.y * k, z: a.z * k });

/** Dot product. */
export const dot3 = (a: Vector3, b: Vector3): number => a.x * b.x + a.y * b.y + a.z * b.z;

/** Cross product, right-handed. */
export const cross3 = (a: Vector3, b: Vector3): Vector3 =>
  ({ x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x });

/** Length of a vector. */
export const length3 = (a: Vector3): number => Math.hypot(a.x, a.y, a.z);

/** Distance of two points. */
export const distance3 = (a: Vector3, b: Vector3): number => length3(subtract3(a, b));

/** The vector of length 1 in the direction of `a`; a vector of no length has none and throws RangeError. */
export const unit3 = (a: Vector3): Vector3 => {
  const length = length3(a);
  if (!(length > 0)) throw new RangeError('a vector of no length has no direction');
  return scale3(a, 1 / length);
};

/** The point a fraction `t` of the way from `a` to `b`. */
export const between3 = (a: Vector3, b: Vector3, t: number): Vector3 => add3(a, scale3(subtract3(b, a), t));
