/** The tables of a TrueType file by tag: views into its bytes, nothing copied. */
export type SfntTables = ReadonlyMap<string, DataView>;

/** Reads the table directory of a TrueType file (OpenType 1.9, "Organization of an OpenType font"). */
export const readSfnt = (bytes: Uint8Array): SfntTables => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, DataView>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const entry = 12 + 16 * i;
    const tag = String.fromCharCode(...bytes.subarray(entry, entry + 4));
    tables.set(tag, new DataView(bytes.buffer, bytes.byteOffset + view.getUint32(entry + 8), view.getUint32(entry + 12)));
  }
  return tables;
};

/** A table that must be there. */
export const sfntTable = (tables: SfntTables, tag: string): DataView => {
  const table = tables.get(tag);
  if (table === undefined) throw new Error(`the font has no ${tag} table: only TrueType outlines can be embedded`);
  return table;
};

const padded = (length: number): number => (length + 3) & ~3;

const checksum = (bytes: Uint8Array): number => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + view.getUint32(i)) >>> 0;
  return sum;
};

/** Writes tables (tags in alphabetical order) as a TrueType file with its checksums. */
export const writeSfnt = (tables: readonly (readonly [tag: string, table: Uint8Array])[]): Uint8Array => {
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const start = 12 + 16 * tables.length;
  const out = new Uint8Array(tables.reduce((sum, [, table]) => sum + padded(table.length), start));
  const view = new DataView(out.buffer);
  view.setUint32(0, 0x00010000);
  [tables.length, 16 * power, Math.log2(power), 16 * (tables.length - power)].forEach((n, i) => view.setUint16(4 + 2 * i, n));
  let offset = start;
  tables.forEach(([tag, table], i) => {
    out.set(table, offset);
    const entry = 12 + 16 * i;
    [...tag].forEach((letter, k) => { out[entry + k] = letter.charCodeAt(0); });
    view.setUint32(entry + 4, checksum(out.subarray(offset, offset + padded(table.length))));
    view.setUint32(entry + 8, offset);
    view.setUint32(entry + 12, table.length);
    if (tag === 'head') view.setUint32(offset + 8, 0);
    offset += padded(table.length);
  });
  return out;
};
