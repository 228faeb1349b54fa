import type { Path } from '../../../src/geometry/path.js';
import { pathEnd } from '../../../src/geometry/path.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import type { Point } from '../../../src/geometry/point.js';
import type { DrillGuideSolution } from '../../../src/jigs/drill-guide/solve.js';
import { partShapes, type SvgFile } from '../../support/read-svg.js';
import { length3, plus, times, type Vector } from '../saddle-cope/joint-frame.js';
import { pattern, writeAndRead } from './guide.js';

/** A block as its written faces and top give it, mm: x from the obtuse end, y across with 0 in the middle, z up from the blank's bottom. */
export interface WrittenBlock {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Where the bore stands, and its radius. */
  readonly bore: { readonly x: number; readonly y: number; readonly radius: number };
  /** The sole's line on the left side: its heights at the obtuse and at the acute end. */
  readonly sole: { readonly obtuse: number; readonly acute: number };
  /** How high the groove's crown stands over the sole's line on the acute end, up along the bore. */
  readonly crown: number;
  /** Where the station mark meets the sole's line, x from the obtuse end. */
  readonly station: number | undefined;
}

const only = (file: SvgFile, part: string, i = 0): Path => partShapes(file, part)[i]!.subpaths[0]!;
const ends = (path: Path): readonly [Point, Point] => [path.start, pathEnd(path)];

/** Reads back, from SVG, what a maker would cut and bore by. */
export const readBlock = async (s: DrillGuideSolution): Promise<WrittenBlock> => {
  const { svg: faces } = await writeAndRead(pattern(s, 'faces'));
  const { svg: top } = await writeAndRead(pattern(s, 'top'));
  const sheet = pathBounds(only(faces, 'block'));
  const fold = pathBounds(only(faces, 'fold')).x0;
  const plate = pathBounds(only(top, 'top'));
  const hole = pathBounds(only(top, 'bore'));
  const [a, b] = ends(only(faces, 'sole-line'));
  const up = (y: number): number => sheet.y1 - y;
  const groove = s.sole.depth === 0 ? undefined : pathBounds(only(faces, 'groove'));
  const station = groove === undefined ? undefined : ends(only(faces, 'station'))[0].x - sheet.x0;
  return {
    length: fold - sheet.x0, width: plate.y1 - plate.y0, height: sheet.y1 - sheet.y0,
    bore: { x: (hole.x0 + hole.x1) / 2 - plate.x0, y: (plate.y0 + plate.y1) / 2 - (hole.y0 + hole.y1) / 2, radius: (hole.x1 - hole.x0) / 2 },
    sole: { obtuse: up(a.y), acute: up(b.y) },
    crown: groove === undefined ? 0 : groove.y1 - groove.y0,
    station,
  };
};

/** The block on its work. */
export interface Placed {
  /** A place of the block in the frame of the work: x along it to the acute side, y to the right seen from there, z off it. */
  readonly place: (v: Vector) => Vector;
  /** Columns of the same map, for a mesh. */
  readonly columns: { readonly x: Vector; readonly y: Vector; readonly z: Vector; readonly origin: Vector };
  readonly boreAt: Vector;
  /** Out of the work. */
  readonly boreAlong: Vector;
}

/**
 * Sets a written block on its work by its sole alone: the sole lies along the work, its flat at the height at which the groove
 * touches the round (V: apex at R ÷ sin h over the round's axis; cove: crown at R), the block's middle over the round's axis.
 */
export const placeBlock = (b: WrittenBlock, s: DrillGuideSolution): Placed => {
  const slope: Vector = [b.length, 0, b.sole.acute - b.sole.obtuse];
  const along = times(1 / length3(slope), slope);
  const off: Vector = [-along[2], 0, along[0]];
  const depth = b.crown * off[2];
  const radius = s.work.kind === 'round' ? s.work.radius : 0;
  const plane = s.sole.form === 'v' ? radius / Math.sin(s.sole.halfAngle) - depth : radius - depth;
  // The block's axes in the work's frame: its x has the parts along·x and off·x there, and so on.
  const x: Vector = [along[0], 0, off[0]];
  const z: Vector = [along[2], 0, off[2]];
  const y: Vector = [0, 1, 0];
  const origin = plus([0, 0, plane], times(-b.sole.obtuse, z));
  const place = (v: Vector): Vector => plus(origin, times(v[0], x), times(v[1], y), times(v[2], z));
  return { place, columns: { x, y, z, origin }, boreAt: place([b.bore.x, b.bore.y, 0]), boreAlong: z };
};
