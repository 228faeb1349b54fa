import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Box } from '../../src/geometry/box.js';
import type { Path, Segment } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { apply, compose, type Matrix } from './matrix.js';

/** What one painting operator painted: mm from the page's top left, y down, lines and cubics as they stand in the file. */
export interface PdfPath {
  readonly paint: 'stroke' | 'fill';
  readonly subpaths: readonly Path[];
  /** Pen width, dash and phase in mm. */
  readonly width: number;
  readonly dash: readonly number[];
  readonly phase: number;
}

/** One run of text; `at` on its base line, mm from the top left; `turn` clockwise on the page; `size` is the em. */
export interface PdfText {
  readonly text: string;
  readonly at: Point;
  readonly turn: number;
  readonly size: number;
  readonly width: number;
  /** Clip box in force, mm, or nothing. */
  readonly clip: Box | undefined;
}

interface State {
  readonly matrix: Matrix;
  readonly width: number;
  readonly dash: readonly number[];
  readonly phase: number;
  readonly clip: Box | undefined;
}

interface Reader {
  readonly paths: PdfPath[];
  readonly texts: PdfText[];
  readonly stack: State[];
  state: State;
  textMatrix: Matrix;
  fontSize: number;
  clipNext: boolean;
}

const paints = new Map<number, 'stroke' | 'fill'>([
  [OPS.stroke, 'stroke'], [OPS.closeStroke, 'stroke'], [OPS.fill, 'fill'], [OPS.eoFill, 'fill'],
]);

/** pdfjs hands a path over as numbers: 0 move, 1 line, 2 cubic, 4 close, each with its points. */
const readSubpaths = (data: ArrayLike<number>, matrix: Matrix): Path[] => {
  const paths: { start: Point; segments: Segment[]; closed: boolean }[] = [];
  const at = (i: number): Point => apply(matrix, data[i]!, data[i + 1]!);
  for (let i = 0; i < data.length;) {
    const current = paths.at(-1);
    switch (data[i]) {
      case 0: paths.push({ start: at(i + 1), segments: [], closed: false }); i += 3; break;
      case 1: current!.segments.push({ kind: 'line', to: at(i + 1) }); i += 3; break;
      case 2: current!.segments.push({ kind: 'cubic', c1: at(i + 1), c2: at(i + 3), to: at(i + 5) }); i += 7; break;
      case 4: current!.closed = true; i += 1; break;
      default: throw new Error(`path operator ${data[i]} is not one that this reader knows`);
    }
  }
  return paths;
};

const boxOfSubpaths = (subpaths: readonly Path[]): Box => {
  const points = subpaths.flatMap((s) => [s.start, ...s.segments.flatMap((g) => (g.kind === 'arc' ? [] : [g.to]))]);
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
};

const scaleOf = ({ state }: Reader): number => Math.hypot(state.matrix[0], state.matrix[1]);
const save = (r: Reader): void => { r.stack.push(r.state); };
const restore = (r: Reader): void => { r.state = r.stack.pop()!; };
const transform = (r: Reader, matrix: Matrix): void => { r.state = { ...r.state, matrix: compose(matrix, r.state.matrix) }; };

const constructPath = (r: Reader, [op, [data]]: readonly [number, readonly [ArrayLike<number> | null]]): void => {
  const subpaths = data === null ? [] : readSubpaths(data, r.state.matrix);
  const paint = paints.get(op);
  const { width, dash, phase } = r.state;
  if (paint !== undefined) r.paths.push({ paint, subpaths, width, dash, phase });
  if (r.clipNext) r.state = { ...r.state, clip: boxOfSubpaths(subpaths) };
  r.clipNext = false;
};

const showText = (r: Reader, [shown]: readonly [readonly (number | { readonly unicode: string; readonly width: number })[]]): void => {
  const map = compose(r.textMatrix, r.state.matrix);
  const size = r.fontSize * Math.hypot(map[0], map[1]);
  const glyphs = shown.filter((g) => typeof g === 'object');
  r.texts.push({
    text: glyphs.map((g) => g.unicode).join(''), at: apply(map, 0, 0), turn: Math.atan2(map[1], map[0]),
    size, width: glyphs.reduce((sum, g) => sum + g.width, 0) * size / 1000, clip: r.state.clip,
  });
};

/** What each operator does to the reader; the operands are as pdfjs documents them, so `never` is narrowed here and nowhere else. */
const operators = new Map<number, (r: Reader, args: never) => void>([
  [OPS.save, save],
  [OPS.restore, restore],
  [OPS.transform, transform],
  [OPS.paintFormXObjectBegin, (r: Reader, [matrix]: readonly [Matrix | null]) => { save(r); if (matrix !== null) transform(r, matrix); }],
  [OPS.paintFormXObjectEnd, restore],
  [OPS.setLineWidth, (r: Reader, [width]: readonly [number]) => { r.state = { ...r.state, width: width * scaleOf(r) }; }],
  [OPS.setDash, (r: Reader, [dash, phase]: readonly [readonly number[], number]) => {
    r.state = { ...r.state, dash: dash.map((d) => d * scaleOf(r)), phase: phase * scaleOf(r) };
  }],
  [OPS.clip, (r: Reader) => { r.clipNext = true; }],
  [OPS.constructPath, constructPath],
  [OPS.beginText, (r: Reader) => { r.textMatrix = [1, 0, 0, 1, 0, 0]; }],
  [OPS.setFont, (r: Reader, [, size]: readonly [string, number]) => { r.fontSize = size; }],
  [OPS.setTextMatrix, (r: Reader, [m]: readonly [ArrayLike<number>]) => {
    r.textMatrix = [m[0]!, m[1]!, m[2]!, m[3]!, m[4]!, m[5]!];
  }],
  [OPS.showText, showText],
]);

/** Operators without a bearing on where black goes. Any other throws, so that nothing on a page is overlooked. */
const idle = new Set<number>([OPS.dependency, OPS.setLineJoin, OPS.setLineCap, OPS.endText]);

/** Runs a page's operators and notes what they paint and set, in the frame that `toMm` leads to. */
export const readPdfPage = (fns: readonly number[], args: readonly unknown[], toMm: Matrix): Pick<Reader, 'paths' | 'texts'> => {
  const reader: Reader = {
    paths: [], texts: [], stack: [], textMatrix: [1, 0, 0, 1, 0, 0], fontSize: 0, clipNext: false,
    state: { matrix: toMm, width: 1, dash: [], phase: 0, clip: undefined },
  };
  fns.forEach((fn, i) => {
    const operator = operators.get(fn);
    if (operator !== undefined) operator(reader, args[i] as never);
    else if (!idle.has(fn)) throw new Error(`operator ${fn} is not one that this reader knows`);
  });
  return reader;
};
