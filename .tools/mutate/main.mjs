// Breaks formulae one at a time and says which of them no test notices. DEVELOPERS.md says how to read the answer.
import { execFileSync, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { faults } from './faults.mjs';
import { instrumented } from './instrument.mjs';
import { allPlaces, drawPlaces } from './places.mjs';
import { provedEqual } from './proved-equal.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const { values: options } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' }, count: { type: 'string', default: '150' }, only: { type: 'string', default: 'src/' },
    workers: { type: 'string', default: String(availableParallelism()) }, faults: { type: 'boolean', default: false }, these: { type: 'string' }, list: { type: 'boolean', default: false },
  },
});

/** Most that may survive, of all that were drawn. */
const mostSurvivors = 0.03;
/** These say that an answer or a page has changed, not that it is wrong. */
const kept = ['test/jigs/kept-answers.test.ts', 'test/sheets/kept-plans.test.ts', 'test/sheets/seen-pages.test.ts'];
/** Seconds of tests that are tried first, the nearest to the place; and how long tests may take before the broken formula counts as noticed. */
const firstTests = 15;
const patience = (seconds) => 60 + 6 * seconds;

const isProvedEqual = ({ file, rule, was }) => provedEqual.some((one) => one.file === file && one.rule === rule && (one.is === undefined ? was.startsWith(one.was) : was === one.is));
const drawn = () => {
  const places = allPlaces(root).filter((place) => place.file.startsWith(options.only) && !isProvedEqual(place));
  return drawPlaces(places, Number(options.count), Number(options.seed));
};
const these = options.these?.split(',').map(Number);
const mutants = (options.faults ? faults(root) : drawn()).map((place, i) => ({ ...place, id: i + 1 })).filter(({ id }) => these?.includes(id) ?? true);
const told = ({ file, line, rule, was, becomes }) => `${file}:${line} ${rule}: ${was}  →  ${becomes}`;
if (options.list) {
  for (const mutant of mutants) console.log(told(mutant));
  process.exit(0);
}

/** A copy of what is in the folder now, committed or not, with the switches written in. */
const copy = mkdtempSync(join(tmpdir(), 'roundwright-mutate-'));
process.on('exit', () => rmSync(copy, { recursive: true, force: true }));
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(130));
const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: root, encoding: 'utf8' }).split('\n');
for (const file of files.filter((name) => name !== '' && existsSync(join(root, name)))) {
  mkdirSync(dirname(join(copy, file)), { recursive: true });
  cpSync(join(root, file), join(copy, file));
}
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
for (const file of new Set(mutants.map((mutant) => mutant.file))) {
  const edits = mutants.filter((mutant) => mutant.file === file).flatMap(({ id, edits: all }) => all.map((edit) => ({ id, ...edit })));
  writeFileSync(join(copy, file), instrumented(readFileSync(join(root, file), 'utf8'), edits));
}
execFileSync(process.execPath, ['.tools/build.mjs', '--no-types'], { cwd: copy, stdio: 'inherit' });

/** Runs the copy's tests: `{ status, out }`; status null: took too long and was ended. */
const runTests = ({ args = [], env = {}, seconds }) => new Promise((resolve) => {
  const command = [join(copy, 'node_modules/vitest/vitest.mjs'), 'run', '--root', copy, '--config', '.tools/mutate/vitest.config.ts', ...args];
  const child = spawn(process.execPath, command, { cwd: copy, env: { ...process.env, NO_COLOR: '1', ...env }, detached: true });
  let out = '';
  child.stdout.on('data', (data) => { out += data; });
  child.stderr.on('data', (data) => { out += data; });
  const end = setTimeout(() => process.kill(-child.pid, 'SIGKILL'), seconds * 1000);
  child.on('close', (status) => { clearTimeout(end); resolve({ status, out }); });
});

/** With nothing broken: which test files pass which switch, and how many seconds each takes. */
const baseline = async () => {
  const [reachedList, resultList] = [join(copy, 'reached.jsonl'), join(copy, 'results.json')];
  const { status, out } = await runTests({ args: ['--reporter=json', `--outputFile=${resultList}`], env: { MUTANT: '0', MUTANTS_REACHED: reachedList }, seconds: 900 });
  if (status !== 0) throw new Error(`the tests fail with nothing broken:\n${out.slice(-4000)}`);
  const name = (path) => relative(copy, path);
  const seconds = new Map(JSON.parse(readFileSync(resultList, 'utf8')).testResults
    .map((result) => [name(result.name), (result.endTime - result.startTime) / 1000 + 0.6]));
  const reached = new Map(mutants.map(({ id }) => [id, new Set()]));
  for (const line of readFileSync(reachedList, 'utf8').trim().split('\n').map((text) => JSON.parse(text))) {
    for (const id of line.reached) reached.get(id).add(name(line.file));
  }
  return { seconds, reached };
};

/** Folders that two paths share, counted below src/ and test/. */
const shared = (source, test) => {
  const [a, b] = [source.split('/').slice(1), test.split('/').slice(1)];
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return i;
};

/** The test that notices, or undefined. The nearest tests are tried first, then what is kept, then all that pass the place. */
const tryOne = async ({ id, file }, { seconds, reached }) => {
  const near = [...reached.get(id)].sort((a, b) => shared(file, b) - shared(file, a) || seconds.get(a) - seconds.get(b)).filter((test) => !kept.includes(test));
  let sum = 0;
  const first = near.filter((test) => (sum += seconds.get(test)) <= firstTests);
  const rounds = [first, kept.filter((test) => reached.get(id).has(test)), near.filter((test) => !first.includes(test))];
  for (const tests of rounds.filter((list) => list.length > 0)) {
    const long = tests.reduce((total, test) => total + seconds.get(test), 0);
    const { status, out } = await runTests({ args: ['--bail=1', '--maxWorkers=1'], env: { MUTANT: String(id), MUTANT_TESTS: JSON.stringify(tests) }, seconds: patience(long) });
    if (status !== 0) return status === null ? 'took too long' : (/FAIL {2}(\S+)/.exec(out)?.[1] ?? out.slice(-500));
  }
  return undefined;
};

const main = async () => {
  const before = await baseline();
  const survivors = [];
  const byChange = [];
  const queue = [...mutants];
  const work = async () => {
    for (let mutant = queue.shift(); mutant !== undefined; mutant = queue.shift()) {
      const noticed = await tryOne(mutant, before);
      if (noticed === undefined) survivors.push({ ...mutant, tests: before.reached.get(mutant.id).size });
      if (kept.includes(noticed)) byChange.push(mutant);
      console.log(`${noticed === undefined ? 'SURVIVED' : 'noticed'} ${mutant.id} ${told(mutant)}${noticed === undefined ? '' : `  [${noticed}]`}`);
    }
  };
  await Promise.all(Array.from({ length: Number(options.workers) }, work));
  const drawnFrom = options.faults ? 'named faults' : `places, seed ${options.seed}`;
  console.log(`\n${survivors.length} of ${mutants.length} ${drawnFrom}, survived: ${(100 * survivors.length / mutants.length).toFixed(1)} %`);
  for (const survivor of survivors) console.log(`  ${told(survivor)} (passed by ${survivor.tests} test files)`);
  if (byChange.length > 0) console.log(`${byChange.length} more, noticed by none of the nearest tests, only by answers and pages that are kept as they were:`);
  for (const mutant of byChange) console.log(`  ${told(mutant)}`);
  process.exitCode = survivors.length > (options.faults ? 0 : mostSurvivors * mutants.length) ? 1 : 0;
};
await main();
