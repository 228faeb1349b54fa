import { parse } from 'opentype.js/dist/opentype.mjs';
import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { calibrationSquare } from '../../src/drawing/calibration-square.js';
import type { Item } from '../../src/drawing/drawing.js';
import { filled, letter, shape } from '../../src/drawing/items.js';
import { lineStyles, type LineType } from '../../src/drawing/line-types.js';
import { ruleBar } from '../../src/drawing/rule-bar.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { line, polyline } from '../../src/geometry/shapes.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { papers } from '../../src/units/paper.js';
import { writePdf } from '../../src/writers/pdf/write-pdf.js';
import { testFont as font } from '../support/font.js';
import { readPdf } from '../support/read-pdf.js';

const p = (x: number, y: number) => ({ x, y });
const sheetOf = (items: readonly Item[], size: Partial<Sheet> = {}): Sheet =>
  ({ code: '1', title: 'sheet', width: 215.9, height: 279.4, items, ...size });
const write = (...sheets: Sheet[]) => writePdf(sheets, { title: 'brace saddle' }, font);
const readItems = async (items: readonly Item[]) => (await readPdf(await write(sheetOf(items)))).pages[0]!;

/** The bytes of every deflated stream in the file. */
const streams = (pdf: Uint8Array): Buffer[] => {
  const text = Buffer.from(pdf).toString('latin1');
  return [...text.matchAll(/stream\n([\s\S]*?)\nendstream/g)].map((m) => inflateSync(Buffer.from(m[1]!, 'latin1')));
};

describe('writePdf', () => {
  it('asks for true size, one side, the right tray; says its title and language', async () => {
    const { viewerPreferences, info } = await readPdf(await writePdf([sheetOf([])], { title: 'paddle rack) & ½', keywords: 'a, b' }, font));
    expect(viewerPreferences).toEqual({ PrintScaling: 'None', Duplex: 'Simplex', PickTrayByPDFSize: true, DisplayDocTitle: true });
    expect(info).toMatchObject({ Title: 'paddle rack) & ½', Keywords: 'a, b', Language: 'en' });
    expect(info).not.toHaveProperty('CreationDate');
  });

  // 72 pt = 25.4 mm: ISO 216 A4 is 595.27559 × 841.88976 pt; letter 612 × 792.
  it.each([['letter', 612, 792], ['legal', 612, 1008], ['tabloid', 792, 1224], ['a4', 595.275591, 841.889764], ['a3', 841.889764, 1190.551181]])(
    'gives a page of %s its true size', async (name, widthPt, heightPt) => {
      const [page] = (await readPdf(await write(sheetOf([], papers[name]!)))).pages;
      expect(page!.widthPt).toBeCloseTo(widthPt, 5);
      expect(page!.heightPt).toBeCloseTo(heightPt, 5);
    },
  );

  it('keeps the 100 mm of the calibration square within 1 µm on A4', async () => {
    const [page] = (await readPdf(await write(sheetOf(calibrationSquare(p(17.123456, 33.98765), 'mm'), papers['a4']!)))).pages;
    const { x0, y0, x1, y1 } = pathBounds(page!.paths[0]!.subpaths[0]!);
    for (const [got, true_] of [[x1 - x0, 100], [y1 - y0, 100], [x0, 17.123456], [y0, 33.98765]] as const) {
      expect(Math.abs(got - true_)).toBeLessThan(1e-3);
    }
  });

  it('strokes every line type with its pen width, dashes and phase, in mm', async () => {
    const types = Object.keys(lineStyles) as LineType[];
    const { paths } = await readItems(types.map((type, i) => ({ ...shape(type, line(p(10, 5 * i), p(90, 5 * i))), phase: 0.7 })));
    expect(paths).toHaveLength(types.length);
    types.forEach((type, i) => {
      const { width, dash } = lineStyles[type];
      expect(paths[i]!.width).toBeCloseTo(width, 6);
      expect(paths[i]!.dash).toHaveLength(dash.length);
      dash.forEach((d, k) => expect(paths[i]!.dash[k]).toBeCloseTo(d, 4));
      expect(paths[i]!.phase).toBeCloseTo(dash.length === 0 ? 0 : 0.7, 6);
    });
  });

  it('fills what is filled', async () => {
    const head = polyline([p(10, 10), p(13, 11), p(13, 9)], true);
    const { paths } = await readItems([filled('dimension', head), shape('dimension', head)]);
    expect(paths.map((s) => s.paint)).toEqual(['fill', 'stroke']);
  });

  it('sets text that reads back, as wide as it was measured and where it was put', async () => {
    const lines = ['1 3⁄8″ (34.9 mm)', 'AVATAR To Yield', 'Ø 24.5° × ½ − φ', '17⁄64'];
    const { texts } = await readItems(lines.map((text, i) => letter(p(20, 20 + 10 * i), text, { height: 3.5 })));
    expect(texts.map((t) => t.text)).toEqual(lines);
    texts.forEach((t, i) => {
      expect(t.width).toBeCloseTo(font.width(lines[i]!, 3.5), 3);
      expect(t.at.x).toBeCloseTo(20, 4);
      expect(t.at.y).toBeCloseTo(20 + 10 * i, 4);
      expect(t.size * font.capHeight).toBeCloseTo(3.5, 3);
    });
  });

  it('turns and anchors text', async () => {
    const { texts } = await readItems([
      letter(p(50, 50), 'upwards', { turn: -Math.PI / 2 }), letter(p(50, 50), 'middle', { anchor: 'middle', turn: 0.3 }), letter(p(50, 50), 'end', { anchor: 'end' }),
    ]);
    expect(texts.map((t) => Number(t.turn.toFixed(6)))).toEqual([-1.570796, 0.3, 0]);
    const half = font.width('middle', 2.5) / 2;
    expect(texts[1]!.at.x).toBeCloseTo(50 - half * Math.cos(0.3), 3);
    expect(texts[1]!.at.y).toBeCloseTo(50 - half * Math.sin(0.3), 3);
    expect(texts[2]!.at.x).toBeCloseTo(50 - 2 * font.width('end', 2.5) / 2, 3);
  });

  it('clips lettering that a tile cuts through, and nothing after it', async () => {
    const clip = { x0: 20, y0: 30, x1: 58, y1: 60 };
    const { texts } = await readItems([{ ...letter(p(20, 50), 'cut'), clip }, letter(p(20, 70), 'whole')]);
    expect(texts[0]!.clip!.x1).toBeCloseTo(58, 4);
    expect(texts[0]!.clip!.y0).toBeCloseTo(30, 4);
    expect(texts[1]!.clip).toBeUndefined();
  });

  it('keeps hostile words as words', async () => {
    const words = ['</svg> & )( \\ endstream', '\u202Eabc', '😀', 'w'.repeat(10000)];
    const file = await readPdf(await writePdf([sheetOf(words.map((w) => letter(p(10, 10), w)), { bookmark: words[0]! })], { title: words[0]! }, font));
    expect(file.pages[0]!.texts.map((t) => t.text)).toEqual([words[0], 'abc', '\uFFFD', words[3]]);
    expect(file.outline).toEqual([{ title: words[0], page: 1 }]);
    expect(file.info).toMatchObject({ Title: words[0] });
  });

  it('leads each bookmark to its page', async () => {
    const { outline } = await readPdf(await write(sheetOf([]), sheetOf([], { bookmark: 'brace saddle' }), sheetOf([]), sheetOf([], { bookmark: 'Ø top' })));
    expect(outline).toEqual([{ title: 'brace saddle', page: 2 }, { title: 'Ø top', page: 4 }]);
  });

  it('embeds a font file with the outlines of what is set, compound glyphs with their parts, and no others', async () => {
    const embedded = streams(await write(sheetOf([letter(p(10, 10), 'Aé')]))).find((s) => s.subarray(0, 4).equals(Buffer.from([0, 1, 0, 0])))!;
    const whole = parse(Uint8Array.from(font.bytes).buffer);
    // Glyphs keep their numbers, so the whole font's character map says where to look in the subset's loca table.
    const outlineLength = (id: number): number => {
      const view = new DataView(embedded.buffer, embedded.byteOffset, embedded.byteLength);
      const tables = new Map(Array.from({ length: view.getUint16(4) }, (_, i) =>
        [embedded.toString('latin1', 12 + 16 * i, 16 + 16 * i), view.getUint32(20 + 16 * i)] as const));
      return view.getUint32(tables.get('loca')! + 4 * id + 4) - view.getUint32(tables.get('loca')! + 4 * id);
    };
    for (const sign of ['A', 'é', 'e']) expect(outlineLength(whole.charToGlyphIndex(sign))).toBeGreaterThan(0);
    for (const sign of ['B', 'f', 'ñ']) expect(outlineLength(whole.charToGlyphIndex(sign))).toBe(0);
    expect(embedded.length).toBeLessThan(font.bytes.length / 4);
  });

  it('holds what pages repeat once: a sheet with two bars costs under 1 KB more after the first two', async () => {
    const bars = [...ruleBar(p(20, 250), { axis: 'x', length: 152.4 }), ...ruleBar(p(205, 250), { axis: 'y', length: 203.2 })];
    const sheets = (count: number) => Array.from({ length: count }, (_, i) => sheetOf([...bars, letter(p(20, 20), `sheet ${i}`)]));
    const file = await write(...sheets(10));
    expect((file.length - (await write(...sheets(3))).length) / 7).toBeLessThan(1024);
    const { pages } = await readPdf(file);
    const strokes = pages.map((page) => page.paths.reduce((sum, path) => sum + path.subpaths.length, 0));
    expect(new Set(strokes).size).toBe(1);
    const last = pathBounds(pages[9]!.paths.at(-1)!.subpaths.at(-1)!);
    const first = pathBounds(pages[0]!.paths.at(-1)!.subpaths.at(-1)!);
    for (const side of ['x0', 'y0', 'x1', 'y1'] as const) expect(last[side]).toBeCloseTo(first[side], 6);
  });

  it('writes the same bytes for the same sheets, and another ID for others', async () => {
    const make = (text: string) => write(sheetOf([...calibrationSquare(p(20, 20), 'mm'), letter(p(20, 200), text)]));
    const id = (pdf: Uint8Array) => /\/ID \[<([0-9a-f]{32})>/.exec(Buffer.from(pdf).toString('latin1'))![1];
    expect(Buffer.from(await make('a')).equals(Buffer.from(await make('a')))).toBe(true);
    expect(id(await make('a'))).not.toBe(id(await make('b')));
  });

  it('takes sheets one after another from a generator, making none before it is asked for', async () => {
    const made: number[] = [];
    const sheets = function* () { for (let i = 0; i < 3; i++) { made.push(i); yield sheetOf([letter(p(10, 10), `${i}`)]); } };
    const pending = writePdf(sheets(), { title: 'x' }, font);
    expect(made.length).toBeLessThan(3);
    expect((await readPdf(await pending)).pages).toHaveLength(3);
  });

  it('takes a page of 5 080 mm and refuses a larger one and a coordinate that is not a number', async () => {
    const [page] = (await readPdf(await write(sheetOf([], { width: 5080, height: 300 })))).pages;
    expect(page!.widthPt).toBeCloseTo(14400, 3);
    await expect(write(sheetOf([], { width: 5080.01 }))).rejects.toThrow(/5080/);
    await expect(write(sheetOf([shape('edge', line(p(0, 0), p(NaN, 1)))]))).rejects.toThrow(/coordinate/);
  });
});
