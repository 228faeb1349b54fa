import { readFileSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { quote } from '../errors/quote.js';
import { nearestOf } from './arguments.js';
import type { Io } from './io.js';
import { readReason } from './read-source.js';
import { usageError } from './usage-error.js';
import type { MeasuredPrint } from '../sheets/print-scale.js';
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

const isFactor = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value) && value > 0;

/** A profile by its name. Refuses one that is not there, with the nearest, and a file that has been spoilt. */
export const readProfile = (name: string, io: Io): PrinterProfile => {
  const file = fileOf(printerName(name), io);
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (error) {
    const names = printerNames(io);
    const allowed = names.length === 0 ? `roundwright printer ${name} --x-bar … --y-bar … measures it once` : names.join(', ');
    throw usageError(`there is no printer ${quote(name)} in ${profileFolder(io)}: ${readReason(error)}`, { allowed, ...nearestOf(name, names) });
  }
  const profile = parsed(text);
  if (profile === undefined) throw usageError(`${file} does not hold a printer's measures`, { allowed: `measure again: roundwright printer ${name} --x-bar … --y-bar …` });
  return profile;
};

const parsed = (text: string): PrinterProfile | undefined => {
  try {
    const profile = JSON.parse(text) as Partial<PrinterProfile> | null;
    return profile !== null && typeof profile.name === 'string' && isFactor(profile.x) && isFactor(profile.y) ? profile as PrinterProfile : undefined;
  } catch {
    return undefined;
  }
};

/** Keeps a profile, in the place of an earlier one of the same name; gives back the file's path. */
export const keepProfile = (profile: PrinterProfile, io: Io): string => {
  makeFolder(profileFolder(io));
  const file = fileOf(profile.name, io);
  writeFile(file, Buffer.from(`${JSON.stringify(profile, null, 2)}\n`));
  return file;
};
