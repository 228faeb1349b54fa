import { boxOf, type Box } from '../geometry/box.js';
import type { Path } from '../geometry/path.js';
import type { Point } from '../geometry/point.js';
import { after, rotation, transformPath, transformPoint, translation, type Transform } from '../geometry/transform.js';
import type { Item, Lettering, Shape } from './drawing.js';
import type { LineType } from './line-types.js';

/** A stroked path; `part` where the shape has a meaning of its own. */
export const shape = (line: LineType, path: Path, part?: string): Shape =>
  part === undefined ? { kind: 'shape', line, path } : { kind: 'shape', line, path, part };

/** A path filled black: arrowheads, blocks of a rule. */
export const filled = (line: LineType, path: Path, part?: string): Shape => ({ ...shape(line, path, part), filled: true });

/** What of a line of lettering may differ from the plain one. */
export type LetteringOptions = Partial<Pick<Lettering, 'height' | 'anchor' | 'turn' | 'part'>>;

/** A line of lettering on the base line at `at`; 2.5 mm capitals, set from its start, level, unless said otherwise. */
export const letter = (at: Point, text: string, options: LetteringOptions = {}): Lettering => ({
  kind: 'lettering', at, text, height: 2.5, anchor: 'start', turn: 0, ...options,
});

/** Moves items by (x, y) mm. */
export const moveItems = (items: readonly Item[], x: number, y: number): Item[] => placeItems(items, translation(x, y), 0);

/** Turns items by `angle` about the origin (clockwise on the page), then moves them by (x, y). Lettering turns along. */
export const turnItems = (items: readonly Item[], angle: number, x = 0, y = 0): Item[] =>
  placeItems(items, after(rotation(angle), translation(x, y)), angle);

/** The box round a box under `map`: exact where that turns by quarters. */
const placeBox = ({ x0, y0, x1, y1 }: Box, map: Transform): Box => boxOf([{ x: x0, y: y0 }, { x: x1, y: y1 }].map((p) => transformPoint(map, p)));

const placeLettering = (item: Lettering, map: Transform, turn: number): Lettering => ({
  ...item, at: transformPoint(map, item.at), turn: item.turn + turn, ...(item.clip !== undefined && { clip: placeBox(item.clip, map) }),
});

/** Items under `map`, whose turning part is `turn`; lettering keeps its size, and a window that clips it goes along. */
export const placeItems = (items: readonly Item[], map: Transform, turn: number): Item[] => items.map((item) =>
  item.kind === 'shape' ? { ...item, path: transformPath(map, item.path) } : placeLettering(item, map, turn));
