import { formatMistakes } from '../errors/format-mistakes.js';
import { UserError } from '../errors/user-error.js';
import { nominalBars, type MeasuredPrint } from '../sheets/print-scale.js';
import { fixed, lengthLabel } from '../units/format.js';
import type { Arguments } from './command.js';
import { measuredFrom } from './correction.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { keepProfile, printerName, printerNames, profileFolder, profileFrom, readProfile, type PrinterProfile } from './printer-profile.js';
import { paperAndUnits } from './sheet-options.js';
import { usageError } from './usage-error.js';

const percent = (factor: number): string => `${fixed(factor * 100, 2)} %`;

const profileText = ({ name, paper, x, y, skewDeg }: PrinterProfile): string => {
  const skew = skewDeg === undefined ? '' : `, ${fixed(skewDeg, 2)}° out of square`;
  return `${name}: prints ${percent(x)} of true size across and ${percent(y)} along${skew} (measured on ${paper})\n`;
};

/** All that are kept, in order; one that cannot be read is told and hides no other. The exit code. */
const showAll = (io: Io): number => {
  const names = printerNames(io);
  if (names.length === 0) io.out(`No printer is kept in ${profileFolder(io)}. roundwright print-test draws a sheet to measure one by.\n`);
  let code: number = exitCodes.done;
  for (const name of names) {
    try {
      io.out(profileText(readProfile(name, io)));
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      io.err(formatMistakes(error));
      code = exitCodes.wrongUse;
    }
  }
  return code;
};

/** What stands under a name already, capitals aside, in words; one that cannot be read is replaced all the same. */
const earlier = (name: string, io: Io): string | undefined => {
  if (!printerNames(io).includes(name.toLowerCase())) return undefined;
  try {
    return profileText(readProfile(name, io));
  } catch (error) {
    if (error instanceof UserError) return `what could not be read as ${name}.\n`;
    throw error;
  }
};

const keep = (name: string, measured: MeasuredPrint, given: Arguments, io: Io): void => {
  const of = paperAndUnits(given);
  const { profile, warnings } = profileFrom(name, measured, of);
  const before = earlier(name, io);
  const file = keepProfile(profile, io);
  const { x, y } = nominalBars(of.paper, of.units);
  io.out(profileText(profile));
  if (before !== undefined) io.out(`In place of ${before}The figures must come from a sheet drawn without --printer.\n`);
  io.out(`Bars of ${lengthLabel(x, of.units)} and ${lengthLabel(y, of.units)} measured ${lengthLabel(measured.xBar, of.units)} and ${lengthLabel(measured.yBar, of.units)}. Kept in ${file}\n`);
  for (const warning of warnings) io.err(`warning: ${warning}\n`);
  io.out(`Draw with it: roundwright draw SPEC --printer ${name}\nand see that it has worked: roundwright print-test --printer ${name} --paper ${of.paper.name}\n`);
};

/** `printer [NAME]`: with measures, keeps them under the name; without, shows one printer or all that are kept. */
export const printer = async (given: Arguments, io: Io): Promise<number> => {
  const name = given['name'] === undefined ? undefined : printerName(String(given['name']));
  const measured = measuredFrom(given, paperAndUnits(given).units);
  if (name === undefined) {
    if (measured !== undefined) throw usageError('measures need the name of the printer', { allowed: 'roundwright printer NAME --x-bar … --y-bar …' });
    return showAll(io);
  } else if (measured === undefined) {
    io.out(profileText(readProfile(name, io)));
  } else {
    keep(name, measured, given, io);
  }
  return exitCodes.done;
};
