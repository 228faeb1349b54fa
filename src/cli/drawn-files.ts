import type { Report } from '../compile.js';
import type { Font } from '../drawing/font.js';
import { fullSize } from '../sheets/full-size.js';
import type { SheetSet } from '../sheets/lay-out.js';
import type { LayoutRequest } from '../sheets/layout-request.js';
import type { Sheet } from '../sheets/sheet.js';
import { fileName } from '../spec/file-name.js';
import { writePdf, type PdfMeta } from '../writers/pdf/write-pdf.js';
import { writeSvg } from '../writers/svg/write-svg.js';
import type { Formats } from './formats.js';
import type { Io } from './io.js';
import { withProgress } from './progress.js';
import type { SheetNumbers } from './sheet-numbers.js';

/** A file to be written: its path inside the folder, at most one folder deep, and its bytes. */
export interface DrawnFile {
  readonly folder?: string;
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Everything that a draw of one spec puts on disk comes from here. */
export interface Drawn {
  readonly report: Report;
  readonly request: LayoutRequest;
  readonly set: SheetSet;
  readonly font: Font;
  readonly formats: Formats;
  readonly only: SheetNumbers | undefined;
  readonly io: Io;
}

const text = (content: string): Uint8Array => Buffer.from(content, 'utf8');

/** `report.json`: the same object as `check --json`. */
export const reportFile = (report: Report): DrawnFile => ({ name: 'report.json', bytes: text(`${JSON.stringify(report, null, 2)}\n`) });

/** The folder of the single sheets of one paper. */
export const sheetFolder = ({ paper }: LayoutRequest): string => `sheets-${paper.name}`;

const meta = ({ request: { title, revision, digest } }: Drawn, what: string): PdfMeta => ({
  title: `${title}, ${what}`, subject: revision === '' ? `spec ${digest}` : `revision ${revision}, spec ${digest}`,
});

/** The sheets asked for, each with its place in the set, counted from 1. */
function* numbered({ set, only, io }: Drawn): Generator<readonly [number, Sheet]> {
  let number = 0;
  for (const sheet of withProgress(set.sheets(), set.count, 'sheets', io)) {
    number += 1;
    if (only === undefined || only.has(number)) yield [number, sheet];
  }
}

function* sheetsOf(drawn: Drawn): Generator<Sheet> {
  for (const [, sheet] of numbered(drawn)) yield sheet;
}

async function* sheetFiles(drawn: Drawn): AsyncGenerator<DrawnFile> {
  const { formats, only, set, font } = drawn;
  const folder = sheetFolder(drawn.request);
  if (formats.pdf) {
    const part = only === undefined ? '' : `-${only.text}`;
    yield { name: `${folder}${part}.pdf`, bytes: await writePdf(sheetsOf(drawn), meta(drawn, 'sheets'), font) };
  }
  if (!formats.sheetSvg) return;
  const digits = Math.max(2, String(set.count).length);
  for (const [number, sheet] of numbered(drawn)) {
    yield { folder, name: `${String(number).padStart(digits, '0')}.svg`, bytes: text(writeSvg(sheet, font)) };
  }
}

/** File names of the jigs' canvases. A further page has its number behind two dashes, which no jig's own name makes. */
const canvasName = (stem: string, page: number): string => `${stem}${page === 0 ? '' : `--${page + 1}`}.svg`;

async function* jigFiles(drawn: Drawn): AsyncGenerator<DrawnFile> {
  const { request, formats, font } = drawn;
  for (const jig of request.jigs) {
    const pages = fullSize(jig, request, font);
    const name = fileName(jig.jig) ?? jig.kind;
    if (formats.jigSvg) {
      for (const [index, page] of pages.entries()) yield { name: canvasName(name, index), bytes: text(writeSvg(page, font)) };
    }
    if (formats.pdf) yield { name: `${name}-full.pdf`, bytes: await writePdf(pages, meta(drawn, jig.title), font) };
  }
}

/**
 * The files of one draw, made one after another as they are written: the sheets, then each jig by itself, then the report.
 * With `only`, some of the sheets and nothing else.
 */
export async function* drawnFiles(drawn: Drawn): AsyncGenerator<DrawnFile> {
  if (drawn.request.jigs.length > 0) yield* sheetFiles(drawn);
  if (drawn.only !== undefined) return;
  yield* jigFiles(drawn);
  yield reportFile(drawn.report);
}
