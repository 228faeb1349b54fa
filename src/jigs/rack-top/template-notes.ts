import { dimension } from '../../drawing/dimension.js';
import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { point, polar, type Point } from '../../geometry/point.js';
import { edgeNotes } from './edge-words.js';
import type { Slot } from './slot.js';

/** Where things lie in front of the board's edge: the stick's near and far edge, its middle line, the opening's end. mm. */
export interface Front {
  readonly stick: number;
  readonly middle: number;
  readonly far: number;
  readonly run: number;
}

/** What a template's notes are about: half widths of the template and of its opening, the edge's offset, a pin hole; mm. */
export interface TemplateNoted {
  readonly slot: Slot;
  readonly halfWidth: number;
  readonly opening: number;
  readonly offset: number;
  readonly pin: { readonly at: number; readonly radius: number };
  readonly front: Front;
}

const height = 2.5;
/** From a leader's elbow to its words, and from words to the template's side; mm. */
const [shelf, toSide] = [2.8, 2];
/** The slack between the opening and a leader's elbow, mm. */
const leastRun = 3;

/** Where the elbow of a leader stands from the middle: so that its words end at the template's side where they clear `taken` on it, else beyond it. */
const elbowFor = ({ halfWidth }: TemplateNoted, taken: number, words: readonly string[], font: Font): number => {
  const inside = halfWidth - toSide - shelf - Math.max(...words.map((text) => font.width(text, height)));
  return inside >= taken + leastRun ? inside : halfWidth + 18;
};

const seatAt = ({ depth }: Slot, angle: number, radius: number): Point => {
  const p = polar(angle, radius);
  return point(p.x, p.y - depth);
};

const slotNotes = (of: TemplateNoted, say: (mm: number) => string, font: Font): Item[] => {
  const { radius, depth, mouth } = of.slot;
  const throat = point(radius, -(mouth.run + depth) / 2);
  const [throatWords, seatWords] = [
    ['throat, in the wood', say(2 * radius)],
    ['seat', `R ${say(radius)}`],
  ];
  return [
    ...leader({
      at: throat,
      elbow: point(elbowFor(of, radius + of.offset, throatWords, font), throat.y + 4),
      label: throatWords,
      side: 'right',
    }),
    ...leader({
      at: seatAt(of.slot, -Math.PI / 4, radius),
      elbow: point(elbowFor(of, radius, seatWords, font), -depth - radius - 8),
      label: seatWords,
      side: 'right',
    }),
  ];
};

/** What the board's edge is, on it at its right end; beyond the template's side where it is too short between that and the opening. */
const boardNote = ({ halfWidth, opening }: TemplateNoted, font: Font): Item[] => {
  const text = 'edge of the board';
  return font.width(text, height) <= halfWidth - toSide - opening - 1
    ? [letter(point(halfWidth - toSide, -1.2), text, { height, anchor: 'end' })]
    : leader({ at: point(halfWidth, 0), elbow: point(halfWidth + 18, -4), label: text, side: 'right', end: 'none' });
};

/** What the stick's edge is, under it: on the stick nothing is cut. */
const stickNote = ({ halfWidth, front }: TemplateNoted): Item =>
  letter(point(halfWidth - toSide, front.stick + 1.2 + height), 'edge of the pitch stick', { height, anchor: 'end' });

/** From the pin hole towards the wider side of it, low on the stick. */
const pinNote = ({ pin, front, halfWidth }: TemplateNoted): Item[] => {
  const side = halfWidth - pin.at > pin.at ? 1 : -1;
  return leader({
    at: point(pin.at + side * pin.radius * Math.SQRT1_2, front.middle + pin.radius * Math.SQRT1_2),
    elbow: point(pin.at + side * (pin.radius * Math.SQRT1_2 + 0.5), front.far - 4),
    label: 'pin, on the stick',
    side: side > 0 ? 'right' : 'left',
  });
};

/** To the two edges where they run side by side about the seat, on the left. */
const edgeNotesOf = (of: TemplateNoted, font: Font): Item[] => {
  const { slot, offset } = of;
  const { radius, depth } = slot;
  const elbow = (up: number, text: string): Point =>
    point(-elbowFor(of, radius * 0.8, [text], font), -depth - radius - up);
  return offset === 0
    ? []
    : [
        ...leader({
          at: seatAt(slot, -0.7 * Math.PI, radius + offset),
          elbow: elbow(12, edgeNotes.template),
          label: edgeNotes.template,
          side: 'left',
        }),
        ...leader({
          at: seatAt(slot, -0.9 * Math.PI, radius),
          elbow: elbow(5, edgeNotes.finished),
          label: edgeNotes.finished,
          side: 'left',
        }),
      ];
};

/** Clear paper between the depth's dimension line and the template's side, mm: its figures stand in it. */
const depthInset = 8;

/**
 * The measures and call-outs of a one-slot template, on the template itself wherever it has the room: so it takes no more of
 * a sheet than it is large.
 */
export const templateNotes = (of: TemplateNoted, say: (mm: number) => string, font: Font): Item[] => {
  const { slot, halfWidth, opening } = of;
  const out = halfWidth - depthInset > opening + leastRun ? halfWidth - depthInset : halfWidth + 6;
  return [
    ...dimension(
      {
        from: point(0, 0),
        to: point(0, -slot.depth),
        offset: out,
        along: -Math.PI / 2,
        label: say(slot.depth),
        gap: 2,
      },
      font,
    ),
    ...slotNotes(of, say, font),
    ...boardNote(of, font),
    stickNote(of),
    ...pinNote(of),
    ...edgeNotesOf(of, font),
  ];
};
