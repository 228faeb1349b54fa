import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { compile, layoutRequest } from '../../src/compile.js';
import { kinds } from '../../src/jigs/index.js';
import { fullSize } from '../../src/sheets/full-size.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { printTest } from '../../src/sheets/print-test.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { rectangle } from '../../src/geometry/shapes.js';
import { papers } from '../../src/units/paper.js';
import { writeSvg } from '../../src/writers/svg/write-svg.js';
import { testFont } from '../support/font.js';
import { corpus } from './corpus.js';
import { jigOf, plainDrawing, requestFor, setUpJig, slottedBoard } from './fixtures.js';

/*
 * Every page of a spec in seen/ was looked at as it is drawn now: where words and pictures stand is nothing that a closed form
 * decides. A page that differs is drawn and looked at again with `roundwright draw`; then
 * `npx vitest run --config .tools/vitest.config.ts test/sheets/seen-pages.test.ts -u` keeps it, and the commit says what changed.
 * A fingerprint says that a page has changed, never that it is right: figures and directions have tests of their own.
 */
const folder = new URL('./seen/', import.meta.url);
const specs = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

const fingerprints = (sheets: Iterable<Sheet>): string => [...sheets]
  .map((sheet) => `${sheet.code} | ${sheet.title} | ${createHash('sha256').update(writeSvg(sheet, testFont)).digest('hex').slice(0, 12)}\n`).join('');

test.each(specs)('the pages of %s are those that were looked at', async (file) => {
  const { spec, report, drawings } = compile({ text: readFileSync(new URL(file, folder), 'utf8'), file, kinds }, testFont);
  const request = layoutRequest(spec, report, drawings);
  const pages = [...layOut(request, testFont).sheets(), ...drawings.flatMap((jig) => fullSize(jig, request, testFont))];
  await expect(fingerprints(pages)).toMatchFileSnapshot(`seen/${file.replace('.yaml', '.pages.txt')}`);
});

test('the sheets of many outlines, some with blank middles, packed, tiled and mapped, are those that were looked at', async () => {
  const jigs = [...corpus.filter((_, i) => i % 4 === 0).map((drawing) => jigOf(drawing.name, [drawing])), setUpJig(), jigOf('long top', [slottedBoard(2700)])];
  const small = jigOf('offcuts', Array.from({ length: 30 }, (_, i) => plainDrawing(`piece-${i}`, [rectangle(0, 0, 31 + ((i * 37) % 83), 23 + ((i * 53) % 61))])));
  const request = requestFor([...jigs, small], { correction: { x: 1.003, y: 0.998 }, printer: 'shop' });
  await expect(fingerprints(layOut(request, testFont).sheets())).toMatchFileSnapshot('seen/outlines.txt');
});

test('the sheets that a printer is measured by are those that were looked at', async () => {
  const sheets = [
    printTest({ paper: papers['letter']!, units: 'inch' }, testFont),
    printTest({ paper: papers['a4']!, units: 'mm', correction: { x: 1.004, y: 0.997 }, printer: 'shop' }, testFont),
  ];
  await expect(fingerprints(sheets)).toMatchFileSnapshot('seen/print-test.txt');
});
