import { pathEnd, type Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { inkOutside } from '../support/ink-outside.js';
import { readSvg, type SvgFile, type SvgShape } from '../support/read-svg.js';

/** Parts whose outline has to close by itself. */
const closed =
  /^(?:calibration-square|(?:underside-)?hole-\d+-(?:top|under)|(?:underside-)?recess-\d+|template-edge|plug-\d+|opening)$/;
/** The board's outline is drawn in runs, between its slots. */
const runs = /^(?:board|slot-\d+)$/;
/** What SVG keeps of a millimetre. */
const near = 1e-3;
/** Half the width of a dash that begins at the margin, and what is rounded, mm. */
const play = 0.02;

const meets = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < near;

const openEnds = (shapes: readonly SvgShape[]): readonly Point[] =>
  shapes.flatMap(({ subpaths }) =>
    subpaths.filter((path) => !isClosed(path)).flatMap((path) => [path.start, pathEnd(path)]),
  );

const isClosed = (path: Path): boolean => path.closed || meets(path.start, pathEnd(path));

/** Ends of the board's runs that meet no other end. */
const looseEnds = ({ shapes }: SvgFile): readonly Point[] => {
  const ends = openEnds(shapes.filter(({ part, line }) => runs.test(part ?? '') && line === 'edge'));
  return ends.filter((end, i) => !ends.some((other, k) => k !== i && meets(end, other)));
};

/** Ink in the margins of a sheet, mm. */
const strayInk = (text: string, { width, height }: SvgFile, margin: number): readonly string[] =>
  inkOutside(text, { x0: margin, y0: margin, x1: width - margin, y1: height - margin }, play).map(
    ({ what, by, side }) => `${what} stands ${by.toFixed(2)} mm in the ${side} margin`,
  );

/** Faults of one written SVG, as an independent reader of XML and path data finds them. `name` tells a canvas from a sheet, which keeps a margin clear. */
export function faultsOfSvg(name: string, text: string, margin: number | undefined): readonly string[] {
  const file = readSvg(text);
  const wrong = file.shapes.find(({ d }) => /[^MLHVCSQTAZmlhvcsqtaz\d\s.,e+-]/.test(d));
  const canvas = !/(?:^|\/)sheets-[^/]+\//.test(name);
  const open = canvas
    ? file.shapes.filter(({ part, subpaths }) => closed.test(part ?? '') && subpaths.some((path) => !isClosed(path)))
    : [];
  return [
    ...(/NaN|Infinity|undefined/.test(text.replaceAll(/aria-label="[^"]*"|<(title|desc)>[^<]*/g, ''))
      ? ['a figure that is none']
      : []),
    ...(wrong === undefined ? [] : [`not path data: ${wrong.d.slice(0, 60)}`]),
    ...open.map(({ part }) => `${part} is not closed`),
    ...(canvas || margin === undefined ? [] : strayInk(text, file, margin)),
    ...(canvas ? looseEnds(file).map(({ x, y }) => `the board’s outline is open at ${x}, ${y}`) : []),
  ];
}
