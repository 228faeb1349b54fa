import type { Drawing, JigDrawing } from '../../src/drawing/drawing.js';
import { filled, letter, shape } from '../../src/drawing/items.js';
import type { Path } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { circle, circularArc, line, polyline, rectangle } from '../../src/geometry/shapes.js';
import type { LayoutRequest } from '../../src/sheets/layout-request.js';
import { papers } from '../../src/units/paper.js';
import { angleOf, lengthOf, words } from '../../src/units/quantity.js';

export const tenMillimetres = { top: 10, right: 10, bottom: 10, left: 10 } as const;

/** A top of `length` × 200 mm with open slots along its front edge, a hidden line, lettering and a datum at its left end. */
export const slottedBoard = (length = 1500): Drawing => {
  const pitch = 240;
  const slots = Array.from({ length: Math.floor((length - 120) / pitch) }, (_, i) => 150 + i * pitch);
  const slot = (x: number): Path => ({
    start: point(x - 15, 200), closed: false,
    segments: [{ kind: 'line', to: point(x - 15, 140) }, circularArc(point(x, 140), 15, Math.PI, 2 * Math.PI), { kind: 'line', to: point(x + 15, 200) }],
  });
  return {
    name: 'top', title: 'Top, whole', whole: false, spine: true, datum: point(0, 100),
    items: [
      shape('edge', {
        start: point(100, 0), closed: true,
        segments: [
          { kind: 'line', to: point(length - 100, 0) }, circularArc(point(length - 100, 100), 100, -Math.PI / 2, Math.PI / 2),
          { kind: 'line', to: point(100, 200) }, circularArc(point(100, 100), 100, Math.PI / 2, (3 * Math.PI) / 2),
        ],
      }, 'board'),
      ...slots.map((x, i) => shape('edge', slot(x), `slot-${i + 1}`)),
      ...slots.map((x) => shape('centre', line(point(x, 100), point(x, 215)))),
      ...slots.map((x) => filled('dimension', polyline([point(x, 215), point(x - 1, 211), point(x + 1, 211)], true))),
      ...slots.slice(0, 2).map((x) => shape('bore', circle(point(x + 60, 60), 17), 'hole-1-top')),
      shape('hidden', line(point(100, 30), point(length - 100, 30))),
      letter(point(length / 2 - 60, 20), 'Paddle rack · top face up · front edge below', { height: 3.5 }),
    ],
    keepClear: slots.map((x) => ({ box: { x0: x - 20, y0: 120, x1: x + 20, y1: 200 }, why: 'slot seat' })),
    lands: slots.slice(1).map((x, i) => ({ box: { x0: slots[i]! + 40, y0: 0, x1: x - 40, y1: 200 }, why: 'land' })),
  };
};

export const plainDrawing = (name: string, paths: readonly Path[], more: Partial<Drawing> = {}): Drawing => ({
  name, title: `Pattern ${name}`, whole: false, spine: false, datum: point(0, 0), keepClear: [], lands: [],
  items: paths.map((path) => shape('edge', path, name)), ...more,
});

export const jigOf = (jig: string, patterns: readonly Drawing[], more: Partial<JigDrawing> = {}): JigDrawing => ({
  jig, kind: 'rack-top', title: jig, patterns, setUps: [],
  assumed: ['post 34.9 mm (1 3⁄8″)', 'paddle shafts 30.2 mm (1 3⁄16″)'],
  cautions: ['Feed against the rotation, never between bit and fence', 'Keep hands 100 mm from the cutter', 'Stop the bit before lifting', 'Dust: extraction and a respirator'],
  ...more,
});

export const setUpJig = (): JigDrawing => jigOf('rail cradle', [
  plainDrawing('end-section', [rectangle(0, 0, 60, 45)]),
  plainDrawing('plan', [rectangle(0, 0, 150, 60)]),
], {
  kind: 'v-cradle',
  setUps: [{
    code: 'saw-v', operation: 'Groove', machine: 'Table saw',
    picture: plainDrawing('picture', [rectangle(0, 0, 80, 60), circle(point(40, 20), 18)]), pictureIs: 'true-size',
    pictureNote: ['The end of the block, seen from the outfeed side.'],
    numbers: [
      { code: 'tilt', label: ['Blade tilt'], value: [angleOf(Math.PI / 4)] },
      { code: 'height', label: ['Blade height'], value: [lengthOf(25.4)] },
      { code: 'fence', label: ['Fence to blade'], value: [lengthOf(38.1)] },
    ],
    tables: [{
      code: 'ordinates', heading: ['Ordinates'], columns: [{ code: 'turn', head: 'Degrees' }, { code: 'height', head: 'Height' }],
      rows: Array.from({ length: 25 }, (_, i) => [[angleOf((i * Math.PI) / 12)], [lengthOf(20 + i / 10, 'mm')]]),
    }],
    steps: [
      { code: 'tilt', words: ['Set the tilt by the end section, not by the scale of the saw.'] },
      { code: 'test', words: words`Cut a test piece ${lengthOf(120)} long from the same board and lay the largest round in it.` },
      { code: 'turn', words: ['Turn the block end for end for the second pass.'] },
    ],
    cautions: ['Wide board first, rip it narrow after the groove.', 'Keep the offcut free.', 'Use a featherboard.'],
  }],
});

export const requestFor = (jigs: readonly JigDrawing[], more: Partial<LayoutRequest> = {}): LayoutRequest => ({
  title: 'Paddle rack for the livery', revision: 'B', digest: '4f1a09c2', units: 'mm', paper: papers['letter']!,
  wishes: { margins: tenMillimetres, overlap: 12, turn: 'auto', seams: {} }, correction: { x: 1, y: 1 }, jigs, findings: [], ...more,
});
