import { pointLeadsLimit } from '../../geometry/bore.js';
import { farWall, holeShare, skin } from '../../shop/walls.js';
import { angleOf, diameterOf, lengthOf, ratioOf, words } from '../../units/quantity.js';
import { degrees } from '../../units/units.js';
import type { Context } from '../jig.js';
import { below, cureLength, remediesIn, type Report } from '../kit/report.js';
import { depthFor } from './hole.js';
import type { DrillGuideSolution } from './solve.js';

const about = { operation: 'drill' } as const;

const shareFinding = ({ work, drill, pairing }: DrillGuideSolution, { units }: Context): readonly Report[] => {
  if (work.kind === 'flat') return [];
  const share = drill / (2 * work.radius);
  if (share <= holeShare.sound) return [];
  const strong = share > holeShare.least;
  const most = remediesIn(units).atMost(2 * holeShare.sound * work.radius);
  return [{
    code: strong ? 'hole-over-half' : 'hole-large', severity: 'warn', measured: share, limit: strong ? holeShare.least : holeShare.sound, about,
    message: words`The hole takes ${ratioOf(share)} of the round’s diameter${strong ? ': less than half of it is left to carry' : ''}.`,
    remedy: words`A drill of up to ${diameterOf(most)}, or a thicker round.`, would: pairing === undefined ? [cureLength('drill', most)] : [],
  }];
};

/** The greatest offset that leaves a sound skin, and beside the end of a blind hole a sound wall. mm, exact. */
export function soundOffset(radius: number, drill: number, through: boolean): number {
  return radius - drill / 2 - (through ? skin.sound : Math.max(skin.sound, farWall.sound));
}

const skinFinding = ({ work, drill, hole, pairing }: DrillGuideSolution, { units }: Context): readonly Report[] => {
  if (work.kind === 'flat' || work.offset === 0 || hole.skin === undefined) return [];
  const left = hole.skin;
  const room = remediesIn(units).atMost(soundOffset(work.radius, drill, hole.through));
  return below(left, skin, (limit) => ({
    code: limit === skin.least ? 'skin-very-thin' : 'skin-thin', about,
    message: words`Beside the offset hole ${lengthOf(left)} of the round is left${limit === skin.least ? ', which splits' : ''}.`,
    remedy: room > 0 ? words`An offset of up to ${lengthOf(room)}, or a thinner drill.` : ['A thinner drill, or a thicker round.'],
    would: room > 0 && pairing === undefined ? [cureLength('offset', Math.sign(work.offset) * room)] : [],
  }));
};

const wallFinding = (s: DrillGuideSolution, { units }: Context): readonly Report[] => {
  const left = s.hole.farWall;
  if (left === undefined) return [];
  const sound = depthFor(farWall.sound, { work: s.work, angle: s.angle, radius: s.drill / 2, point: s.bit.point });
  const depth = sound === undefined ? 0 : remediesIn(units).atMost(sound);
  const shallower = depth >= 1 ? words`A depth of up to ${lengthOf(depth)}` : ['A thinner drill or a shorter point'];
  const out = left < 0;
  return below(left, farWall, (limit) => ({
    code: out ? 'breaks-through' : limit === farWall.least ? 'far-wall-very-thin' : 'far-wall-thin', about,
    message: out ? words`A hole ${lengthOf(s.hole.depth)} deep along the bit comes out on the far side by ${lengthOf(-left)}, point counted.`
      : words`Beyond the end of the hole ${lengthOf(left)} of wood is left, point and slant counted.`,
    remedy: out ? words`${shallower}; or leave depth out for a hole right through, with backing under it.` : words`${shallower}.`,
    would: depth >= 1 ? [cureLength('depth', depth)] : [],
  }));
};

const pointFinding = ({ angle, bit, drill }: DrillGuideSolution): readonly Report[] => {
  const tilt = Math.PI / 2 - angle;
  const limit = pointLeadsLimit(drill, bit.point);
  if (tilt < limit) return [];
  return [{
    code: 'point-does-not-lead', severity: 'note', measured: degrees(tilt), limit: degrees(limit), about,
    message: words`At ${angleOf(tilt)} off square a lip touches the work before the point: the point leads only below ${angleOf(limit)}.`,
    remedy: ['Let the block alone hold the bit until it is buried: clamp it well, start slowly; or start with a Forstner bit.'],
  }];
};

/** Web, skin, far wall and point of the hole itself. */
export const checkHole = (s: DrillGuideSolution, context: Context): readonly Report[] =>
  [...shareFinding(s, context), ...skinFinding(s, context), ...wallFinding(s, context), ...pointFinding(s)];
