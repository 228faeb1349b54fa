import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { compile, layoutRequest } from '../../src/compile.js';
import { boxHeight, boxWidth, type Box } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { kinds } from '../../src/jigs/index.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { pageFrame } from '../../src/sheets/page-frame.js';
import { writePdf } from '../../src/writers/pdf/write-pdf.js';
import { testFont } from '../support/font.js';
import { readPdf, type PdfPage } from '../support/read-pdf.js';

const cell = 8;

/** Share of a sheet's drawing area that lies under ink, taken by the boxes of its paths and words in cells of 8 mm. */
const fullness = ({ paths, texts }: PdfPage, area: Box): number => {
  const boxes = [
    ...paths.flatMap(({ subpaths }) => subpaths.map(pathBounds)),
    ...texts.map(({ at, size, width, turn }) =>
      Math.abs(Math.sin(turn)) > 0.5
        ? { x0: at.x - size, x1: at.x + size, y0: at.y - width, y1: at.y + width }
        : { x0: at.x, x1: at.x + width, y0: at.y - size, y1: at.y },
    ),
  ];
  const [columns, rows] = [Math.floor(boxWidth(area) / cell), Math.floor(boxHeight(area) / cell)];
  const isUsed = (i: number, k: number): boolean => {
    const c = { x0: area.x0 + i * cell, y0: area.y0 + k * cell };
    return boxes.some((b) => b.x1 >= c.x0 && b.x0 <= c.x0 + cell && b.y1 >= c.y0 && b.y0 <= c.y0 + cell);
  };
  const cells = Array.from({ length: columns }, (_, i) =>
    Array.from({ length: rows }, (_row, k) => isUsed(i, k)),
  ).flat();
  return cells.filter((used) => used).length / cells.length;
};

// As many sheets as the demos took when their pages were last looked at: fewer are welcome, more are to be looked at.
it.each([
  ['paddle-rack', 32],
  ['stick-stand', 20],
] as const)(
  'the demo %s is written on at most %d sheets, each but tiles a quarter full and more',
  async (name, most) => {
    const text = readFileSync(new URL(`../../templates-spec/${name}.yaml`, import.meta.url), 'utf8');
    const { spec, report, drawings } = compile({ text, file: name, kinds }, testFont);
    const set = layOut(layoutRequest(spec, report, drawings), testFont);
    const { pages } = await readPdf(await writePdf(set.sheets(), { title: name }, testFont));
    expect(pages.length).toBe(set.count);
    expect(pages.length).toBeLessThanOrEqual(most);
    const {
      paper,
      sheets: { margins },
      units,
    } = spec;
    const shares = pages.map((page) =>
      fullness(page, pageFrame(paper, margins, page.widthPt > page.heightPt, units).area),
    );
    // A tile is where the drawing is: no other sheet could take what is on it.
    for (const [i, share] of shares.entries())
      if (set.parts[i] !== 'tiles') expect(share, `sheet ${i + 1}`).toBeGreaterThan(0.25);
  },
  60_000,
);
