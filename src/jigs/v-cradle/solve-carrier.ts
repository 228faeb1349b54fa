import { leastCarrierTurn, longestCarrier } from '../../shop/tools.js';
import type { Round } from '../../spec/spec.js';
import { angleOf, diameterOf, lengthOf, words } from '../../units/quantity.js';
import { angleRoundedDown } from '../../units/round-safe.js';
import { degrees } from '../../units/units.js';
import type { Context } from '../jig.js';
import { cureAngle, type Report } from '../kit/report.js';
import type { SaddleCopeSolution } from '../saddle-cope/solve.js';
import { type Carrier, carrierOf, type CarrierRequest } from './carrier.js';
import type { Groove } from './held-round.js';
import { leastTurn } from './limits.js';
import type { CarrierFields, VCradleFields } from './schema.js';

type Refused = { readonly refused: readonly Report[] };

const stop = { severity: 'stop', about: { operation: 'carrier' } } as const;

/** Sharp angle, round, toe and twist from a saddle cope: the carrier makes its first cut. */
const fromCope = (fields: CarrierFields & { readonly from: string }, context: Context): CarrierRequest | Refused => {
  const { from, end: name } = fields;
  const saddle = context.jig({ name: from, field: 'carrier.from', kind: 'saddle-cope' }) as SaddleCopeSolution | undefined;
  if (saddle === undefined) {
    return { refused: [{ ...stop, code: 'pair-refused', measured: 0, limit: 1, message: [`The saddle-cope ${from} is refused, so there is no cut to make.`], remedy: ['Mend that one first.'] }] };
  }
  const end = saddle[name];
  if (end === undefined) {
    return context.mistaken('carrier.end', { code: 'pair-has-no-far-end', message: 'names an end that the saddle-cope has not', got: name, allowed: 'near; or give that jig a farEnd' });
  }
  return {
    sawReading: fields.sawReading, length: fields.length, width: fields.width, sharpAngle: end.joint.angle, round: saddle.branch,
    // The other end's turn against this one is the same seen from either: the sense turns with the reader.
    twist: saddle.far?.twist, pair: { jig: from, end: name, toeBeyondHorn: end.firstCut.toeBeyondHorn },
  };
};

const requestOf = (fields: CarrierFields, thickest: Round, context: Context): CarrierRequest | Refused => {
  const { from, sharpAngle } = fields;
  if (from !== undefined) return fromCope({ ...fields, from }, context);
  return { ...fields, round: fields.round ?? thickest, sharpAngle: sharpAngle! };
};

/** Sharp angle and reading that leave the carrier no turn, or turn it towards the maker. */
const refuseTurn = ({ sharpAngle, sawReading }: CarrierRequest): readonly Report[] => {
  const plain = Math.PI / 2 - sharpAngle;
  const turn = plain - sawReading;
  if (turn > leastCarrierTurn) return [];
  const reading = angleRoundedDown(plain - leastTurn);
  const lower = reading > 0 ? words` Or set sawReading to at most ${angleOf(reading)}: the carrier’s turn makes up the rest.` : [];
  const shared = { ...stop, measured: degrees(sawReading), limit: degrees(plain - leastCarrierTurn), would: reading > 0 ? [cureAngle('carrier.sawReading', reading)] : [] };
  if (turn >= -leastCarrierTurn) {
    return [{
      ...shared, code: 'no-carrier-needed',
      message: words`Sharp angle ${angleOf(sharpAngle)} and reading ${angleOf(sawReading)} make about 90°: the round lies along the fence, and no carrier is needed.`,
      remedy: words`Clamp the round in a V along the fence and set the saw to ${angleOf(plain)} from square.${lower}`,
    }];
  }
  return [{
    ...shared, code: 'reading-past-angle',
    message: words`With the saw at ${angleOf(sawReading)} a round lying along the fence is cut at ${angleOf(Math.PI / 2 - sawReading)} to its axis: for ${angleOf(sharpAngle)} the carrier would have to point at the maker, off the fence.`,
    remedy: words`Without a carrier: the round along the fence, the saw at ${angleOf(plain)} from square.${lower}`,
  }];
};

const refuseRound = ({ round, pair }: CarrierRequest, rounds: readonly Round[]): readonly Report[] => {
  if (rounds.some((r) => r.name === round.name && r.diameter === round.diameter)) return [];
  return [{
    ...stop, code: 'carrier-round-not-held', measured: round.diameter, limit: rounds[0]!.diameter,
    message: words`The carrier is to hold ${round.name} (${diameterOf(round.diameter)})${pair === undefined ? '' : `, the branch of ${pair.jig}`}, which is not among the rounds that the groove is made for.`,
    remedy: [`Add ${round.name} to holds${pair === undefined ? `, or name one of ${rounds.map((r) => r.name).join(', ')}` : ''}.`],
  }];
};

const refuseLength = (c: Carrier): readonly Report[] => (c.blankLength <= longestCarrier ? [] : [{
  ...stop, code: 'carrier-too-long', measured: c.blankLength, limit: longestCarrier,
  message: words`At ${angleOf(c.sharpAngle)} the carrier takes a blank ${lengthOf(c.blankLength)} long, so that hands keep off the blade: longer than a bench, ${lengthOf(longestCarrier)}.`,
  remedy: ['Saw this cut by hand in the V to the line; or a less sharp cut.'],
}]);

/** The carrier that a spec asks for, none where it asks for none, or why it cannot be. */
export const solveCarrier = (
  { carrier }: VCradleFields, rounds: readonly Round[], groove: Groove, context: Context,
): { readonly carrier?: Carrier } | Refused => {
  if (carrier === undefined) return {};
  const request = requestOf(carrier, rounds[0]!, context);
  if ('refused' in request) return request;
  const refused = [...refuseTurn(request), ...refuseRound(request, rounds)];
  if (refused.length > 0) return { refused };
  const solved = carrierOf(request, groove.width, context.units);
  const long = refuseLength(solved);
  return long.length > 0 ? { refused: long } : { carrier: solved };
};
