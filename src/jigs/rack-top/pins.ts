import { cutterClearance } from '../../shop/router.js';
import type { RackTop } from './rack-top.js';
import { mouthHalfWidth, type Slot } from './slot.js';
import { slotGroups } from './words.js';

/** Width of the pitch stick, mm: the pins stand on its middle line. */
export const stickWidth = 40;

/**
 * Gap between the board's edge and the stick, kept by spacers, mm: wide enough for the cutter to run out of the mouth on its
 * guide, and clear of the stick. Rounded up to 5 mm or 1/4 in.
 */
export const standOff = ({ cutter, pins }: Pick<RackTop, 'cutter' | 'pins'>): number =>
  Math.ceil(((cutter.bushing ?? cutter.diameter) + 2 * cutterClearance) / pins.step - 1e-9) * pins.step;

/** How far beyond the board's edge the template's opening runs, mm: it ends before the stick, and so does the cutter. */
export const openingRun = (top: Pick<RackTop, 'cutter' | 'pins'>): number => standOff(top) - cutterClearance;

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
