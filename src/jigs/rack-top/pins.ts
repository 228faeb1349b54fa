import type { RackTop } from './rack-top.js';
import { mouthHalfWidth, type Slot } from './slot.js';
import { slotGroups } from './words.js';

/** Width of the pitch stick, mm: the pins stand on its middle line. */
export const stickWidth = 40;

/** Wood between a pin and the mouth, mm. */
const besidePin = 10;

/** Pin to pin, mm: as given, else clear of the mouth by 10 mm, rounded up to 5 mm or 1/4 in. */
export const pinSpacing = ({ pins, cutter }: Pick<RackTop, 'pins' | 'cutter'>, slot: Slot): number =>
  pins.spacing ?? Math.ceil((2 * (mouthHalfWidth(slot) + cutter.offset + besidePin) + pins.diameter) / pins.step - 1e-9) * pins.step;

/** The slots that one template serves. */
export interface TemplateGroup {
  /** Counted from 1. */
  readonly number: number;
  readonly slots: readonly Slot[];
  readonly spacing: number;
}

/** One template for each kind of slot. */
export const templateGroups = (top: RackTop): readonly TemplateGroup[] => {
  const groups = new Map<string, Slot[]>();
  for (const group of slotGroups(top.slots)) {
    const { radius, depth, mouth } = group[0]!;
    const key = JSON.stringify([radius, depth, mouth]);
    groups.set(key, [...(groups.get(key) ?? []), ...group]);
  }
  return [...groups.values()].map((slots, i) => ({
    number: i + 1, slots: slots.toSorted((a, b) => a.number - b.number), spacing: pinSpacing(top, slots[0]!),
  }));
};

/** Stations of the pin holes along one edge's stick, mm, in order; two slots may share a hole where their pins fall together. */
export const pinStations = (groups: readonly TemplateGroup[], edge: Slot['edge']): readonly number[] => {
  const all = groups.flatMap(({ slots, spacing }) => slots.filter((s) => s.edge === edge).flatMap((s) => [s.at - spacing / 2, s.at + spacing / 2]));
  const sorted = all.sort((a, b) => a - b);
  return sorted.filter((x, i) => i === 0 || x - sorted[i - 1]! > 1e-6);
};

/** The least distance between two pin holes of one stick, mm; Infinity with fewer than two. */
export const closestPins = (top: RackTop): number => {
  const groups = templateGroups(top);
  return (['front', 'rear'] as const).reduce((least, edge) => {
    const stations = pinStations(groups, edge);
    return stations.slice(1).reduce((near, x, i) => Math.min(near, x - stations[i]!), least);
  }, Infinity);
};

/** The least room between a pin and the cut of any slot of its edge, its own or a neighbour's, along the stick, mm; Infinity without slots. */
export const leastPinRoom = (top: RackTop): number => {
  const groups = templateGroups(top);
  return (['front', 'rear'] as const).reduce((least, edge) => {
    const slots = top.slots.filter((s) => s.edge === edge);
    let next = 0;
    return pinStations(groups, edge).reduce((room, x) => {
      // Both run in order of station, so that the slot to the right of a pin is never looked for from the start.
      while (next < slots.length && slots[next]!.at < x) next++;
      const beside = [slots[next - 1], slots[next]].flatMap((s) => (s === undefined ? [] : [Math.abs(s.at - x) - mouthHalfWidth(s)]));
      return Math.min(room, ...beside.map((wood) => wood - top.cutter.offset - top.pins.diameter / 2));
    }, least);
  }, Infinity);
};
