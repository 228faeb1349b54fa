import type { Item } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import type { Font } from '../../drawing/font.js';
import { letter } from '../../drawing/items.js';
import { textBlock } from '../../drawing/text-block.js';
import { point, type Point } from '../../geometry/point.js';

/** Widest that a pattern's lettering runs, mm: inside any paper's live area. */
const widest = 130;

/** A pattern's own lettering, which stays on it when it is cut out: its title in 3.5 mm from the base line at `at`, then what to do with it. */
export const patternLettering = (at: Point, title: string, paragraphs: readonly string[], font: Font): Item[] => [
  letter(at, fitText(title, widest, 3.5, font), { height: 3.5 }),
  ...textBlock({ at: point(at.x, at.y + 2.8), width: widest, paragraphs }, font).items,
];
