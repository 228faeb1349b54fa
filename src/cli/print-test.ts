import { join } from 'node:path';
import { nominalBars } from '../sheets/print-scale.js';
import { printTest as printTestSheet } from '../sheets/print-test.js';
import { lengthMain } from '../units/format.js';
import { writePdf } from '../writers/pdf/write-pdf.js';
import { textOption } from './arguments.js';
import type { Arguments } from './command.js';
import { correctionFrom } from './correction.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { loadBundledFont } from './load-bundled-font.js';
import { paperAndUnits } from './sheet-options.js';
import { printWarnings } from './print-warnings.js';
import { makeFolder, writeFile } from './write-file.js';

const tenMillimetres = { top: 10, right: 10, bottom: 10, left: 10 };

/** `print-test`: one sheet to measure a printer by, as PDF, and what to do with it. */
export const printTest = async (given: Arguments, io: Io): Promise<number> => {
  const { paper, units } = paperAndUnits(given);
  const sheets = { margins: tenMillimetres, overlap: 12, turn: 'portrait', seams: {} } as const;
  const { warnings, ...corrected } = correctionFrom(given, { paper, units, sheets }, io);
  printWarnings(warnings, given, io);
  const font = loadBundledFont();
  const sheet = printTestSheet({ paper, units, ...corrected }, font);
  const folder = textOption(given, 'out') ?? join('output', 'print-test');
  const file = join(folder, `print-test-${paper.name}.pdf`);
  const bytes = await writePdf([sheet], { title: sheet.title }, font);
  makeFolder(folder);
  writeFile(file, bytes);
  const bars = nominalBars(paper, units);
  if (given['quiet'] !== true) {
    io.out(`${[
      file,
      `Print it at 100 %, true size, single-sided. The x-bar should measure ${lengthMain(bars.x, units)}, the y-bar ${lengthMain(bars.y, units)}.`,
      given['printer'] === undefined ? 'If they do not, keep what they measure and draw with it:' : 'It is corrected. If a bar is off all the same, draw one without --printer, and keep what that measures:',
      `  roundwright printer NAME --paper ${paper.name} --units ${units} --x-bar "…" --y-bar "…"`,
      '  roundwright draw SPEC --printer NAME',
    ].join('\n')}\n`);
  }
  return exitCodes.done;
};
