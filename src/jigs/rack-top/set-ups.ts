import type { Font } from '../../drawing/font.js';
import type { SetUp } from '../../drawing/set-up.js';
import type { Context } from '../jig.js';
import { plugGroups } from './draw-plug.js';
import { holeSetUp } from './hole-set-up.js';
import { joinSetUp } from './join-set-up.js';
import { templateGroups } from './pins.js';
import type { RackTop } from './rack-top.js';
import { recessSetUp } from './recess-set-up.js';
import { slotSetUp } from './slot-set-up.js';

/** The pages for the machines, each with the parts of the board that are worked there, by which findings reach it. */
export const setUps = (top: RackTop, context: Context, font: Font): readonly SetUp[] => [
  ...templateGroups(top).map((group) => slotSetUp(group, top, context, font)),
  ...plugGroups(top.holes).map((holes) => holeSetUp(holes, top, context, font)),
  ...top.recesses.map((recess) => recessSetUp(recess, top, context, font)),
  ...(top.splits.length > 0 ? [joinSetUp(top, context, font)] : []),
];
