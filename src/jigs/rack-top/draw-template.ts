import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { letter, shape } from '../../drawing/items.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import { endOf, type Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { circle, line, rectangle } from '../../geometry/shapes.js';
import { transformPath } from '../../geometry/transform.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { openingRun, standOff, stickWidth, type TemplateGroup } from './pins.js';
import { sayThin } from './practice.js';
import type { RackTop } from './rack-top.js';
import { edgeHalfWidth, type Slot } from './slot.js';
import { slotEdge } from './slot-shape.js';
import { templateNotes, type Front } from './template-notes.js';
import { cutterWords, edgeWords } from './edge-words.js';
import { linerWords, slotsNamed } from './words.js';

/** Template stock left beyond the seat, mm: room for the clamp, the router's base and the words; the picture needs none of it. */
const behindSeat = { pattern: 72, picture: 16 } as const;
/** Template stock beside the pins, mm. */
const beside = 16;

/** From the slot's own frame (s along the edge, v into the board) to paper: the edge at y = 0, the board above it. */
const place = { a: 1, b: 0, c: 0, d: -1, e: 0, f: 0 } as const;

/** The opening to cut: the slot's edge, its mouth run straight out into the gap before the stick and closed there. */
const openingOf = (slot: Slot, offset: number, run: number): Path => {
  const edge = transformPath(place, slotEdge(slot, offset));
  const last = endOf(edge.segments.at(-1)!);
  return {
    start: point(edge.start.x, run), closed: true,
    segments: [{ kind: 'line', to: edge.start }, ...edge.segments, { kind: 'line', to: point(last.x, run) }, { kind: 'line', to: point(edge.start.x, run) }],
  };
};

const frontOf = (top: RackTop): Front => {
  const stick = standOff(top);
  return { stick, middle: stick + stickWidth / 2, far: stick + stickWidth, run: openingRun(top) };
};

const frameOf = (slot: Slot, halfWidth: number, behind: number, { far }: Front): Path => {
  const top = -(slot.depth + slot.radius + behind);
  return rectangle(-halfWidth, top, 2 * halfWidth, far - top);
};

const pinHoles = (spacing: number, diameter: number, { middle }: Front): Item[] => [-1, 1].flatMap((side) => {
  const at = point((side * spacing) / 2, middle);
  return [shape('bore', circle(at, diameter / 2), `template-pin-${side < 0 ? 1 : 2}`), ...holeCross(at, diameter)];
});

const wordsOf = ({ number, slots, spacing }: TemplateGroup, top: RackTop, context: Context): readonly string[] => {
  const [slot] = slots;
  const { pins } = top;
  const say = (mm: number): string => lengthLabel(mm, context.units);
  return slot === undefined ? [] : [
    `${context.name}: one-slot template ${number}`, ...edgeWords(top, context.units), `for ${slotsNamed(slots)}`,
    `${slot.itemName} ${say(slot.item)}, ${linerWords(slot, sayThin(context.units))}`,
    ...cutterWords(top, context.units),
    `pins Ø ${say(pins.diameter)}, ${say(spacing)} apart; stick ${say(standOff(top))} off the edge`,
  ];
};

/** What a template is drawn with, and as what: the pattern to cut, or the set-up page's picture. */
export interface TemplateOptions {
  readonly context: Context;
  readonly font: Font;
  readonly as: keyof typeof behindSeat;
}

/** The one-slot template, as a pattern or without its words for the set-up page: cut the opening, drill the two pin holes, and walk it along the pitch stick, which stands off the board's edge so that the cutter runs out clear of it. */
export const drawTemplate = (group: TemplateGroup, top: RackTop, { context, font, as }: TemplateOptions): Drawing => {
  const behind = behindSeat[as];
  const slot = group.slots[0]!;
  const { cutter, pins } = top;
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const front = frontOf(top);
  const opening = openingOf(slot, cutter.offset, front.run);
  const words = as === 'pattern' ? wordsOf(group, top, context) : [];
  const widest = Math.max(0, ...words.map((text) => font.width(text, 2.5)));
  const halfWidth = Math.max(group.spacing / 2 + pins.diameter / 2 + beside, widest / 2 + 4);
  const crest = -(slot.depth + slot.radius);
  const half = Math.max(edgeHalfWidth(slot), -opening.start.x);
  const edgeTo = (side: 1 | -1): Item => shape('reference', line(point(side * (half + cutter.offset + 1), 0), point(side * halfWidth, 0)), 'template-board-edge');
  return {
    name: `slot-template-${group.number}`, title: `one-slot template ${group.number}`, whole: true, spine: false,
    datum: point(-halfWidth, 0), keepClear: [], lands: [],
    items: [
      shape('edge', opening, `template-slot-${slot.number}`), shape('edge', frameOf(slot, halfWidth, behind, front), 'template-edge'),
      shape('reference', line(point(-halfWidth, front.stick), point(halfWidth, front.stick)), 'template-stick-edge'),
      ...wasteTicks(opening, { side: 'right', spacing: 6 }),
      ...(cutter.offset > 0 ? [shape('reference', transformPath(place, slotEdge(slot, 0)), `finished-slot-${slot.number}`)] : []),
      shape('reference', circle(point(0, -slot.depth), slot.item / 2), `template-item-${slot.number}`),
      ...holeCross(point(0, -slot.depth), Math.min(slot.item, slot.radius)),
      shape('centre', line(point(0, front.far + 3), point(0, -slot.depth + slot.item / 2 + 1))),
      shape('centre', line(point(0, crest - 3), point(0, crest - 9))),
      edgeTo(-1), edgeTo(1), ...pinHoles(group.spacing, pins.diameter, front), ...(as === 'pattern' ? templateNotes({ slot, halfWidth, opening: half + cutter.offset, offset: cutter.offset, pin: { at: group.spacing / 2, radius: pins.diameter / 2 }, front }, say, font) : []),
      ...words.map((text, i) => letter(point(0, crest - behind + 8 + (i === 0 ? 0 : 1.5 + 4.4 * i)), text, { height: i === 0 ? 3.5 : 2.5, anchor: 'middle' })),
    ],
  };
};
