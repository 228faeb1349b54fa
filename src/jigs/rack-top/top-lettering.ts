import type { Item, Zone } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { boxesMeet, growBox, uniteBoxes } from '../../geometry/box.js';
import { point } from '../../geometry/point.js';
import { line, rectangle } from '../../geometry/shapes.js';
import { lengthLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import { cutterWords, edgeWords } from './edge-words.js';
import { arrowTip } from './draw-holes.js';
import { labelField, ringsAbout, type Label, type Place } from './label-field.js';
import { sayThin } from './practice.js';
import type { RackTop } from './rack-top.js';
import type { LegHole } from './hole.js';
import type { Recess } from './recess.js';
import { seatCentre, type Slot } from './slot.js';
import { recessBounds } from './solve-recesses.js';
import { holeZone, recessZone, seatZone } from './zones.js';
import { assumedDiameters, leanWords, linerWords, slotGroups, slotsNamed } from './words.js';

/** What the lettering of a board is made from. */
export interface LetteringSource {
  readonly top: RackTop;
  readonly name: string;
  readonly units: Units;
  readonly font: Font;
}

/** Lettering that has found its place, and what seams should keep out of. */
export interface Lettered {
  readonly items: readonly Item[];
  readonly zones: readonly Zone[];
}

const upright = -Math.PI / 2;

const small = (text: string) => ({ text, height: 2.5 });

/** A wish: what is said, and where it may stand, best first. */
interface Wish {
  readonly label: Label;
  readonly places: () => Iterable<Place>;
  /** What the label is about: no seam should part the two. */
  readonly about?: Zone;
}

function* slotPlaces({ top: { board } }: LetteringSource, slot: Slot): Iterable<Place> {
  const seat = seatCentre(board, slot);
  const inward = slot.edge === 'front' ? -1 : 1;
  const put = (x: number, y: number, turn = 0): Place => ({ at: point(x, y), turn });
  for (const away of [5, 6.5, 8, 9, 10, 11, 12, 14, 16]) yield put(slot.at, seat.y + inward * (slot.radius + away));
  for (const away of [18, 24, 30]) yield put(slot.at, seat.y + inward * (slot.radius + away), upright);
  for (const y of [board.width / 2 + 8, board.width / 2 - 8, seat.y, (seat.y + (slot.edge === 'front' ? board.width : 0)) / 2]) {
    for (const x of [22, 26, 30, 40]) {
      yield put(slot.at + slot.radius + x, y);
      yield put(slot.at - slot.radius - x, y);
    }
    for (const x of [7, 10, 14]) {
      yield put(slot.at + slot.radius + x, y, upright);
      yield put(slot.at - slot.radius - x, y, upright);
    }
  }
  yield* ringsAbout(point(slot.at, seat.y), 80);
}

const slotWish = (source: LetteringSource, slot: Slot): Wish => ({
  label: { lines: [{ text: `SLOT ${slot.number}`, height: 3.5 }, { text: lengthLabel(slot.at, source.units), height: 2.5 }] },
  places: () => slotPlaces(source, slot), about: seatZone(source.top.board, slot),
});

/** Over or under a hole first, no wider than it where that goes: what stands beside it widens what seams must keep out of. */
function* holePlaces(hole: LegHole): Iterable<Place> {
  const { x0, y0, x1, y1 } = holeZone(hole).box;
  for (let away = 12; away <= 36; away += 2) {
    for (const aside of [0, -4, 4, -8, 8]) for (const y of [y0 - away, y1 + away]) yield { at: point((x0 + x1) / 2 + aside, y) };
  }
  yield* ringsAbout(arrowTip(hole), 150);
}

/** Short lines, so that a seam beside the hole clears them. */
const holeWish = ({ units }: LetteringSource, hole: LegHole): Wish => ({
  label: { lines: [
    { text: `HOLE ${hole.number} · ${hole.round}`, height: 3.5 },
    ...[`bit Ø ${lengthLabel(hole.bit, units)}`, leanWords(hole), `along ${lengthLabel(hole.along, units)}`, `across ${lengthLabel(hole.across, units)}`, 'from left end, front edge'].map(small),
  ] },
  places: () => holePlaces(hole), about: holeZone(hole),
});

const recessWish = ({ units }: LetteringSource, recess: Recess): Wish => {
  const { y0 } = recessBounds(recess);
  const middle = recess.centre;
  return {
    label: { lines: [
      { text: `RECESS ${recess.number}${recess.face === 'top' ? '' : ' – underneath'}`, height: 3.5 },
      ...[`${lengthLabel(recess.depth, units)} deep`, `middle: along ${lengthLabel(recess.along, units)}`, `across ${lengthLabel(recess.across, units)}`].map(small),
    ] },
    about: recessZone(recess),
    *places() {
      for (const away of [14, -14]) yield { at: point(middle.x, middle.y + away) };
      yield { at: point(middle.x, y0 - 10) };
      yield* ringsAbout(middle, Math.hypot(recess.width, recess.height) / 2 + 80);
    },
  };
};

const splitWish = ({ top: { board }, units }: LetteringSource, station: number, number: number): Wish => ({
  label: { lines: [{ text: `JOINT ${number}`, height: 3.5 }, { text: lengthLabel(station, units), height: 2.5 }] },
  places: () => ringsAbout(point(station + 18, board.width / 2 - 10), 100),
});

/** Beside the title, what the two edges are where there are two. */
const legend = (top: RackTop, units: Units) => (top.cutter.offset === 0 ? [] : [edgeWords(top, units).join('; '), `template for ${cutterWords(top, units).join(', ')}`]).map(small);

const titleLabel = ({ top, name, units }: LetteringSource): Label => ({ lines: [
  { text: name, height: 5 },
  { text: 'WHOLE TOP, seen from above', height: 3.5 },
  small([top.board.length, top.board.width, top.board.thickness].map((mm) => lengthLabel(mm, units)).join(' × ')), ...legend(top, units),
] });

/** What the slots are, one label for each kind, and the diameters assumed. */
const noteLabels = ({ top, units }: LetteringSource): Label[] => {
  const assumed = assumedDiameters(top, units).slice(0, 8);
  return [
    ...slotGroups(top.slots).slice(0, 8).map((group): Label => ({ lines: [
      `${slotsNamed(group)}: ${lengthLabel(2 * group[0]!.radius, units)} wide in the wood`, `${lengthLabel(group[0]!.depth, units)} to the seat’s axis`, linerWords(group[0]!, sayThin(units)),
    ].map(small) })),
    ...(assumed.length === 0 ? [] : [{ lines: ['as measured:', ...assumed].map(small) }]),
  ];
};

/** The title in two lines, for a board without room for more; what the edges are is not left out. */
const shortTitle = ({ name, top, units }: LetteringSource): Label => ({ lines: [{ text: name, height: 3.5 }, small('WHOLE TOP, seen from above'), ...legend(top, units)] });

/** All over the board, from the left. */
function* sweep({ top: { board } }: LetteringSource): Iterable<Place> {
  for (let x = 20; x < board.length; x += 6) for (let y = 8; y < board.width; y += 6) yield { at: point(x, y) };
}

const edgeWishes = ({ top: { board } }: LetteringSource): Wish[] => {
  const front = board.width - 5;
  const along = function* (y: number): Iterable<Place> {
    for (let x = 30; x < board.length; x += 10) yield { at: point(x, y) };
  };
  const end = function* (x: number): Iterable<Place> {
    for (let i = 0; i < board.width / 2; i += 4) for (const side of [-1, 1]) yield { at: point(x, board.width / 2 + side * (i + 12)), turn: upright };
  };
  return [
    { label: { lines: [{ text: 'FRONT EDGE', height: 2.5 }] }, places: () => along(front) },
    { label: { lines: [{ text: 'REAR EDGE', height: 2.5 }] }, places: () => along(board.width - front) },
    { label: { lines: [{ text: 'DATUM: left end', height: 2.5 }] }, places: () => end(5) },
  ];
};

/** Below the board, in rows, for what finds no room on it. */
function* below({ top: { board }, font }: LetteringSource, { lines }: Label): Iterable<Place> {
  const half = Math.max(...lines.map(({ text, height }) => font.width(text, height))) / 2;
  for (let y = board.width + 8; ; y += 6) for (let x = half + 2; x < Math.max(board.length - half, half + 3); x += 10) yield { at: point(x, y) };
}

/** A label beside what it is about: one zone for both, so that a seam does not fall between them. One further off stands alone. */
const together = (label: Zone, about: Zone | undefined): Zone[] =>
  about === undefined || !boxesMeet(growBox(label.box, 10), about.box) ? [] : [{ box: uniteBoxes([label.box, about.box]), why: `${about.why} with its lettering` }];

/**
 * All lettering of the top, clear of the lines given and of the spine; what must be said and finds no room
 * on the board stands below it. Notes that the set-up sheets say as well are left out there rather than cost a sheet more.
 */
export const letterBoard = (source: LetteringSource, drawn: readonly Item[]): Lettered => {
  const { top, font } = source;
  const spine = line(point(0, top.board.width / 2), point(top.board.length, top.board.width / 2));
  // Lettering that stands already is kept clear of by its box: no label is flat enough to lie within it.
  const boxOfWords = (item: Item) => { const { x0, y0, x1, y1 } = itemsBounds([item], font); return rectangle(x0, y0, x1 - x0, y1 - y0); };
  const field = labelField([spine, ...drawn.map((item) => (item.kind === 'shape' ? item.path : boxOfWords(item)))], font);
  const wishes = [
    ...top.holes.map((hole) => holeWish(source, hole)), ...top.slots.map((slot) => slotWish(source, slot)),
    ...top.recesses.map((recess) => recessWish(source, recess)), ...top.splits.map((station, i) => splitWish(source, station, i + 1)),
  ];
  const inside = { x0: 0, y0: 0, x1: top.board.length, y1: top.board.width };
  const put = ({ label, places, about }: Wish) => {
    const { items, zone } = field.put(label, places(), inside) ?? field.put(label, below(source, label))!;
    return { items, zones: [zone, ...together(zone, about)] };
  };
  const within = (label: Label, places: Iterable<Place>) => {
    const put = field.put(label, places, inside);
    return put === undefined ? undefined : { items: put.items, zones: [put.zone] };
  };
  const anywhere = (label: Label) => within(label, sweep(source));
  const found = [
    ...wishes.map(put), anywhere(titleLabel(source)) ?? put({ label: shortTitle(source), places: () => sweep(source) }),
    ...[...edgeWishes(source).map(({ label, places }) => within(label, places())), ...noteLabels(source).map(anywhere)].filter((f) => f !== undefined),
  ];
  return { items: found.flatMap((f) => f.items), zones: found.flatMap((f) => f.zones) };
};
