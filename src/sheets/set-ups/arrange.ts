import type { Item } from '../../drawing/drawing.js';
import { moveItems } from '../../drawing/items.js';
import { stackHeight, stacked, type FlowBlock, type FlowHeight } from '../flow.js';
import { columnGap } from './column-gap.js';
import type { Section } from './sections.js';

/** A block of a page whose items are made when it is placed. */
export interface Band extends FlowHeight {
  readonly make: () => readonly Item[];
}

/** One way to set the sections of an operation under and beside each other. */
export type Arrangement = readonly Band[];

/** The note under a narrow picture is set no narrower, mm. */
const narrowest = 45;
/** Columns have to save this share of the height, or the page stays plain. */
const worthwhile = 0.95;
/** Columns take at most this share of a page: what is taller breaks better over pages one under the other. */
const tallestColumns = 0.75;
/** Ways kept at each section. */
const mostWays = 8;

/** A block as it stands on the page. */
export const bandOf = ({ items, height, before, withNext = false }: FlowBlock): Band => ({
  height,
  before,
  withNext,
  make: () => items,
});

const allAt = (sections: readonly Section[], width: number): FlowBlock[] | undefined => {
  const found = sections.map((section) => section.at(width));
  return found.some((blocks) => blocks === undefined) ? undefined : found.flatMap((blocks) => blocks!);
};

/** Widths of two columns: a picture by itself takes its own. */
const columnWidths = (left: readonly Section[], width: number): readonly [number, number] => {
  const natural = left.length === 1 ? left[0]!.natural : undefined;
  const first = natural === undefined ? (width - columnGap) / 2 : Math.max(narrowest, natural);
  return [first, width - first - columnGap];
};

/** Sections in two columns, read down the left one first; undefined where they do not bear it or save too little. */
const columns = (
  left: readonly Section[],
  right: readonly Section[],
  room: { readonly width: number; readonly height: number },
): Band | undefined => {
  const [first, second] = columnWidths(left, room.width);
  const [a, b, plain] = [allAt(left, first), allAt(right, second), allAt([...left, ...right], room.width)];
  if (a === undefined || b === undefined) return undefined;
  const height = Math.max(stackHeight(a), stackHeight(b));
  if (height > tallestColumns * room.height || height > worthwhile * stackHeight(plain!)) return undefined;
  return {
    height,
    before: Math.max(a[0]?.before ?? 0, b[0]?.before ?? 0),
    make: () => [...stacked(a), ...moveItems(stacked(b), first + columnGap, 0)],
  };
};

/** All ways to part sections into a left and a right column, the first `count` of them taken together. */
const pairings = (sections: readonly Section[], count: number): [Section[], Section[]][] =>
  Array.from({ length: count - 1 }, (_, k) => [sections.slice(0, k + 1), sections.slice(k + 1, count)]);

/**
 * Ways to set the sections of an operation, the lowest first: each across the page, or several after one another in two
 * columns. The plain one, all across the page, is always among them: it breaks over pages best.
 */
export const arrangements = (
  sections: readonly Section[],
  room: { readonly width: number; readonly height: number },
): Arrangement[] => {
  const [head, ...tail] = sections;
  if (head === undefined) return [[]];
  const across = head.at(room.width)!.map(bandOf);
  const plain = arrangements(tail, room).map((way) => [...across, ...way]);
  const beside = Array.from({ length: sections.length - 1 }, (_, i) => i + 2).flatMap((count) => {
    const bands = pairings(sections, count).flatMap(([left, right]) => columns(left, right, room) ?? []);
    const lowest = bands.reduce<Band | undefined>(
      (best, band) => (best === undefined || band.height < best.height ? band : best),
      undefined,
    );
    return lowest === undefined ? [] : arrangements(sections.slice(count), room).map((way) => [lowest, ...way]);
  });
  const ways = [...plain, ...beside].sort((a, b) => stackHeight(a) - stackHeight(b));
  const [plainest] = [...ways].sort((a, b) => b.length - a.length);
  const kept = ways.slice(0, mostWays);
  return kept.includes(plainest!) ? kept : [...kept, plainest!];
};
