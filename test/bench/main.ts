import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadFont } from '../../src/drawing/load-font.js';
import { corpusRows } from './corpus-sheets.js';
import { saddlesPerSecond } from './curve-fit.js';
import { againstBareNode, atLeast, atMost, median, peakMemory, processTime, tableText, type Row } from './measure.js';
import { longTop, manySlots, manyTops, oneSaddle } from './specs.js';
import { startUpShares } from './start-up-profile.js';

// `npm run bench`: every figure against its bar, measured in one run on one machine. Ratios, because machines differ.

const root = process.cwd();
const command = join(root, 'dist/roundwright.cjs');
const work = mkdtempSync(join(tmpdir(), 'roundwright-bench-'));

interface Piece {
  readonly args: readonly string[];
  readonly pdf: string;
}

const piece = (name: string, text: string): Piece => {
  const spec = join(work, `${name}.yaml`);
  writeFileSync(spec, text);
  const out = join(work, name);
  return { args: [command, 'draw', spec, '--out', out], pdf: join(out, 'sheets-letter.pdf') };
};

/** Sheets of a drawn PDF: its pages, as the page tree counts them. */
const pagesOf = ({ pdf }: Piece): number => Number(/\/Count (\d+)/.exec(readFileSync(pdf, 'latin1').match(/\/Type \/Pages[^]*?>>/)?.[0] ?? '')?.[1]);

const startUp = async (): Promise<readonly Row[]> => {
  const saddle = piece('one-saddle', oneSaddle);
  const { ratio, time, bare } = againstBareNode(saddle.args, 25);
  return [
    atMost('draw of one saddle, whole process ÷ node -e 0', ratio, 3.5, ' ×'),
    { name: '  draw of one saddle', figure: `${time.toFixed(0)} ms`, bar: '' },
    { name: '  node -e 0', figure: `${bare.toFixed(0)} ms`, bar: '' },
    ...await startUpShares(root, join(work, 'one-saddle.yaml')),
  ];
};

const wholeProcess = (what: string, drawn: Piece): Row =>
  atMost(`draw of ${what}, whole process ÷ node -e 0`, againstBareNode(drawn.args, 11).ratio, 8, ' ×');

const largeSets = (): readonly Row[] => {
  const [few, many, memory] = [piece('sheets-60', manyTops(1)), piece('sheets-600', manyTops(10)), piece('sheets-300', manyTops(5))];
  const time = ({ args }: Piece): number => median(Array.from({ length: 3 }, () => processTime(args)));
  const [fewTime, manyTime] = [time(few), time(many)];
  const [fewSheets, manySheets] = [pagesOf(few), pagesOf(many)];
  const peak = peakMemory(memory.args);
  const font = statSync(join(root, 'dist/font/IBMPlexSans-Regular.ttf')).size;
  return [
    wholeProcess(`${fewSheets} sheets`, few),
    atMost(`time of ${manySheets} sheets ÷ time of ${fewSheets}`, manyTime / fewTime, 11, ' ×'),
    { name: `  sheets, ${manySheets} ÷ ${fewSheets}`, figure: `${(manySheets / fewSheets).toFixed(2)} ×`, bar: '' },
    atMost(`bytes a sheet of ${manySheets}, embedded font and all`, statSync(many.pdf).size / manySheets / 1024, 4, ' KB'),
    atMost(`peak memory of ${pagesOf(memory)} sheets`, peak, 250, ' MB', 0),
    { name: '  the whole font file, of which the part used is embedded', figure: `${(font / 1024).toFixed(0)} KB`, bar: '' },
  ];
};

/** Numbers alone, nothing drawn; what a start costs is taken off. */
const slotGrowth = (): Row => {
  const checking = ({ args }: Piece): readonly string[] => [command, 'check', args[2]!];
  const time = (args: readonly string[]): number => median(Array.from({ length: 5 }, () => processTime(args)));
  const start = time([command, '--version']);
  const [few, many] = [20, 200].map((slots) => time(checking(piece(`slots-${slots}`, manySlots(slots)))) - start);
  return atMost('time to check 200 slots ÷ 20 slots, start taken off', many! / few!, 10, ' ×');
};

try {
  const font = loadFont(readFileSync(join(root, 'dist/font/IBMPlexSans-Regular.ttf')));
  const rows = [
    ...await startUp(),
    wholeProcess('a 2.4 m top, 12 slots, 4 leg holes', piece('long-top', longTop)),
    ...largeSets(),
    slotGrowth(),
    ...corpusRows(font),
    atLeast('saddles fitted to 1 µm', saddlesPerSecond(), 5000, ' /s'),
  ];
  console.log(tableText(rows));
  if (rows.some(({ pass }) => pass === false)) process.exitCode = 1;
} finally {
  rmSync(work, { recursive: true, force: true });
}
