import type { JigEntry } from '../../../src/spec/spec.js';
import { parseSpec } from '../../../src/spec/parse-spec.js';
import type { Context, Value } from '../../../src/jigs/jig.js';
import { vCradle } from '../../../src/jigs/v-cradle/index.js';
import type { Finding } from '../../../src/errors/finding.js';
import type { VCradleFields } from '../../../src/jigs/v-cradle/schema.js';
import type { VCradleSolution } from '../../../src/jigs/v-cradle/solve.js';

/** One cradle's fields in YAML flow style, in mm unless said otherwise, with a shop where it matters. */
export interface CradleText {
  readonly fields: string;
  readonly shop?: string;
  readonly units?: 'mm' | 'inch';
}

const read = ({ fields, shop = '{}', units = 'mm' }: CradleText): { entry: JigEntry; context: Context } => {
  const text = `title: t\nunits: ${units}\nrounds: { post: 32 mm, rail: 24 mm, leg: 1-3/8 in }\nshop: ${shop}\njigs:\n  - { kind: v-cradle, name: cradle, ${fields} }\n`;
  const spec = parseSpec({ text, file: 'test.yaml', kinds: { 'v-cradle': vCradle } });
  return {
    entry: spec.jigs[0]!,
    context: { name: 'cradle', units, rounds: spec.rounds, shop: spec.shop, drawingArea: { width: 180, height: 240 }, jig: () => undefined,
      mistaken: (field: string, { code, message }: { code: string; message: string }) => { throw new Error(`${code}: ${field} ${message}`); } },
  };
};

/** A cradle from its text, solved; throws where it is refused. */
export const cradle = (text: CradleText) => {
  const { entry, context } = read(text);
  const outcome = vCradle.solve(entry.fields as VCradleFields, context);
  if ('refused' in outcome) throw new Error(outcome.refused.map((f) => f.message).join('\n'));
  const solution: VCradleSolution = outcome.solution;
  const findings = vCradle.check(solution, context);
  return { solution, context, findings, values: vCradle.values(solution) };
};

/** Everything found in a cradle, whether refused or drawn. */
export const findingsOf = (text: CradleText): readonly Finding[] => {
  const { entry, context } = read(text);
  const outcome = vCradle.solve(entry.fields as VCradleFields, context);
  return 'refused' in outcome ? outcome.refused : vCradle.check(outcome.solution, context);
};

/** Codes with their severities. */
export const found = (text: CradleText): string[] => findingsOf(text).map((f) => `${f.code} ${f.severity}`);

/** A figure of a record by round. */
export const figure = (value: Value | undefined, key: string): number => (value as Readonly<Record<string, number>>)[key]!;
