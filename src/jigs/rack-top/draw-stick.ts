import type { Drawing, Item, Zone } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import { growBox } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { point } from '../../geometry/point.js';
import { circle, line, rectangle } from '../../geometry/shapes.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { labelField, ringsAbout, type Label, type Place } from './label-field.js';
import { pinStations, standOff, stickWidth, type TemplateGroup } from './pins.js';
import type { RackTop } from './rack-top.js';
import type { Slot } from './slot.js';

const middle = stickWidth / 2;

function* besideAxis(at: number): Iterable<Place> {
  for (const y of [7, stickWidth - 7]) for (const x of [0, 20, -20, 30, -30]) yield { at: point(at + x, y) };
  for (const x of [5, -5, 8, -8]) yield { at: point(at + x, middle), turn: -Math.PI / 2 };
  yield* ringsAbout(point(at, middle), 60);
}

function* anywhere(length: number): Iterable<Place> {
  for (let x = 45; x < length; x += 6) for (const y of [9, stickWidth - 9]) yield { at: point(x, y) };
  for (let y = stickWidth + 10; ; y += 8) yield { at: point(60, y) };
}

/** The pitch stick of one edge: a batten as long as the board, with two pin holes for each slot, all from the left end. */
export const drawStick = (edge: Slot['edge'], groups: readonly TemplateGroup[], top: RackTop, context: Context, font: Font): Drawing => {
  const { board, pins } = top;
  const slots = top.slots.filter((s) => s.edge === edge);
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const holes = pinStations(groups, edge).map((x) => point(x, middle));
  const drawn: Item[] = [
    shape('edge', rectangle(0, 0, board.length, stickWidth), `stick-${edge}`),
    ...holes.flatMap((at, i) => [shape('bore', circle(at, pins.diameter / 2), `stick-${edge}-pin-${i + 1}`), ...holeCross(at, pins.diameter)]),
    ...slots.flatMap((s) => [[0, 2], [middle - 4, middle + 4], [stickWidth - 2, stickWidth]]
      .map(([a, b]) => shape('reference', line(point(s.at, a!), point(s.at, b!)), `stick-${edge}-station-${s.number}`))),
  ];
  const spine = line(point(0, middle), point(board.length, middle));
  const field = labelField([spine, ...drawn.flatMap((item) => (item.kind === 'shape' ? [item.path] : []))], font);
  const put = (label: Label, places: Iterable<Place>) => field.put(label, places) ?? field.put(label, anywhere(board.length))!;
  const lettered = [
    ...slots.map((s) => put({ lines: [{ text: `SLOT ${s.number}`, height: 2.5 }, { text: say(s.at), height: 2.5 }] }, besideAxis(s.at))),
    put({ lines: [
      { text: `${context.name}: pitch stick, ${edge} edge`, height: 3.5 },
      { text: `as thick as the board; pins Ø ${say(pins.diameter)} on the middle line`, height: 2.5 },
      { text: `stands ${say(standOff(top))} off the edge of the board: spacers between`, height: 2.5 },
    ] }, anywhere(board.length)),
    put({ lines: [{ text: 'LEFT END of the board', height: 2.5 }] }, anywhere(board.length)),
  ];
  return {
    name: `pitch-stick-${edge}`, title: `pitch stick for the ${edge} edge`, items: [...drawn, ...lettered.flatMap((l) => l.items)], whole: false,
    datum: point(0, middle), spine: true,
    keepClear: [...holes.map((at): Zone => ({ box: growBox(pathBounds(circle(at, pins.diameter / 2)), 3), why: 'pin hole' })), ...lettered.map((l) => l.zone)],
    lands: [],
  };
};
