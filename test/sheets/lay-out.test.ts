import { describe, expect, it } from 'vitest';
import { boxContains, growBox, type Box } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { circle, rectangle } from '../../src/geometry/shapes.js';
import { point } from '../../src/geometry/point.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import type { Lettering, Shape } from '../../src/drawing/drawing.js';
import type { Finding } from '../../src/errors/finding.js';
import { UserError } from '../../src/errors/user-error.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { pageFrame } from '../../src/sheets/page-frame.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { printTest } from '../../src/sheets/print-test.js';
import { papers } from '../../src/units/paper.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor, setUpJig, slottedBoard, tenMillimetres } from './fixtures.js';

const jigs = [jigOf('rack top', [slottedBoard()]), setUpJig(), jigOf('ring', [plainDrawing('hoop', [circle(point(0, 0), 300)])])];
const request = requestFor(jigs, { findings: [{ jig: 'rack top', code: 'land-thin', severity: 'warn', measured: 18, limit: 19, about: { jig: 'rack top', operation: 'cut-slots' }, would: [], message: 'The land is 18 mm.', remedy: 'A pitch of 241 mm would do.' }] });
const sheetsOf = (of = request): Sheet[] => [...layOut(of, testFont).sheets()];
const lettering = (sheet: Sheet): Lettering[] => sheet.items.filter((i) => i.kind === 'lettering');
const words = (sheet: Sheet): string => lettering(sheet).map((l) => l.text).join(' ');
const part = (sheet: Sheet, name: string): Shape => sheet.items.find((i): i is Shape => i.kind === 'shape' && i.part === name)!;

/** The sheets of the drawing cut first, second, …: those whose place in the set the plan gives. */
const tilesOf = (drawing: number): Sheet[] => {
  const { tiled } = layOut(request, testFont);
  const from = sheetsOf().findIndex((s) => s.title.endsWith(`${tiled[drawing]!.jig.jig}: ${tiled[drawing]!.plan.drawing.title}`));
  return sheetsOf().slice(from, from + tiled[drawing]!.plan.tiles.length);
};

/** The ink of lettering, by its glyphs. */
const glyphs = (item: Lettering): Box[] => testFont.outlines(item.text, item.height).map(pathBounds)
  .map((b) => {
    const shift = { start: 0, middle: -0.5, end: -1 }[item.anchor] * testFont.width(item.text, item.height);
    return { x0: b.x0 + item.at.x + shift, x1: b.x1 + item.at.x + shift, y0: b.y0 + item.at.y, y1: b.y1 + item.at.y };
  });

describe('layOut', () => {
  it('numbers every sheet of a set, large and in words, and knows how many there are', () => {
    const set = layOut(request, testFont);
    const sheets = [...set.sheets()];
    expect(sheets).toHaveLength(set.count);
    sheets.forEach((sheet, i) => {
      expect(sheet.code).toBe(`${i + 1}`);
      expect(lettering(sheet).filter((l) => l.part === 'sheet-code').map((l) => l.text)).toEqual([`${i + 1}`]);
      expect(words(sheet)).toContain(`${i + 1} of ${set.count}`);
    });
  });

  it('gives the same sheets each time', () => {
    const set = layOut(request, testFont);
    expect([...set.sheets()]).toEqual([...set.sheets()]);
  });

  it('puts on every tile title, digest, station in both units, what to trim and lay over, diameters, line rule and cautions', () => {
    for (const sheet of tilesOf(0)) {
      const text = words(sheet);
      for (const said of ['Paddle rack for the livery', 'rev. B', '4f1a09c2', 'letter, mm', 'Station of the left', 'post 34.9 mm (1 3⁄8″)', 'true edge is the centre of the line', 'Stop the bit before lifting']) {
        expect({ code: sheet.code, said, there: text.includes(said) }).toEqual({ code: sheet.code, said, there: true });
      }
      expect(text).toMatch(/Station of the left (edge: at the left end|seam: [\d.]+ mm \([\d ⁄]+″\) from the left end)\. Top of the drawing: [\d.]+ mm \([\d ⁄]+″\) above the spine\./);
      expect(text).not.toMatch(/(edge|end|datum|spine|\d) (Assumed|Trim|Print|Cautions|Station|Sheet \d+ comes)/);
      expect(text).toMatch(/lay it over sheet \d+\.|Sheet \d+ comes over the/);
    }
  });

  it('prints the station of a sheet’s left seam as it lies from the datum', () => {
    const set = layOut(request, testFont);
    const [first] = set.tiled;
    const tile = first!.plan.tiles[3]!;
    const sheet = [...set.sheets()].find((s) => s.code === first!.codeOf(tile))!;
    const said = /Station of the left seam: ([\d.]+) mm/.exec(words(sheet))![1]!;
    expect(Math.abs(Number(said) - tile.core.x0)).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  it('names the neighbours of a tile', () => {
    const second = tilesOf(0)[1]!;
    const number = Number(second.code);
    const named = lettering(second).filter((l) => /of-sheet|-sheet$/.test(l.part ?? '')).map((l) => [l.part, l.text]);
    expect(named).toEqual([['left-of-sheet', `${number - 1}`], ['right-of-sheet', `${number + 1}`]]);
    expect(words(second)).toContain(`Trim the right edge, lay it over sheet ${number + 1}. Sheet ${number - 1} comes over the left edge.`);
  });

  it('keeps all ink of every sheet inside the live area, bars and square at their length', () => {
    for (const correction of [{ x: 1, y: 1 }, { x: 0.98, y: 1.02 }]) {
      for (const sheet of sheetsOf({ ...request, correction })) {
        const live = { x0: 10, y0: 10, x1: sheet.width - 10, y1: sheet.height - 10 };
        for (const item of sheet.items) {
          const box = item.kind === 'lettering' && item.clip !== undefined ? item.clip : itemBounds(item, testFont);
          expect({ code: sheet.code, item: boxContains(growBox(live, 0.6), box) ? 'inside' : item }).toEqual({ code: sheet.code, item: 'inside' });
        }
        const [x, y] = sheet.width < sheet.height ? [correction.x, correction.y] : [correction.y, correction.x];
        const [xBar, yBar] = [pathBounds(part(sheet, 'x-bar').path), pathBounds(part(sheet, 'y-bar').path)];
        expect(((xBar.x1 - xBar.x0) * x) % 10).toBeCloseTo(0, 9);
        expect(((yBar.y1 - yBar.y0) * y) / 10).toBeCloseTo(Math.round(((yBar.y1 - yBar.y0) * y) / 10), 9);
        expect((yBar.y1 - yBar.y0) * y).toBeGreaterThanOrEqual(150 - 1e-9);
      }
    }
  });

  it('corrects the calibration square so that it measures 100 mm when printed', () => {
    const [first] = sheetsOf({ ...request, correction: { x: 1.01, y: 0.985 }, printer: 'office' });
    const b = pathBounds(part(first!, 'calibration-square').path);
    expect((b.x1 - b.x0) * 1.01).toBeCloseTo(100, 9);
    expect((b.y1 - b.y0) * 0.985).toBeCloseTo(100, 9);
    expect(words(first!)).toContain('Corrected for printer office: x × 0.9901, y × 1.0152');
  });

  it('keeps the words of the strip off one another, however long the titles are', () => {
    const long = 'A rack for eleven paddles, two canoes and a very long jetty pole '.repeat(30);
    const many = jigs.map((j) => ({ ...j, title: `${j.title} ${long}`, assumed: [long, long], cautions: [long, long, long, long] }));
    for (const turn of ['portrait', 'landscape'] as const) {
      const wishes = { ...request.wishes, turn };
      for (const sheet of sheetsOf({ ...request, wishes, title: long, revision: long, jigs: many })) {
        const frame = pageFrame(papers['letter']!, tenMillimetres, turn === 'landscape', 'mm');
        const inStrip = lettering(sheet).filter((l) => l.at.y > frame.strip.y0 && l.turn === 0 && l.at.x >= frame.strip.x0).map(glyphs);
        inStrip.forEach((a, i) => inStrip.slice(i + 1).forEach((b) => {
          const meets = a.some((p) => b.some((q) => p.x0 < q.x1 - 0.01 && q.x0 < p.x1 - 0.01 && p.y0 < q.y1 - 0.01 && q.y0 < p.y1 - 0.01));
          expect({ code: sheet.code, meets }).toEqual({ code: sheet.code, meets: false });
        }));
        for (const box of inStrip.flat()) expect(boxContains(growBox(frame.strip, 0.05), box)).toBe(true);
      }
    }
  });

  it('lists on the first sheet what is on which, and names packed patterns shortly rather than cut off', () => {
    const pieces = Array.from({ length: 6 }, (_, i) => plainDrawing(`piece-${i}`, [rectangle(0, 0, 40, 40)], { title: `pattern of the ${i + 1}th of six pieces, seen from above` }));
    const [first, second] = sheetsOf(requestFor([jigOf('cradle', pieces), setUpJig()])) as [Sheet, Sheet];
    expect(words(first)).toContain('2: pattern of the 1th of six pieces, seen from above, pattern of the 2th');
    expect(words(first)).toContain('seen from above, pattern of the 3th');
    const title = lettering(second).find((l) => l.part === 'sheet-title')!.text;
    expect(title).toBe('2 of 3 · 8 patterns of cradle, rail cradle');
  });

  it('calls a pattern by its jig and its title, whatever the jig is called', () => {
    const long = jigOf('whole top', [plainDrawing('board', [rectangle(0, 0, 900, 140)], { title: 'whole top, seen from above' })]);
    const [, ...tiles] = sheetsOf(requestFor([long]));
    expect(new Set(tiles.map(({ title }) => title.replace(/^\d+ – /, '')))).toEqual(new Set(['whole top: whole top, seen from above']));
  });

  it('packs small patterns whole on one sheet, apart by a gap to cut in', () => {
    const pieces = [[60, 45], [150, 60], [80, 80], [40, 120]].map(([w, h], i) => plainDrawing(`piece-${i}`, [rectangle(0, 0, w!, h!)]));
    const set = layOut(requestFor([jigOf('pieces', pieces)]), testFont);
    expect(set.count).toBe(2);
    const boxes = pieces.map((p) => itemBounds(part([...set.sheets()][1]!, p.name), testFont));
    boxes.forEach((a, i) => boxes.slice(i + 1).forEach((b) => {
      const apart = Math.max(b.x0 - a.x1, a.x0 - b.x1, b.y0 - a.y1, a.y0 - b.y1);
      expect(apart).toBeGreaterThanOrEqual(6 - 1e-9);
    }));
  });

  it('packs patterns as a printer that prints too long or too short needs them, with the same gap between, turned ones too', () => {
    const pieces = [[170, 60], [60, 170], [90, 80], [40, 120]].map(([w, h], i) => plainDrawing(`piece-${i}`, [rectangle(0, 0, w!, h!)]));
    for (const [x, y] of [[1, 1], [0.98, 1.02], [1.03, 0.97]] as const) {
      const sheets = sheetsOf(requestFor([jigOf('pieces', pieces)], { correction: { x, y } }));
      const seen = sheets.flatMap((sheet) => {
        const found = pieces.flatMap((p, i) => sheet.items.filter((item): item is Shape => item.kind === 'shape' && item.part === p.name).map(({ path }) => ({ i, box: pathBounds(path) })));
        found.forEach(({ box: a }, k) => found.slice(k + 1).forEach(({ box: b }) => expect(Math.max(b.x0 - a.x1, a.x0 - b.x1, b.y0 - a.y1, a.y0 - b.y1)).toBeGreaterThanOrEqual(6 - 1)));
        // On a page that lies, the feed runs along x.
        const [fx, fy] = sheet.width > sheet.height ? [y, x] : [x, y];
        return found.map(({ i, box }) => ({ i, size: [(box.x1 - box.x0) * fx, (box.y1 - box.y0) * fy] }));
      });
      expect(seen.map(({ i }) => i).sort()).toEqual([0, 1, 2, 3]);
      for (const { i, size } of seen) {
        const wanted = [[170, 60], [60, 170], [90, 80], [40, 120]][i]!;
        const [w, h] = Math.abs(size[0]! - wanted[0]!) < 1 ? wanted : [wanted[1]!, wanted[0]!];
        expect([size[0], size[1]]).toEqual([expect.closeTo(w!, 6), expect.closeTo(h!, 6)]);
      }
    }
  });

  it('says so where a pattern that should stay whole is larger than any sheet, and draws it all the same', () => {
    const set = layOut(requestFor([jigOf('cope', [plainDrawing('wrap', [rectangle(0, 0, 400, 150)], { whole: true })])]), testFont);
    expect(set.tiled[0]!.plan.tiles.length).toBeGreaterThan(1);
    expect(set.warnings[0]).toContain('should stay on one sheet');
    expect(words([...set.sheets()][0]!).replaceAll('  ', ' ')).toContain('should stay on one sheet');
  });

  it('keeps a pattern whole that only fits lying', () => {
    const set = layOut(requestFor([jigOf('cope', [plainDrawing('wrap', [rectangle(0, 0, 240, 150)], { whole: true })])]), testFont);
    expect([set.count, set.warnings]).toEqual([2, []]);
  });

  it('prints what the check found of an operation on its own page, above the steps', () => {
    const jig = setUpJig();
    const found = { ...request.findings[0]!, jig: jig.jig, about: { jig: jig.jig, operation: 'saw-v' }, message: 'The saw does not tilt so far.' };
    const page = (findings: readonly Finding[]): string => [...layOut(requestFor([jig], { findings }), testFont).sheets()].at(-1)!.items
      .flatMap((l) => (l.kind === 'lettering' ? [l.text] : [])).join(' ');
    const order = ['Before you cut', 'The saw does not tilt so far. A pitch of 241 mm would do.', 'Cautions', 'Steps', 'Turn the block end for end for the second pass.']
      .map((t) => page([found]).indexOf(t));
    expect(order.every((at, i) => at >= 0 && (i === 0 || at > order[i - 1]!))).toBe(true);
    expect(page([])).not.toContain('Before you cut');
    expect(page([{ ...found, jig: 'another jig' }])).not.toContain('Before you cut');
  });

  it('bookmarks each jig on the first sheet that it comes on', () => {
    const found = sheetsOf().flatMap((s) => (s.bookmark === undefined ? [] : [[s.code, s.bookmark]]));
    expect(found).toEqual([['1', ['Scale check and map']], ['3', ['rail cradle']], [tilesOf(0)[0]!.code, ['rack top']], [tilesOf(1)[0]!.code, ['ring']]]);
  });

  it('hatches blank sheets on the map and shows the numbers of the others', () => {
    const opening = sheetsOf().slice(0, 2);
    const codes = opening.flatMap(lettering).filter((l) => l.part === 'map-code').map((l) => l.text);
    expect(codes).toEqual([...tilesOf(0), ...tilesOf(1)].map((s) => s.code));
    expect(opening.some((s) => s.items.some((i) => i.kind === 'shape' && i.line === 'waste'))).toBe(true);
  });

  it('refuses a set of more than 2 000 sheets', () => {
    const grid = Array.from({ length: 60 }, (_, i) => rectangle(0, i * 190, 12_000, 1));
    const make = (): unknown => layOut(requestFor([jigOf('field', [plainDrawing('field', grid)])]), testFont);
    expect(make).toThrow(UserError);
    expect(make).toThrow(/more sheets than anyone can tape/);
  });
});

describe('printTest', () => {
  it.each([['letter', 'inch', 101.6], ['a4', 'mm', 100]] as const)('of %s in %s has bars, square, diagonals and the reading mark', (name, units, side) => {
    const sheet = printTest({ paper: papers[name]!, units }, testFont);
    const square = pathBounds(part(sheet, 'calibration-square').path);
    expect([square.x1 - square.x0, square.y1 - square.y0].map((s) => Number(s.toFixed(9)))).toEqual([side, side]);
    for (const p of ['calibration-diagonal-1', 'calibration-diagonal-2', 'reading-mark', 'x-bar', 'y-bar']) expect(part(sheet, p)).toBeDefined();
  });
});
