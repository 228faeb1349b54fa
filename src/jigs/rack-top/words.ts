import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees, type Units } from '../../units/units.js';
import type { LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import type { Slot } from './slot.js';

/** Slots alike are described once: their numbers as `1–6` or `1, 3`. */
export const numbersOf = (numbers: readonly number[]): string => {
  const runs: [number, number][] = [];
  for (const n of [...numbers].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === n - 1) last[1] = n;
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a}–${b}`)).join(', ');
};

/** Groups of slots that are cut alike and hold the same. */
export const slotGroups = (slots: readonly Slot[]): readonly (readonly Slot[])[] => {
  const groups = new Map<string, Slot[]>();
  for (const slot of slots) {
    const { itemName, item, radius, depth, mouth } = slot;
    const key = JSON.stringify([itemName, item, radius, depth, mouth]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [slot]);
    else group.push(slot);
  }
  return [...groups.values()];
};

/** `slots 1–6` or `slot 3`. */
export const slotsNamed = (slots: readonly Slot[]): string =>
  slots.length === 1 ? `slot ${slots[0]!.number}` : `slots ${numbersOf(slots.map((s) => s.number))}`;

/** `leans 14°, up the arrow`, near an arrow; `square to the face` for no lean. */
export const leanWords = ({ lean }: LegHole): string =>
  lean === 0 ? 'square to the face' : `leans ${angleLabel(lean)}, up the arrow`;

/** A compass turn's direction in words, after its degrees; empty between the eight named ones. 0 along the board to the right, counter-clockwise from above. */
export const compassName = (toward: number): string => {
  const names = ['right', 'rear right', 'rear', 'rear left', 'left', 'front left', 'front', 'front right'] as const;
  const turn = degrees(toward);
  const near = Math.round(turn / 45);
  return Math.abs(turn - 45 * near) < 0.05 ? ` (towards the ${names[near % 8]})` : '';
};

/** Measured diameters that the board depends on, in words. */
export const assumedDiameters = ({ slots, holes }: RackTop, units: Units): readonly string[] => {
  const rounds = new Map([
    ...slots.map((s) => [`${s.itemName}/${s.item}`, { name: s.itemName, d: s.item, unnamed: s.unnamed }] as const),
    ...holes.map((h) => [`${h.round}/${h.leg}`, { name: h.round, d: h.leg, unnamed: h.unnamed }] as const),
  ]);
  return [...rounds.values()].map(({ name, d, unnamed }) => `${unnamed ? '' : `${name} `}Ø ${lengthLabel(d, units)}`);
};

/** How the lining is called, its thickness said by `say`. */
export const linerWords = ({ liner }: Slot, say: (mm: number) => string): string =>
  liner.name === 'none' ? 'no lining' : liner.squeezed === liner.thickness ? `${liner.name === 'own' ? 'lining' : liner.name} ${say(liner.thickness)}`
    : `${liner.name} ${say(liner.thickness)}, squeezed to ${say(liner.squeezed)}`;
