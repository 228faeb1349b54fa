import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { rectangle } from '../../geometry/shapes.js';
import { heading, inTwoColumns, paragraphs } from '../blocks.js';
import { stackHeight, stacked, type FlowBlock } from '../flow.js';

/** In from the frame to its words, and its foot; mm. */
const [inset, foot] = [4, 3];
/** Width of the word Cautions beside its statements, mm. */
const wordWidth = 22;
/** Frames narrower than this have the word over the statements, mm. */
const leastBeside = 150;

const statements = (texts: readonly string[], width: number, font: Font): FlowBlock[] =>
  paragraphs(texts, width, font, { mark: () => '–' });

interface Inner {
  readonly items: readonly Item[];
  readonly height: number;
}

const innerOf = (cautions: readonly string[], width: number, font: Font): Inner => {
  if (width < leastBeside) {
    const blocks = [heading('Cautions', width, font), ...statements(cautions, width, font)];
    return { items: stacked(blocks), height: stackHeight(blocks) };
  }
  const { items, height } = inTwoColumns(cautions, width - wordWidth, font, () => '–');
  return {
    items: [letter(point(0, 3.5), 'Cautions', { height: 3.5 }), ...moveItems(items, wordWidth, 1)],
    height: height + 1,
  };
};

/** Cautions in a double frame of their own, kept together; in two columns beside their word where the frame is wide. */
export const cautionsBlock = (cautions: readonly string[], width: number, font: Font): FlowBlock => {
  const inner = innerOf(cautions, width - 2 * inset, font);
  const height = inset + inner.height + foot;
  const frame = [0, 0.9].map((by) =>
    shape('mark', rectangle(0.2 + by, by, width - 0.4 - 2 * by, height - 2 * by), 'cautions'),
  );
  return { items: [...frame, ...moveItems(inner.items, inset, inset)], height, before: 4 };
};
