import type { JigDrawing } from '../drawing/drawing.js';
import { firstSheets } from './first-sheets.js';
import { numbersText } from './numbers-text.js';
import { jigsOn } from './packed-sheets.js';
import type { PageFrame } from './page-frame.js';
import { plainPage, tilePages, type PackedPage, type Planned, type Setting, type SetUpPage } from './set-pages.js';
import { distinct } from './strip-words.js';
import { tiledDrawing, type CutDrawing, type TiledDrawing } from './tile-sheet.js';

/** Everything after the first sheets, in order: packed patterns with the lengths of strips among them, drawings cut into sheets, set-ups. */
export interface Body {
  readonly packed: readonly PackedPage[];
  readonly cut: readonly CutDrawing[];
  readonly setUps: readonly SetUpPage[];
}

/** How many sheets the drawings take that are cut. */
const cutCount = ({ cut }: Body): number => cut.reduce((n, { plan }) => n + plan.tiles.length, 0);

/** The cut drawings with the numbers of their sheets, `before` sheets coming before the body. */
export const numberedDrawings = (body: Body, before: number): TiledDrawing[] => {
  let first = before + body.packed.length + 1;
  return body.cut.map((cut) => {
    const tiled = tiledDrawing(cut, first);
    first += cut.plan.tiles.length;
    return tiled;
  });
};

/** The pages after the first sheets, in order; `tiled` are the body's own cut drawings, numbered. */
export const bodyPages = (setting: Setting, body: Body, tiled: readonly TiledDrawing[]): Planned[] =>
  [...body.packed, ...tiled.flatMap((each) => tilePages(setting, each)), ...body.setUps];

/** What of a jig is on a sheet. */
interface Entry {
  readonly sheet: number;
  readonly name: string;
}

/** What of a jig is on which sheets, `before` sheets coming first. */
const entriesOf = (jig: JigDrawing, body: Body, tiled: readonly TiledDrawing[], before: number): Entry[] => {
  const setUpsFrom = before + body.packed.length + cutCount(body) + 1;
  return [
    ...body.packed.flatMap(({ packed: { places } }, i) => places.flatMap(({ pattern }) =>
      (pattern.jig === jig ? [{ sheet: before + i + 1, name: pattern.of ?? pattern.drawing.title }] : []))),
    ...tiled.filter((t) => t.jig === jig).flatMap(({ plan, codeOf }) => plan.tiles.map((tile) => ({ sheet: Number(codeOf(tile)), name: plan.drawing.title }))),
    ...body.setUps.flatMap(({ jigs }, i) => (jigs.includes(jig) ? [{ sheet: setUpsFrom + i, name: 'set-up' }] : [])),
  ];
};

/** Entries in words: each thing with the numbers of its sheets, things on the same sheets together. */
const entryWords = (entries: readonly Entry[]): string => {
  const sheets = new Map<string, string>();
  for (const name of distinct(entries.map((entry) => entry.name))) sheets.set(name, numbersText(entries.flatMap((entry) => (entry.name === name ? [entry.sheet] : []))));
  return distinct([...sheets.values()]).map((numbers) => `${numbers}: ${[...sheets].flatMap(([name, on]) => (on === numbers ? [name] : [])).join(', ')}`).join('; ');
};

/** For each jig, what of it is on which sheets, `before` sheets coming first. */
const contentRows = (jigs: readonly JigDrawing[], body: Body, before: number): [string, string][] => {
  const tiled = numberedDrawings(body, before);
  return jigs.map((jig) => [jig.title, entryWords(entriesOf(jig, body, tiled, before))]);
};

/** The sheets that open a set. */
export const openingPages = (setting: Setting, frame: PageFrame, body: Body, warnings: readonly string[]): Planned[] => {
  const { request, font } = setting;
  const contents = (before: number) => ({
    tiled: numberedDrawings(body, before), rows: contentRows(request.jigs, body, before), warnings,
  });
  return firstSheets(contents, frame, request, font)
    .map((items, i) => plainPage(setting, frame, { part: 'opening', title: i === 0 ? 'Scale check and map' : 'Scale check and map, continued', items }));
};

/** Jigs by the number of the page that they first come on, `before` pages coming first. */
export const bookmarksOf = (body: Body, before: number): ReadonlyMap<number, readonly string[]> => {
  const pages: (readonly JigDrawing[])[] = [
    ...body.packed.map((p) => jigsOn(p.packed)),
    ...body.cut.flatMap(({ jig, plan }) => plan.tiles.map(() => [jig])),
    ...body.setUps.map((s) => s.jigs),
  ];
  const seen = new Set<JigDrawing>();
  return new Map(pages.map((jigs, i) => {
    const fresh = jigs.filter((jig) => !seen.has(jig));
    fresh.forEach((jig) => { seen.add(jig); });
    return [before + i + 1, fresh.map((jig) => jig.title)];
  }));
};
