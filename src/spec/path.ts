/** The way from the top of a file to a value: keys and list indices (from 0). */
export type Path = readonly (string | number)[];

/** `jigs[0].angle`; keys that are not plain words stand in quotes: `rounds["front post"]`. */
export function formatPath(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    if (!/^[\p{L}_][\p{L}\p{N}_-]*$/u.test(step)) return `${text}[${JSON.stringify(step)}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}
