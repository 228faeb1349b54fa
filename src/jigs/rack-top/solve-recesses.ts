import { radiusToSpare } from '../../shop/router.js';
import { recessWall } from '../../shop/walls.js';
import { GeometryError } from '../../errors/geometry-error.js';
import { pathBounds } from '../../geometry/bounds.js';
import { flattenPath } from '../../geometry/flatten-path.js';
import type { Path } from '../../geometry/path.js';
import { after, rotation, transformPath, transformPoint, translation } from '../../geometry/transform.js';
import { boardPoint, edgeDistance, endDistance, type Board } from './board.js';
import type { Cutter } from './rack-top.js';
import type { Recess } from './recess.js';
import { cutterCure, cutterInto, deepestRecess, depthCure } from './router-cures.js';
import { recessShape, type RecessShape } from './recess-shape.js';
import type { TopFinding, Say } from './report.js';
import type { RecessFields } from './schema.js';

const stop = { severity: 'stop' } as const;

/** Chords along an outline for measuring webs keep within this of it, mm. */
const measuring = 0.01;

/** Wood between a recess and the board's outline, at its narrowest; negative where it breaks out. To 0.01 mm. */
export const woodAround = (outline: Path, board: Board): number =>
  flattenPath(outline, measuring).reduce((least, p) => Math.min(least, edgeDistance(board, p), endDistance(board, p)), Infinity);

const place = (fields: RecessFields, shape: RecessShape, board: Board): Pick<Recess, 'centre' | 'outline' | 'reached' | 'template' | 'tightestAt'> => {
  const centre = boardPoint(board, fields.at[0], fields.at[1]);
  // Seen from above the turn is counter-clockwise; on paper y points down.
  const map = after(rotation(-fields.turn), translation(centre.x, centre.y));
  const put = (path: Path | undefined): Path | undefined => (path === undefined ? undefined : transformPath(map, path));
  const tightestAt = shape.tightestAt === undefined ? undefined : transformPoint(map, shape.tightestAt);
  return { centre, outline: transformPath(map, shape.outline), reached: put(shape.reached), template: put(shape.template), tightestAt };
};

const refuseShape = (number: number, error: GeometryError, cutter: Cutter, say: Say): TopFinding => {
  return error.code === 'offset-closes-up' ? {
    ...stop, code: 'recess-cutter-cannot-enter', measured: cutter.diameter, limit: cutter.diameter,
    message: `A cutter of ${say(cutter.diameter)} does not pass everywhere through recess ${number}: it is narrower than that somewhere, or its outline crosses itself.`,
    remedy: 'A smaller cutter or a larger recess.',
  } : {
    ...stop, code: 'recess-path', measured: number, limit: number,
    message: `The outline of recess ${number} cannot be used: ${error.message}`, remedy: 'One closed outline as SVG path data, such as “M0 0 H80 V40 H0 Z”.',
  };
};

const refusePlaced = (recess: Recess, board: Board, cutter: Cutter, say: Say): TopFinding[] => {
  const wood = woodAround(recess.outline, board);
  const narrow = Math.min(recess.width, recess.height);
  const deepest = deepestRecess(board);
  const thinner = cutterInto(narrow);
  return [
    ...(recess.depth >= board.thickness ? [{
      ...stop, code: 'recess-through-board', measured: recess.depth, limit: board.thickness,
      message: `Recess ${recess.number} is ${say(recess.depth)} deep in a board of ${say(board.thickness)}.`,
      remedy: deepest === undefined ? 'A thicker board: one so thin leaves no floor.' : `At most ${say.most(deepest)}, which leaves a floor of ${say(recessWall.sound)}.`,
      would: depthCure(recess.number, deepest, say),
    }] : []),
    ...(wood <= 0 ? [{
      ...stop, code: 'recess-off-board', measured: wood, limit: 0,
      message: `Recess ${recess.number} breaks out of the board by ${say(-wood)}.`, remedy: `Move it at least ${say.least(recessWall.sound - wood)} inwards, which leaves ${say(recessWall.sound)} of wood.`,
    }] : []),
    ...(recess.sort !== 'path' && narrow < cutter.diameter ? [{
      ...stop, code: 'recess-cutter-cannot-enter', measured: cutter.diameter, limit: narrow,
      message: `A cutter of ${say(cutter.diameter)} does not go into recess ${recess.number}, which is ${say(narrow)} wide.`,
      remedy: thinner === undefined ? `A recess at least ${say.least(cutter.diameter + 2 * radiusToSpare)} wide.` : `A cutter of at most ${say.most(thinner)}.`,
      would: cutterCure(thinner, cutter, say),
    }] : []),
  ];
};

const solveOne = (fields: RecessFields, number: number, board: Board, cutter: Cutter): Recess => {
  const shape = recessShape(fields, cutter);
  const sort = fields.circle !== undefined ? 'circle' : fields.box !== undefined ? 'box' : 'path';
  const { width, height, insideRadius } = shape;
  const [along, across] = fields.at;
  return { number, sort, along, across, depth: fields.depth, face: fields.face, width, height, insideRadius, ...place(fields, shape, board) };
};

/** The recesses, and why any of them cannot be cut. */
export const solveRecesses = (all: readonly RecessFields[], board: Board, cutter: Cutter, say: Say): { readonly recesses: Recess[]; readonly refused: TopFinding[] } => {
  const recesses: Recess[] = [];
  const refused: TopFinding[] = [];
  all.forEach((fields, i) => {
    try {
      const recess = solveOne(fields, i + 1, board, cutter);
      recesses.push(recess);
      refused.push(...refusePlaced(recess, board, cutter, say));
    } catch (error) {
      if (!(error instanceof GeometryError)) throw error;
      refused.push(refuseShape(i + 1, error, cutter, say));
    }
  });
  return { recesses, refused };
};

/** The recess's box on paper. */
export const recessBounds = (recess: Recess) => pathBounds(recess.outline);
