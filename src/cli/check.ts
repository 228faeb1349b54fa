import { check as checkSpec, type Checked } from '../compile.js';
import { kinds } from '../jigs/index.js';
import type { Arguments } from './command.js';
import { eachSpec, worst } from './each-spec.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { readShopFile } from './read-source.js';
import { reportText } from './report-text.js';

/** 1 where a finding stops a jig, else 0. */
export const findingsCode = ({ report }: Checked): number =>
  report.jigs.some(({ findings }) => findings.some(({ severity }) => severity === 'stop')) ? exitCodes.stopped : exitCodes.done;

/** JSON for the specs that could be read: one object for one spec, a list for several. */
export const printJson = (results: readonly unknown[], asked: number, io: Io): void => {
  if (asked === 1 && results.length === 0) return;
  io.out(`${JSON.stringify(asked === 1 ? results[0] : results, null, 2)}\n`);
};

/** `check SPEC…`: numbers and findings, nothing drawn and nothing written. */
export const check = async (given: Arguments, io: Io): Promise<number> => {
  const { codes, results, asked } = await eachSpec(given, io, ({ file, text }) => {
    const checked = checkSpec({ file, text, kinds, readFile: readShopFile });
    return { result: checked, code: findingsCode(checked) };
  });
  if (given['json'] === true) printJson(results.map(({ report }) => report), asked, io);
  else io.out(results.map(({ report, spec }) => reportText(report, spec)).join('\n'));
  return worst(codes);
};
