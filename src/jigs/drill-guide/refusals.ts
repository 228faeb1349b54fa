import { isTooFlatToDrill, leastDrillAngle } from '../../shop/tools.js';
import { blockWall, holeShare } from '../../shop/walls.js';
import { angleOf, diameterOf, lengthOf, words } from '../../units/quantity.js';
import { degrees } from '../../units/units.js';
import type { Context } from '../jig.js';
import { cureAngle, cureLength, remediesIn, type Report } from '../kit/report.js';
import { leastBore, leastShortEnd, type Block } from './block.js';
import { soundOffset } from './check-hole.js';
import type { Task } from './pairing.js';
import { soundPart, type Sole } from './sole.js';
import type { Resultant } from './tilt.js';
import type { Work } from './work.js';

/** An excess this small, relative, is equality: half the geometry's own slack, so that rounding cannot fall between the two. */
const slack = 0.5e-12;

const atHole = { severity: 'stop', about: { operation: 'drill' } } as const;
const atBlock = { severity: 'stop', about: { operation: 'make-block' } } as const;

/** Rake and splay on a round are one angle and a turn of the round: tan = tan rake · cos splay, about the axis the splay itself. */
export const refuseTilts = (tilts: Resultant | undefined, work: Work): readonly Report[] => {
  if (tilts === undefined || work.kind === 'flat') return [];
  const along = Math.atan(Math.tan(tilts.rake) * Math.cos(tilts.splay));
  return [{
    ...atHole, code: 'tilts-on-a-round', measured: degrees(tilts.splay), limit: 0,
    message: ['Rake and splay are for flat work: on a round the splay is nothing but a turn of the round about its own axis.'],
    remedy: words`With the rake along the round: angle ${angleOf(Math.PI / 2 - Math.abs(along))}, and the round turned ${angleOf(Math.abs(tilts.splay))} in its cradle.`,
  }];
};

/** How a task is refused: its figures are the spec's own, or come from a saddle cope and are mended there. */
interface Asking {
  readonly context: Context;
  readonly paired: boolean;
}

/** A bit that would ride along a round and not enter it; radians. */
export const refuseAngle = ({ angle }: Pick<Task, 'angle'>, { paired }: Pick<Asking, 'paired'>): readonly Report[] => (!isTooFlatToDrill(angle) ? [] : [{
  ...atHole, code: 'angle-too-flat', measured: degrees(angle), limit: degrees(leastDrillAngle),
  message: words`At ${angleOf(angle)} to the axis of a round the bit rides along the surface and does not enter.`,
  remedy: words`An angle of ${angleOf(leastDrillAngle)} at least.`, would: paired ? [] : [cureAngle('angle', leastDrillAngle)],
}]);

const refuseReach = ({ drill, work, depth }: Task, { context, paired }: Asking): readonly Report[] => {
  if (work.kind === 'flat') return [];
  const reach = Math.abs(work.offset) + drill / 2;
  if (reach <= work.radius * (1 + slack)) return [];
  const { atMost } = remediesIn(context.units);
  const edge = atMost(work.radius - drill / 2);
  const offset = atMost(soundOffset(work.radius, drill, depth === undefined));
  return [{
    ...atHole, code: 'bit-runs-off', measured: reach, limit: work.radius,
    message: words`Offset and half the drill make ${lengthOf(reach)}; the round ends at ${lengthOf(work.radius)} from its axis.`,
    remedy: offset >= 0 ? words`An offset of up to ${lengthOf(offset)} either way; at ${lengthOf(edge)} the bit just runs along the side. Or a thinner drill.`
      : words`A drill of up to ${diameterOf(atMost(2 * holeShare.sound * work.radius))} on the round’s axis.`,
    would: paired || offset < 0 ? [] : [cureLength('offset', Math.sign(work.offset) * offset)],
  }];
};

const refuseSole = ({ work }: Task, sole: Sole, { units }: Context): readonly Report[] => {
  if (work.kind === 'flat') return [];
  const { atLeast, atMost } = remediesIn(units);
  if (sole.form === 'cove' && sole.depth > work.radius) {
    const most = atMost(work.radius);
    return [{
      ...atBlock, code: 'cove-too-deep', measured: sole.depth, limit: work.radius,
      message: words`A cove ${lengthOf(sole.depth)} deep closes in below the middle of the round and does not go over it.`,
      remedy: words`A depth of up to ${lengthOf(most)}; half of that seats soundly.`, would: [cureLength('groove.depth', most)],
    }];
  }
  if (sole.contact === undefined || sole.depth > sole.contact.depth) return [];
  const sound = atLeast(soundPart * sole.contact.depth);
  return [{
    ...atBlock, code: 'v-too-shallow', measured: sole.depth, limit: sole.contact.depth,
    message: words`A V ${lengthOf(sole.depth)} deep ends before it touches the round: the block would ride on the edges of the groove, higher than reckoned.`,
    remedy: words`A V ${lengthOf(sound)} deep seats soundly; deeper than ${lengthOf(sole.contact.depth)} it touches at all.`,
    would: [cureLength('groove.depth', sound)],
  }];
};

/** Why a hole cannot be drilled so, with the nearest that can. */
export const refuseTask = (task: Task, sole: Sole, asking: Asking): readonly Report[] =>
  (task.work.kind === 'flat' ? [] : [...refuseAngle(task, asking), ...refuseReach(task, asking), ...refuseSole(task, sole, asking.context)]);

const refuseWalls = (block: Block, { drill, work }: Task, { units }: Context): readonly Report[] => {
  if (block.wall > 0) return [];
  const { atLeast } = remediesIn(units);
  const offset = work.kind === 'round' ? Math.abs(work.offset) : 0;
  const [length, width] = [atLeast(drill + 2 * blockWall.sound), atLeast(2 * offset + drill + 2 * blockWall.sound)];
  const would = block.length < length && block.width < width ? [] : [block.length < length ? cureLength('block.length', length) : cureLength('block.width', width)];
  return [{
    ...atBlock, code: 'bore-breaks-block', measured: block.wall, limit: blockWall.sound, would,
    message: words`The bore of ${diameterOf(drill)} breaks out of the side of a block ${lengthOf(block.length)} long and ${lengthOf(block.width)} wide.`,
    remedy: words`At least ${lengthOf(length)} long and ${lengthOf(width)} wide.`,
  }];
};

/** Why a block of this size is no guide, with the nearest that is. */
export const refuseBlock = (block: Block, task: Task, sole: Sole, context: Context): readonly Report[] => {
  const { atLeast } = remediesIn(context.units);
  const height = atLeast(block.height + Math.max(leastShortEnd - block.shortEnd, leastBore(task.drill) - block.boreLength));
  const width = atLeast(2 * sole.mouth + 2 * blockWall.sound);
  return [
    ...refuseWalls(block, task, context),
    ...(Math.min(block.shortEnd, block.boreLength) > 0 ? [] : [{
      ...atBlock, code: 'block-too-low', measured: block.height, limit: block.height + Math.max(-block.shortEnd, -block.boreLength),
      message: words`At ${angleOf(task.angle)} the sole of a block ${lengthOf(block.length)} long runs out through its top.`,
      remedy: words`A block ${lengthOf(height)} high, or leave its height out.`, would: [cureLength('block.height', height)],
    }]),
    ...(2 * sole.mouth < block.width ? [] : [{
      ...atBlock, code: 'groove-wider-than-block', measured: 2 * sole.mouth, limit: block.width,
      message: words`The ${sole.form === 'v' ? 'V' : 'cove'} in the sole is ${lengthOf(2 * sole.mouth)} wide, the block ${lengthOf(block.width)}.`,
      remedy: words`A block at least ${lengthOf(width)} wide, or a shallower groove.`, would: [cureLength('block.width', width)],
    }]),
  ];
};
