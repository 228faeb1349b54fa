/** Geometry that cannot be: thrown with a code and the figures, turned by a jig into a finding or an error at the field that caused it. */
export class GeometryError extends Error {
  override readonly name = 'GeometryError';
  constructor(
    /** kebab-case, stable: `offset-closes-up`. */
    readonly code: string,
    message: string,
    /** The figures by name, mm and radians. */
    readonly figures: Readonly<Record<string, number>>,
  ) {
    super(message);
  }
}
