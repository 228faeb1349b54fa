import type { Item } from '../drawing/drawing.js';
import { moveItems } from '../drawing/items.js';
import type { Box } from '../geometry/box.js';

/** What a block needs of a page, mm. */
export interface FlowHeight {
  readonly height: number;
  /** Space before it, except at the top of a page. */
  readonly before: number;
  /** Never the last on a page: a heading. */
  readonly withNext?: boolean;
}

/** A piece of a page: items from its own top left corner, downwards. mm. */
export interface FlowBlock extends FlowHeight {
  readonly items: readonly Item[];
}

/** Height of a block together with those that it must not part from. */
const heightWithNext = (blocks: readonly FlowHeight[], from: number): number => {
  const block = blocks[from]!;
  const next = blocks[from + 1];
  return block.withNext === true && next !== undefined ? block.height + next.before + heightWithNext(blocks, from + 1) : block.height;
};

/** Where a block goes: its page, counted from the one that is begun on, and its top, mm. */
export interface FlowPlace {
  readonly page: number;
  readonly y: number;
}

/** The stretch of a page that blocks may fill, mm. */
export interface Stretch {
  readonly y0: number;
  readonly y1: number;
}

/**
 * Places for blocks one under the other from `at` on, further pages being filled over `rest`. A block is never split; one
 * taller than a page stands alone on it and hangs out, so make none. `used`: the first page has something above `at` already.
 */
export const placesOf = (blocks: readonly FlowHeight[], first: Stretch, rest: Stretch, used = false): FlowPlace[] => {
  let page = 0;
  let area = first;
  let y = first.y0;
  let fresh = !used;
  return blocks.map((block, i) => {
    if (!fresh && y + block.before + heightWithNext(blocks, i) > area.y1 + 1e-9) {
      page++;
      area = rest;
      y = rest.y0;
      fresh = true;
    }
    const top = fresh ? y : y + block.before;
    y = top + block.height;
    fresh = false;
    return { page, y: top };
  });
};

/** Sets blocks one under the other, on as many pages as they need: the first page in `first`, the others in `rest`. */
export const flow = (blocks: readonly FlowBlock[], first: Box, rest: Box): Item[][] => {
  const places = placesOf(blocks, first, rest);
  const pages: Item[][] = Array.from({ length: Math.max(1, (places.at(-1)?.page ?? 0) + 1) }, () => []);
  blocks.forEach((block, i) => {
    const { page, y } = places[i]!;
    pages[page]!.push(...moveItems(block.items, (page === 0 ? first : rest).x0, y));
  });
  return pages;
};

/** Height of blocks that stand one under the other on one page, mm. */
export const stackHeight = (blocks: readonly FlowHeight[]): number =>
  blocks.reduce((sum, { before, height }, i) => sum + (i === 0 ? 0 : before) + height, 0);

/** Blocks one under the other on one page, from the top left corner of the first. */
export const stacked = (blocks: readonly FlowBlock[]): Item[] => {
  let y = 0;
  return blocks.flatMap((block, i) => {
    y += i === 0 ? 0 : block.before;
    const items = moveItems(block.items, 0, y);
    y += block.height;
    return items;
  });
};
