import { createHash } from 'node:crypto';
import PDFDocument from 'pdfkit';
import type { Font } from '../../drawing/font.js';
import { cleanText } from '../../drawing/clean-text.js';
import type { Path } from '../../geometry/path.js';
import { GeometryError } from '../../errors/geometry-error.js';
import type { Sheet } from '../../sheets/sheet.js';
import { pointsPerMm } from '../../units/units.js';
import { embedFont, type PdfObject } from './embed-font.js';
import { pageContent } from './page-content.js';
import { keepRepeats } from './repeats.js';
import type { UsedGlyphs } from './used-glyphs.js';

/** What a PDF says of itself. */
export interface PdfMeta {
  readonly title: string;
  readonly subject?: string;
  readonly keywords?: string;
}

/** ISO 32000-1, annex C: no page over 14 400 units (5 080 mm) a side; a smaller page than 3 units is none. */
const longestPt = 14400;
const shortestPt = 3;

/** What pdfkit has but does not declare. */
interface Internals {
  _root: { data: Record<string, unknown> };
  _id: Uint8Array;
  endMetadata: () => void;
  outline: { addItem(title: string, options: { readonly fit: boolean }): unknown };
  page: { fonts: Record<string, unknown>; xobjects: Record<string, unknown>; dictionary: { data: Record<string, unknown> } };
}

/** Ask for true size, one side, and the tray that holds this paper (ISO 32000-1, 12.2, table 150). */
const viewerPreferences = { PrintScaling: 'None', Duplex: 'Simplex', PickTrayByPDFSize: true, DisplayDocTitle: true };

const newDocument = (meta: PdfMeta) => {
  const said = (text: string | undefined): string | undefined => (text === undefined ? undefined : cleanText(text));
  const info = { Title: said(meta.title)!, Subject: said(meta.subject), Keywords: said(meta.keywords) };
  const given = Object.fromEntries(Object.entries(info).filter(([, text]) => text !== undefined));
  const document = new PDFDocument({
    autoFirstPage: false, pdfVersion: '1.7', lang: 'en', margin: 0, font: null as unknown as string,
    // pdfkit derives its first ID from this date; neither stays in the file.
    info: { Producer: 'roundwright', Creator: 'roundwright', ...given, CreationDate: new Date(0) },
  });
  delete document.info.CreationDate;
  const internals = document as unknown as Internals;
  // pdfkit's XMP packet holds the date and the title unescaped: broken XML for `&`. The Info dictionary says the same.
  internals.endMetadata = () => undefined;
  const preferences = document.ref(viewerPreferences) as unknown as PdfObject;
  internals._root.data['ViewerPreferences'] = preferences;
  return { document, internals };
};

const sizePt = (sheet: Sheet): [number, number] => {
  const size: [number, number] = [sheet.width * pointsPerMm, sheet.height * pointsPerMm];
  if (size.every((s) => s >= shortestPt && s <= longestPt + 1e-6)) return size;
  throw new GeometryError(
    'page-size-out-of-reach',
    `sheet ${sheet.code} is ${sheet.width} × ${sheet.height} mm: a PDF page has sides of 1.06 to 5080 mm`,
    { width: sheet.width, height: sheet.height },
  );
};

/** A form in the frame of the pages: mm, y down. Its box need only be large enough for any page. */
const makeForm = (content: string, font: PdfObject, make: (data: object) => PdfObject): PdfObject => {
  const form = make({ Type: 'XObject', Subtype: 'Form', BBox: [-5080, -5080, 10160, 10160], Resources: { Font: { F: font } } });
  form.end(content);
  return form;
};

/** Opens a page of the sheet's size with its boxes, font, bookmark and millimetre frame. */
const openPage = (sheet: Sheet, { document, internals }: ReturnType<typeof newDocument>, font: PdfObject): void => {
  const size = sizePt(sheet);
  document.addPage({ size, margin: 0 });
  internals.page.fonts['F'] = font;
  Object.assign(internals.page.dictionary.data, { CropBox: [0, 0, ...size], TrimBox: [0, 0, ...size] });
  for (const title of [sheet.bookmark ?? []].flat()) internals.outline.addItem(cleanText(title), { fit: true });
  // pdfkit has put the origin at the top left with y down; this brings points to millimetres, at full precision.
  document.addContent(`${pointsPerMm} 0 0 ${pointsPerMm} 0 0 cm`);
};

/**
 * Sheets as one PDF, made page by page as the sheets come. True page sizes, no print scaling, one-sided; the font embedded
 * with its words selectable; a bookmark where a sheet has one. Shapes within 0.05 µm, arcs as cubics. No dates, and an ID
 * made from the content: the same sheets give the same bytes under one version of zlib. Refuses a page over 5 080 mm a
 * side and numbers that are not finite.
 */
export const writePdf = async (sheets: Iterable<Sheet> | AsyncIterable<Sheet>, meta: PdfMeta, font: Font): Promise<Uint8Array> => {
  const target = newDocument(meta);
  const { document, internals } = target;
  const make = (data: object): PdfObject => document.ref(data) as unknown as PdfObject;
  const chunks: Uint8Array[] = [];
  document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => { document.on('end', resolve); document.on('error', reject); });
  const fontObject = make({});
  const used: UsedGlyphs = new Map();
  const repeats = keepRepeats((content) => makeForm(content, fontObject, make), (name, form) => { internals.page.xobjects[name] = form; });
  const shared = { font, used, repeats, written: new WeakMap<Path, string>() };
  const digest = createHash('sha256').update(JSON.stringify(meta));
  for await (const sheet of sheets) {
    openPage(sheet, target, fontObject);
    const content = pageContent(sheet.items, shared);
    document.addContent(content);
    digest.update(`${sheet.width} ${sheet.height}\n${content}`);
  }
  embedFont(font, used, fontObject, make);
  internals._id = digest.digest().subarray(0, 16);
  document.end();
  await ended;
  return Buffer.concat(chunks);
};
