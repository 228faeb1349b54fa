import { point, type Point } from '../geometry/point.js';
import type { Item } from './drawing.js';
import type { Font } from './font.js';
import { letter } from './items.js';
import { riseAbove } from './rise.js';
import { wrapText } from './wrap-text.js';

/** Items laid out downwards from a top left corner, and how much of the page they took, mm. */
export interface Block {
  readonly items: readonly Item[];
  readonly height: number;
}

/** A block's place, width and paragraphs. */
export interface TextBlockOptions {
  /** Top left corner: the first line touches it with its capitals, or with what stands above them. */
  readonly at: Point;
  readonly width: number;
  readonly paragraphs: readonly string[];
  readonly height?: number;
  /** What stands before each paragraph, set off to the left of its lines: `1.`, `–`. */
  readonly mark?: (index: number) => string;
  /** Between base lines, in heights of a capital (ISO 3098: at least 1.5). */
  readonly pitch?: number;
  /** Between paragraphs, mm, besides the pitch. */
  readonly between?: number;
}

/** Paragraphs set in lines no wider than the block; the height runs from the first capitals to below the last line's tails. */
export const textBlock = (options: TextBlockOptions, font: Font): Block => {
  const { at, width, paragraphs, height = 2.5, mark, pitch = 1.6, between = 0.8 } = options;
  const marks = paragraphs.map((_, i) => mark?.(i) ?? '');
  const indent = mark === undefined ? 0 : Math.max(...marks.map((m) => font.width(m, height))) + 0.8 * height;
  const items: Item[] = [];
  const [first = ''] = wrapText(paragraphs[0] ?? '', width - indent, height, font);
  let y = at.y + height + riseAbove(first, height, font);
  paragraphs.forEach((paragraph, i) => {
    if (marks[i] !== '') items.push(letter(point(at.x, y), marks[i]!, { height }));
    for (const text of wrapText(paragraph, width - indent, height, font)) {
      items.push(letter(point(at.x + indent, y), text, { height }));
      y += pitch * height;
    }
    y += between;
  });
  return { items, height: paragraphs.length === 0 ? 0 : y - at.y - between - pitch * height + 0.35 * height };
};
