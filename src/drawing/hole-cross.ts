import { add, polar, type Point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import type { Shape } from './drawing.js';
import type { LineType } from './line-types.js';
import { shape } from './items.js';

/** How a hole's centre is marked. */
export interface CrossOptions {
  /** From the centre to the end of an arm, mm. */
  readonly reach: number;
  /** From the centre to the start of an arm, mm: the centre itself stays bare paper for the point of an awl. */
  readonly gap?: number;
  /** Turn of the cross, radians clockwise on the page. */
  readonly turn?: number;
  readonly line?: LineType;
}

/** Four arms about a bare centre. */
export const openCross = (centre: Point, { reach, gap = 0.7, turn = 0, line: type = 'mark' }: CrossOptions): Shape[] =>
  [0, 1, 2, 3].map((quarter) => {
    const angle = turn + (quarter * Math.PI) / 2;
    return shape(type, line(add(centre, polar(angle, gap)), add(centre, polar(angle, reach))));
  });

/** The centre of a hole to be drilled: an open cross whose arms pass the hole's edge by 2 mm where its diameter is given. */
export const holeCross = (centre: Point, diameter = 0, turn = 0): Shape[] =>
  openCross(centre, { reach: Math.max(diameter / 2 + 2, 3), turn, line: 'centre' });
