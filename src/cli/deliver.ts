import { lstatSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { DrawnFile } from './drawn-files.js';
import { newPartName, removeParts } from './left-over.js';
import { setMark } from './swap-mark.js';
import { WriteError, writeErrorFrom, writing } from './write-error.js';
import { makeFolder, makeInnerFolder } from './write-file.js';

/** A file that is written whole, and where it belongs. */
interface Staged {
  readonly from: string;
  readonly file: DrawnFile;
  readonly to: string;
}

const stageFile = (stage: string, folder: string, file: DrawnFile, place: number): Staged => {
  const [from, to] = [join(stage, String(place)), join(folder, file.folder ?? '', file.name)];
  writing(to, () => writeFileSync(from, file.bytes, { flag: 'wx' }));
  return { from, file, to };
};

/** What would stop a rename midway is found before the first one. */
const refuseBlocked = (folder: string, staged: readonly Staged[]): void => {
  for (const { file, to } of staged) {
    if (file.folder !== undefined) makeInnerFolder(folder, file.folder);
    if (lstatSync(to, { throwIfNoEntry: false })?.isDirectory() === true)
      throw new WriteError(to, 'a folder of that name is in the way');
  }
};

const putInPlace = async (
  folder: string,
  staged: readonly Staged[],
  tidy: (written: readonly string[]) => void,
): Promise<void> => {
  const written = staged.map(({ to }) => to);
  const removeMark = await setMark(folder).catch((error: unknown) => {
    throw writeErrorFrom(folder, error);
  });
  for (const { from, to } of staged) writing(to, () => renameSync(from, to));
  tidy(written);
  removeMark();
};

/**
 * Writes the files of one draw, all or none: each into a hidden folder beside the place it belongs to, and only when the last
 * is whole are they renamed into place, behind a mark (`unfinished-draw.txt`) that stays if that is cut short. So whatever ends
 * a run, what lies in the folder is the old set, or the new one, or is marked. A link in a file's place is replaced, never
 * followed. `tidy` takes away what the new set makes stale. Gives the paths written; refuses with a `WriteError`.
 */
export const deliver = async (
  folder: string,
  files: AsyncIterable<DrawnFile>,
  tidy: (written: readonly string[]) => void,
): Promise<readonly string[]> => {
  makeFolder(folder);
  removeParts(folder);
  const stage = join(folder, newPartName());
  writing(folder, () => mkdirSync(stage));
  try {
    const staged: Staged[] = [];
    for await (const file of files) staged.push(stageFile(stage, folder, file, staged.length));
    refuseBlocked(folder, staged);
    await putInPlace(folder, staged, tidy);
    return staged.map(({ to }) => to);
  } finally {
    rmSync(stage, { recursive: true, force: true });
  }
};
