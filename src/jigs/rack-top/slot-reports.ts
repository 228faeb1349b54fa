import type { TopFinding } from './report.js';
import type { Slot } from './slot.js';
import { slotsNamed } from './words.js';

/** A report about one slot, its name not yet put to it. */
export interface SlotReport extends Omit<TopFinding, 'message' | 'about'> {
  readonly slot: Slot;
  /** The message for `slot 3` or `slots 1–6`; reads on for one and for several. */
  readonly message: (name: string) => string;
}

/** What is said alike of several slots said once, with all their numbers. Order of first mention. */
export const saidOnce = (reports: readonly SlotReport[]): TopFinding[] => {
  const alike = new Map<string, SlotReport[]>();
  for (const report of reports) {
    const key = JSON.stringify([report.code, report.message(''), report.remedy]);
    const found = alike.get(key);
    if (found === undefined) alike.set(key, [report]);
    else found.push(report);
  }
  return [...alike.values()].map((group) => {
    const { slot: _, message, ...rest } = group[0]!;
    return { ...rest, message: message(slotsNamed(group.map((r) => r.slot))), about: group.map((r) => `slot-${r.slot.number}` as const) };
  });
};
