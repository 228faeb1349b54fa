import { nearestBit, ownedBits } from '../../shop/bits.js';
import { diameterOf, lengthOf, words, type Words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import type { Concern, Report } from './report.js';
import { remediesIn } from './report.js';

/** A bit that a hole asks for. mm. */
export interface BitAsked {
  readonly diameter: number;
  /** From the jaws to the corners of the lips: `reachToLips` of the shop. */
  readonly reach: number;
  readonly about: Concern;
  /** What it drills, to end the sentence: `for hole 1 (post)`; empty where the sheet says it. */
  readonly forWhat: Words;
  /** How to drill it all the same with too short a bit; empty where there is no way. */
  readonly otherwise: Words;
}

/** Whether the shop has a bit of the diameter, and one that reaches; nothing where it lists no bits. */
export function checkBit({ diameter, reach, about, forWhat, otherwise }: BitAsked, { shop, units }: Pick<Context, 'shop' | 'units'>): readonly Report[] {
  if (shop.bits === undefined) return [];
  const needed = lengthOf(remediesIn(units).atLeast(reach));
  const space = forWhat.length === 0 ? '' : ' ';
  const [longest] = ownedBits(shop, diameter);
  if (longest === undefined) {
    const near = nearestBit(shop, diameter);
    return [{
      code: 'bit-not-owned', severity: 'warn', measured: diameter, limit: near ?? 0, about,
      message: words`no bit of ${diameterOf(diameter)} is among the shop’s bits${space}${forWhat}.`,
      remedy: words`A bit of that diameter that reaches ${needed} from the jaws to its lips${near === undefined ? '' : words`; the nearest owned is ${diameterOf(near)}`}.`,
    }];
  }
  if (longest.usableLength >= reach - 1e-9) return [];
  return [{
    code: 'bit-too-short', severity: 'warn', measured: longest.usableLength, limit: reach, about,
    message: words`the shop’s bit of ${diameterOf(diameter)}${space}${forWhat} reaches ${lengthOf(longest.usableLength)} from the jaws to its lips; ${lengthOf(reach)} are needed.`,
    remedy: words`A bit that reaches ${needed}${otherwise.length === 0 ? '' : '; or '}${otherwise}.`,
  }];
}
