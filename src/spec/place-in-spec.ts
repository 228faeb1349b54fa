import type { Mistake } from '../errors/user-error.js';
import { readYaml } from './read-yaml.js';
import { placeAt } from './source-text.js';

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

/** Where a spec says what stands at a path of keys, as `line:column`; undefined where it does not say it. */
export function placeOf(steps: readonly string[], { file, text }: { readonly file: string; readonly text: string }): string | undefined {
  const yaml = readYaml(file, text);
  if ('mistakes' in yaml || !isSaid(yaml.data, steps)) return undefined;
  const { line, column } = placeAt(yaml.source, yaml.locate.value(steps));
  return `${line}:${column}`;
}

/** Mistakes found after the spec was read, each with its line where the spec itself says what is wrong; the others, of what holds by default, without. */
export function placeInSpec(mistakes: readonly Mistake[], { file, text }: { readonly file: string; readonly text: string }): readonly Mistake[] {
  const isUnplaced = ({ path, line, file: other }: Mistake): boolean => path !== '' && line === undefined && other === undefined;
  if (!mistakes.some(isUnplaced)) return mistakes;
  const yaml = readYaml(file, text);
  if ('mistakes' in yaml) return mistakes;
  return mistakes.map((mistake) => {
    const steps = stepsOf(mistake.path);
    return isUnplaced(mistake) && isSaid(yaml.data, steps) ? { ...mistake, ...placeAt(yaml.source, yaml.locate.value(steps)) } : mistake;
  });
}
