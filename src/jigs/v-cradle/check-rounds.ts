import { lengthOf, words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { cureLength, remediesIn, type Concern, type Report } from '../kit/report.js';
import type { HeldRound } from './held-round.js';
import { flatFor, leastGap, soundPart } from './limits.js';
import type { VCradleSolution } from './solve.js';

/** One round held, with what the reports on it are about. */
interface Checked {
  readonly h: HeldRound;
  readonly s: VCradleSolution;
  readonly about: Concern;
  readonly context: Context;
}

/** Depth of cut that puts this round's contacts `part` of the way up the flanks. */
const depthFor = ({ h, s }: Checked, part: number): number => h.contactHeight / part - s.groove.flatHeight;

const checkDepth = (checked: Checked): readonly Report[] => {
  const { h, s, about, context } = checked;
  const { apexDepth, depth } = s.groove;
  const sound = remediesIn(context.units).atLeast(depthFor(checked, soundPart));
  const would = [cureLength('depth', sound)];
  if (h.contactHeight >= apexDepth) return [{
    code: 'rests-on-edges', severity: 'stop', measured: h.contactHeight, limit: apexDepth, about, would,
    message: words`${h.round.name} would rest on the two edges of the groove: it touches the flanks ${lengthOf(h.contactHeight)} above the V’s point and they end at ${lengthOf(apexDepth)}.`,
    remedy: words`Cut the groove ${lengthOf(sound)} deep; it must be deeper than ${lengthOf(depthFor(checked, 1))}.`,
  }];
  const limit = soundPart * apexDepth;
  // 1e-9: a depth worked out from the limit itself is at the limit, not past it.
  if (h.contactHeight <= limit * (1 + 1e-9)) return [];
  return [{
    code: 'groove-shallow', severity: 'warn', measured: h.contactHeight, limit, about, would,
    message: words`${h.round.name} touches the flanks near their upper edges, ${lengthOf(h.contactHeight)} above the V’s point; up to ${lengthOf(limit)} is sound in a groove ${lengthOf(depth)} deep.`,
    remedy: words`Cut the groove ${lengthOf(sound)} deep.`,
  }];
};

const checkFlat = (checked: Checked): readonly Report[] => {
  const { h, s, about, context } = checked;
  const half = s.groove.flat / 2;
  const sound = Math.max(0, remediesIn(context.units).atMost(flatFor(h.radius, s.groove.halfAngle, leastGap)));
  const would = [cureLength('flat', sound)];
  const narrower = words`Make the flat ${lengthOf(sound)} or narrower; it must be less than ${lengthOf(flatFor(h.radius, s.groove.halfAngle, 0))}.`;
  if (h.contactHalfWidth <= half) return [{
    code: 'contacts-leave-flanks', severity: 'stop', measured: h.contactHalfWidth, limit: half, about, would, remedy: narrower,
    message: words`${h.round.name} is too thin for the flat: it would touch the flanks ${lengthOf(h.contactHalfWidth)} from the middle, and they begin at ${lengthOf(half)}.`,
  }];
  if (h.gap <= 0) return [{
    code: 'rides-on-flat', severity: 'stop', measured: h.gap, limit: 0, about, would, remedy: narrower,
    message: words`${h.round.name} lies on the flat before it reaches the flanks and would roll.`,
  }];
  if (h.gap >= leastGap) return [];
  return [{
    code: 'gap-small', severity: 'warn', measured: h.gap, limit: leastGap, about, would,
    message: words`Only ${lengthOf(h.gap, 'mm')} of air under ${h.round.name}: dust on the flat lifts it.`,
    remedy: words`Make the flat ${lengthOf(sound)} or narrower, or brush it clean every time.`,
  }];
};

const checkProud = ({ h, s, about, context }: Checked): readonly Report[] => {
  if (h.proud > 0) return [];
  const depth = remediesIn(context.units).atMost(s.groove.depth + h.proud - 0.1);
  return [{
    code: 'below-top', severity: 'warn', measured: h.proud, limit: 0, about,
    message: words`${h.round.name} lies ${lengthOf(-h.proud)} below the block’s top: a clamp bar across the block does not reach it.`,
    remedy: words`Cut the groove ${lengthOf(depth)} deep at most, or press it down with a narrow caul.`,
    // Of several rounds the thickest may need the depth.
    would: s.held.length === 1 && depth > 0 ? [cureLength('depth', depth)] : [],
  }];
};

/** Depth against the thick rounds, flat against the thin ones, for every round held. */
export const checkRounds = (s: VCradleSolution, context: Context): readonly Report[] => s.held.flatMap((h) => {
  const checked: Checked = { h, s, context, about: { operation: s.makesBlock ? 'saw-v' : 'saw-carrier-v', round: h.round.name } };
  return [...checkDepth(checked), ...checkFlat(checked), ...checkProud(checked)];
});
