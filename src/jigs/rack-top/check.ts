import type { Finding } from '../../errors/finding.js';
import type { Context } from '../jig.js';
import { landLimits } from './board.js';
import { checkHoles } from './check-holes.js';
import { checkRecesses } from './check-recesses.js';
import { checkShop } from './check-shop.js';
import { checkSlots } from './check-slots.js';
import type { RackTop } from './rack-top.js';
import { woodBesideSplit } from './refuse-splits.js';
import { closestPins } from './pins.js';
import { below, findingsOfTop, reportsAbout, sayIn, type TopFinding, type Say } from './report.js';

const checkSplits = (top: RackTop, say: Say): TopFinding[] => {
  const limits = landLimits(top.board);
  const near = top.splits.flatMap((station) => {
    const { wood, what } = woodBesideSplit(top, station);
    return reportsAbout(['joint'], below({ measured: wood, ...limits }, (limit) => ({
      code: 'split-near', message: `The joint at ${say(station)} leaves ${say(wood)} of wood to ${what}, less than ${say(limit)}.`,
      remedy: `Move it ${say.least(limits.sound - wood)} away, into the middle of a land.`,
    })));
  });
  return top.splits.length === 0 ? [] : [...near, {
    about: ['joint'], code: 'joint-end-grain', severity: 'note', measured: top.splits.length, limit: 0,
    message: 'A joint across the board glues end grain to end grain; the spline lines it up but does not carry.',
    remedy: 'Let each joint land on a leg or a rail, or screw a batten across it underneath.',
  }];
};

const checkPins = (top: RackTop, say: Say): TopFinding[] => {
  const { diameter } = top.pins;
  const closest = closestPins(top);
  return [
    ...(closest >= diameter + 3 ? [] : [{
      code: 'index-holes-meet', severity: 'warn' as const, measured: closest, limit: diameter + 3,
      message: `Two pin holes of neighbouring slots stand ${say(closest)} apart on the pitch stick, less than ${say(diameter + 3)}.`,
      remedy: 'Another spacing, such as the pitch, so that neighbours share a hole; or set the template at each slot by the table of stations.',
    }]),
  ];
};

/** What a maker should know before cutting, with the parts that each is about. Work grows with the slots, not with their pairs. */
export const reportsOn = (top: RackTop, context: Context): readonly TopFinding[] => {
  const say = sayIn(context);
  return [
    ...checkSlots(top, say), ...checkHoles(top, say), ...checkRecesses(top, say), ...checkSplits(top, say),
    ...reportsAbout(top.slots.map((s) => `slot-${s.number}` as const), checkPins(top, say)), ...checkShop(top, context),
  ];
};

/** What a maker should know before cutting, as findings. */
export const check = (top: RackTop, context: Context): readonly Finding[] => findingsOfTop(reportsOn(top, context), context);
