import { spawnSync } from 'node:child_process';

/** One line of the bench: a figure beside the bar that it must keep. */
export interface Row {
  readonly name: string;
  readonly figure: string;
  readonly bar: string;
  /** Undefined for a figure that only informs. */
  readonly pass?: boolean;
}

/** The middle value; the mean of the two middle ones of an even number. */
export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle) - 1]!) / 2;
};

/** Wall time of one whole process, ms, from before it is made to after it has ended. Throws when it fails. */
export const processTime = (args: readonly string[]): number => {
  const from = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { stdio: ['ignore', 'ignore', 'pipe'] });
  const time = performance.now() - from;
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return time;
};

export interface Compared {
  /** Median of the process, ms. */
  readonly time: number;
  /** Median of `node -e 0` between the same runs, ms. */
  readonly bare: number;
  readonly ratio: number;
}

/** A process against `node -e 0`, turn by turn so that both see the same machine; medians of one run. */
export const againstBareNode = (args: readonly string[], times: number): Compared => {
  processTime(args);
  const turns = Array.from({ length: times }, () => ({ bare: processTime(['-e', '0']), own: processTime(args) }));
  const [bare, time] = [median(turns.map((turn) => turn.bare)), median(turns.map((turn) => turn.own))];
  return { time, bare, ratio: time / bare };
};

/** Most memory that a process had resident, MB, as the kernel counts it. */
export const peakMemory = (args: readonly string[]): number => {
  const hook = "data:text/javascript,process.on('exit',()=>process.stderr.write('PEAK '+process.resourceUsage().maxRSS))";
  const { status, stderr } = spawnSync(process.execPath, ['--import', hook, ...args], { stdio: ['ignore', 'ignore', 'pipe'], encoding: 'utf8' });
  const found = /PEAK (\d+)/.exec(stderr);
  if (status !== 0 || !found) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return Number(found[1]) / 1024;
};

/** A row whose figure must not exceed its bar. */
export const atMost = (name: string, value: number, bar: number, unit = '', decimals = 2): Row => ({
  name, figure: `${value.toFixed(decimals)}${unit}`, bar: `≤ ${bar}${unit}`, pass: value <= bar,
});

/** A row whose figure must reach its bar. */
export const atLeast = (name: string, value: number, bar: number, unit = '', decimals = 0): Row => ({
  name, figure: `${value.toFixed(decimals)}${unit}`, bar: `≥ ${bar}${unit}`, pass: value >= bar,
});

/** The rows as a table for a terminal. */
export const tableText = (rows: readonly Row[]): string => {
  const cells = rows.map(({ name, figure, bar, pass }) => [name, figure, bar, pass === undefined ? '' : pass ? 'pass' : 'SHORT']);
  const widths = [0, 1, 2].map((column) => Math.max(...cells.map((line) => line[column]!.length)));
  return cells.map((line) => `${line[0]!.padEnd(widths[0]!)}  ${line[1]!.padStart(widths[1]!)}  ${line[2]!.padEnd(widths[2]!)}  ${line[3]}`.trimEnd()).join('\n');
};
