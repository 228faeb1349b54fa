import type { Cure } from '../../errors/finding.js';
import type { SaddleJoint } from '../../geometry/saddle.js';
import type { Round } from '../../spec/spec.js';
import { diameterOf, joinWords, lengthOf, words, type Words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { cureLength, remediesIn, type Report } from '../kit/report.js';
import type { SaddleCopeFields } from './schema.js';

/** Common practice: above this part of the main's radius the wings are thin. */
export const soundReach = 0.85;
/** No round is thinner, mm. */
const leastRound = 3;
/** The same slack as the geometry: an excess this small, relative, is equality. */
const slack = 1e-12;

/** The field that holds a round's diameter: its entry under `rounds`, or the field itself where the diameter is written there. */
export function diameterField(round: Round, field: string): string {
  return round.unnamed === true ? field : `rounds.${round.name}`;
}

interface End {
  readonly name: 'near' | 'far';
  readonly main: Round;
  readonly joint: SaddleJoint;
}

/** The part of the main's radius up to which wings are sound; 1 is where the cut just closes. */
const parts = { sound: soundReach, closes: 1 } as const;

/** Offset, branch and main that would do, printed so that each clears; undefined where none of that sort does. mm. */
const figuresFor = (part: number, { main, branch, offset }: SaddleJoint, { units }: Context) => {
  const { atLeast, atMost } = remediesIn(units);
  const beside = Math.abs(offset);
  const [room, thinner] = [atMost(part * main - branch), atMost(2 * (part * main - beside))];
  return { offset: room >= 0 ? room : undefined, branch: thinner >= leastRound ? thinner : undefined, main: atLeast((2 * (beside + branch)) / part) };
};

/** What would do: first with sound wings, then where the cut just closes. */
const remedyOf = ({ name, main, joint }: End, fields: SaddleCopeFields, context: Context): { remedy: Words; would: readonly Cure[] } => {
  const prefix = name === 'far' ? 'farEnd.' : '';
  const sound = figuresFor(parts.sound, joint, context);
  const closes = figuresFor(parts.closes, joint, context);
  const said = (f: typeof sound): Words => joinWords([
    ...(f.offset === undefined ? [] : [words`an offset of up to ${lengthOf(f.offset)} either way`]),
    ...(f.branch === undefined ? [] : [words`a branch of up to ${diameterOf(f.branch)}`]), words`a main of at least ${diameterOf(f.main)}`,
  ], ', or ');
  return {
    remedy: words`What would do: ${said(sound)}. It just closes, its wings feathered, with ${said(closes)}.`,
    would: [
      ...(sound.offset === undefined ? [] : [cureLength(`${prefix}offset`, Math.sign(joint.offset) * sound.offset)]),
      ...(sound.branch === undefined || pinTooThickFor(fields, sound.branch) ? [] : [cureLength(diameterField(fields.branch, 'branch'), sound.branch)]),
      cureLength(diameterField(main, `${prefix}main`), sound.main),
    ],
  };
};

/** Whether a pin of a written size is more than half of a branch: then a thinner branch alone does not do. */
export function pinTooThickFor({ pin }: Pick<SaddleCopeFields, 'pin'>, branch: number): boolean {
  return pin.diameter !== undefined && pin.diameter > branch / 2;
}

/** The reason why a branch cannot be cut all round on a main, with the nearest offset and diameter that can; empty where it can. */
export const reachRefusals = (end: End, fields: SaddleCopeFields, context: Context): readonly Report[] => {
  const { main, branch, offset } = end.joint;
  const reach = Math.abs(offset) + branch;
  const excess = reach - main;
  if (excess <= slack * main) return [];
  const where = fields.farEnd === undefined ? '' : ` at the ${end.name} end`;
  const tight = excess <= 0.2 ? ` That is ${excess.toFixed(2)} mm over: measure both again with a calliper.` : '';
  return [{
    code: 'branch-overhangs-main', severity: 'stop', measured: reach, limit: main, about: { operation: 'hollow', end: end.name, round: fields.branch.name },
    message: words`The branch reaches ${lengthOf(reach)} from the main’s axis${where} (offset ${lengthOf(Math.abs(offset))} + half of ${diameterOf(2 * branch)}), past the main’s radius of ${lengthOf(main)}: it does not sit on the main all round.${tight}`,
    ...remedyOf(end, fields, context),
  }];
};
