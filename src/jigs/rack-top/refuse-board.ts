import { cureLength } from '../kit/report.js';
import { edgeStart, type Board } from './board.js';
import type { TopFinding, Say } from './report.js';

const stop = { severity: 'stop' } as const;

/** Why a board cannot be of this shape; nothing where it can. */
export const refuseBoard = (board: Board, say: Say): TopFinding[] => {
  const { length, width, endRadius, cornerRadius } = board;
  if (endRadius !== undefined && cornerRadius > 0) {
    return [{
      ...stop, code: 'ends-two-ways', measured: cornerRadius, limit: 0,
      message: `The ends are rounded at ${say(endRadius)} and the corners at ${say(cornerRadius)} as well.`,
      remedy: 'Keep one of them: endRadius for arcs from edge to edge, cornerRadius for the corners of square ends.',
    }];
  }
  if (endRadius !== undefined && endRadius < width / 2) {
    return [{
      ...stop, code: 'end-radius-small', measured: endRadius, limit: width / 2,
      message: `An end of radius ${say(endRadius)} does not reach from edge to edge of a board ${say(width)} wide.`,
      remedy: `At least ${say.least(width / 2)} (a half round), or cornerRadius for the corners alone.`, would: [cureLength('board.endRadius', say.up(width / 2))],
    }];
  }
  const most = Math.min(width, length) / 2;
  if (cornerRadius > most) {
    return [{
      ...stop, code: 'corner-radius-large', measured: cornerRadius, limit: most,
      message: `Corners of radius ${say(cornerRadius)} meet each other on a board ${say(length)} × ${say(width)}.`, remedy: `At most ${say.most(most)}.`, would: [cureLength('board.cornerRadius', say.down(most))],
    }];
  }
  if (2 * edgeStart(board) > length) {
    return [{
      ...stop, code: 'ends-meet', measured: length, limit: 2 * edgeStart(board),
      message: `The two rounded ends take ${say(2 * edgeStart(board))}, more than the board’s ${say(length)}.`,
      remedy: 'A longer board, or ends of a larger radius.',
    }];
  }
  return [];
};
