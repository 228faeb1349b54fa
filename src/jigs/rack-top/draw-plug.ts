import { arrow } from '../../drawing/arrow.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { letter, shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { ellipse, line } from '../../geometry/shapes.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import type { LegHole } from './hole.js';
import { numbersOf } from './words.js';

/** Holes that take the same leg at the same lean. */
export const plugGroups = (holes: readonly LegHole[]): readonly (readonly LegHole[])[] => {
  const groups = new Map<string, LegHole[]>();
  for (const hole of holes) {
    const key = `${hole.leg}/${hole.bit}/${hole.lean}`;
    groups.set(key, [...(groups.get(key) ?? []), hole]);
  }
  return [...groups.values()];
};

/** A disc of card as large as the opening should be, its long axis level: cut out, it must drop flush into a test hole drilled at the lean. */
export const drawPlug = (holes: readonly LegHole[], number: number, context: Context): Drawing => {
  const hole = holes[0]!;
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const [rx, ry] = [hole.halfLong, hole.bit / 2];
  const words = [
    `${context.name}: test disc ${number}`, `hole ${numbersOf(holes.map((h) => h.number))} · ${hole.round} Ø ${say(hole.leg)}`,
    `opening ${say(2 * rx)} × ${say(2 * ry)}`, hole.lean === 0 ? 'square to the face' : `lean ${angleLabel(hole.lean)}, up to the right`,
    'Cut out and try in a test hole.',
  ];
  const items: Item[] = [
    shape('edge', ellipse(point(0, 0), rx, ry, 0), `plug-${number}`), ...holeCross(point(0, 0), 2 * rx),
    ...(hole.lean === 0 ? [] : [shape('dimension', line(point(rx + 4, 0), point(rx + 11, 0))), arrow(point(rx + 12, 0), 0)]),
    ...words.map((text, i) => letter(point(-rx, ry + 8 + 4.4 * i), text, { height: i === 0 ? 3.5 : 2.5 })),
  ];
  return { name: `plug-${number}`, title: `test disc ${number}`, items, whole: true, spine: false, datum: point(-rx, 0), keepClear: [], lands: [] };
};
