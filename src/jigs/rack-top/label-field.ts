import type { Item, Zone } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { letter } from '../../drawing/items.js';
import { boxContains, boxesMeet, growBox, type Box } from '../../geometry/box.js';
import { explicitSegments } from '../../geometry/explicit-segments.js';
import type { Path, Segment } from '../../geometry/path.js';
import { distance, point, type Point } from '../../geometry/point.js';
import { segmentPoint } from '../../geometry/segment-point.js';

/** A label of one line or several set under each other, mm. */
export interface Label {
  readonly lines: readonly { readonly text: string; readonly height: number }[];
}

/** Where a label's middle may stand, and its turn (0, or −π/2 to read upwards). */
export interface Place {
  readonly at: Point;
  readonly turn?: number;
}

/** A field of lines in which labels find room. */
export interface LabelField {
  /** The label at the first of the places where it touches no line and no other label, and lies `within` a box; undefined where there is none. */
  readonly put: (label: Label, places: Iterable<Place>, within?: Box) => { readonly items: readonly Item[]; readonly zone: Zone } | undefined;
}

/** Bare paper kept round a label, mm. */
const clear = 1.2;
/** Side of a cell of the index, and the most between two points of a line in it, mm. */
const cell = 8;
const spacing = 1.5;

/** A length that a segment does not exceed: enough to space points by. */
const lengthBound = (segment: Segment, from: Point): number => {
  switch (segment.kind) {
    case 'line': return distance(from, segment.to);
    case 'arc': return Math.abs(segment.t1 - segment.t0) * Math.hypot(segment.u.x, segment.u.y, segment.v.x, segment.v.y);
    case 'cubic': return distance(from, segment.c1) + distance(segment.c1, segment.c2) + distance(segment.c2, segment.to);
  }
};

const samplesOf = (path: Path): Point[] => explicitSegments(path).flatMap(({ segment, from }) => {
  const count = Math.max(1, Math.ceil(lengthBound(segment, from) / spacing));
  return Array.from({ length: count + 1 }, (_, i) => segmentPoint(segment, from, i / count));
});

/** One number for a cell; no drawing is a million cells high. */
const cellKey = (i: number, j: number): number => i * 1e6 + j;

const cellsOf = ({ x0, y0, x1, y1 }: Box): number[] => {
  const keys: number[] = [];
  for (let i = Math.floor(x0 / cell); i <= Math.floor(x1 / cell); i++) {
    for (let j = Math.floor(y0 / cell); j <= Math.floor(y1 / cell); j++) keys.push(cellKey(i, j));
  }
  return keys;
};

/** The label's lettering about its middle. */
const setLabel = ({ lines }: Label, { at, turn = 0 }: Place): Item[] => {
  const whole = lines.reduce((sum, { height }) => sum + 1.6 * height, 0) - 0.6 * lines.at(-1)!.height;
  let down = -whole / 2;
  return lines.map(({ text, height }) => {
    const base = down + height;
    down += 1.6 * height;
    const where = turn === 0 ? point(at.x, at.y + base) : point(at.x + base, at.y);
    return letter(where, text, { height, turn, anchor: 'middle' });
  });
};

/**
 * A field in which labels are put clear of the lines given and of each other. Lines are known by points at most 1.5 mm apart, which no
 * label is small enough to slip between. The work for a label is that of its places and its own size, whatever the length of the board.
 */
export const labelField = (lines: readonly Path[], font: Font): LabelField => {
  const ink = new Map<number, Point[]>();
  const taken = new Map<number, Box[]>();
  const keep = <T>(index: Map<number, T[]>, key: number, value: T): void => {
    const found = index.get(key);
    if (found === undefined) index.set(key, [value]);
    else found.push(value);
  };
  for (const p of lines.flatMap(samplesOf)) keep(ink, cellKey(Math.floor(p.x / cell), Math.floor(p.y / cell)), p);
  const isFree = (box: Box): boolean => cellsOf(box).every((key) =>
    !(ink.get(key) ?? []).some((p) => p.x > box.x0 && p.x < box.x1 && p.y > box.y0 && p.y < box.y1)
    && !(taken.get(key) ?? []).some((other) => boxesMeet(other, box)));
  return {
    put: (label, places, within) => {
      // Measured once each way about the origin; a place only moves it.
      const measured = new Map<number, Box>();
      const boxAt = ({ at, turn = 0 }: Place): Box => {
        const box = measured.get(turn) ?? growBox(itemsBounds(setLabel(label, { at: point(0, 0), turn }), font), clear);
        measured.set(turn, box);
        return { x0: box.x0 + at.x, y0: box.y0 + at.y, x1: box.x1 + at.x, y1: box.y1 + at.y };
      };
      for (const place of places) {
        const box = boxAt(place);
        if ((within !== undefined && !boxContains(within, box)) || !isFree(box)) continue;
        for (const key of cellsOf(box)) keep(taken, key, box);
        return { items: setLabel(label, place), zone: { box, why: 'lettering' } };
      }
      return undefined;
    },
  };
};

/** Places about a point in growing rings, 4 mm apart, out to `reach`. */
export function* ringsAbout({ x, y }: Point, reach: number): Iterable<Place> {
  for (let r = 0; r <= reach; r += 4) {
    const count = Math.max(1, Math.round((2 * Math.PI * r) / 6));
    for (let i = 0; i < count; i++) yield { at: point(x + r * Math.cos((2 * Math.PI * i) / count), y + r * Math.sin((2 * Math.PI * i) / count)) };
  }
}
