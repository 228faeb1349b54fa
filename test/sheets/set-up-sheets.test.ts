import { describe, expect, it } from 'vitest';
import type { Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { itemsBounds } from '../../src/drawing/item-bounds.js';
import { letter, shape } from '../../src/drawing/items.js';
import type { SetUp } from '../../src/drawing/set-up.js';
import { table } from '../../src/drawing/table.js';
import { boxHeight, boxWidth, boxesMeet, growBox, type Box } from '../../src/geometry/box.js';
import { point } from '../../src/geometry/point.js';
import { rectangle } from '../../src/geometry/shapes.js';
import { pageFrame } from '../../src/sheets/page-frame.js';
import { setUpSheets } from '../../src/sheets/set-ups/set-up-sheets.js';
import { papers } from '../../src/units/paper.js';
import { lengthOf } from '../../src/units/quantity.js';
import { testFont } from '../support/font.js';
import { plainDrawing, setUpJig, tenMillimetres } from './fixtures.js';

const frame = pageFrame(papers['letter']!, tenMillimetres, false, 'mm');
const area = growBox(frame.area, -1);
const [width, height] = [boxWidth(area), boxHeight(area)];
const jig = setUpJig();
const [plain] = jig.setUps as [SetUp];
const bare: SetUp = { ...plain, numbers: [], tables: [], steps: [], cautions: [], pictureNote: [], picture: plainDrawing('picture', []) };

const pagesOf = (more: Partial<SetUp>): readonly (readonly Item[])[] => setUpSheets({ jig, setUp: { ...bare, ...more }, findings: [], units: 'mm' }, frame, testFont);
const wordsOf = (items: readonly Item[]): Lettering[] => items.filter((item): item is Lettering => item.kind === 'lettering');
const withText = (items: readonly Item[], text: string): Lettering => wordsOf(items).find((w) => w.text === text)!;
const textOf = (pages: readonly (readonly Item[])[]): string => pages.flatMap(wordsOf).map((w) => w.text).join(' ');

/** A picture that is one rectangle, or that and a word within it. */
const picture = (w: number, h: number, word = true) => ({
  ...plainDrawing('picture', []), items: [shape('edge', rectangle(5, 9, w, h), 'frame'), ...(word ? [letter(point(5 + w / 2, 9 + h / 2), 'A', { height: 2.5 })] : [])],
});
const framed = (pages: readonly (readonly Item[])[]): Box => itemsBounds(pages.flat().filter((item): item is Shape => item.kind === 'shape' && item.part === 'frame'), testFont);
/** How much smaller a rectangle `w` wide came out; its stroke is half a millimetre or less. */
const scaleOf = (pages: readonly (readonly Item[])[], w: number): number => boxWidth(framed(pages)) / w;

describe('the picture of a set-up', () => {
  it('is set in true size where the page has room for it, and says nothing of scale', () => {
    const pages = pagesOf({ picture: picture(120, 80), pictureIs: 'true-size', pictureNote: ['From above.'] });
    expect(scaleOf(pages, 120)).toBeCloseTo(1, 1);
    expect(textOf(pages)).toContain('From above.');
    expect(textOf(pages)).not.toContain('Not to scale');
    expect(textOf(pagesOf({ picture: picture(120, 80), pictureIs: 'not-to-scale', pictureNote: ['From above.'] }))).toContain('Not to scale. From above.');
  });

  it('without words is made as small as its room: the width, or 0.45 of the height', () => {
    const wide = pagesOf({ picture: picture(3 * width, 20, false) });
    expect(scaleOf(wide, 3 * width)).toBeCloseTo(1 / 3, 2);
    const tall = pagesOf({ picture: picture(20, height, false) });
    expect(boxHeight(framed(tall)) / height).toBeCloseTo(0.45, 2);
    expect(textOf(tall)).toContain('Not to scale.');
  });

  it('with words is made no smaller than leaves them 1.8 mm high, unless the page itself is too small', () => {
    const tall = pagesOf({ picture: picture(20, height) });
    expect(boxHeight(framed(tall)) / height).toBeCloseTo(0.72, 2);
    expect(withText(tall.flat(), 'A').height).toBeCloseTo(1.8, 6);
    // Its words are scaled with it.
    const half = pagesOf({ picture: picture(2 * width, 20) });
    expect(scaleOf(half, 2 * width)).toBeCloseTo(0.5, 2);
    expect(withText(half.flat(), 'A').height).toBeCloseTo(2.5 * scaleOf(half, 2 * width), 1);
    // No taller than 0.8 of the page.
    const taller = pagesOf({ picture: picture(20, 2 * height) });
    expect(boxHeight(framed(taller)) / height).toBeCloseTo(0.8, 2);
    // As small as the room wants where that is no smaller than it may be.
    const little = pagesOf({ picture: picture(20, 0.5 * height) });
    expect(boxHeight(framed(little)) / height).toBeCloseTo(0.45, 2);
    expect(withText(little.flat(), 'A').height).toBeCloseTo(2.25, 1);
  });
});

describe('the numbers of a set-up', () => {
  const numbers = (count: number) => Array.from({ length: count }, (_, i) => ({ code: `n${i}`, label: [`Figure ${i + 1}`], value: [lengthOf(10 + i)] }));
  const isBeside = (pages: readonly (readonly Item[])[]): boolean => withText(pages.flat(), 'Figure 1').at.x > framed(pages).x1;

  it('stand right of the picture where there are 75 mm for them, else under it', () => {
    for (const [room, beside] of [[76, true], [74, false]] as const) {
      const pages = pagesOf({ picture: picture(width - 8 - room, 60), numbers: numbers(4) });
      expect(isBeside(pages)).toBe(beside);
      const first = withText(pages.flat(), 'Figure 1');
      if (beside) expect(first.at.x - framed(pages).x1).toBeGreaterThan(7.5);
      else expect(first.at.y).toBeGreaterThan(framed(pages).y1);
    }
  });

  it('stand under it where they are more than 24', () => {
    expect(isBeside(pagesOf({ picture: picture(60, 60), numbers: numbers(24) }))).toBe(true);
    expect(isBeside(pagesOf({ picture: picture(60, 60), numbers: numbers(25) }))).toBe(false);
  });

  it('stand under it where they are taller than 0.6 of the page', () => {
    const long = (count: number) => numbers(count).map((n, i) => ({ ...n, label: [i === 0 ? 'Figure 1' : `Figure ${i + 1} of what is set, of that and of more that is set, and how it is told on the machine`] }));
    const tall = long(20);
    const rows = tall.map(({ label }) => [label[0]!, '100 mm (3 15⁄16″)']);
    expect(table({ at: point(0, 0), rows, width: width - 60 - 8 }, testFont).height).toBeGreaterThan(0.6 * height);
    expect(isBeside(pagesOf({ picture: picture(60, 60), numbers: tall }))).toBe(false);
  });

  it('and all else of the page lie over nothing', () => {
    const pages = pagesOf({ ...plain, picture: picture(90, 60), numbers: numbers(12) });
    for (const page of pages) {
      const boxes = wordsOf(page).map((w) => ({ text: w.text, box: itemsBounds([w], testFont) }));
      for (const [i, a] of boxes.entries()) for (const b of boxes.slice(i + 1)) expect(boxesMeet(growBox(a.box, -0.2), b.box) ? [a.text, b.text] : []).toEqual([]);
    }
  });
});

describe('a table of a set-up', () => {
  const rows = (count: number) => Array.from({ length: count }, (_, i) => [String(i + 1), `height of ${1000 + i}`] as const);
  const columns = ['Turn', 'Height'];
  const tableOf = (count: number, names = columns) => ({ tables: [{ code: 't', heading: ['Ordinates'], columns: names.map((head) => ({ code: head, head })), rows: rows(count).map((cells) => cells.map((cell) => [cell])) }] });
  const heads = (pages: readonly (readonly Item[])[], head = 'Turn'): Lettering[] => pages.flatMap(wordsOf).filter((w) => w.text === head);
  const natural = (count: number, names = columns): number => table({ at: point(0, 0), columns: names, rows: rows(count), width }, testFont).width;
  const heightsIn = (pages: readonly (readonly Item[])[]): number[] => pages.flatMap(wordsOf).flatMap((w) => { const found = /^height of (\d+)/.exec(w.text); return found === null ? [] : [Number(found[1])]; });

  it('of eight rows and more is set in as many parts side by side as the width holds, three at most, in order', () => {
    expect(Math.floor((width + 6) / (natural(25) + 6))).toBeGreaterThanOrEqual(3);
    const pages = pagesOf(tableOf(25));
    expect(heads(pages)).toHaveLength(3);
    const across = heads(pages).map(({ at }) => at.x);
    // Parts of one width with 6 mm between: the last ends where the page does.
    across.slice(1).forEach((x, i) => expect(x - across[i]!).toBeCloseTo((width + 6) / 3, 9));
    expect(heightsIn(pages)).toEqual(Array.from({ length: 25 }, (_, i) => 1000 + i));
    expect(heads(pagesOf(tableOf(7)))).toHaveLength(1);
    expect(heads(pagesOf(tableOf(8)))).toHaveLength(3);
    expect(heightsIn(pagesOf(tableOf(9)))).toHaveLength(9);
  });

  it('has two parts, or one, where a longer head leaves no room for more', () => {
    for (const [parts, fewer] of [[3, 2], [2, 1]] as const) {
      const named = (count: number): string[] => ['Turn', 'i'.repeat(count)];
      // The longest head with which so many fit: natural widths and 6 mm between within the page.
      const most = Array.from({ length: 400 }, (_, count) => count).filter((count) => parts * natural(9, named(count)) + (parts - 1) * 6 <= width).at(-1)!;
      expect(heads(pagesOf(tableOf(9, named(most))))).toHaveLength(parts);
      expect(heads(pagesOf(tableOf(9, named(most + 1))))).toHaveLength(fewer);
    }
  });

  it('breaks over pages, its head on each, where its parts would be taller than 180 mm', () => {
    const pages = pagesOf(tableOf(150));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(itemsBounds(page, testFont).y1).toBeLessThanOrEqual(frame.area.y1 + 0.5);
    expect(heightsIn(pages)).toEqual(Array.from({ length: 150 }, (_, i) => 1000 + i));
    expect(heads(pages).length).toBeGreaterThanOrEqual(pages.length);
  });
});

describe('the cautions of a set-up', () => {
  it('stand on the first page, before the steps, where the steps need several', () => {
    const steps = Array.from({ length: 60 }, (_, i) => ({ code: `s${i}`, words: [`Step ${i + 1}: set, clamp, look along the blade, and cut slowly to the line that is marked; then turn the piece about and go on with the next.`] }));
    const pages = pagesOf({ steps, cautions: ['Keep clear of the blade.'] });
    expect(pages.length).toBeGreaterThan(1);
    const [page] = pages as [readonly Item[]];
    expect(withText(page, 'Keep clear of the blade.').at.y).toBeLessThan(withText(page, 'Steps').at.y);
    // Before them too where all is on one page: over them, or in the column to their left.
    const one = pagesOf({ steps: steps.slice(0, 3), cautions: ['Keep clear of the blade.'] });
    expect(one).toHaveLength(1);
    const [caution, title] = [withText(one[0]!, 'Keep clear of the blade.').at, withText(one[0]!, 'Steps').at];
    expect(caution.y < title.y || caution.x < title.x).toBe(true);
  });

  it('stand whole within their frame', () => {
    const [page] = pagesOf({ cautions: ['Keep clear of the blade.', 'Wear something over the eyes, and over the ears as well where the machine is loud or runs for long at one time.'] }) as [readonly Item[]];
    const frames = page.filter((item): item is Shape => item.kind === 'shape' && item.part === 'cautions').map((item) => itemsBounds([item], testFont));
    expect(frames).toHaveLength(2);
    const inner = growBox(frames[0]!, -1);
    const words = wordsOf(page).filter((w) => /Keep|Wear|loud|long|Cautions|–/.test(w.text)).map((w) => itemsBounds([w], testFont));
    expect(words.length).toBeGreaterThan(4);
    for (const box of words) expect(box.x0 >= inner.x0 && box.x1 <= inner.x1 && box.y0 >= inner.y0 && box.y1 <= inner.y1).toBe(true);
  });
});
