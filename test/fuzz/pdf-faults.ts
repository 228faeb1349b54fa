import { readPdf } from '../support/read-pdf.js';

const finite = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value !== 'object' || value === null || Object.values(value).every(finite);

/** Faults of one written PDF, as pdfjs finds them. */
export async function faultsOfPdf(bytes: Uint8Array): Promise<readonly string[]> {
  const { pages } = await readPdf(bytes);
  return [
    ...(pages.length === 0 ? ['no page'] : []),
    ...pages.flatMap(({ paths, texts }, i) =>
      paths.every(finite) && texts.every(finite) ? [] : [`page ${i + 1} holds a figure that is none`],
    ),
  ];
}
