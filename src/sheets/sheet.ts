import type { Item } from '../drawing/drawing.js';

/** One page as it will be printed: what the sheets stage makes and the writers write. mm from the page's top left. */
export interface Sheet {
  /** The sheet’s number in its set, counted from 1: what stands large on it, and what its neighbours call it. */
  readonly code: string;
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** What to bookmark here: jigs on their first sheet; several where they share it. */
  readonly bookmark?: string | readonly string[];
}
