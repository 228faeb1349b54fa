import { expect, test } from 'vitest';
import type { Drawing, Zone } from '../../src/drawing/drawing.js';
import { moveItems } from '../../src/drawing/items.js';
import type { Box } from '../../src/geometry/box.js';
import { circle, rectangle } from '../../src/geometry/shapes.js';
import { point } from '../../src/geometry/point.js';
import { assemblyMap } from '../../src/sheets/assembly-map.js';
import { fullSize } from '../../src/sheets/full-size.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { testFont } from '../support/font.js';
import { corpus } from './corpus.js';
import { jigOf, plainDrawing, requestFor, slottedBoard } from './fixtures.js';
import { randomDrawing } from './random-drawing.js';

/** The same drawing elsewhere on the plane. */
const moved = (drawing: Drawing, x: number, y: number): Drawing => {
  const box = (b: Box): Box => ({ x0: b.x0 + x, y0: b.y0 + y, x1: b.x1 + x, y1: b.y1 + y });
  const zones = (all: readonly Zone[]): Zone[] => all.map((zone) => ({ ...zone, box: box(zone.box) }));
  return { ...drawing, items: moveItems(drawing.items, x, y), datum: point(drawing.datum.x + x, drawing.datum.y + y), keepClear: zones(drawing.keepClear), lands: zones(drawing.lands) };
};

/** All that is on paper: its words and its figures apart. */
const written = (items: unknown): { readonly words: string; readonly figures: readonly number[] } => {
  const figures: number[] = [];
  const words = JSON.stringify(items, (_, value: unknown) => { if (typeof value !== 'number') return value; figures.push(value); return '#'; });
  return { words, figures };
};

const drawings: readonly Drawing[] = [
  slottedBoard(), slottedBoard(2600), plainDrawing('hoop', [circle(point(0, 0), 300)]), plainDrawing('frame', [rectangle(0, 0, 700, 640), rectangle(200, 200, 300, 240)]),
  plainDrawing('small', [rectangle(0, 0, 90, 60)]), ...[1, 4, 9].map(randomDrawing), ...corpus.filter((_, i) => i % 12 === 0),
];

test.each(drawings.map((drawing) => [drawing.name, drawing] as const))('where a drawing stands on its plane changes nothing on paper: %s', (_, drawing) => {
  const paper = (x: number, y: number) => {
    const jig = jigOf('top', [moved(drawing, x, y)]);
    const request = requestFor([jig]);
    const set = layOut(request, testFont);
    const maps = set.tiled.map((tiled) => assemblyMap(tiled, { width: 180, height: 70 }, testFont));
    return written([[...set.sheets()], maps, fullSize(jig, request, testFont), set.warnings]);
  };
  const plain = paper(0, 0);
  for (const [x, y] of [[1024, -512], [-2048, 256]] as const) {
    const there = paper(x, y);
    expect(there.words === plain.words).toBe(true);
    expect(Math.max(...there.figures.map((figure, i) => Math.abs(figure - plain.figures[i]!)))).toBeLessThan(1e-6);
  }
});
