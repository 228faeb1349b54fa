import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { readPdfPage, type PdfPath, type PdfText } from './read-pdf-page.js';

export type { PdfPath, PdfText } from './read-pdf-page.js';

export interface PdfPage {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly paths: readonly PdfPath[];
  readonly texts: readonly PdfText[];
}

export interface PdfFile {
  readonly pages: readonly PdfPage[];
  readonly viewerPreferences: Readonly<Record<string, unknown>>;
  /** Titles of the bookmarks and the page (from 1) that each leads to. */
  readonly outline: readonly { readonly title: string; readonly page: number }[];
  readonly info: Readonly<Record<string, unknown>>;
}

/**
 * Reads a PDF with pdfjs, which shares nothing with the writer: page sizes, what is painted and set, in mm from the top left
 * of each page with y down. pdfjs keeps path coordinates in single precision: 0.06 µm at 1 m, 0.25 µm at 5 m.
 */
export const readPdf = async (bytes: Uint8Array): Promise<PdfFile> => {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0, disableFontFace: true, useSystemFonts: false }).promise;
  try {
    const pages: PdfPage[] = [];
    for (let n = 1; n <= document.numPages; n++) {
      const page = await document.getPage(n);
      const [x0, y0, x1, y1] = page.view as [number, number, number, number];
      const k = 25.4 / (72 / page.userUnit);
      const { fnArray, argsArray } = await page.getOperatorList();
      pages.push({ widthPt: x1 - x0, heightPt: y1 - y0, ...readPdfPage(fnArray, argsArray, [k, 0, 0, -k, -x0 * k, y1 * k]) });
      page.cleanup();
    }
    const outline = await Promise.all(((await document.getOutline()) ?? []).map(async ({ title, dest }) =>
      ({ title, page: 1 + await document.getPageIndex((dest as [{ num: number; gen: number }])[0]) })));
    const viewerPreferences = ((await document.getViewerPreferences()) ?? {}) as Record<string, unknown>;
    const { info } = await document.getMetadata();
    return { pages, viewerPreferences, outline, info: info as Record<string, unknown> };
  } finally {
    await document.destroy();
  }
};
