import { check } from '../../src/compile.js';
import type { Cure, Finding } from '../../src/errors/finding.js';
import { kinds } from '../../src/jigs/index.js';

type Plain = { [key: string]: unknown };

/** A spec as plain data; JSON is YAML. */
export interface PlainSpec {
  readonly units: 'inch' | 'mm';
  readonly rounds?: Plain;
  readonly shop?: Plain;
  readonly jigs: readonly Plain[];
  readonly [key: string]: unknown;
}

/** All findings of a spec. */
export const findingsIn = (spec: PlainSpec): readonly Finding[] =>
  check({ text: JSON.stringify({ title: 'cures', ...spec }), file: 'cures.yaml', kinds }).report.jigs.flatMap((jig) => jig.findings);

const written = ({ value, unit }: Cure): string | number => (unit === 'mm' ? `${value} mm` : unit === 'degrees' ? `${value}°` : value);

/** The spec with a cure's field set, in the entry of the jig that the finding is about. */
export const withCure = (spec: PlainSpec, { about }: Finding, cure: Cure): PlainSpec => {
  const copy = structuredClone(spec) as PlainSpec & { jigs: Plain[] };
  const [head, ...rest] = cure.field.split('.');
  const entry = copy.jigs.find((jig) => jig['name'] === about.jig)!;
  const root = head === 'rounds' ? copy.rounds! : entry;
  const path = head === 'rounds' ? [rest.join('.')] : [head!, ...rest];
  const holder = path.slice(0, -1).reduce<Plain>((at, key) => (at[key] ??= {}) as Plain, root);
  const last = path.at(-1)!;
  const before = holder[last];
  // A round written with its length and origin keeps them.
  holder[last] = head === 'rounds' && typeof before === 'object' && before !== null ? { ...before, diameter: written(cure) } : written(cure);
  return copy;
};

const isSame = (a: Finding, b: Finding): boolean =>
  a.jig === b.jig && a.code === b.code && JSON.stringify(a.about) === JSON.stringify(b.about);

/**
 * The cures of a spec's findings that do not clear them, in words: empty when every one does. A cure clears its finding when
 * none of that code is left about the same end and parts, and nothing graver than a note comes in its place.
 */
export const failedCures = (spec: PlainSpec): string[] => {
  const before = findingsIn(spec);
  return before.flatMap((finding) => finding.would.flatMap((cure) => {
    const left = findingsIn(withCure(spec, finding, cure))
      .filter((f) => isSame(f, finding) || (f.severity !== 'note' && !before.some((old) => isSame(old, f))));
    const words = left.map((f) => `${f.code} (${f.message})`).join('; ');
    return left.length === 0 ? [] : [`${finding.code}: ${cure.field} = ${cure.value} ${cure.unit} leaves ${words}`];
  }));
};
