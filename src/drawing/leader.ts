import { circle, polyline } from '../geometry/shapes.js';
import { add, between, distance, point, type Point } from '../geometry/point.js';
import { arrow, arrowLength } from './arrow.js';
import type { Item } from './drawing.js';
import { filled, letter, shape } from './items.js';

/** A note with a line to what it is about, mm. */
export interface LeaderOptions {
  /** What the note is about: the arrow's point. */
  readonly at: Point;
  /** Where the slanting line turns level; the note stands on its far side from `at`. */
  readonly elbow: Point;
  /** One line of lettering, or several set under each other. */
  readonly label: string | readonly string[];
  readonly height?: number;
  /** `arrow` on an edge, `dot` inside an outline (ISO 129-1), `none` on another line. */
  readonly end?: 'arrow' | 'dot' | 'none';
  /** To the right or left of the elbow; away from `at` unless given. */
  readonly side?: 'left' | 'right';
}

const shelf = 2;

/** A leader: end mark, slanting line, short level shelf, the note beside the shelf's end so that no line touches it. */
export const leader = ({ at, elbow, label, height = 2.5, end = 'arrow', side }: LeaderOptions): Item[] => {
  const right = side === undefined ? elbow.x >= at.x : side === 'right';
  const shelfEnd = add(elbow, point(right ? shelf : -shelf, 0));
  const far = Math.max(distance(at, elbow), 1e-9);
  const start = end === 'arrow' ? between(at, elbow, Math.min(arrowLength / 2 / far, 1)) : at;
  const marks: Item[] = end === 'dot' ? [filled('dimension', circle(at, 0.5))]
    : end === 'arrow' ? [arrow(at, Math.atan2(at.y - elbow.y, at.x - elbow.x))] : [];
  const lines = typeof label === 'string' ? [label] : label;
  const pitch = 1.5 * height;
  const words = lines.map((text, i) => letter(
    point(shelfEnd.x + (right ? 0.8 : -0.8), shelfEnd.y + height / 2 + pitch * (i - (lines.length - 1) / 2)),
    text, { height, anchor: right ? 'start' : 'end' },
  ));
  return [shape('dimension', polyline([start, elbow, shelfEnd])), ...marks, ...words];
};
