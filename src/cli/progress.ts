import type { Io } from './io.js';

/** Before this nobody wonders, ms. */
const patience = 1000;
/** Between two changes of the bar, ms. */
const pace = 100;
const barLength = 30;

const bar = (done: number, total: number): string => {
  const full = Math.round((done / total) * barLength);
  return `${'#'.repeat(full)}${'.'.repeat(barLength - full)} ${done} of ${total}`;
};

/**
 * Passes the items on and, on a terminal, shows how many have gone by once that has taken over a second. Nothing is left
 * of the bar afterwards, and a pipe never sees it.
 */
export function* withProgress<T>(items: Iterable<T>, total: number, label: string, io: Io, now: () => number = () => performance.now()): Generator<T> {
  const started = now();
  let shown = 0;
  let done = 0;
  try {
    for (const item of items) {
      yield item;
      done += 1;
      const time = now();
      if (!io.terminal || time - started < patience || time - shown < pace) continue;
      shown = time;
      io.err(`\r${label} ${bar(done, total)}`);
    }
  } finally {
    if (shown > 0) io.err(`\r${' '.repeat(label.length + barLength + 20)}\r`);
  }
}
