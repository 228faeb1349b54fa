import SVGPathCommander from 'svg-path-commander';
import { GeometryError } from '../errors/geometry-error.js';
import { arcFromEnds } from './arc-from-ends.js';
import type { Path, Segment } from './path.js';
import { between, type Point, point } from './point.js';

type Command = readonly [string, ...number[]];

const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi;
/** The arguments of one arc; its flags may be written without a space. */
const ARC = /[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?[\s,]*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?[\s,]*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?[\s,]*[01][\s,]*[01][\s,]*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?[\s,]*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi;

/** How many numbers the text holds, counted by eye as it were: the parser may stop short without a word. */
const numbersIn = (text: string): number => (text.match(/[astvzqmhlc][^astvzqmhlc]*/gi) ?? []).reduce((sum, chunk) =>
  sum + (/^a/i.test(chunk) ? 7 * (chunk.match(ARC) ?? []).length : (chunk.match(NUMBER) ?? []).length), 0);

const parse = (text: string): readonly Command[] => {
  let commands: readonly Command[];
  try {
    commands = SVGPathCommander.parsePathString(text) as unknown as readonly Command[];
  } catch (error) {
    throw new GeometryError('path-unreadable', `The path data cannot be read: ${error instanceof Error ? error.message : String(error)}.`, {});
  }
  const got = commands.reduce((sum, command) => sum + command.length - 1, 0);
  const written = numbersIn(text);
  if (!/^\s*m/i.test(text) || got === 0) throw new GeometryError('path-without-move', 'Path data must begin with a move (M) and draw something.', {});
  if (got !== written) throw new GeometryError('path-read-in-part', 'The path data is read only in part.', { numbersWritten: written, numbersRead: got });
  if (commands.some(([, ...numbers]) => !numbers.every(Number.isFinite))) {
    throw new GeometryError('path-number-out-of-reach', 'The path data holds a number that is out of reach.', {});
  }
  return commands;
};

/** The pen between commands. */
interface Pen {
  readonly at: Point;
  readonly begin: Point;
  /** The last handle, for the smooth commands S (cubic) and T (quadratic). */
  readonly cubic?: Point;
  readonly quadratic?: Point;
}

interface Step {
  readonly pen: Pen;
  readonly segment?: Segment;
}

const line = (pen: Pen, to: Point): Step => ({ pen: { begin: pen.begin, at: to }, segment: { kind: 'line', to } });

const cubic = (pen: Pen, c1: Point, c2: Point, to: Point): Step =>
  ({ pen: { begin: pen.begin, at: to, cubic: c2 }, segment: { kind: 'cubic', c1, c2, to } });

/** A quadratic raised to a cubic; exact. */
const quadratic = (pen: Pen, handle: Point, to: Point): Step => ({
  pen: { begin: pen.begin, at: to, quadratic: handle },
  segment: { kind: 'cubic', c1: between(pen.at, handle, 2 / 3), c2: between(to, handle, 2 / 3), to },
});

const mirrored = (handle: Point | undefined, at: Point): Point =>
  handle === undefined ? at : { x: 2 * at.x - handle.x, y: 2 * at.y - handle.y };

const arc = (pen: Pen, n: readonly number[], to: Point): Step => {
  const [rx = 0, ry = 0, degrees = 0, large, sweep] = n;
  const segment = arcFromEnds({
    from: pen.at, to, rx, ry, turn: (degrees * Math.PI) / 180, large: large === 1, sweep: sweep === 1,
  });
  if (segment !== undefined) return { pen: { begin: pen.begin, at: to }, segment };
  return to.x === pen.at.x && to.y === pen.at.y ? { pen: { begin: pen.begin, at: to } } : line(pen, to);
};

/** What one command draws, M and Z apart. */
const draw = (pen: Pen, [letter, ...n]: Command): Step => {
  const relative = letter === letter.toLowerCase();
  const origin = relative ? pen.at : point(0, 0);
  const p = (i: number): Point => point(origin.x + (n[i] ?? 0), origin.y + (n[i + 1] ?? 0));
  switch (letter.toUpperCase()) {
    case 'L': return line(pen, p(0));
    case 'H': return line(pen, point(origin.x + (n[0] ?? 0), pen.at.y));
    case 'V': return line(pen, point(pen.at.x, origin.y + (n[0] ?? 0)));
    case 'C': return cubic(pen, p(0), p(2), p(4));
    case 'S': return cubic(pen, mirrored(pen.cubic, pen.at), p(0), p(2));
    case 'Q': return quadratic(pen, p(0), p(2));
    case 'T': return quadratic(pen, mirrored(pen.quadratic, pen.at), p(0));
    case 'A': return arc(pen, n, p(5));
    default: throw new GeometryError('path-command-unknown', `The path data holds a command that is not known: ${letter}.`, {});
  }
};

/**
 * The strokes of SVG path data in its own units, one for each subpath that draws something: lines and cubics as they are,
 * quadratics raised to cubics, arcs by their centres, all exact. Throws GeometryError where any of the text is not read.
 */
export const pathsFromSvg = (data: string): readonly Path[] => {
  const paths: Path[] = [];
  let pen: Pen = { at: point(0, 0), begin: point(0, 0) };
  let segments: Segment[] = [];
  const finish = (closed: boolean): void => {
    if (segments.length > 0) paths.push({ start: pen.begin, segments, closed });
    segments = [];
  };
  for (const command of parse(data)) {
    const [letter, x = 0, y = 0] = command;
    if (letter === 'Z' || letter === 'z') {
      finish(true);
      pen = { at: pen.begin, begin: pen.begin };
    } else if (letter === 'M' || letter === 'm') {
      finish(false);
      const to = letter === 'M' ? point(x, y) : point(pen.at.x + x, pen.at.y + y);
      pen = { at: to, begin: to };
    } else {
      const step = draw(pen, command);
      if (step.segment !== undefined) segments.push(step.segment);
      pen = step.pen;
    }
  }
  finish(false);
  return paths;
};
