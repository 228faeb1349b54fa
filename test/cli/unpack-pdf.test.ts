import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';

/** A PDF's bones: one packed stream, a cross-reference table with its offsets. */
const pdf = (content: string, level: number): Buffer => {
  const data = deflateSync(content, { level });
  const head = Buffer.from(`%PDF-1.7\n1 0 obj\n<<\n/Length ${data.length}\n/Filter /FlateDecode\n>>\nstream\n`);
  const tail = Buffer.from(`\nendstream\nendobj\nxref\n0 2\n0000000000 65535 f \n0000000009 00000 n \ntrailer\n<<>>\nstartxref\n${head.length + data.length}\n%%EOF\n`);
  return Buffer.concat([head, data, tail]);
};

const long = 'q 1 0 0 1 72 72 cm 0 0 m 100 0 l S Q\n'.repeat(200);

test('unpackedPdf tells what is drawn from how it is packed', async () => {
  const path = '../../.tools/unpack-pdf.mjs';
  const { unpackedPdf } = await import(path) as { unpackedPdf: (bytes: Buffer) => Buffer };
  expect(pdf(long, 1).equals(pdf(long, 9))).toBe(false);
  expect(unpackedPdf(pdf(long, 1)).equals(unpackedPdf(pdf(long, 9)))).toBe(true);
  expect(unpackedPdf(pdf(long, 9)).equals(unpackedPdf(pdf(long.replace('100', '101'), 9)))).toBe(false);
});
