import type { JigDrawing } from '../drawing/drawing.js';
import { firstSheets } from './first-sheets.js';
import { jigsOn } from './packed-sheets.js';
import type { PageFrame } from './page-frame.js';
import { plainPage, type PackedPage, type Planned, type Setting, type SetUpPage } from './set-pages.js';
import { distinct } from './strip-words.js';
import type { TiledDrawing } from './tile-sheet.js';

/** Everything after the first sheets, in order. */
export interface Body {
  readonly packed: readonly PackedPage[];
  readonly tiles: readonly { readonly tiled: TiledDrawing; readonly pages: readonly Planned[] }[];
  readonly setUps: readonly SetUpPage[];
}

/** The pages after the first sheets, in order. */
export const bodyPages = (body: Body): Planned[] => [...body.packed, ...body.tiles.flatMap((t) => t.pages), ...body.setUps];

/** First and last of a run of pages. */
const span = (pages: readonly number[]): string => (pages.length > 1 ? `sheets ${pages[0]!} to ${pages.at(-1)!}` : `sheet ${pages[0]!}`);

/** For each jig, what of it is on which sheets, `before` sheets coming first. */
const contentRows = (jigs: readonly JigDrawing[], body: Body, before: number): [string, string][] => {
  const setUpsFrom = before + body.packed.length + body.tiles.reduce((n, t) => n + t.pages.length, 0);
  return jigs.map((jig) => {
    const packed = body.packed.flatMap(({ packed: { places } }, i) => {
      const names = places.flatMap(({ pattern }) => (pattern.jig === jig ? [pattern.drawing.title] : []));
      return names.length === 0 ? [] : [`sheet ${before + i + 1}: ${distinct(names).join(', ')}`];
    });
    const tiled = body.tiles.filter((t) => t.tiled.jig === jig).map(({ tiled: t }) => {
      const codes = t.plan.tiles.map(t.codeOf);
      return `${codes.length} sheets, ${codes[0]!} to ${codes.at(-1)!}: ${t.plan.drawing.title}`;
    });
    const setUps = body.setUps.flatMap((s, i) => (s.jig === jig ? [setUpsFrom + i + 1] : []));
    return [jig.title, [...packed, ...tiled, ...(setUps.length === 0 ? [] : [`${span(setUps)}: set-up`])].join('; ')];
  });
};

/** The sheets that open a set. */
export const openingPages = (setting: Setting, frame: PageFrame, body: Body, warnings: readonly string[]): Planned[] => {
  const { request, font } = setting;
  const tiled = body.tiles.map((t) => t.tiled);
  const rows = (before: number): [string, string][] => contentRows(request.jigs, body, before);
  return firstSheets({ tiled, rows, warnings }, frame, request, font)
    .map((items, i) => plainPage(setting, frame, { title: i === 0 ? 'Scale check and map' : 'Scale check and map, continued', items }));
};

/** Jigs by the number of the page that they first come on, `before` pages coming first. */
export const bookmarksOf = (body: Body, before: number): ReadonlyMap<number, readonly string[]> => {
  const pages: (readonly JigDrawing[])[] = [
    ...body.packed.map((p) => jigsOn(p.packed)),
    ...body.tiles.flatMap((t) => t.pages.map(() => [t.tiled.jig])),
    ...body.setUps.map((s) => [s.jig]),
  ];
  const seen = new Set<JigDrawing>();
  return new Map(pages.map((jigs, i) => {
    const fresh = jigs.filter((jig) => !seen.has(jig));
    fresh.forEach((jig) => { seen.add(jig); });
    return [before + i + 1, fresh.map((jig) => jig.title)];
  }));
};
