import type { Finding } from '../../errors/finding.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees, radians } from '../../units/units.js';
import type { Context } from '../jig.js';
import type { Block } from './block.js';
import type { Task } from './pairing.js';
import type { Sole } from './sole.js';
import type { Resultant } from './tilt.js';
import type { Work } from './work.js';

/** On a round: below this the bit rides along the surface and the block is longer than any bit. */
export const leastAngleOnRound = radians(15);
/** An excess this small, relative, is equality: half the geometry's own slack, so that rounding cannot fall between the two. */
const slack = 0.5e-12;

const stop = (jig: string, finding: Omit<Finding, 'jig' | 'severity'>): Finding => ({ jig, severity: 'stop', ...finding });

/** Rake and splay on a round are one angle and a turn of the round: tan = tan rake · cos splay, about the axis the splay itself. */
export const refuseTilts = (tilts: Resultant | undefined, work: Work, { name }: Context): readonly Finding[] => {
  if (tilts === undefined || work.kind === 'flat') return [];
  const along = Math.atan(Math.tan(tilts.rake) * Math.cos(tilts.splay));
  return [stop(name, {
    code: 'tilts-on-a-round', measured: degrees(tilts.splay), limit: 0,
    message: 'Rake and splay are for flat work: on a round the splay is nothing but a turn of the round about its own axis.',
    remedy: `With the rake along the round: angle ${angleLabel(Math.PI / 2 - Math.abs(along))}, and the round turned ${angleLabel(Math.abs(tilts.splay))} in its cradle.`,
  })];
};

/** Why a hole cannot be drilled so, with the nearest that can. */
export const refuseTask = ({ drill, angle, work }: Task, sole: Sole, { name, units }: Context): readonly Finding[] => {
  if (work.kind === 'flat') return [];
  const label = (mm: number): string => lengthLabel(mm, units);
  const reach = Math.abs(work.offset) + drill / 2;
  const room = work.radius - drill / 2;
  return [
    ...(angle >= leastAngleOnRound - 1e-12 ? [] : [stop(name, {
      code: 'angle-too-flat', measured: degrees(angle), limit: degrees(leastAngleOnRound),
      message: `At ${angleLabel(angle)} to the axis of a round the bit rides along the surface and does not enter.`,
      remedy: `An angle of ${angleLabel(leastAngleOnRound)} at least.`,
    })]),
    ...(reach <= work.radius * (1 + slack) ? [] : [stop(name, {
      code: 'bit-runs-off', measured: reach, limit: work.radius,
      message: `Offset and half the drill make ${label(reach)}; the round ends at ${label(work.radius)} from its axis.`,
      remedy: room >= 0 ? `An offset of up to ${label(room)} either way, or a drill of up to ${label(Math.max(0, 2 * (work.radius - Math.abs(work.offset))))}.`
        : `A drill of up to ${label(2 * work.radius)}.`,
    })]),
    ...(sole.form !== 'cove' || sole.depth <= work.radius ? [] : [stop(name, {
      code: 'cove-too-deep', measured: sole.depth, limit: work.radius,
      message: `A cove ${label(sole.depth)} deep closes in below the middle of the round and does not go over it.`,
      remedy: `A depth of up to ${label(work.radius)}; half of that seats soundly.`,
    })]),
    ...(sole.contact === undefined || sole.depth > sole.contact.depth ? [] : [stop(name, {
      code: 'v-too-shallow', measured: sole.depth, limit: sole.contact.depth,
      message: `A V ${label(sole.depth)} deep ends before it touches the round: the block would ride on the edges of the groove, higher than reckoned.`,
      remedy: `A V deeper than ${label(sole.contact.depth)}; ${label(1.257 * sole.contact.depth)} seats soundly.`,
    })]),
  ];
};

/** Why a block of this size is no guide, with the nearest that is. */
export const refuseBlock = (block: Block, { drill, angle, work }: Task, sole: Sole, { name, units }: Context): readonly Finding[] => {
  const label = (mm: number): string => lengthLabel(mm, units);
  const offset = work.kind === 'round' ? Math.abs(work.offset) : 0;
  const leastHeight = block.height + Math.max(-block.shortEnd, -block.boreLength);
  return [
    ...(block.wall > 0 ? [] : [stop(name, {
      code: 'bore-breaks-block', measured: block.wall, limit: 6,
      message: `The bore of ${label(drill)} breaks out of the side of a block ${label(block.length)} long and ${label(block.width)} wide.`,
      remedy: `At least ${label(drill + 12)} long and ${label(2 * offset + drill + 12)} wide.`,
    })]),
    ...(Math.min(block.shortEnd, block.boreLength) > 0 ? [] : [stop(name, {
      code: 'block-too-low', measured: block.height, limit: leastHeight,
      message: `At ${angleLabel(angle)} the sole of a block ${label(block.length)} long runs out through its top.`,
      remedy: `A block higher than ${label(leastHeight)}, or leave its height out.`,
    })]),
    ...(2 * sole.mouth < block.width ? [] : [stop(name, {
      code: 'groove-wider-than-block', measured: 2 * sole.mouth, limit: block.width,
      message: `The ${sole.form === 'v' ? 'V' : 'cove'} in the sole is ${label(2 * sole.mouth)} wide, the block ${label(block.width)}.`,
      remedy: `A block at least ${label(2 * sole.mouth + 12)} wide, or a shallower groove.`,
    })]),
  ];
};
