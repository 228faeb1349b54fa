import { nominalBars, printScale, type MeasuredPrint } from '../sheets/print-scale.js';
import { fixed, lengthLabel } from '../units/format.js';
import type { Paper } from '../units/paper.js';
import type { Units } from '../units/units.js';
import type { Arguments } from './command.js';
import { measuredFrom } from './correction.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { keepProfile, printerName, printerNames, profileFolder, readProfile, type PrinterProfile } from './printer-profile.js';
import { paperAndUnits } from './sheet-options.js';
import { usageError } from './usage-error.js';

const percent = (factor: number): string => `${fixed(factor * 100, 2)} %`;

const profileText = ({ name, paper, x, y, skewDeg }: PrinterProfile): string => {
  const skew = skewDeg === undefined ? '' : `, ${fixed(skewDeg, 2)}° out of square`;
  return `${name}: prints ${percent(x)} of true size across and ${percent(y)} along${skew} (measured on ${paper})\n`;
};

/** The profile that measures on a paper make, and what no correction mends. */
const profileFrom = (name: string, measured: MeasuredPrint, { paper, units }: { paper: Paper; units: Units }) => {
  const { correction, skewDeg, warnings } = printScale(measured, { nominal: nominalBars(paper, units), units });
  const profile: PrinterProfile = { name, paper: paper.name, units, measured, ...correction, ...(skewDeg === undefined ? {} : { skewDeg }) };
  return { profile, warnings };
};

const showAll = (io: Io): void => {
  const names = printerNames(io);
  if (names.length === 0) io.out(`No printer is kept in ${profileFolder(io)}. roundwright print-test draws a sheet to measure one by.\n`);
  for (const name of names) io.out(profileText(readProfile(name, io)));
};

const keep = (name: string, measured: MeasuredPrint, given: Arguments, io: Io): void => {
  const of = paperAndUnits(given);
  const { profile, warnings } = profileFrom(name, measured, of);
  const before = printerNames(io).includes(name) ? readProfile(name, io) : undefined;
  const file = keepProfile(profile, io);
  const { x, y } = nominalBars(of.paper, of.units);
  io.out(profileText(profile));
  if (before !== undefined) io.out(`In place of ${profileText(before)}The figures must come from a sheet drawn without --printer.\n`);
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
    showAll(io);
  } else if (measured === undefined) {
    io.out(profileText(readProfile(name, io)));
  } else {
    keep(name, measured, given, io);
  }
  return exitCodes.done;
};
