import { lengthLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import type { Report } from '../jig.js';
import type { HeldRound } from './held-round.js';
import { leastGap, soundPart } from './limits.js';
import type { VCradleSolution } from './solve.js';

/** Depth of cut that puts this round's contacts `part` of the way up the flanks. */
const depthFor = (h: HeldRound, s: VCradleSolution, part: number): number => h.contactHeight / part - s.groove.flatHeight;

const checkDepth = (h: HeldRound, s: VCradleSolution, units: Units): Report[] => {
  const { apexDepth, depth } = s.groove;
  const say = (mm: number) => lengthLabel(mm, units);
  if (h.contactHeight >= apexDepth) return [{
    code: 'rests-on-edges', severity: 'stop', measured: h.contactHeight, limit: apexDepth,
    message: `${h.round.name} would rest on the two edges of the groove: it touches the flanks ${say(h.contactHeight)} above the V's point and they end at ${say(apexDepth)}.`,
    remedy: `Cut the groove deeper than ${say(depthFor(h, s, 1))}; ${say(depthFor(h, s, soundPart))} is sound.`,
  }];
  const limit = soundPart * apexDepth;
  // 1e-9: a depth worked out from the limit itself is at the limit, not past it.
  if (h.contactHeight > limit * (1 + 1e-9)) return [{
    code: 'groove-shallow', severity: 'warn', measured: h.contactHeight, limit,
    message: `${h.round.name} touches the flanks near their upper edges, ${say(h.contactHeight)} above the V's point; up to ${say(limit)} is sound in a groove ${say(depth)} deep.`,
    remedy: `Cut the groove ${say(depthFor(h, s, soundPart))} deep.`,
  }];
  return [];
};

/** Flat at which a round is `gap` clear of it. */
const flatFor = (h: HeldRound, s: VCradleSolution, gap: number): number =>
  2 * Math.tan(s.groove.halfAngle) * (h.axisHeight - h.radius - gap);

const checkFlat = (h: HeldRound, s: VCradleSolution, units: Units): Report[] => {
  const half = s.groove.flat / 2;
  const say = (mm: number) => lengthLabel(mm, units);
  if (h.contactHalfWidth <= half) return [{
    code: 'contacts-leave-flanks', severity: 'stop', measured: h.contactHalfWidth, limit: half,
    message: `${h.round.name} is too thin for the flat: it would touch the flanks ${say(h.contactHalfWidth)} from the middle, and they begin at ${say(half)}.`,
    remedy: `Make the flat narrower than ${say(flatFor(h, s, 0))}.`,
  }];
  if (h.gap <= 0) return [{
    code: 'rides-on-flat', severity: 'stop', measured: h.gap, limit: 0,
    message: `${h.round.name} lies on the flat before it reaches the flanks and would roll.`,
    remedy: `Make the flat narrower than ${say(flatFor(h, s, 0))}.`,
  }];
  if (h.gap < leastGap) return [{
    code: 'gap-small', severity: 'warn', measured: h.gap, limit: leastGap,
    message: `Only ${say(h.gap)} of air under ${h.round.name}: dust on the flat lifts it.`,
    remedy: `Make the flat ${say(flatFor(h, s, leastGap))} or narrower, or brush it clean every time.`,
  }];
  return [];
};

const checkProud = (h: HeldRound, s: VCradleSolution, units: Units): Report[] => h.proud > 0 ? [] : [{
  code: 'below-top', severity: 'warn', measured: h.proud, limit: 0,
  message: `${h.round.name} lies ${lengthLabel(-h.proud, units)} below the block's top: a clamp bar across the block does not reach it.`,
  remedy: `Cut the groove less than ${lengthLabel(s.groove.depth + h.proud, units)} deep, or press it down with a narrow caul.`,
}];

/** Depth against the thick rounds, flat against the thin ones, for every round held. */
export const checkRounds = (s: VCradleSolution, units: Units): Report[] =>
  s.held.flatMap((h) => [...checkDepth(h, s, units), ...checkFlat(h, s, units), ...checkProud(h, s, units)]);
