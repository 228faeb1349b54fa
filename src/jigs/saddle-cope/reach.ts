import type { Finding } from '../../errors/finding.js';
import type { SaddleJoint } from '../../geometry/saddle.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import type { SaddleCopeFields } from './schema.js';

/** The same slack as the geometry: an excess this small, relative, is equality. */
const slack = 1e-12;

/** The reason why a branch cannot be cut all round on a main, with the nearest offset and diameter that can; empty where it can. */
export const reachRefusals = (
  end: { readonly name: string; readonly joint: SaddleJoint },
  fields: SaddleCopeFields,
  { name, units }: Context,
): readonly Finding[] => {
  const { main, branch, offset } = end.joint;
  const reach = Math.abs(offset) + branch;
  const excess = reach - main;
  if (excess <= slack * main) return [];
  const label = (mm: number): string => lengthLabel(mm, units);
  const where = fields.farEnd === undefined ? '' : ` at the ${end.name} end`;
  const tight = excess <= 0.2 ? ` That is ${excess.toFixed(2)} mm over: measure both again with a calliper.` : '';
  const room = main - Math.abs(offset);
  const nearest = branch <= main
    ? `an offset of up to ${label(main - branch)} either way${room < 1.5 ? '' : `, or a branch of up to ${label(2 * room)}`}`
    : `a branch of up to ${label(2 * main)}, or a main of at least ${label(2 * reach)}`;
  return [{
    jig: name, code: 'branch-overhangs-main', severity: 'stop', measured: reach, limit: main,
    message: `The branch reaches ${label(reach)} from the main's axis${where} (offset ${label(Math.abs(offset))} + half of Ø ${label(2 * branch)}), `
      + `past the main's radius of ${label(main)}: it does not sit on the main all round.${tight}`,
    remedy: `What would do: ${nearest}.`,
  }];
};
