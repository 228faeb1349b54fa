/** A lining of the slot: how thick it is bought, and how thick it is once the item sits on it. mm. */
export interface Liner {
  readonly name: string;
  readonly thickness: number;
  readonly squeezed: number;
}

/** Linings by name, mm; common practice: felt gives about a third under load, leather and cork next to nothing. */
export const liners = {
  none: { name: 'none', thickness: 0, squeezed: 0 },
  leather: { name: 'leather', thickness: 1.6, squeezed: 1.6 },
  cork: { name: 'cork', thickness: 1.6, squeezed: 1.6 },
  'thick-cork': { name: 'thick-cork', thickness: 3.2, squeezed: 3.2 },
  felt: { name: 'felt', thickness: 2, squeezed: (2 * 2) / 3 },
} as const satisfies Record<string, Liner>;

/** A liner by its name. */
export type LinerName = keyof typeof liners;

/** The liners that may be named. */
export const linerNames = Object.keys(liners) as readonly LinerName[];

/** A lining from its name, or from a thickness in mm that is taken not to give. */
export const linerFrom = (given: string | number): Liner =>
  typeof given === 'number' ? { name: 'own', thickness: given, squeezed: given } : liners[given as LinerName];
