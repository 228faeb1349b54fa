import { faultsOfPdf } from './pdf-faults.js';
import { faultsOfSvg } from './svg-faults.js';
import type { CaseRun } from './run-case.js';

/** The longest that a spec of up to 1 MiB may take before it is drawn or refused, s of processor time; 2000 sheets are the most drawn. */
export const longest = 10;

/** Words that belong to the program's inside, and figures that are none. */
const inside =
  /\bNaN\b|\bInfinity\b|\bundefined\b|\[object |call stack|TypeError|RangeError|ZodError|YAML[A-Z]|\bBlock(?:Map|Sequence)\b|\bnull prototype\b|\n\s+at \S+ \(\S+:\d+/;

/** What is said without what is quoted of the spec: quotes, and source lines with the caret under them. */
const ownWords = (text: string): string =>
  text
    .replaceAll(/^.* \| .*$/gm, '')
    .replaceAll(/“[^”]*”/g, '“”')
    .replaceAll(/^ {4}got: .*$/gm, '');

// eslint-disable-next-line no-control-regex -- what must not reach a terminal
const control = /[\u0000-\u0009\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069]/;

/** First lines of what is refused: a place in the spec, an option, or what concerns the file as a whole or the command's words. */
const located =
  /^(?:piece\.yaml:\d+:\d+: |piece\.yaml: (?:--|paper|sheets|“?piece|is |cannot be |title|rounds|jigs|is missing)|roundwright: |--|there |draw )/;

const faultsOfWords = ({ code, out, err }: CaseRun): readonly string[] => [
  ...[
    ['standard output', out],
    ['standard error', err],
  ].flatMap(([name, text]) => [
    ...(inside.test(ownWords(text!)) ? [`${name} shows the inside: ${inside.exec(ownWords(text!))![0]}`] : []),
    ...(control.test(text!) ? [`${name} holds a control sign`] : []),
  ]),
  ...(code === 2 && err === '' ? ['refused without a word'] : []),
  ...(code === 2
    ? err
        .trimEnd()
        .split('\n\n')
        .map((one) => one.split('\n')[0]!)
        .filter((line) => !located.test(line) && !/^\d+ mistakes/.test(line))
        .map((line) => `a refusal has no place: ${line}`)
    : []),
];

const numbersIn = (value: unknown): readonly unknown[] =>
  typeof value === 'object' && value !== null
    ? Object.values(value).flatMap(numbersIn)
    : typeof value === 'number'
      ? [value]
      : [];

const faultsOfReport = (text: string): readonly string[] => {
  const report = JSON.parse(text) as {
    readonly jigs: readonly {
      readonly values: unknown;
      readonly findings: readonly { readonly measured?: unknown; readonly limit?: unknown }[];
    }[];
  };
  // JSON has no sign for what is not finite: it becomes null.
  const empty = report.jigs.some(
    ({ values, findings }) =>
      JSON.stringify(values).includes('null') ||
      findings.some((finding) => finding.measured === null || finding.limit === null),
  );
  const crumbs = numbersIn(report.jigs.map(({ values }) => values)).filter(
    (n) => n !== 0 && Math.abs(n as number) < 1e-7,
  );
  return [
    ...(empty ? ['report.json holds a figure that is none'] : []),
    ...(crumbs.length > 0 ? [`report.json holds a crumb: ${crumbs[0]}`] : []),
  ];
};

const attempt = async (
  name: string,
  read: () => readonly string[] | Promise<readonly string[]>,
): Promise<readonly string[]> => {
  try {
    return (await read()).map((fault) => `${name}: ${fault}`);
  } catch (error) {
    return [`${name} cannot be read: ${error instanceof Error ? error.message : String(error)}`];
  }
};

/** How a run's files are looked at: whether its PDFs are read, and the margins that its sheets keep clear, where they are known. */
export interface Look {
  readonly readPdf: boolean;
  readonly json: boolean;
  readonly margin: number | undefined;
}

const faultsOfFile = (name: string, bytes: Buffer, { readPdf, margin }: Look): Promise<readonly string[]> =>
  attempt(name, () => {
    if (name.endsWith('.svg')) return faultsOfSvg(name, bytes.toString('utf8'), margin);
    if (name.endsWith('.pdf')) return readPdf ? faultsOfPdf(bytes) : [];
    if (name.endsWith('.json')) return faultsOfReport(bytes.toString('utf8'));
    return ['nobody asked for this file'];
  });

/** Everything that is wrong with what one run left and said; empty where nothing is. */
export async function faultsOf(run: CaseRun, look: Look): Promise<readonly string[]> {
  const files: string[] = [];
  for (const [name, bytes] of run.files) files.push(...(await faultsOfFile(name, bytes, look)));
  return [
    ...(run.code === 0 || run.code === 1 || run.code === 2 ? [] : [`ended with ${run.code}: ${run.err.slice(0, 400)}`]),
    ...(run.code === 2 && run.files.size > 0 ? [`refused, and yet wrote ${[...run.files.keys()].join(', ')}`] : []),
    ...(run.code === 0 && run.files.size === 0 ? ['drawn, and yet wrote nothing'] : []),
    ...(run.seconds > longest ? [`took ${run.seconds.toFixed(1)} s`] : []),
    ...faultsOfWords(look.json && run.code !== 2 ? { ...run, out: '' } : run),
    ...files,
  ];
}

/** What differs between two runs that were asked the same. */
export function differences(first: CaseRun, second: CaseRun): readonly string[] {
  const names = [...new Set([...first.files.keys(), ...second.files.keys()])];
  return [
    ...(first.code === second.code && first.err === second.err ? [] : ['the second run said something else']),
    ...names
      .filter((name) => first.files.get(name)?.equals(second.files.get(name) ?? Buffer.alloc(0)) !== true)
      .map((name) => `${name} differs between two runs`),
  ];
}
