import { randomBytes } from 'node:crypto';
import { lstatSync, readdirSync, rmSync } from 'node:fs';
import { join, sep } from 'node:path';

const sheetName = /^\d{2,4}\.svg$/;
const partName = /^\.[0-9a-f]+\.roundwright-part$/;

/** A hidden name for what is not yet whole; nobody else's, on whatever machine. */
export const newPartName = (): string => `.${randomBytes(12).toString('hex')}.roundwright-part`;

/** No file is written for so long, ms: what is older was left by a run that was ended midway. */
const longestWrite = 3_600_000;

/** Takes away the half files, and folders of half sets, of earlier runs in a folder, as far as it may. No link is followed. */
export const removeParts = (folder: string): void => {
  try {
    for (const entry of readdirSync(folder, { withFileTypes: true }).filter(({ name }) => partName.test(name))) {
      const path = join(folder, entry.name);
      const written = lstatSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
      if (!entry.isSymbolicLink() && Date.now() - written > longestWrite) rmSync(path, { force: true, recursive: true });
    }
  } catch {
    // A folder that cannot be listed or swept can still be written into.
  }
};

/**
 * Takes away what an earlier, longer run left among the single sheets: `NN.svg` in the given folder that this run did not
 * write. Sheets of two runs in one folder would be taped up together. Nothing else is touched, and no link is followed.
 */
export const removeLeftOver = (folder: string, sheets: string, written: readonly string[]): void => {
  const inside = join(folder, sheets);
  if (!written.some((path) => path.startsWith(inside + sep)) || lstatSync(inside, { throwIfNoEntry: false })?.isDirectory() !== true) return;
  for (const entry of readdirSync(inside, { withFileTypes: true })) {
    const path = join(inside, entry.name);
    if (entry.isFile() && sheetName.test(entry.name) && !written.includes(path)) rmSync(path, { force: true });
  }
};
