import { placesOf, type FlowPlace, type Stretch } from '../flow.js';
import type { Arrangement } from './arrange.js';

/** How one operation stands on the pages: the way chosen, and the place of each of its bands, pages counted from the first of all. */
export interface Placed {
  readonly way: Arrangement;
  readonly places: readonly FlowPlace[];
}

/** Where the pages stand after some operations. */
interface State {
  readonly page: number;
  /** Down to where the page is used; the top of the page where nothing is on it. */
  readonly y: number;
  /** Operations that go over the foot of a sheet. */
  readonly splits: number;
  readonly trail: Trail | undefined;
}

/** The operations placed so far, the last first. */
interface Trail {
  readonly placed: Placed;
  readonly earlier: Trail | undefined;
}

/** Clear paper over an operation that shares a sheet with the one before; a double rule stands in it. mm. */
export const between = 9;
/** Head of a page on which an operation goes on, mm. */
export const continuedHead = 9;

/** States kept after each operation: enough for the best of some dozens, and little work for hundreds. */
const mostStates = 24;

const placed = (state: State, way: Arrangement, page: Stretch, onNew: boolean): State | undefined => {
  const fresh = onNew || state.y === page.y0;
  const from = fresh ? page.y0 : state.y + between;
  const base = state.page + (onNew ? 1 : 0);
  const rest = { y0: page.y0 + continuedHead, y1: page.y1 };
  const places = placesOf(way, { y0: from, y1: page.y1 }, rest, !fresh).map((place) => ({
    page: place.page + base,
    y: place.y,
  }));
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || first.page !== base) return undefined;
  return {
    page: last.page,
    y: last.y + way.at(-1)!.height,
    splits: state.splits + (last.page > first.page ? 1 : 0),
    trail: { placed: { way, places }, earlier: state.trail },
  };
};

/** Fewer pages, then fewer operations over the foot of a sheet, then less of the last page. */
const order = (a: State, b: State): number => a.page - b.page || a.splits - b.splits || a.y - b.y;

/** The states worth going on from: none behind another in every respect. An earlier page is ahead, since a new one may be begun at any time. */
const pruned = (states: readonly State[]): State[] => {
  const kept: State[] = [];
  for (const state of [...states].sort(order)) {
    const isBehind = kept.some((k) => k.splits <= state.splits && (k.page < state.page || k.y <= state.y));
    if (!isBehind && kept.length < mostStates) kept.push(state);
  }
  return kept;
};

const trailOf = (trail: Trail | undefined): Placed[] =>
  trail === undefined ? [] : [...trailOf(trail.earlier), trail.placed];

/**
 * Operations in their order on as few pages as found, then with as few of them as may be going over the foot of a sheet.
 * Each begins where the one before ends, or on a sheet of its own. `ways`: for each operation those to choose from.
 */
export const sharePages = (ways: readonly (readonly Arrangement[])[], page: Stretch): readonly Placed[] => {
  let states: readonly State[] = [{ page: 0, y: page.y0, splits: 0, trail: undefined }];
  for (const each of ways) {
    const next = (state: State, way: Arrangement): State[] =>
      (state.y === page.y0 ? [false] : [false, true]).flatMap((onNew) => placed(state, way, page, onNew) ?? []);
    states = pruned(states.flatMap((state) => each.flatMap((way) => next(state, way))));
  }
  return trailOf(states[0]!.trail);
};
