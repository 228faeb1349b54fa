import type { SetUp } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { angleOf, lengthOf, words } from '../../units/quantity.js';
import { sawFigures, sawSteps, type Piece } from './saw-figures.js';
import { sawPicture } from './saw-picture.js';
import type { SetUpSource } from './set-ups.js';

/** The two tilted passes at the table saw and the upright ones for the flat, in the block or in the carrier. */
export function sawSetUp(piece: Piece, { solution: s, say, units, font }: SetUpSource): SetUp {
  const { carrier } = s;
  const isCarrier = piece.name === 'carrier' && carrier !== undefined;
  return {
    code: isCarrier ? 'saw-carrier-v' : 'saw-v', operation: isCarrier ? 'Saw the V of the carrier' : 'Saw the V',
    machine: 'Table saw; or the band saw or hand saw, to the end pattern',
    picture: sawPicture(piece, s.groove, { say, font }), pictureIs: 'not-to-scale',
    pictureNote: ['Seen along the fence. The wood lies face down; A and B are its two sides.'],
    numbers: [
      ...sawFigures(s, piece),
      ...(isCarrier ? [
        { code: 'middle-from-a', label: ['Groove’s middle from side A'], value: [lengthOf(carrier.seatSide)] },
        { code: 'own-end', label: ['Its own end, which stands at the fence, from square'], value: [angleOf(carrier.endCut)] },
      ] : []),
    ],
    tables: [],
    steps: [
      ...sawSteps(s, piece),
      ...(isCarrier ? [{
        code: 'own-end', words: words`When the groove is done, cut the carrier’s pattern out along the groove’s edges, glue both parts on, the blade’s line across side B, and saw the end along it, ${angleOf(carrier.endCut)} from square: it reaches furthest along side B, the blade’s, ${lengthOf(carrier.bladeSide / Math.tan(carrier.turn))} beyond the groove’s middle.`,
      }] : []),
    ],
    cautions: cautionsAt('saw-a-v', units),
  };
}
