import type { SlotFields } from './schema.js';
import { edgeStart, landLimits, type Board } from './board.js';
import type { Cutter } from './rack-top.js';
import { eachPairInReach, narrowestLand } from './neighbours.js';
import { cutterInto } from './router-cures.js';
import { radiusToSpare } from '../../shop/router.js';
import { easedDepth, mouthHalfWidth, mouthLength, throatsApart, type Slot } from './slot.js';
import type { TopFinding, Say } from './report.js';
import { saidOnce, type SlotReport } from './slot-reports.js';

const stop = { severity: 'stop' } as const;

/** Several rows need their stations: a row in the middle of the board is a choice for one row alone. */
export const refuseRows = (rows: readonly SlotFields[]): TopFinding[] => {
  const lost = rows.length < 2 ? -1 : rows.findIndex((row) => row.at === undefined);
  return lost < 0 ? [] : [{
    ...stop, code: 'slot-station-missing', measured: lost + 1, limit: rows.length,
    message: `Entry ${lost + 1} of the slots has no station, and there are ${rows.length} entries.`,
    remedy: 'Give each entry of a list its at; only a single row stands in the middle of the board by itself.',
  }];
};

/** A board in which the slot's seat leaves no room for any depth. */
const refuseWide = (slot: Slot, board: Board, say: Say): SlotReport[] => {
  const needed = mouthLength(slot) + slot.radius;
  return needed < board.width ? [] : [{
    ...stop, slot, code: 'slot-too-wide', measured: needed, limit: board.width,
    message: (name: string) => `${name}: ${say(2 * slot.radius)} wide in the wood, mouth and seat take at least ${say(needed)} of a board that is ${say(board.width)} wide; no depth would do.`,
    remedy: `A board more than ${say.least(needed + landLimits(board).sound)} wide, or a smaller item.`,
  }];
};

/** Why one slot cannot be cut as asked. */
const refuseSlot = (slot: Slot, board: Board, cutter: Cutter, say: Say): SlotReport[] => {
  const lining = slot.liner.squeezed + slot.glue;
  const room = 2 * (slot.radius - lining);
  const half = mouthHalfWidth(slot);
  const from = edgeStart(board) + half;
  const to = board.length - from;
  const deepest = board.width - slot.radius;
  const thinner = cutterInto(2 * slot.radius);
  const { ease, flare, run } = slot.mouth;
  const eased = easedDepth(slot.mouth);
  return [
    ...(room < slot.item ? [{
      ...stop, slot, code: 'slot-narrower-than-item', measured: room, limit: slot.item,
      message: (name: string) => room > 0 ? `${name}: ${say(2 * slot.radius)} wide in the wood, which leaves ${say(room)} inside the lining for an item of ${say(slot.item)}.`
        : `${name}: ${say(2 * slot.radius)} wide in the wood, all of which the lining takes up.`,
      remedy: `A width of at least ${say.least(slot.item + 2 * (lining + slot.clearance))} with the clearance asked for, or a thinner lining.`,
    }] : []),
    ...(slot.radius < cutter.diameter / 2 ? [{
      ...stop, slot, code: 'cutter-too-large', measured: cutter.diameter, limit: 2 * slot.radius,
      message: (name: string) => `A cutter of ${say(cutter.diameter)} does not go into ${name}, ${say(2 * slot.radius)} wide.`,
      remedy: thinner === undefined ? `A slot at least ${say.least(cutter.diameter + 2 * radiusToSpare)} wide.` : `A cutter of at most ${say.most(thinner)}.`,
    }] : []),
    ...(flare > 0 && eased > run ? [{
      ...stop, slot, code: 'ease-past-flare', measured: run, limit: eased,
      message: (name: string) => `${name}: a corner eased by ${say(ease)} reaches ${say(eased)} in from the edge, and the flare ${say(run)}.`,
      remedy: `A flare that runs at least ${say.least(eased)} in, or an ease of at most ${say.most((ease * run) / eased)}.`,
    }] : slot.depth < mouthLength(slot) ? [{
      ...stop, slot, code: 'slot-shallow', measured: slot.depth, limit: mouthLength(slot),
      message: (name: string) => `${name}: ${say(slot.depth)} deep to the seat’s axis, and the mouth alone takes ${say(mouthLength(slot))}.`,
      remedy: `A depth of at least ${say.least(mouthLength(slot))}, or a smaller mouth.`,
    }] : []),
    ...(slot.depth >= deepest ? [{
      ...stop, slot, code: 'slot-through-board', measured: slot.depth, limit: deepest,
      message: (name: string) => `${name}: a seat of radius ${say(slot.radius)} at ${say(slot.depth)} from the edge cuts the board of ${say(board.width)} in two.`,
      remedy: `A depth of at most ${say.most(deepest - landLimits(board).sound)}, which leaves ${say(landLimits(board).sound)} of wood behind; below ${say(deepest)} in any case.`,
    }] : []),
    ...(slot.at < from || slot.at > to ? [{
      ...stop, slot, code: 'slot-off-board', measured: slot.at, limit: slot.at < from ? from : to,
      message: (name: string) => `${name}: the mouth, ${say(2 * half)} wide, does not lie wholly on the straight part of the edge.`,
      remedy: from <= to ? `A station from ${say.least(from)} to ${say.most(to)}.` : 'A longer board or a narrower mouth.',
    }] : []),
  ];
};

/** Slots that run into each other, in the throat or at the mouth. */
const refuseOverlap = (slots: readonly Slot[], board: Board, say: Say): TopFinding[] => {
  const land = narrowestLand(board, slots, throatsApart);
  if (land !== undefined && land.width <= 0) {
    const [a, b] = land.between;
    return [{
      ...stop, code: 'slots-overlap', measured: land.width, limit: 0,
      message: `Slots ${a.number} and ${b.number} run into each other by ${say(-land.width)}.`,
      remedy: `Move them ${say.least(landLimits(board).sound - land.width)} farther apart, which leaves a land of ${say(landLimits(board).sound)}.`,
    }];
  }
  let worst: { a: Slot; b: Slot; land: number } | undefined;
  eachPairInReach(slots, mouthHalfWidth, (a, b) => {
    const width = b.at - a.at - mouthHalfWidth(a) - mouthHalfWidth(b);
    if (a.edge === b.edge && (worst === undefined || width < worst.land)) worst = { a, b, land: width };
  });
  return worst === undefined || worst.land >= 0 ? [] : [{
    ...stop, code: 'mouths-overlap', measured: worst.land, limit: 0,
    message: `The mouths of slots ${worst.a.number} and ${worst.b.number} run into each other by ${say(-worst.land)}.`,
    remedy: `A pitch of at least ${say.least(worst.b.at - worst.a.at - worst.land + landLimits(board).sound)}, or smaller mouths.`,
  }];
};

/** Why the slots cannot be cut as asked; nothing where they can. */
export const refuseSlots = (slots: readonly Slot[], board: Board, cutter: Cutter, say: Say): TopFinding[] => {
  const wide = slots.flatMap((slot) => refuseWide(slot, board, say));
  if (wide.length > 0) return saidOnce(wide);
  const each = slots.flatMap((slot) => refuseSlot(slot, board, cutter, say));
  return each.length > 0 ? saidOnce(each) : refuseOverlap(slots, board, say);
};
