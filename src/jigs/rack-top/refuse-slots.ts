import type { SlotFields } from './schema.js';
import { edgeStart, type Board } from './board.js';
import type { Cutter } from './rack-top.js';
import { eachPairInReach, narrowestLand } from './neighbours.js';
import { easeReach, mouthHalfWidth, mouthLength, type Slot } from './slot.js';
import type { Report, Say } from './report.js';

const stop = { severity: 'stop' } as const;

/** Several rows need their stations: a row in the middle of the board is a choice for one row alone. */
export const refuseRows = (rows: readonly SlotFields[]): Report[] => {
  const lost = rows.length < 2 ? -1 : rows.findIndex((row) => row.at === undefined);
  return lost < 0 ? [] : [{
    ...stop, code: 'slot-station-missing', measured: lost + 1, limit: rows.length,
    message: `Entry ${lost + 1} of the slots has no station, and there are ${rows.length} entries.`,
    remedy: 'Give each entry of a list its at; only a single row stands in the middle of the board by itself.',
  }];
};

/** Why one slot cannot be cut as asked. */
const refuseSlot = (slot: Slot, board: Board, cutter: Cutter, say: Say): Report[] => {
  const name = `Slot ${slot.number}`;
  const lining = slot.liner.squeezed + slot.glue;
  const room = 2 * (slot.radius - lining);
  const half = mouthHalfWidth(slot);
  const from = edgeStart(board) + half;
  const to = board.length - from;
  const deepest = board.width - slot.radius;
  return [
    ...(room < slot.item ? [{
      ...stop, code: 'slot-narrower-than-item', measured: room, limit: slot.item,
      message: `${name} is ${say(2 * slot.radius)} wide in the wood, which leaves ${say(room)} inside its lining for an item of ${say(slot.item)}.`,
      remedy: `A width of at least ${say(slot.item + 2 * (lining + slot.clearance))} with the clearance asked for, or a thinner lining.`,
    }] : []),
    ...(slot.radius < cutter.diameter / 2 ? [{
      ...stop, code: 'cutter-too-large', measured: cutter.diameter, limit: 2 * slot.radius,
      message: `A cutter of ${say(cutter.diameter)} does not go into ${name.toLowerCase()}, which is ${say(2 * slot.radius)} wide.`,
      remedy: `A cutter of at most ${say(2 * slot.radius - 1)}.`,
    }] : []),
    ...(slot.depth < mouthLength(slot) || easeReach(slot.mouth) * Math.cos(slot.mouth.flare) > (slot.mouth.flare > 0 ? slot.mouth.run : slot.depth) ? [{
      ...stop, code: 'slot-shallow', measured: slot.depth, limit: mouthLength(slot),
      message: `${name} is ${say(slot.depth)} deep to its seat’s axis and its mouth alone takes ${say(mouthLength(slot))}.`,
      remedy: `A depth of at least ${say(mouthLength(slot))}, or a smaller mouth.`,
    }] : []),
    ...(slot.depth >= deepest ? [{
      ...stop, code: 'slot-through-board', measured: slot.depth, limit: deepest,
      message: `${name} with a seat of radius ${say(slot.radius)} at ${say(slot.depth)} from its edge cuts the board of ${say(board.width)} in two.`,
      remedy: `A depth below ${say(deepest)}.`,
    }] : []),
    ...(slot.at < from || slot.at > to ? [{
      ...stop, code: 'slot-off-board', measured: slot.at, limit: slot.at < from ? from : to,
      message: `${name} at ${say(slot.at)} does not lie wholly on the straight edge with its mouth of ${say(2 * half)}.`,
      remedy: from <= to ? `A station from ${say(from)} to ${say(to)}.` : 'A longer board or a narrower mouth.',
    }] : []),
  ];
};

/** Slots that run into each other, in the throat or at the mouth. */
const refuseOverlap = (slots: readonly Slot[], board: Board, say: Say): Report[] => {
  const land = narrowestLand(board, slots);
  if (land !== undefined && land.width <= 0) {
    const [a, b] = land.between;
    return [{
      ...stop, code: 'slots-overlap', measured: land.width, limit: 0,
      message: `Slots ${a.number} and ${b.number} run into each other by ${say(-land.width)}.`,
      remedy: `Move them ${say(-land.width + 19)} farther apart, which leaves a land of ${say(19)}.`,
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
    remedy: `A pitch of at least ${say(worst.b.at - worst.a.at - worst.land)}, or smaller mouths.`,
  }];
};

/** Why the slots cannot be cut as asked; nothing where they can. */
export const refuseSlots = (slots: readonly Slot[], board: Board, cutter: Cutter, say: Say): Report[] => {
  const each = slots.flatMap((slot) => refuseSlot(slot, board, cutter, say));
  return each.length > 0 ? each : refuseOverlap(slots, board, say);
};
