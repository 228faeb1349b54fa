import { readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { quote } from '../errors/quote.js';
import { UserError } from '../errors/user-error.js';
import { nearestOf } from './arguments.js';
import type { Io } from './io.js';
import { readRegularText } from './read-source.js';
import { usageError } from './usage-error.js';
import { nominalBars, printScale, type MeasuredPrint } from '../sheets/print-scale.js';
import { parsePaper } from '../units/parse-paper.js';
import type { Paper } from '../units/paper.js';
import type { Units } from '../units/units.js';
import { makeFolder, writeFile } from './write-file.js';

/** What was measured on a printer's test sheet, kept by its name. Factors are measured ÷ nominal; 1 prints true. */
export interface PrinterProfile {
  readonly name: string;
  /** The paper that was measured, and how its bars are ruled. */
  readonly paper: string;
  readonly units: Units;
  /** mm as measured with a rule. */
  readonly measured: MeasuredPrint;
  readonly x: number;
  readonly y: number;
  /** Degrees by which the printed square leans, where its diagonals were measured. */
  readonly skewDeg?: number;
}

/** Where profiles are kept: `$XDG_CONFIG_HOME/roundwright/printers`, or `~/.config/…` (XDG Base Directory Specification: a relative path counts as unset). */
export const profileFolder = ({ env }: Io): string => {
  const config = env['XDG_CONFIG_HOME'];
  const base = config !== undefined && isAbsolute(config) ? config : join(env['HOME'] ?? homedir(), '.config');
  return join(base, 'roundwright', 'printers');
};

/** A printer's name as given, checked: it becomes a file name, so only letters, figures, `-` and `_`, at most 60. */
export const printerName = (text: string): string => {
  if (/^[\p{L}\p{N}][\p{L}\p{N}_-]{0,59}$/u.test(text)) return text;
  throw usageError(`${quote(text)} cannot name a printer`, { allowed: 'letters, figures, - and _, at most 60, e.g. office' });
};

const fileOf = (name: string, io: Io): string => join(profileFolder(io), `${name.toLowerCase()}.json`);

/** Names of the printers that are kept, in order. */
export const printerNames = (io: Io): readonly string[] => {
  try {
    return readdirSync(profileFolder(io)).filter((file) => file.endsWith('.json')).map((file) => file.slice(0, -'.json'.length)).sort();
  } catch {
    return [];
  }
};

/** No profile is longer, bytes. */
const longestProfile = 64 * 1024;

/** A profile by its name. Refuses one that is not there, with the nearest, and a file that holds none or measures that no printer makes. */
export const readProfile = (name: string, io: Io): PrinterProfile => {
  const file = fileOf(printerName(name), io);
  const again = `measure again: roundwright printer ${name} --x-bar … --y-bar …`;
  let text: string;
  try {
    text = readRegularText(file, longestProfile);
  } catch (error) {
    const names = printerNames(io);
    const reason = error instanceof Error ? error.message : String(error);
    if (names.includes(name.toLowerCase())) throw usageError(`${file} cannot be read: ${reason}`, { allowed: again });
    const allowed = names.length === 0 ? `roundwright printer ${name} --x-bar … --y-bar … measures it once` : names.join(', ');
    throw usageError(`there is no printer ${quote(name)} in ${profileFolder(io)}: ${reason}`, { allowed, ...nearestOf(name, names) });
  }
  const profile = parsed(file, text);
  if (profile === undefined || profile.name.toLowerCase() !== name.toLowerCase()) throw usageError(`${file} does not hold what was measured on ${quote(name)}`, { allowed: again });
  return profile;
};

const isMeasure = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** What was measured, where it is as it was written: two bars and, or not, two diagonals. */
const measuredIn = (value: unknown): MeasuredPrint | undefined => {
  const { xBar, yBar, diagonals } = (value ?? {}) as Record<string, unknown>;
  if (!isMeasure(xBar) || !isMeasure(yBar)) return undefined;
  if (diagonals === undefined) return { xBar, yBar };
  const [first, second, ...more] = Array.isArray(diagonals) ? diagonals as unknown[] : [];
  return isMeasure(first) && isMeasure(second) && more.length === 0 ? { xBar, yBar, diagonals: [first, second] } : undefined;
};

/** A profile from its file's text: worked out afresh from the paper and the measures, which alone are believed, within the limits of a first measuring. */
const parsed = (file: string, text: string): PrinterProfile | undefined => {
  let kept: Record<string, unknown>;
  try {
    kept = Object(JSON.parse(text)) as Record<string, unknown>;
  } catch {
    return undefined;
  }
  const { name, units } = kept;
  const paper = typeof kept['paper'] === 'string' ? parsePaper(kept['paper'], 'mm') : undefined;
  const measured = measuredIn(kept['measured']);
  if (typeof name !== 'string' || (units !== 'inch' && units !== 'mm') || paper === undefined || measured === undefined) return undefined;
  try {
    return profileFrom(name, measured, { paper, units }).profile;
  } catch (error) {
    throw error instanceof UserError ? new UserError(file, error.mistakes) : error;
  }
};

/** The profile that measures on a paper make, and what no correction mends. Refuses measures that no printer makes. */
export const profileFrom = (name: string, measured: MeasuredPrint, { paper, units }: { paper: Paper; units: Units }): { readonly profile: PrinterProfile; readonly warnings: readonly string[] } => {
  const { correction, skewDeg, warnings } = printScale(measured, { nominal: nominalBars(paper, units), units });
  return { profile: { name, paper: paper.name, units, measured, ...correction, ...(skewDeg === undefined ? {} : { skewDeg }) }, warnings };
};

/** Keeps a profile, in the place of an earlier one of the same name; gives back the file's path. */
export const keepProfile = (profile: PrinterProfile, io: Io): string => {
  makeFolder(profileFolder(io));
  const file = fileOf(profile.name, io);
  writeFile(file, Buffer.from(`${JSON.stringify(profile, null, 2)}\n`));
  return file;
};
