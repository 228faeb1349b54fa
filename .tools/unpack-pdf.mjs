import { inflateSync } from 'node:zlib';

const marks = { stream: Buffer.from('stream'), end: Buffer.from('endstream') };

/** Where the stream data of an object begins: past the line end behind the keyword. */
const dataStart = (bytes, at) => at + marks.stream.length + (bytes[at + marks.stream.length] === 0x0d ? 2 : 1);

/** The number behind /Length in the dictionary right before a stream; the writer puts it there directly. */
const declaredLength = (dictionary) => {
  const found = /\/Length (\d+)(?! \d+ R)/.exec(dictionary);
  if (!found) throw new Error('a stream without a direct /Length');
  return Number(found[1]);
};

/**
 * A PDF with all its FlateDecode streams unpacked, and without what packing alone decides: stream lengths, byte offsets, and the
 * file's ID if it is made from them. Two files that draw the same give the same bytes. Reads what pdfkit writes: classic
 * cross-reference table, direct lengths.
 */
export const unpackedPdf = (bytes) => {
  const parts = [];
  let at = 0;
  for (;;) {
    const stream = bytes.indexOf('stream\n', at);
    if (stream < 0) break;
    const dictionary = bytes.toString('latin1', at, stream);
    const length = declaredLength(dictionary.slice(dictionary.lastIndexOf(' obj')));
    const start = dataStart(bytes, stream);
    const data = bytes.subarray(start, start + length);
    parts.push(Buffer.from(dictionary.replace(/\/Length \d+/g, '/Length'), 'latin1'), dictionary.includes('/FlateDecode') ? inflateSync(data) : data);
    at = bytes.indexOf(marks.end, start + length) + marks.end.length;
  }
  const rest = bytes.toString('latin1', at).replace(/^\d{10} \d{5} [nf] *$/gm, '').replace(/startxref\s+\d+/, 'startxref');
  return Buffer.concat([...parts, Buffer.from(rest, 'latin1')]);
};
