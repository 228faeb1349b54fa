import { pointLeadsLimit } from '../../geometry/bore.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees } from '../../units/units.js';
import type { Context, Report } from '../jig.js';
import { depthLeaving } from './hole.js';
import type { DrillGuideSolution } from './solve.js';

/** Common practice: hole against round, skin beside an offset hole, wood beyond a blind one; each a limit and a strong one; mm. */
const shareLimits = [0.4, 0.5] as const;
const skinLimits = [5, 3] as const;
const wallLimits = [6, 4] as const;

const shareFinding = ({ work, drill }: DrillGuideSolution, label: (mm: number) => string): readonly Report[] => {
  if (work.kind === 'flat') return [];
  const share = drill / (2 * work.radius);
  if (share <= shareLimits[0]) return [];
  const strong = share > shareLimits[1];
  return [{
    code: strong ? 'hole-over-half' : 'hole-large', severity: 'warn', measured: share, limit: shareLimits[strong ? 1 : 0],
    message: `The hole takes ${share.toFixed(2)} of the round's diameter${strong ? ': less than half of it is left to carry' : ''}.`,
    remedy: `A drill of up to ${label(2 * shareLimits[0] * work.radius)}, or a thicker round.`,
  }];
};

const skinFinding = ({ work, drill, hole }: DrillGuideSolution, label: (mm: number) => string): readonly Report[] => {
  if (work.kind === 'flat' || work.offset === 0 || hole.skin === undefined || hole.skin >= skinLimits[0]) return [];
  const strong = hole.skin < skinLimits[1];
  const room = work.radius - drill / 2 - skinLimits[0];
  return [{
    code: strong ? 'skin-very-thin' : 'skin-thin', severity: 'warn', measured: hole.skin, limit: skinLimits[strong ? 1 : 0],
    message: `Beside the offset hole ${label(hole.skin)} of the round is left${strong ? ', which splits' : ''}.`,
    remedy: room > 0 ? `An offset of up to ${label(room)}, or a thinner drill.` : 'A thinner drill, or a thicker round.',
  }];
};

const wallFinding = (s: DrillGuideSolution, label: (mm: number) => string): readonly Report[] => {
  const { farWall } = s.hole;
  if (farWall === undefined || farWall >= wallLimits[0]) return [];
  const strong = farWall < wallLimits[1];
  const most = depthLeaving(wallLimits[0], { work: s.work, angle: s.angle, radius: s.drill / 2, point: s.bit.point });
  const shallower = most === undefined || most <= 0 ? 'A thinner drill or a shorter point' : `A depth of up to ${label(most)}`;
  const severity = 'warn' as const;
  if (farWall < 0) {
    return [{
      code: 'breaks-through', severity, measured: farWall, limit: wallLimits[0],
      message: `A hole ${label(s.hole.depth)} deep along the bit comes out on the far side by ${label(-farWall)}, point counted.`,
      remedy: `${shallower}; or leave depth out for a hole right through, with backing under it.`,
    }];
  }
  return [{
    code: strong ? 'far-wall-very-thin' : 'far-wall-thin', severity, measured: farWall, limit: wallLimits[strong ? 1 : 0],
    message: `Beyond the end of the hole ${label(farWall)} of wood is left, point and slant counted.`,
    remedy: `${shallower}.`,
  }];
};

const pointFinding = ({ angle, bit, drill }: DrillGuideSolution): readonly Report[] => {
  const tilt = Math.PI / 2 - angle;
  const limit = pointLeadsLimit(drill, bit.point);
  if (tilt < limit) return [];
  return [{
    code: 'point-does-not-lead', severity: 'note', measured: degrees(tilt), limit: degrees(limit),
    message: `At ${angleLabel(tilt)} off square a lip touches the work before the point: the point leads only below ${angleLabel(limit)}.`,
    remedy: 'Let the block alone hold the bit until it is buried: clamp it well, start slowly; or start with a Forstner bit.',
  }];
};

/** Web, skin, far wall and point of the hole itself. */
export const checkHole = (s: DrillGuideSolution, { units }: Context): readonly Report[] => {
  const label = (mm: number): string => lengthLabel(mm, units);
  return [...shareFinding(s, label), ...skinFinding(s, label), ...wallFinding(s, label), ...pointFinding(s)];
};
