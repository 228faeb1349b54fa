import { describe, expect, it } from 'vitest';
import type { Drawing, Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { itemBounds, itemsBounds } from '../../src/drawing/item-bounds.js';
import { letter, shape } from '../../src/drawing/items.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { boxesMeet, boxHeight, boxWidth, growBox } from '../../src/geometry/box.js';
import { clipPath } from '../../src/geometry/clip-path.js';
import { point } from '../../src/geometry/point.js';
import { circle, rectangle } from '../../src/geometry/shapes.js';
import { framesOf } from '../../src/sheets/choose-plan.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { cutIntoLengths, type CutStrip } from '../../src/sheets/lengths.js';
import { withSpine } from '../../src/sheets/spine.js';
import { papers } from '../../src/units/paper.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor, tenMillimetres } from './fixtures.js';

const holes = (length: number): number[] => Array.from({ length: Math.floor(length / 90) }, (_, i) => 50 + i * 90);

/** A batten with a row of holes on its middle line, stations counted from its left end; upright, the same turned. */
const batten = (length: number, more: Partial<Drawing> = {}): Drawing => ({
  ...plainDrawing('stick', []),
  title: 'pitch stick',
  spine: true,
  datum: point(0, 20),
  items: [
    shape('edge', rectangle(0, 0, length, 40), 'stick'),
    ...holes(length).map((x, i) => shape('bore', circle(point(x, 20), 3), `pin-${i + 1}`)),
    letter(point(12, 8), 'LEFT END'),
  ],
  ...more,
});

const request = requestFor([]);
const cut = (drawing: Drawing, of = request): CutStrip | undefined =>
  cutIntoLengths(
    { jig: jigOf('top', [drawing]), drawing: { ...drawing, items: withSpine(drawing, of.units, testFont) } },
    framesOf(of),
    of,
    testFont,
  );
const shapesOf = (items: readonly Item[], part: string): Shape[] =>
  items.filter((item): item is Shape => item.kind === 'shape' && item.part === part);
const said = (items: readonly Item[]): string =>
  items
    .filter((item): item is Lettering => item.kind === 'lettering' && item.part === 'length-words')
    .map(({ text }) => text)
    .join(' ');
const middle = (item: Shape): [number, number] => {
  const b = pathBounds(item.path);
  return [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2];
};

describe('cutIntoLengths', () => {
  const { pieces, tiled } = cut(batten(1500))!;
  const seams = tiled.plan.grid.x.seams;

  it('shows every hole whole on a length, where it lies from the left end, and the outline from end to end', () => {
    for (const [i, x] of holes(1500).entries()) {
      const whole = pieces
        .flatMap(({ items }) => shapesOf(items, `pin-${i + 1}`))
        .filter(({ path }) => boxWidth(pathBounds(path)) > 6 - 1e-9);
      expect(whole.length, `${i}`).toBeGreaterThan(0);
      for (const hole of whole) {
        expect(middle(hole)[0]).toBeCloseTo(x, 9);
        expect(middle(hole)[1]).toBeCloseTo(20, 9);
      }
    }
    const outline = pieces.flatMap(({ items }) => shapesOf(items, 'stick')).map(({ path }) => path);
    for (let x = 1; x < 1500; x += 7)
      for (const y of [0, 40])
        expect(
          outline.some((path) => clipPath(path, { x0: x - 0.1, x1: x + 0.1, y0: y - 0.1, y1: y + 0.1 }).length > 0),
          `${x}`,
        ).toBe(true);
  });

  it('puts the two marks of a seam at one place on both lengths, on the strip, and shares 12 mm there', () => {
    expect(seams.length).toBe(pieces.length - 1);
    seams.forEach((at, i) => {
      for (const n of [1, 2]) {
        const part = `registration-stick-${i + 1}-${i + 2}-${n}`;
        const places = pieces.flatMap(({ items }) => shapesOf(items, part)).map(middle);
        expect(places, part).toHaveLength(2);
        expect(places[0]).toEqual(places[1]);
        expect(places[0]![0]).toBeCloseTo(at, 9);
        expect(places[0]![1] > 0 && places[0]![1] < 40).toBe(true);
      }
      const [left, right] = [pieces[i]!, pieces[i + 1]!].map(({ items }) =>
        pathBounds(shapesOf(items, 'spine')[0]!.path),
      );
      expect(left!.x1 - right!.x0).toBeCloseTo(12, 9);
    });
    expect(
      pieces.flatMap(({ items }) =>
        items.filter(({ part }) => part?.startsWith('registration-')).map(({ part }) => part),
      ).length,
    ).toBe(4 * seams.length);
  });

  it('says on each which it is, where it begins, what it joins, and once what a tape shows over the whole', () => {
    pieces.forEach(({ items }, i) => {
      const words = said(items);
      expect(words).toContain(`top: pitch stick, length ${i + 1} of ${pieces.length}`);
      expect(words).toContain('overlap 12 mm (15⁄32″).');
      const station = /Station of the left (?:seam|edge): (?:at the left end|([\d.]+) mm .* from the left end)/.exec(
        words,
      )!;
      expect(Math.abs(Number(station[1] ?? 0) - (seams[i - 1] ?? 0))).toBeLessThanOrEqual(0.05);
      expect(words.includes(`Trim the right edge, lay it over length ${i + 2}.`)).toBe(i < pieces.length - 1);
      expect(words.includes(`Length ${i} comes over the left edge.`)).toBe(i > 0);
    });
    const all = pieces.map(({ items }) => said(items)).join(' ');
    expect(
      all.split('Once taped, check with a steel tape: left end to right end along the spine: 1500 mm (59 1⁄16″).'),
    ).toHaveLength(2);
  });

  it('sets its words on no line and no other words', () => {
    for (const drawing of [
      batten(1500),
      batten(760, {
        items: [
          ...batten(760).items,
          ...Array.from({ length: 30 }, (_, i) => letter(point(15 + 24 * i, 8 + (i % 2) * 28), 'SLOT 7 of nine')),
        ],
      }),
    ]) {
      for (const { items } of cut(drawing)!.pieces) {
        const own = items
          .filter((item): item is Lettering => item.kind === 'lettering' && item.part === 'length-words')
          .map((item) => itemBounds(item, testFont));
        expect(own.length).toBeGreaterThan(0);
        for (const item of items) {
          const touches =
            item.kind === 'shape'
              ? own.some((box) => clipPath(item.path, growBox(box, -0.3)).length > 0)
              : item.part !== 'length-words' &&
                own.some((box) => boxesMeet(growBox(box, -0.3), itemBounds(item, testFont)));
          expect({ item: item.kind === 'lettering' ? item.text : item.part, touches }).toEqual({
            item: item.kind === 'lettering' ? item.text : item.part,
            touches: false,
          });
        }
      }
    }
  });

  it('makes no length larger than every turn of the paper allowed holds, corrected or not', () => {
    for (const turn of ['auto', 'portrait', 'landscape'] as const)
      for (const correction of [
        { x: 1, y: 1 },
        { x: 0.97, y: 1.02 },
      ]) {
        const of = requestFor([], { correction, wishes: { ...request.wishes, turn } });
        const most = Math.min(...framesOf(of).map(({ area }) => Math.max(boxWidth(area), boxHeight(area))));
        for (const { bounds } of cut(batten(3000), of)!.pieces)
          expect(boxWidth(bounds) / Math.min(correction.x, correction.y)).toBeLessThanOrEqual(most);
      }
  });

  it('cuts a strip that runs up and down just so, its words upwards', () => {
    const upright = { ...plainDrawing('post', [rectangle(0, 0, 40, 1000)]), title: 'post' };
    const { pieces: lengths } = cut(upright)!;
    expect(lengths.length).toBeGreaterThan(3);
    for (const { items, bounds } of lengths) {
      expect(boxHeight(bounds)).toBeGreaterThan(boxWidth(bounds));
      for (const item of items)
        if (item.part === 'length-words') expect((item as Lettering).turn).toBeCloseTo(-Math.PI / 2, 9);
      expect(said(items)).toMatch(/Top (seam|of the drawing): /);
    }
  });

  it('leaves alone what a sheet holds, what is wide, and what should stay whole', () => {
    expect(cut(batten(200))).toBeUndefined();
    expect(cut(plainDrawing('board', [rectangle(0, 0, 1500, 120)]))).toBeUndefined();
    expect(cut(batten(1500, { whole: true }))).toBeUndefined();
  });
});

describe('lengths in a set', () => {
  it('lie beside each other on few sheets, listed there; seams that the spec gives keep a sheet each', () => {
    const of = (seams: Readonly<Record<string, { along: number[]; across: number[] }>>) =>
      layOut(
        requestFor([jigOf('top', [batten(1500)])], {
          paper: papers['letter']!,
          wishes: { margins: tenMillimetres, overlap: 12, turn: 'auto', seams },
        }),
        testFont,
      );
    const set = of({});
    expect([set.parts, set.tiled]).toEqual([['opening', 'patterns', 'patterns'], []]);
    const first = [...set.sheets()][0]!.items
      .flatMap((item) => (item.kind === 'lettering' ? [item.text] : []))
      .join(' ');
    expect(first).toContain('2, 3: pitch stick');
    const given = of({ top: { along: [200, 400, 600, 800, 1000, 1200, 1400], across: [] } });
    expect(given.tiled[0]!.plan.grid.x.seams).toEqual([200, 400, 600, 800, 1000, 1200, 1400]);
    const area = [...set.sheets()].slice(1).map(({ items }) =>
      itemsBounds(
        items.filter((item) => item.part === 'stick'),
        testFont,
      ),
    );
    for (const box of area) expect(box.x0 >= 10 && box.y0 >= 10).toBe(true);
  });
});
