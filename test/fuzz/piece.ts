import { stringify } from 'yaml';
import { anySpec, type AnyKind } from '../support/any-spec.js';
import type { Random } from './random.js';

export type Entry = Record<string, unknown>;

const kinds: readonly AnyKind[] = ['saddle-cope', 'v-cradle', 'drill-guide', 'rack-top'];

/** A piece of one to three kinds, put together from the careless specs that each kind is tested with. */
export const piece = ({ pick, below, chance }: Random): Entry => {
  const parts = Array.from({ length: 1 + below(3) }, () => JSON.parse(anySpec(pick(kinds), below(100_000))) as Entry);
  const [first] = parts as [Entry, ...Entry[]];
  const jigs = parts.flatMap(({ jigs }, i) => (jigs as Entry[]).map((jig) => renamed(jig, i)));
  return {
    ...first,
    ...(chance(0.5) ? { sheets: wishes({ pick, chance }) } : {}),
    ...(chance(0.3) ? { revision: pick(['A', 7, 1.1, '007', '.nan']) } : {}),
    jigs,
  };
};

/** Names of the second and third part kept apart from those of the first. */
const renamed = (jig: Entry, part: number): Entry => {
  const name = (text: unknown): unknown => (part === 0 || typeof text !== 'string' ? text : `${text} ${part}`);
  const carrier = jig['carrier'] as Entry | undefined;
  return {
    ...jig,
    ...('name' in jig ? { name: name(jig['name']) } : {}),
    ...('from' in jig ? { from: name(jig['from']) } : {}),
    ...(carrier !== undefined && 'from' in carrier ? { carrier: { ...carrier, from: name(carrier['from']) } } : {}),
  };
};

const wishes = ({ pick, chance }: Pick<Random, 'pick' | 'chance'>): Entry => ({
  ...(chance(0.6)
    ? {
        margins: pick<unknown>([
          '6 mm',
          '10 mm',
          '0.5 in',
          '3 mm',
          { left: '18 mm' },
          { top: '5 mm', bottom: '25 mm' },
        ]),
      }
    : {}),
  ...(chance(0.4) ? { overlap: pick(['12 mm', '20 mm', '1 in']) } : {}),
  ...(chance(0.3) ? { turn: pick(['auto', 'portrait', 'landscape']) } : {}),
  ...(chance(0.1) ? { seams: { top: { along: ['200 mm', '420 mm'] } } } : {}),
});

/** As a hand writes it, or as a program does: both are YAML. */
export const textOf = (spec: Entry, { chance }: Random): string =>
  chance(0.7) ? stringify(spec) : JSON.stringify(spec);
