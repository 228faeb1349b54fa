import { degrees } from '../../units/units.js';
import type { Value, Values } from '../jig.js';
import type { Board } from './board.js';
import type { LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';

/** One number where all slots agree, else a record by slot. */
const bySlot = (top: RackTop, figure: (slot: RackTop['slots'][number]) => number): Value => {
  const [first, ...others] = top.slots.map(figure);
  if (others.every((value) => value === first)) return first!;
  return Object.fromEntries(top.slots.map((slot) => [String(slot.number), figure(slot)]));
};

/** An opening as it is set out: [along, across] of its middle from the left front corner, and its long axis's turn, 0…180°. */
const opening = (hole: LegHole, face: 'top' | 'under', board: Board): Value => {
  const turn = degrees(hole.toward) % 180;
  return {
    major: 2 * hole.halfLong, minor: hole.bit, along: hole[face].x, across: board.width - hole[face].y,
    turn: 180 - turn < 1e-9 ? 0 : turn,
  };
};

const holeValues = (hole: LegHole, board: Board): Value => ({
  top: opening(hole, 'top', board), under: opening(hole, 'under', board), boreLength: hole.boreLength, lean: degrees(hole.lean), leanToward: degrees(hole.toward),
});

/** The least inside radius of the board: seats of slots and insides of recesses. Undefined where there are neither. */
export const leastInsideRadius = (top: RackTop): number | undefined => {
  const radii = [...top.slots.map((s) => s.radius), ...top.recesses.map((r) => r.insideRadius)];
  return radii.length === 0 ? undefined : radii.reduce((least, r) => Math.min(least, r));
};

/** The numbers of a rack top as `check --json` prints them: mm and degrees, stations from the left end. */
export const values = (top: RackTop): Values => {
  const { board, slots, holes, recesses, land, cutter, splits } = top;
  const inner = leastInsideRadius(top);
  return {
    ...(slots.length > 0 ? {
      slotWidth: bySlot(top, (s) => 2 * s.radius), slotRadius: bySlot(top, (s) => s.radius), slotDepth: bySlot(top, (s) => s.depth),
      stations: slots.map((s) => s.at),
    } : {}),
    ...(land === undefined ? {} : { land: land.width }),
    ...(inner === undefined ? {} : { innerRadius: inner }),
    ...(holes.length > 0 ? { holes: Object.fromEntries(holes.map((h) => [String(h.number), holeValues(h, board)])) } : {}),
    ...(recesses.length > 0 ? {
      recesses: Object.fromEntries(recesses.map((r) => [String(r.number), { width: r.width, height: r.height, floor: board.thickness - r.depth, insideRadius: r.insideRadius }])),
    } : {}),
    templateOffset: cutter.offset,
    ...(splits.length > 0 ? { splits } : {}),
  };
};
