import { describe, expect, it } from 'vitest';
import type { Item, JigDrawing, Lettering, Shape } from '../../src/drawing/drawing.js';
import { itemBounds, itemsBounds } from '../../src/drawing/item-bounds.js';
import { letter } from '../../src/drawing/items.js';
import type { SetUp } from '../../src/drawing/set-up.js';
import { boxesMeet, growBox } from '../../src/geometry/box.js';
import { point } from '../../src/geometry/point.js';
import { rectangle } from '../../src/geometry/shapes.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { pageFrame } from '../../src/sheets/page-frame.js';
import { joinAlike } from '../../src/sheets/set-ups/join-alike.js';
import { sharedSetUpPages } from '../../src/sheets/set-ups/set-up-sheets.js';
import type { SetUpRequest } from '../../src/sheets/set-ups/sections.js';
import { papers } from '../../src/units/paper.js';
import { lengthOf } from '../../src/units/quantity.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor, tenMillimetres } from './fixtures.js';

const frame = pageFrame(papers['letter']!, tenMillimetres, false, 'mm');
const area = growBox(frame.area, -1);

const figures = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    code: `n${i}`,
    label: [`Figure ${i + 1}, a label that takes about half of a line of the page`],
    value: [lengthOf(10 + i)],
  }));
const step = (i: number, more = '') => ({
  code: `s${i}`,
  words: [
    `Step ${i + 1}: clamp, look along the blade, cut slowly to the line that is marked, turn the piece about and go on with the next one${more}.`,
  ],
});

/** An operation some 15 mm high and 7 more for each step; each is other work unless `same`. */
const operation = (name: string, steps: number, more: Partial<SetUp> = {}): SetUp => ({
  code: name,
  operation: `Do ${name}`,
  machine: `Machine of ${name}`,
  picture: plainDrawing('picture', []),
  pictureIs: 'true-size',
  pictureNote: [],
  numbers: [],
  tables: [],
  steps: Array.from({ length: steps }, (_, i) => step(i, ` of ${name}`)),
  cautions: [`Caution of ${name}.`],
  ...more,
});

const requestsOf = (setUps: readonly SetUp[], jig: JigDrawing = jigOf('block', [], { setUps })): SetUpRequest[] =>
  setUps.map((setUp) => ({ jig, setUp, findings: [], units: 'mm' }));
const pagesOf = (setUps: readonly SetUp[]) => sharedSetUpPages(requestsOf(setUps), frame, testFont);
const wordsOf = (items: readonly Item[]): Lettering[] =>
  items.filter((item): item is Lettering => item.kind === 'lettering');
const textOf = (items: readonly Item[]): string =>
  wordsOf(items)
    .map(({ text }) => text)
    .join(' ');

describe('operations that share sheets', () => {
  it('stand whole under one another, in order, a double rule between them', () => {
    const [page, ...more] = pagesOf([operation('saw', 3), operation('drill', 3), operation('plane', 3)]);
    expect(more).toEqual([]);
    expect(page!.map(({ setUp, continued }) => [setUp.code, continued])).toEqual([
      ['saw', false],
      ['drill', false],
      ['plane', false],
    ]);
    const boxes = page!.map(({ items }) =>
      itemsBounds(
        items.filter(({ part }) => part !== 'next-operation'),
        testFont,
      ),
    );
    const rules = page!.map(({ items }) =>
      items.filter((item): item is Shape => item.part === 'next-operation').map(({ path }) => path.start.y),
    );
    expect(rules.map((ys) => ys.length)).toEqual([0, 2, 2]);
    boxes.slice(1).forEach((box, i) => {
      for (const y of rules[i + 1]!) expect(y > boxes[i]!.y1 + 1 && y < box.y0 - 1).toBe(true);
    });
  });

  it('keep cautions and findings with their own operation, on its first sheet, before its steps', () => {
    const setUps = Array.from({ length: 7 }, (_, i) => operation(`work ${i}`, 9 + i));
    const requests = requestsOf(setUps).map((request, i) => ({
      ...request,
      findings: [
        {
          jig: 'block',
          code: 'x',
          severity: 'warn',
          about: { jig: 'block', operation: 'x' },
          measured: 1,
          limit: 1,
          message: `Found of work ${i}.`,
          remedy: '',
          would: [],
        } as const,
      ],
    }));
    const pages = sharedSetUpPages(requests, frame, testFont);
    setUps.forEach(({ code }, i) => {
      const [first] = pages.flat().filter(({ setUp }) => setUp.code === code);
      const text = textOf(first!.items);
      const order = [`Do ${code}`, 'Before you cut', `Found of work ${i}.`, `Caution of ${code}.`].map((words) =>
        text.indexOf(words),
      );
      expect(
        order.every((at, k) => at >= 0 && (k === 0 || at > order[k - 1]!)),
        text,
      ).toBe(true);
      for (const other of pages.flat().filter(({ setUp }) => setUp.code !== code))
        expect(textOf(other.items)).not.toContain(`of ${code}.`);
    });
  });

  it('take no more sheets than one each, say where they go on, lose nothing and print nothing over anything else', () => {
    const setUps = Array.from({ length: 9 }, (_, i) => operation(`work ${i}`, 4 + 3 * i, { numbers: figures(2 * i) }));
    const pages = pagesOf(setUps);
    expect(pages.length).toBeLessThan(setUps.flatMap((setUp) => pagesOf([setUp])).length);
    const all = textOf(pages.flat().flatMap(({ items }) => items));
    for (const { code, steps } of setUps)
      steps.forEach((_, i) => expect(all.split(`${i + 1}: clamp`).length, code).toBeGreaterThan(1));
    for (const { setUp, continued, items } of pages.flat())
      expect(textOf(items).includes(`block: ${setUp.operation}, continued`)).toBe(continued);
    for (const page of pages) {
      const boxes = page
        .flatMap(({ items }) => wordsOf(items))
        .map((word) => ({ text: word.text, box: itemBounds(word, testFont) }));
      for (const [i, a] of boxes.entries()) {
        expect(a.box.y1, a.text).toBeLessThanOrEqual(area.y1 + 1);
        for (const b of boxes.slice(i + 1))
          expect(boxesMeet(growBox(a.box, -0.4), b.box) ? [a.text, b.text] : []).toEqual([]);
      }
    }
  });

  it('never come apart where each fits a sheet and no sheet is saved', () => {
    // Two of about two thirds of a sheet: the second would go over the foot of the first sheet, and takes a sheet of its own.
    for (const steps of [14, 16, 18, 20])
      expect(
        pagesOf([operation('saw', steps), operation('drill', steps)]).map((page) =>
          page.map(({ continued }) => continued),
        ),
      ).toEqual([[false], [false]]);
  });
});

describe('a table that is printed where it fits', () => {
  const rows = Array.from({ length: 12 }, (_, i) => [[`${i}`], [lengthOf(i)]]);
  const ordinates = {
    code: 'ordinates',
    heading: ['Without a printer'],
    columns: [
      { code: 'a', head: 'Clock' },
      { code: 'b', head: 'To the line' },
    ],
    rows,
  };
  const printed = (steps: number, ifItFits: boolean): [number, boolean] => {
    const pages = pagesOf([operation('hollow', steps, { tables: [{ ...ordinates, ifItFits }] })]);
    return [pages.length, textOf(pages.flat().flatMap(({ items }) => items)).includes('Without a printer')];
  };

  it('is there where the sheet has the room, and else only where it is asked for', () => {
    expect(printed(3, true)).toEqual([1, true]);
    const full = Array.from({ length: 40 }, (_, i) => i).find((steps) => steps > 3 && !printed(steps, true)[1])!;
    expect(printed(full, true)).toEqual([1, false]);
    expect(printed(full, false)).toEqual([2, true]);
    // Nor does it send the next operation to a sheet of its own.
    const both = (steps: number) =>
      pagesOf([operation('hollow', 3, { tables: [{ ...ordinates, ifItFits: true }] }), operation('drill', steps)]);
    const most = Array.from({ length: 30 }, (_, i) => 30 - i).find((steps) => both(steps).length === 1)!;
    expect(
      textOf(
        both(most)
          .flat()
          .flatMap(({ items }) => items),
      ),
    ).not.toContain('Without a printer');
    expect(
      textOf(
        both(1)
          .flat()
          .flatMap(({ items }) => items),
      ),
    ).toContain('Without a printer');
  });
});

describe('joinAlike', () => {
  const slot = (name: string, width: number, more: Partial<SetUp> = {}): SetUp =>
    operation('slot', 2, {
      operation: `Cut ${name}`,
      numbers: [
        { code: 'width', label: ['Width'], value: [lengthOf(width)] },
        { code: 'depth', label: ['Depth'], value: [lengthOf(40)] },
      ],
      picture: { ...plainDrawing('picture', [rectangle(0, 0, width, 30)]) },
      ...more,
    });

  it('prints steps and cautions of like operations once, each figure with its own operation, each picture under its name', () => {
    const requests = requestsOf([slot('slot 1', 27), slot('slot 2', 29), operation('drill', 2)]);
    const joined = joinAlike(requests, 187, testFont);
    expect(joined.map(({ setUp }) => setUp.operation)).toEqual(['Cut slot 1; Cut slot 2', 'Do drill']);
    expect(joined[0]!.setUp.numbers.map(({ code }) => code)).toEqual(['depth']);
    const { columns, rows } = joined[0]!.differing!;
    expect([columns.map(({ head }) => head), rows]).toEqual([
      ['', 'Cut slot 1', 'Cut slot 2'],
      [[['Width'], [lengthOf(27)], [lengthOf(29)]]],
    ]);
    const text = textOf(
      sharedSetUpPages(joined, frame, testFont)
        .flat()
        .flatMap(({ items }) => items),
    );
    for (const once of ['Caution of slot.', '27 mm', '29 mm', '40 mm', 'Step 1: clamp'])
      expect([once, text.split(once).length - 1 - (once === 'Step 1: clamp' ? 1 : 0)]).toEqual([once, 1]);
    const names = wordsOf(joined[0]!.setUp.picture.items).map(({ text: name }) => name);
    expect(names).toEqual(['Cut slot 1', 'Cut slot 2']);
  });

  it('leaves apart what has other steps, other cautions, or belongs to another jig', () => {
    const other = jigOf('other', []);
    const apart = [
      slot('slot 1', 27),
      slot('slot 2', 29, { steps: [step(0)] }),
      slot('slot 3', 31, { cautions: ['Another.'] }),
    ];
    const requests = [...requestsOf(apart), { ...requestsOf([slot('slot 4', 33)], other)[0]! }];
    expect(joinAlike(requests, 187, testFont)).toEqual(requests);
  });
});

it('a picture is printed once in a set: with the set-up that shows it first', () => {
  const items = [...plainDrawing('joint', [rectangle(0, 0, 60, 40)]).items, letter(point(5, 20), 'THROAT')];
  const picture = { ...plainDrawing('joint', []), items };
  const jig = jigOf('brace', [{ ...picture, isPicture: true }, plainDrawing('wrap', [rectangle(0, 0, 50, 50)])], {
    setUps: [operation('drill', 2, { picture }), operation('drill far', 2, { picture })],
  });
  const sheets = [...layOut(requestFor([jig]), testFont).sheets()];
  expect(sheets.flatMap((sheet) => wordsOf(sheet.items)).filter(({ text }) => text === 'THROAT')).toHaveLength(1);
  expect(sheets.map((sheet) => textOf(sheet.items)).join(' ')).toContain('Picture: as for brace: Do drill.');
  // By itself, without set-ups, the picture is printed.
  expect(
    [...layOut(requestFor([{ ...jig, setUps: [] }]), testFont).sheets()]
      .flatMap((sheet) => wordsOf(sheet.items))
      .filter(({ text }) => text === 'THROAT'),
  ).toHaveLength(1);
});
