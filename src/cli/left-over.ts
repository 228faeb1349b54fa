import { lstatSync, readdirSync, rmSync } from 'node:fs';
import { join, sep } from 'node:path';

const sheetName = /^\d{2,4}\.svg$/;

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
