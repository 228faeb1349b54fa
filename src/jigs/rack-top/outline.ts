import { endOf, type Path, type Segment } from '../../geometry/path.js';
import { point, type Point } from '../../geometry/point.js';
import { circularArc } from '../../geometry/shapes.js';
import type { Board } from './board.js';
import type { Slot } from './slot.js';
import { slotPath } from './slot-shape.js';

/** A run of the board's edge between two slots, or a slot. */
export interface EdgePiece {
  readonly part: string;
  readonly path: Path;
}

interface Ends {
  /** Left front corner of the straight edge, where the outline begins. */
  readonly start: Point;
  readonly right: readonly Segment[];
  readonly rearRight: Point;
  readonly rearLeft: Point;
  readonly left: readonly Segment[];
}

const to = (p: Point): Segment => ({ kind: 'line', to: p });

/** The two ends `inset` mm inside the finished ones; arcs keep their centres. */
const roundedEnds = ({ length, width }: Board, endRadius: number, inset: number): Ends => {
  const radius = endRadius - inset;
  const turn = Math.asin(Math.min(1, (width / 2 - inset) / radius));
  const straight = endRadius - radius * Math.cos(turn);
  const right = circularArc(point(length - endRadius, width / 2), radius, turn, -turn);
  const left = circularArc(point(endRadius, width / 2), radius, Math.PI + turn, Math.PI - turn);
  return {
    start: point(straight, width - inset), right: [to(point(length - straight, width - inset)), right],
    rearRight: point(length - straight, inset), rearLeft: point(straight, inset), left: [left],
  };
};

const squareEnds = ({ length, width, cornerRadius }: Board, inset: number): Ends => {
  const c = Math.max(cornerRadius, inset);
  const r = Math.max(cornerRadius - inset, 0);
  const quarter = (x: number, y: number, turn: number): Segment[] => (r === 0 ? [] : [circularArc(point(x, y), r, turn, turn - Math.PI / 2)]);
  return {
    start: point(c, width - inset),
    right: [to(point(length - c, width - inset)), ...quarter(length - c, width - c, Math.PI / 2), to(point(length - inset, c)), ...quarter(length - c, c, 0)],
    rearRight: point(length - c, inset), rearLeft: point(c, inset),
    left: [...quarter(c, c, -Math.PI / 2), to(point(inset, width - c)), ...quarter(c, width - c, Math.PI)],
  };
};

/**
 * The edge of the wood `inset` mm inside the finished one (0: the finished edge), in pieces: what lies between the slots (`board`), and each
 * slot. Run counter-clockwise on the page from the left end of the front edge. A board without slots is one closed piece. Exact.
 */
export const boardPieces = (board: Board, slots: readonly Slot[], inset = 0): readonly EdgePiece[] => {
  const ends = board.endRadius === undefined ? squareEnds(board, inset) : roundedEnds(board, board.endRadius, inset);
  const front = slots.filter((s) => s.edge === 'front');
  const rear = slots.filter((s) => s.edge === 'rear').toReversed();
  const runs: { start: Point; segments: Segment[] }[] = [{ start: ends.start, segments: [] }];
  const pieces: EdgePiece[] = [];
  const cutSlot = (slot: Slot): void => {
    const path = slotPath(board, slot, inset);
    runs.at(-1)!.segments.push(to(path.start));
    runs.push({ start: endOf(path.segments.at(-1)!), segments: [] });
    pieces.push({ part: `slot-${slot.number}`, path });
  };
  front.forEach(cutSlot);
  runs.at(-1)!.segments.push(...ends.right);
  rear.forEach(cutSlot);
  runs.at(-1)!.segments.push(to(ends.rearLeft), ...ends.left);
  const edge = (run: { start: Point; segments: readonly Segment[] }, closed: boolean): EdgePiece =>
    ({ part: 'board', path: { start: run.start, segments: run.segments, closed } });
  if (runs.length === 1) return [edge(runs[0]!, true)];
  const [first, ...others] = runs;
  const last = others.pop()!;
  const joined = { start: last.start, segments: [...last.segments, ...first!.segments] };
  return [...[joined, ...others].map((run) => edge(run, false)), ...pieces];
};
