import type { Item } from '../drawing/drawing.js';
import { moveItems } from '../drawing/items.js';
import type { Box } from '../geometry/box.js';

/** A piece of a page: items from its own top left corner, downwards. mm. */
export interface FlowBlock {
  readonly items: readonly Item[];
  readonly height: number;
  /** Space before it, except at the top of a page. */
  readonly before: number;
  /** Never the last on a page: a heading. */
  readonly withNext?: boolean;
}

/** Height of a block together with those that it must not part from. */
const heightWithNext = (blocks: readonly FlowBlock[], from: number): number => {
  const block = blocks[from]!;
  const next = blocks[from + 1];
  return block.withNext === true && next !== undefined ? block.height + next.before + heightWithNext(blocks, from + 1) : block.height;
};

/**
 * Sets blocks one under the other, on as many pages as they need: the first page in `first`, the others in `rest`. A block
 * is never split; one taller than a page stands alone on it and hangs out, so make none.
 */
export const flow = (blocks: readonly FlowBlock[], first: Box, rest: Box): Item[][] => {
  const pages: Item[][] = [[]];
  let area = first;
  let y = first.y0;
  blocks.forEach((block, i) => {
    const fresh = y === area.y0;
    if (!fresh && y + block.before + heightWithNext(blocks, i) > area.y1 + 1e-9) {
      pages.push([]);
      area = rest;
      y = rest.y0;
    }
    const top = y === area.y0 ? y : y + block.before;
    pages.at(-1)!.push(...moveItems(block.items, area.x0, top));
    y = top + block.height;
  });
  return pages;
};
