import { createHash } from 'node:crypto';
import type { Font, Glyph } from '../../drawing/font.js';
import { readSfnt, sfntTable } from './sfnt.js';
import { subsetFont } from './subset-font.js';
import { hex, type UsedGlyphs } from './used-glyphs.js';

/** A PDF object under construction, as pdfkit hands it out. */
export interface PdfObject {
  readonly data: unknown;
  end(chunk?: Uint8Array | string): void;
}

type MakeObject = (data: object) => PdfObject;

const utf16 = (text: string): string => Array.from({ length: text.length }, (_, i) => hex(text.charCodeAt(i))).join('');

/** The map by which a reader turns glyphs back into words (ISO 32000-1, 9.10.3), at most 100 entries a block. */
const toUnicode = (glyphs: readonly Glyph[]): string => {
  const blocks: string[] = [];
  for (let i = 0; i < glyphs.length; i += 100) {
    const block = glyphs.slice(i, i + 100).map((g) => `<${hex(g.id)}> <${utf16(g.text)}>`);
    blocks.push(`${block.length} beginbfchar`, ...block, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin', '12 dict begin', 'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def', '/CMapType 2 def',
    '1 begincodespacerange', '<0000> <ffff>', 'endcodespacerange',
    ...blocks, 'endcmap', 'CMapName currentdict /CMap defineresource pop', 'end', 'end',
  ].join('\n');
};

/** Six capitals that name this choice of glyphs, as ISO 32000-1, 9.6.4 asks of a subset. */
const subsetTag = (subset: Uint8Array): string =>
  [...createHash('sha256').update(subset).digest().subarray(0, 6)].map((b) => String.fromCharCode(65 + (b % 26))).join('');

const perMille = (font: Font) => {
  const tables = readSfnt(font.bytes);
  const head = sfntTable(tables, 'head');
  const hhea = sfntTable(tables, 'hhea');
  const k = 1000 / head.getUint16(18);
  return {
    FontBBox: [36, 38, 40, 42].map((at) => head.getInt16(at) * k),
    Ascent: hhea.getInt16(4) * k,
    Descent: hhea.getInt16(6) * k,
    CapHeight: font.capHeight * 1000,
  };
};

/**
 * Embeds the glyphs used as a composite TrueType font with identity encoding (ISO 32000-1, 9.7) into `target`, whose
 * object the pages already refer to. Widths are the very advances that the layout measured with; the words can be selected.
 */
export const embedFont = (font: Font, used: UsedGlyphs, target: PdfObject, make: MakeObject): void => {
  const glyphs = [...used.values()].sort((a, b) => a.id - b.id);
  const subset = subsetFont(font.bytes, used.keys());
  const name = `${subsetTag(subset)}+${font.name}`;
  const finished = (data: object, chunk?: Uint8Array | string): PdfObject => {
    const object = make(data);
    object.end(chunk);
    return object;
  };
  const FontDescriptor = finished({
    Type: 'FontDescriptor', FontName: name, Flags: 4, ItalicAngle: 0, StemV: 80, ...perMille(font),
    FontFile2: finished({ Length1: subset.length }, subset),
  });
  const descendant = finished({
    Type: 'Font', Subtype: 'CIDFontType2', BaseFont: name, CIDToGIDMap: 'Identity', FontDescriptor, DW: 0,
    CIDSystemInfo: { Registry: new String('Adobe'), Ordering: new String('Identity'), Supplement: 0 },
    W: glyphs.flatMap((g) => [g.id, [g.advance * 1000]]),
  });
  Object.assign(target.data as object, {
    Type: 'Font', Subtype: 'Type0', BaseFont: name, Encoding: 'Identity-H',
    DescendantFonts: [descendant], ToUnicode: finished({}, toUnicode(glyphs)),
  });
  target.end();
};
