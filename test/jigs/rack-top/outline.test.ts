import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { flattenPath } from '../../../src/geometry/flatten-path.js';
import { pathArea } from '../../../src/geometry/path-area.js';
import { endOf, type Path } from '../../../src/geometry/path.js';
import { polyline } from '../../../src/geometry/shapes.js';
import { boardPieces, type EdgePiece } from '../../../src/jigs/rack-top/outline.js';
import { near, nearPoint } from '../../geometry/near.js';
import { solved, type Given } from './rack.js';

const boards: readonly (readonly [string, Given])[] = [
  ['square ends', {}], ['corners of 20', { cornerRadius: 20 }], ['corners tighter than the inset', { cornerRadius: 4 }],
  ['half rounds', { endRadius: 100 }], ['flatter ends', { endRadius: 160 }],
];
const insets = [0, 2.5, 8];
const topOf = (more: Given, slots?: Given) => solved({ board: { length: 800, width: 200, thickness: 27, ...more }, ...(slots && { slots }) });

/** The pieces in one closed outline, each put to the one that ends where it begins. */
const joined = (pieces: readonly EdgePiece[]): Path => {
  const [first, ...rest] = pieces.map(({ path }) => path) as [Path, ...Path[]];
  const segments = [...first.segments];
  const left = [...rest];
  while (left.length > 0) {
    const at = endOf(segments.at(-1)!);
    const next = left.findIndex((path) => Math.hypot(path.start.x - at.x, path.start.y - at.y) < 1e-9);
    expect(next, `what begins at ${at.x}, ${at.y}`).toBeGreaterThanOrEqual(0);
    segments.push(...left.splice(next, 1)[0]!.segments);
  }
  if (rest.length > 0) nearPoint(endOf(segments.at(-1)!), first.start, 1e-9);
  return { start: first.start, segments, closed: true };
};

describe('boardPieces', () => {
  it.each(boards)('run all round a board with %s, as large as geometry has it', (_, more) => {
    const path = joined(boardPieces(topOf(more).board, []));
    const { x0, x1, y0, y1 } = pathBounds(path);
    for (const [value, wanted] of [[x0, 0], [x1, 800], [y0, 0], [y1, 200]] as const) near(value, wanted, 1e-9);
    const { cornerRadius: c = 0, endRadius: r } = more as { cornerRadius?: number; endRadius?: number };
    // A flat end of radius r over 200: a segment of half-angle asin(100/r) in place of the rectangle over its sagitta.
    const turn = r === undefined ? 0 : Math.asin(100 / r);
    const ends = r === undefined ? (4 - Math.PI) * c * c : 2 * (200 * (r - r * Math.cos(turn)) - r * r * (turn - Math.sin(turn) * Math.cos(turn)));
    near(Math.abs(pathArea(path)), 160_000 - ends, 1e-6);
  });

  it.each(boards.flatMap(([name, more]) => insets.slice(1).map((inset) => [name, inset, more] as const)))('with %s stand %d mm inside all round, as clipper has it', (_, inset, more) => {
    const { board } = topOf(more);
    const moved = joined(boardPieces(board, [], inset));
    const whole = flattenPath(joined(boardPieces(board, [])), 1e-4).map(({ x, y }) => ({ x, y }));
    const [theirs] = inflatePathsD([whole], -inset, JoinType.Round, EndType.Polygon, 2, 6, 1e-4);
    near(Math.abs(pathArea(moved)), Math.abs(pathArea(polyline(theirs!.map(({ x, y }) => ({ x, y })), true))), 0.05);
    const [ours, other] = [pathBounds(moved), pathBounds(polyline(theirs!.map(({ x, y }) => ({ x, y })), true))];
    for (const side of ['x0', 'x1', 'y0', 'y1'] as const) near(ours[side], other[side], 1e-3);
  });

  it.each(boards.flatMap(([name, more]) => insets.map((inset) => [name, inset, more] as const)))('with %s and slots at both edges join end to end, %d mm inside', (_, inset, more) => {
    const { board, slots } = topOf(more, { count: 4, pitch: 150, item: 24, depth: 60, edge: 'alternate', mouth: { ease: 0 } });
    const pieces = boardPieces(board, slots, inset);
    expect(pieces.map(({ part }) => part).sort()).toEqual(['board', 'board', 'board', 'board', 'slot-1', 'slot-2', 'slot-3', 'slot-4']);
    const path = joined(pieces);
    const { x0, x1, y0, y1 } = pathBounds(path);
    for (const [value, wanted] of [[x0, inset], [x1, 800 - inset], [y0, inset], [y1, 200 - inset]] as const) near(value, wanted, 1e-9);
    // Each slot takes its throat, 2(13 + inset) wide from the inset edge to the seat’s axis, and half a round.
    const radius = 13 + inset;
    const plain = Math.abs(pathArea(joined(boardPieces(board, [], inset))));
    const taken = 4 * (2 * radius * (60 - inset) + (Math.PI * radius * radius) / 2);
    near(plain - Math.abs(pathArea(path)), taken, inset === 0 ? 1e-6 : 4 * inset * inset);
  });
});
