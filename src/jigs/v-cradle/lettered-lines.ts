import type { Lettering } from '../../drawing/drawing.js';
import { letter, type LetteringOptions } from '../../drawing/items.js';
import { point, type Point } from '../../geometry/point.js';

/** Lines of lettering under each other, the first on the base line at `at`; 1.6 heights apart. mm. */
export const letteredLines = (at: Point, lines: readonly string[], options: LetteringOptions = {}): Lettering[] => {
  const pitch = 1.6 * (options.height ?? 2.5);
  return lines.map((text, i) => letter(point(at.x, at.y + i * pitch), text, options));
};

/** A pattern's own lettering, which stays on it when it is cut out: its title in 3.5 mm, what to do with it in 2.5 mm. */
export const patternLettering = (at: Point, title: string, lines: readonly string[]): Lettering[] =>
  [letter(at, title, { height: 3.5 }), ...letteredLines(point(at.x, at.y + 5.2), lines)];
