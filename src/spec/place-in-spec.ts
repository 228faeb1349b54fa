import type { Mistake } from '../errors/user-error.js';
import { readYaml, type YamlFile } from './read-yaml.js';
import { placeAt } from './source-text.js';
import type { Position } from './spec.js';

/** A spec's text and the name that errors give it. */
interface SpecText {
  readonly file: string;
  readonly text: string;
}

/** The keys of a mistake's path below `sheets`; a jig's name may hold dots. */
const stepsOf = (path: string): readonly string[] => {
  const [first = '', second, ...rest] = path.split('.');
  return [first, ...(second === undefined ? [] : [second]), ...(rest.length === 0 ? [] : [rest.join('.')])];
};

const isSaid = (data: unknown, steps: readonly string[]): boolean => {
  const [step, ...rest] = steps;
  if (step === undefined) return true;
  return typeof data === 'object' && data !== null && Object.hasOwn(data, step) && isSaid((data as Readonly<Record<string, unknown>>)[step], rest);
};

const placeIn = (yaml: YamlFile, steps: readonly string[]): ReturnType<typeof placeAt> | undefined =>
  (isSaid(yaml.data, steps) ? placeAt(yaml.source, yaml.locate.value(steps)) : undefined);

/** Where a spec says what stands at a path of keys; undefined where it does not say it. */
export function placeOf(steps: readonly string[], { file, text }: SpecText): Position | undefined {
  const yaml = readYaml(file, text);
  return 'mistakes' in yaml ? undefined : placeIn(yaml, steps);
}

/** Mistakes found after the spec was read, each with its line where the spec itself says what is wrong; the others, of what holds by default, without. */
export function placeInSpec(mistakes: readonly Mistake[], { file, text }: SpecText): readonly Mistake[] {
  const isUnplaced = ({ path, line, file: other }: Mistake): boolean => path !== '' && line === undefined && other === undefined;
  if (!mistakes.some(isUnplaced)) return mistakes;
  const yaml = readYaml(file, text);
  if ('mistakes' in yaml) return mistakes;
  return mistakes.map((mistake) => (isUnplaced(mistake) ? { ...mistake, ...placeIn(yaml, stepsOf(mistake.path)) } : mistake));
}
