import { ownedBits, usualPoint } from '../../shop/bits.js';
import type { Context } from '../jig.js';
import type { DrillGuideFields } from './schema.js';

/** The bit reckoned with. */
export interface GuideBit {
  readonly usableLength?: number;
  readonly point: number;
  /** `assumed`: nobody gave the point's length. */
  readonly known: 'given' | 'owned' | 'assumed';
}

/** The bit of a spec: as given, else the longest owned of its diameter, else a point of common length. */
export const bitOf = (fields: DrillGuideFields, drill: number, { shop }: Context): GuideBit => {
  const [owned] = ownedBits(shop, drill);
  const usableLength = fields.bit.usableLength ?? owned?.usableLength;
  const point = fields.bit.point ?? owned?.point;
  return {
    ...(usableLength === undefined ? {} : { usableLength }),
    point: point ?? usualPoint,
    known: fields.bit.point !== undefined ? 'given' : owned ? 'owned' : 'assumed',
  };
};
