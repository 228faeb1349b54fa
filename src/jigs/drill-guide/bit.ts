import type { Bit } from '../../spec/shop.js';
import type { Context } from '../jig.js';
import type { DrillGuideFields } from './schema.js';

/** The bit reckoned with. */
export interface GuideBit {
  readonly usableLength?: number;
  readonly point: number;
  /** `assumed`: nobody gave the point's length. */
  readonly known: 'given' | 'owned' | 'assumed';
}

/** A centre point of brad-point and spur bits stands out about this far: common practice, mm. */
const usualPoint = 3;
/** Bits of one size to within this are the same size, mm. */
const sameSize = 0.05;

/** The owned bits of a diameter, longest first. */
export const ownedBits = (drill: number, { shop }: Context): readonly Bit[] =>
  (shop.bits ?? []).filter((b) => Math.abs(b.diameter - drill) < sameSize).sort((a, b) => b.usableLength - a.usableLength);

/** The bit of a spec: as given, else the longest owned of its diameter, else a point of common length. */
export const bitOf = (fields: DrillGuideFields, drill: number, context: Context): GuideBit => {
  const [owned] = ownedBits(drill, context);
  const usableLength = fields.bit.usableLength ?? owned?.usableLength;
  const point = fields.bit.point ?? owned?.point;
  return {
    ...(usableLength === undefined ? {} : { usableLength }),
    point: point ?? usualPoint,
    known: fields.bit.point !== undefined ? 'given' : owned ? 'owned' : 'assumed',
  };
};
