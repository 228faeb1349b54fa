import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { saddlesPerSecond } from './curve-fit.js';
import { againstBareNode, atLeast, atMost, tableText, type Row } from './measure.js';
import { oneSaddle } from './specs.js';
import { startUpShares } from './start-up-profile.js';

// `npm run bench`: every figure against its bar, measured in one run on one machine. Ratios, because machines differ.

const root = process.cwd();
const command = join(root, 'dist/roundwright.cjs');
const work = mkdtempSync(join(tmpdir(), 'roundwright-bench-'));

const specFile = (name: string, text: string): string => {
  const file = join(work, `${name}.yaml`);
  writeFileSync(file, text);
  return file;
};

const drawing = (spec: string): readonly string[] => [command, 'draw', spec, '--out', join(work, 'out', spec.replace(/\W+/g, '-'))];

const startUp = async (): Promise<readonly Row[]> => {
  const spec = specFile('one-saddle', oneSaddle);
  const { ratio, time, bare } = againstBareNode(drawing(spec), 25);
  return [
    atMost('draw of one saddle, whole process ÷ node -e 0', ratio, 3.5, ' ×'),
    { name: '  draw of one saddle', figure: `${time.toFixed(0)} ms`, bar: '' },
    { name: '  node -e 0', figure: `${bare.toFixed(0)} ms`, bar: '' },
    ...await startUpShares(root, spec),
  ];
};

try {
  const rows = [
    ...await startUp(),
    atLeast('saddles fitted to 1 µm', saddlesPerSecond(), 5000, ' /s'),
  ];
  console.log(tableText(rows));
  if (rows.some(({ pass }) => pass === false)) process.exitCode = 1;
} finally {
  rmSync(work, { recursive: true, force: true });
}
