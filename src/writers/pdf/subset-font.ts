import { readSfnt, sfntTable, writeSfnt } from './sfnt.js';

/** Tables that a PDF needs of an embedded TrueType font (ISO 32000-1, 9.9, table 126), alphabetical. */
const kept = ['cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'prep'] as const;

const bytesOf = (view: DataView): Uint8Array => new Uint8Array(view.buffer, view.byteOffset, view.byteLength);

/** Where each glyph starts in `glyf`, with one more entry for the end. */
const glyphOffsets = (loca: DataView, long: boolean): number[] =>
  Array.from({ length: loca.byteLength / (long ? 4 : 2) }, (_, i) => (long ? loca.getUint32(4 * i) : 2 * loca.getUint16(2 * i)));

/** The glyphs that a compound glyph is put together from; none for a simple one. Flags as in the `glyf` table's specification. */
const components = (glyph: DataView): number[] => {
  if (glyph.byteLength === 0 || glyph.getInt16(0) >= 0) return [];
  const found: number[] = [];
  let at = 10;
  for (let flags = 0x20; (flags & 0x20) !== 0;) {
    flags = glyph.getUint16(at);
    found.push(glyph.getUint16(at + 2));
    at += 4 + ((flags & 0x01) !== 0 ? 4 : 2) + ((flags & 0x08) !== 0 ? 2 : (flags & 0x40) !== 0 ? 4 : (flags & 0x80) !== 0 ? 8 : 0);
  }
  return found;
};

/**
 * The font with the outlines of only those glyphs (glyph 0 and the parts of compound ones added). Glyphs keep their
 * numbers, so nothing else needs rewriting; the emptied tables compress to almost nothing. Only TrueType outlines.
 */
export const subsetFont = (font: Uint8Array, glyphs: Iterable<number>): Uint8Array => {
  const tables = readSfnt(font);
  const glyf = sfntTable(tables, 'glyf');
  const offsets = glyphOffsets(sfntTable(tables, 'loca'), sfntTable(tables, 'head').getInt16(50) === 1);
  const glyph = (id: number): DataView =>
    new DataView(glyf.buffer, glyf.byteOffset + offsets[id]!, offsets[id + 1]! - offsets[id]!);

  const wanted = new Set([0, ...glyphs]);
  for (const id of wanted) for (const part of components(glyph(id))) wanted.add(part);

  const loca = new DataView(new ArrayBuffer(4 * offsets.length));
  const outlines: Uint8Array[] = [];
  let end = 0;
  for (let id = 0; id + 1 < offsets.length; id++) {
    if (wanted.has(id)) {
      outlines.push(bytesOf(glyph(id)));
      end += glyph(id).byteLength;
    }
    loca.setUint32(4 * (id + 1), end);
  }
  const head = Uint8Array.from(bytesOf(sfntTable(tables, 'head')));
  new DataView(head.buffer).setInt16(50, 1);
  const changed = new Map([['glyf', Buffer.concat(outlines)], ['loca', bytesOf(loca)], ['head', head]]);
  return writeSfnt(kept.flatMap((tag) => {
    const table = changed.get(tag) ?? (tables.has(tag) ? bytesOf(sfntTable(tables, tag)) : undefined);
    return table === undefined ? [] : [[tag, table] as const];
  }));
};
