import { fork, spawnSync, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { longest } from './faults.js';
import { finds } from './finds.js';
import { families, fuzzCase, shares } from './fuzz-case.js';
import { loadCommand } from './run-case.js';
import { tryCase, type Tried } from './try-case.js';

/*
 * `npm run fuzz`: specs and options by a seed, legal, near a limit, wild, with broken bytes and broken path data, each drawn by the built command
 * and looked at by independent readers. Workers run them; one that dies, hangs or grows is replaced, and the case is tried once more by itself.
 */
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '20000' },
    from: { type: 'string', default: '0' },
    case: { type: 'string' },
    keep: { type: 'string' },
    finds: { type: 'boolean', default: false },
  },
});
const [seed, count, from] = [values.seed, values.count, values.from].map(Number) as [number, number, number];

/** Most memory that a process may have held, MB. */
const mostMemory = 500;
/** A case that has not ended after so long, ms of the clock, hangs: processor time is judged apart. */
const patience = 60_000;

interface Answer extends Tried {
  /** The most that the worker ever held, MB. */
  readonly memory: number;
}

const work = (): void => {
  const command = loadCommand(process.cwd());
  const folder = mkdtempSync(join(tmpdir(), 'roundwright-fuzz-'));
  process.on('message', (number: number) => {
    void tryCase(command, folder, seed, number).then((tried) =>
      process.send!({ ...tried, memory: process.resourceUsage().maxRSS / 1024 } satisfies Answer),
    );
  });
  process.on('disconnect', () => {
    rmSync(folder, { recursive: true, force: true });
    process.exit();
  });
};

const start = (): ChildProcess =>
  fork(process.argv[1]!, process.argv.slice(2), {
    execArgv: ['--enable-source-maps'],
    stdio: ['ignore', 'inherit', 'pipe', 'ipc'],
  });

/** Has a worker try one case; undefined where it dies or hangs. */
const ask = (worker: ChildProcess, number: number): Promise<Answer | undefined> =>
  new Promise((resolve) => {
    const timer = setTimeout(() => worker.kill('SIGKILL'), patience);
    const end = (answer?: Answer): void => {
      clearTimeout(timer);
      worker.removeAllListeners();
      resolve(answer);
    };
    worker.on('message', end).on('exit', () => end());
    worker.send(number);
  });

/** One case in a worker of its own: what it does there is its own doing. */
const alone = async (number: number): Promise<Answer> => {
  const worker = start();
  const answer = await ask(worker, number);
  worker.kill();
  if (answer === undefined) {
    const { family, readPdf, twice } = fuzzCase(seed, number);
    return {
      number,
      family,
      readPdf,
      twice,
      code: -1,
      seconds: NaN,
      memory: NaN,
      faults: [`the process died, or took more than ${patience / 1000} s`],
    };
  }
  // What the readers of the fuzz itself hold is part of it.
  return answer.memory > mostMemory && !answer.readPdf
    ? { ...answer, faults: [...answer.faults, `held ${answer.memory.toFixed(0)} MB`] }
    : answer;
};

const tryAll = async (told: (answer: Answer) => void): Promise<void> => {
  let next = from;
  const lane = async (): Promise<void> => {
    let worker = start();
    while (next < from + count) {
      const number = next++;
      const answer = await ask(worker, number);
      const grown = answer !== undefined && answer.memory > mostMemory;
      told(answer === undefined || grown ? await alone(number) : answer);
      if (answer === undefined || grown) {
        worker.kill('SIGKILL');
        worker = start();
      }
    }
    worker.disconnect();
  };
  await Promise.all(Array.from({ length: Math.max(1, Math.min(8, availableParallelism())) }, lane));
};

const keepCase = (folder: string, number: number): void => {
  const { spec, words } = fuzzCase(seed, number);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${seed}-${number}.yaml`), spec);
  writeFileSync(
    join(folder, `${seed}-${number}.txt`),
    `roundwright draw ${seed}-${number}.yaml ${words.map((word) => (/^[\w.,-]+$/.test(word) ? word : JSON.stringify(word))).join(' ')}\n`,
  );
};

const lead = async (): Promise<void> => {
  const answers: Answer[] = [];
  const begun = Date.now();
  await tryAll((answer) => {
    answers.push(answer);
    if (answer.faults.length > 0) {
      console.log(`case ${answer.number} (${answer.family}): ${answer.faults.slice(0, 4).join('\n  ')}`);
      if (values.keep !== undefined) keepCase(values.keep, answer.number);
    }
    if (answers.length % 1000 === 0)
      console.log(`${answers.length} cases, ${((Date.now() - begun) / 1000).toFixed(0)} s`);
  });
  summary(answers);
};

const summary = (answers: readonly Answer[]): void => {
  const found = answers.filter(({ faults }) => faults.length > 0);
  const share = (test: (answer: Answer) => boolean): string => `${answers.filter(test).length}`;
  for (const family of families) {
    const own = answers.filter((answer) => answer.family === family);
    console.log(
      `${family.padEnd(6)} ${own.length} cases: drawn ${own.filter(({ code }) => code === 0).length}, with a stop ${own.filter(({ code }) => code === 1).length}, refused ${own.filter(({ code }) => code === 2).length}`,
    );
  }
  const slowest = answers.toSorted((a, b) => b.seconds - a.seconds)[0];
  console.log(
    `PDFs read in ${share(({ readPdf }) => readPdf)} (a share of ${shares.readPdf}), drawn twice in ${share(({ twice }) => twice)} (${shares.twice}), single sheets read in a share of ${shares.sheets}; slowest ${slowest?.seconds.toFixed(2)} s (case ${slowest?.number})`,
  );
  console.log(
    found.length === 0
      ? `${answers.length} cases of seed ${seed}: nothing found`
      : `${answers.length} cases of seed ${seed}: ${found.length} with faults: ${found.map(({ number }) => number).join(' ')}`,
  );
  if (found.length > 0) process.exitCode = 1;
};

/** What once broke the program, each in a process of its own: s of processor time and MB, the program itself and its font included. */
const tryFinds = (): void => {
  const folder = mkdtempSync(join(tmpdir(), 'roundwright-finds-'));
  try {
    for (const { name, spec, code } of finds) {
      writeFileSync(join(folder, 'piece.yaml'), spec());
      const measure =
        'process.on("exit", () => { const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage(); require("node:fs").writeFileSync("used", JSON.stringify([(userCPUTime + systemCPUTime) / 1e6, maxRSS / 1024])); })';
      writeFileSync(join(folder, 'measure.cjs'), measure);
      const { status } = spawnSync(
        process.execPath,
        [
          '--require',
          './measure.cjs',
          join(process.cwd(), 'dist/roundwright.cjs'),
          'draw',
          'piece.yaml',
          '--out',
          'out',
          '--quiet',
        ],
        { cwd: folder },
      );
      const [seconds, memory] = JSON.parse(readFileSync(join(folder, 'used'), 'utf8')) as [number, number];
      console.log(
        `${name.padEnd(50)} ${seconds.toFixed(1).padStart(5)} s ${memory.toFixed(0).padStart(5)} MB   ended with ${status}${status === code ? '' : `, not ${code}`}`,
      );
      if (status !== code || seconds > longest || memory > mostMemory) process.exitCode = 1;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

if (process.send !== undefined) work();
else if (values.finds) tryFinds();
else if (values.case !== undefined) {
  keepCase(values.keep ?? tmpdir(), Number(values.case));
  console.log(await alone(Number(values.case)));
} else await lead();
