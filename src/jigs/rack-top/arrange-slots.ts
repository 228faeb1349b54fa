import type { Units } from '../../units/units.js';
import { landLimits, type Board } from './board.js';
import { linerFrom } from './liner.js';
import type { SlotFields } from './schema.js';
import { mouthHalfWidth, woodRadius, type Mouth, type Slot } from './slot.js';

/** Easing of the mouth, mm: a cutter's size in either unit. */
const easeByDefault = { mm: 6, inch: 25.4 / 4 } as const;
const glueByDefault = 0.1;

/** Station of each slot of a row, mm: from `at`, or with the row in the middle of the board. */
const stationsOf = (row: SlotFields, boardLength: number, pitch: number): number[] => {
  const first = row.at ?? (boardLength - (row.count - 1) * pitch) / 2;
  return Array.from({ length: row.count }, (_, i) => first + i * pitch);
};

const mouthOf = ({ ease, flare, run }: SlotFields['mouth'], depth: number, units: Units): Mouth => ({
  ease: ease ?? (flare > 0 ? 0 : easeByDefault[units]), flare, run: flare > 0 ? run ?? depth / 2 : 0,
});

const edgeOf = (edge: SlotFields['edge'], index: number): 'front' | 'rear' =>
  edge === 'alternate' ? (index % 2 === 0 ? 'front' : 'rear') : edge;

/** The pitch of a row: what the spec says, or the widest part and the room between, but no less than leaves a sound land. */
const pitchOf = (row: SlotFields, slot: Pick<Slot, 'radius' | 'mouth'>, board: Board): number =>
  row.pitch ?? Math.max((row.widest ?? row.item.diameter) + row.gap, 2 * mouthHalfWidth(slot) + landLimits(board).sound);

const slotsOfRow = (row: SlotFields, board: Board, units: Units): Omit<Slot, 'number'>[] => {
  const liner = linerFrom(row.liner);
  const glue = row.glue ?? (liner.thickness > 0 ? glueByDefault : 0);
  const item = row.item.diameter;
  const radius = row.width === undefined ? woodRadius({ item, clearance: row.clearance, liner, glue }) : row.width / 2;
  const depth = row.depth ?? 4 * radius;
  const shared = {
    itemName: row.item.name, unnamed: row.item.unnamed === true, item, widest: row.widest ?? item, gap: row.gap, clearance: row.clearance, liner, glue,
    radius, widthGiven: row.width !== undefined, depth, mouth: mouthOf(row.mouth, depth, units),
  };
  return stationsOf(row, board.length, pitchOf(row, shared, board)).map((at, i) => ({ ...shared, at, edge: edgeOf(row.edge, i) }));
};

/** All slots of the board, numbered from the left end (the front one first where two stand at one station). mm. */
export const arrangeSlots = (rows: readonly SlotFields[], board: Board, units: Units): readonly Slot[] =>
  rows.flatMap((row) => slotsOfRow(row, board, units))
    .sort((a, b) => a.at - b.at || (a.edge === b.edge ? 0 : a.edge === 'front' ? -1 : 1))
    .map((slot, i) => ({ ...slot, number: i + 1 }));
