import { join } from 'node:path';
import { check, layoutRequest, type Checked } from '../compile.js';
import type { Font } from '../drawing/font.js';
import { UserError } from '../errors/user-error.js';
import { kinds } from '../jigs/index.js';
import { layOut } from '../sheets/lay-out.js';
import type { LayoutRequest } from '../sheets/layout-request.js';
import type { Spec } from '../spec/spec.js';
import { nearestOf, textOption } from './arguments.js';
import { findingsCode, printJson } from './check.js';
import type { Arguments } from './command.js';
import { correctionFrom } from './correction.js';
import { deliver } from './deliver.js';
import { drawnFiles, sheetFolder } from './drawn-files.js';
import { drawnText, stopsText } from './drawn-text.js';
import { eachSpec, worst } from './each-spec.js';
import { formatsFrom, type Formats } from './formats.js';
import type { Io } from './io.js';
import { loadBundledFont } from './load-bundled-font.js';
import { missingLetters } from './missing-letters.js';
import { printWarnings } from './print-warnings.js';
import { readShopFile, type SpecText } from './read-source.js';
import { sheetNumbersFrom, sheetsChosen, type SheetsChosen } from './sheet-numbers.js';
import { sheetsAsked } from './sheet-options.js';
import { usageError } from './usage-error.js';
import { removeLeftOver } from './left-over.js';
import { quote } from '../errors/quote.js';

/** What a draw of one spec came to. */
export interface Draw {
  readonly checked: Checked;
  readonly folder: string;
  /** Paths written, from the working folder. */
  readonly files: readonly string[];
  readonly sheets: number;
  /** What could not be laid out as it should. */
  readonly warnings: readonly string[];
}

const withSheets = (given: Arguments) => (spec: Spec): Spec => {
  const { paper, wishes } = sheetsAsked(given, spec);
  return { ...spec, paper, sheets: wishes };
};

/** Names asked for with `--jig`; a word that is no jig's name may be a list of them with commas. */
const jigsAsked = (given: Arguments, { spec, report }: Checked): readonly string[] | undefined => {
  if (given['jig'] === undefined) return undefined;
  const names = report.jigs.map(({ name }) => name);
  const asked = [given['jig']].flat().map(String).flatMap((word) => (names.includes(word) ? [word] : word.split(',').map((one) => one.trim())));
  const unknown = asked.find((name) => !names.includes(name));
  if (unknown === undefined) return asked;
  throw usageError(`--jig: ${quote(spec.title)} has no jig ${quote(unknown)}`, { allowed: names.map(quote).join(', '), ...nearestOf(unknown, names) });
};

const requestFor = (given: Arguments, checked: Checked, font: Font): LayoutRequest => {
  const { spec, report } = checked;
  return layoutRequest(spec, report, checked.draw(font, jigsAsked(given, checked)));
};

const folderFor = (given: Arguments, { spec }: Checked, asked: number): string => {
  const out = textOption(given, 'out');
  if (out === undefined) return join('output', spec.name);
  return asked === 1 ? out : join(out, spec.name);
};

interface Plan {
  readonly checked: Checked;
  readonly folder: string;
  readonly request: LayoutRequest;
  readonly chosen: SheetsChosen;
  readonly formats: Formats;
  readonly font: Font;
}

/** Everything that the words of the command decide, read before anything is laid out. */
const planFor = (given: Arguments, source: SpecText, asked: number, io: Io): Plan => {
  const font = loadBundledFont();
  const checked = check({ ...source, kinds, readFile: readShopFile, adjust: withSheets(given) });
  const { warnings, ...corrected } = correctionFrom(given, checked.spec, io);
  printWarnings([...missingLetters(checked.spec, source, font), ...warnings], given, io);
  return {
    checked, font, folder: folderFor(given, checked, asked), formats: formatsFrom(given),
    request: { ...requestFor(given, checked, font), ...corrected }, chosen: sheetsChosen(given),
  };
};

const write = async ({ checked, folder, request, chosen, formats, font }: Plan, io: Io): Promise<Draw> => {
  const set = layOut(request, font);
  const only = sheetNumbersFrom(chosen, set);
  const drawn = drawnFiles({ report: checked.report, request, set, font, formats, only, io });
  const files = await deliver(folder, drawn, (written) => {
    if (only === undefined) removeLeftOver(folder, sheetFolder(request), written);
  });
  return { checked, folder, files, sheets: set.count, warnings: set.warnings };
};

/** A refusal of the sheets (no room on the paper, too many of them) belongs to the spec. */
const writeFor = async (file: string, plan: Plan, io: Io): Promise<Draw> => {
  try {
    return await write(plan, io);
  } catch (error) {
    throw error instanceof UserError && error.file === undefined ? new UserError(file, error.mistakes) : error;
  }
};

const refuseSameFolder = (file: string, folder: string, taken: Set<string>): void => {
  if (taken.has(folder)) {
    throw new UserError(file, [{ code: 'same-folder', path: '', message: `would be drawn into ${folder}, over another spec of this command`, allowed: 'specs with file names of their own' }]);
  }
  taken.add(folder);
};

/** The last words of one draw: stops and warnings on standard error, the rest on standard output. */
const tell = ({ checked: { report, spec }, files, sheets, warnings }: Draw, { request }: Plan, given: Arguments, io: Io): void => {
  io.err(stopsText(report, spec.jigs));
  printWarnings(warnings, given, io);
  if (given['quiet'] !== true && given['json'] !== true) io.out(drawnText({ report, jigs: spec.jigs, files, sheets, paper: request.paper.name }));
};

/** `draw SPEC…`: the sheets, each jig at full size, and the report, into the folder asked for. */
export const draw = async (given: Arguments, io: Io): Promise<number> => {
  const taken = new Set<string>();
  const { codes, results, asked } = await eachSpec(given, io, async (source: SpecText, count) => {
    const plan = planFor(given, source, count, io);
    refuseSameFolder(source.file, plan.folder, taken);
    const result = await writeFor(source.file, plan, io);
    tell(result, plan, given, io);
    return { result, code: findingsCode(result.checked) };
  });
  if (given['json'] === true) printJson(results.map(({ checked }) => checked.report), asked, io);
  return worst(codes);
};
