import { expect, test } from 'vitest';
import { compile, layoutRequest } from '../../src/compile.js';
import { kinds } from '../../src/jigs/index.js';
import { fullSize } from '../../src/sheets/full-size.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { printTest } from '../../src/sheets/print-test.js';
import { parsePaper } from '../../src/units/parse-paper.js';
import { writeSvg } from '../../src/writers/svg/write-svg.js';
import { testFont } from '../support/font.js';
import { inkOutside } from '../support/ink-outside.js';

// A printer keeps clear of the margins: what stands beyond is lost without a word. Measured on the written SVG, by true outlines and pens.
const spec = (
  units: string,
  margins: string,
): string => `title: ÅÉÜ Ĝrande pièce À É Ñ Ž with a very long title that goes on and on so that it must be wrapped somewhere
revision: ÄÖÜ
units: ${units}
sheets: { margins: ${margins} }
rounds: { pöst Ž: 35 mm, brace: 28.6 mm }
jigs:
  - { kind: saddle-cope, name: ÉÀÅ brace saddle with a name that is quite long and goes on, branch: brace, main: pöst Ž, angle: 64, pin: { diameter: 10 mm }, centres: 300 mm, farEnd: { main: pöst Ž, angle: 50 } }
  - { kind: drill-guide, name: guide É, from: ÉÀÅ brace saddle with a name that is quite long and goes on }
  - { kind: v-cradle, name: Ĝ cradle, holds: [brace, pöst Ž], carrier: { sharpAngle: 20 } }
  - { kind: rack-top, name: narrow tall bœard É, board: { length: 1900 mm, width: 60 mm, thickness: 20 mm }, recesses: [{ circle: 30 mm, at: [400 mm, 30 mm], depth: 5 mm }] }
`;

const compiled = (units: string, margins: string, paper: string) =>
  compile(
    {
      text: spec(units, margins),
      file: 'piece.yaml',
      kinds,
      adjust: (read) => ({ ...read, paper: parsePaper(paper, 'mm')! }),
    },
    testFont,
  );

const cases = [
  ['letter', 'inch', 4],
  ['letter', 'mm', 17],
  ['a4', 'mm', 10],
  ['a2', 'inch', 6],
  ['190x270mm', 'mm', 4],
  ['600x900mm', 'mm', 10],
] as const;

test.each(cases)('no ink of a set on %s in %s stands in margins of %d mm', (paper, units, margin) => {
  const { spec: read, report, drawings } = compiled(units, `${margin} mm`, paper);
  const set = layOut(layoutRequest(read, report, drawings), testFont);
  for (const sheet of set.sheets()) {
    const live = { x0: margin, y0: margin, x1: sheet.width - margin, y1: sheet.height - margin };
    expect([sheet.code, inkOutside(writeSvg(sheet, testFont), live, 0.02)]).toEqual([sheet.code, []]);
  }
});

test('no ink of a full-size page stands beyond its edge, however long the title', () => {
  const { spec: read, report, drawings } = compiled('mm', '10 mm', 'a4');
  for (const jig of drawings) {
    for (const page of fullSize(
      { ...jig, title: `${jig.title}, ${'a title of many words and '.repeat(6)}so on` },
      layoutRequest(read, report, drawings),
      testFont,
    )) {
      expect(
        inkOutside(writeSvg({ ...page, code: '1' }, testFont), { x0: 0, y0: 0, x1: page.width, y1: page.height }, 0),
      ).toEqual([]);
    }
  }
});

test.each(['letter', 'a4', 'a2', '180x250mm', '5080x5080mm'])(
  'no ink of the print test on %s stands in the margins',
  (name) => {
    for (const units of ['inch', 'mm'] as const) {
      const sheet = printTest({ paper: parsePaper(name, 'mm')!, units, correction: { x: 1, y: 1 } }, testFont);
      expect(
        inkOutside(writeSvg(sheet, testFont), { x0: 10, y0: 10, x1: sheet.width - 10, y1: sheet.height - 10 }, 0.02),
      ).toEqual([]);
    }
  },
);
