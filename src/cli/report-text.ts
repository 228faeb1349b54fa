import type { Report } from '../compile.js';
import { visible } from '../errors/quote.js';
import type { Value } from '../jigs/jig.js';
import type { JigReport } from '../jigs/solve-jigs.js';
import { fixed, fractionInches } from '../units/format.js';
import type { Spec } from '../spec/spec.js';
import type { Units } from '../units/units.js';
import { findingsText } from './findings-text.js';

/** A line of the table: what it is, and the figure in one or two units. */
type Row = readonly [name: string, first: string, second: string];

/** Reports hold bare numbers, mm and degrees: an angle says in its name that it is one. */
const isAngle = (path: readonly string[]): boolean => path.some((name) => /angle|tilt|turn|twist|lean|sightLine|reading|endCut/i.test(name));
const isCount = (path: readonly string[]): boolean => path.some((name) => /count|copies|number/i.test(name));

const cells = (path: readonly string[], value: number, units: Units): readonly [string, string] => {
  if (isCount(path)) return [String(value), ''];
  if (isAngle(path)) return [`${fixed(value, 2)}°`, ''];
  const both = [`${fixed(value, 2)} mm`, fractionInches(value)] as const;
  return units === 'inch' ? [both[1], both[0]] : both;
};

/** `wrapLength` as a reader says it: `wrap length`. */
const words = (name: string): string => visible(name.replace(/(?<=[a-z0-9])[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`));

/** Ordinates stand every 15° round the branch; other lists are counted from 1. */
const itemName = (path: readonly string[], index: number): string => (path[0] === 'ordinates' ? `${15 * index}°` : String(index + 1));

const rows = (path: readonly string[], value: Value, units: Units): readonly Row[] => {
  if (typeof value === 'number') return [[path.map(words).join(', '), ...cells(path, value, units)]];
  const inner = Array.isArray(value) ? value.map((one: Value, index) => [itemName(path, index), one] as const) : Object.entries(value);
  return inner.flatMap(([key, one]) => rows([...path, key], one, units));
};

const table = (lines: readonly Row[]): string => {
  const width = (column: 0 | 1 | 2): number => Math.max(0, ...lines.map((line) => line[column].length));
  const [name, first] = [width(0), width(1)];
  return lines.map((line) => `  ${line[0].padEnd(name)}  ${line[1].padStart(first)}  ${line[2].padStart(width(2))}`.trimEnd()).join('\n');
};

const jigText = ({ name, kind, values, findings }: JigReport, { units, jigs }: Spec): string => {
  const lines = Object.entries(values).flatMap(([key, value]) => rows([key], value, units));
  const found = findingsText(findings, jigs);
  return `${visible(name)}  (${kind})\n${lines.length === 0 ? '' : `${table(lines)}\n`}${found}`;
};

/** Numbers and findings of a piece for a reader, lengths in both units, the spec's own first; the full figures are in the JSON. */
export const reportText = (report: Report, spec: Spec): string =>
  `${visible(report.title)}  (digest ${report.digest})\n\n${report.jigs.map((jig) => jigText(jig, spec)).join('\n')}`;
