import type { PathCommand } from 'opentype.js';
import type { Path, Segment } from '../geometry/path.js';
import { between, point, type Point } from '../geometry/point.js';

/** A quadratic raised to the cubic that is the same curve. Exact. */
const raised = (from: Point, control: Point, to: Point): Segment =>
  ({ kind: 'cubic', c1: between(from, control, 2 / 3), c2: between(to, control, 2 / 3), to });

const segmentOf = (from: Point, command: Exclude<PathCommand, { type: 'M' | 'Z' }>): Segment => {
  const to = point(command.x, command.y);
  switch (command.type) {
    case 'L': return { kind: 'line', to };
    case 'Q': return raised(from, point(command.x1, command.y1), to);
    case 'C': return { kind: 'cubic', c1: point(command.x1, command.y1), c2: point(command.x2, command.y2), to };
  }
};

/** The closed contours of a glyph from a font reader's pen commands, in the same units and frame. Exact. */
export const glyphOutlines = (commands: readonly PathCommand[]): Path[] => {
  const contours: { start: Point; pen: Point; segments: Segment[] }[] = [];
  for (const command of commands) {
    if (command.type === 'Z') continue;
    const at = point(command.x, command.y);
    const contour = contours.at(-1);
    if (command.type === 'M' || contour === undefined) {
      contours.push({ start: at, pen: at, segments: [] });
      continue;
    }
    if (command.type !== 'L' || at.x !== contour.pen.x || at.y !== contour.pen.y) contour.segments.push(segmentOf(contour.pen, command));
    contour.pen = at;
  }
  return contours.filter((c) => c.segments.length > 0).map(({ start, segments }) => ({ start, segments, closed: true }));
};
