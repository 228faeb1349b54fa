import { pathEnd, type Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { readSvg, type SvgFile, type SvgShape } from '../support/read-svg.js';

/** Parts whose outline has to close by itself. */
const closed = /^(?:(?:far-)?wrap-edge|bore|calibration-square|(?:underside-)?hole-\d+-(?:top|under)|(?:underside-)?recess-\d+|template-edge|plug-\d+)$/;
/** The board's outline is drawn in runs, between its slots. */
const runs = /^(?:board|slot-\d+)$/;
/** What SVG keeps of a millimetre. */
const near = 1e-3;

const meets = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < near;

const openEnds = (shapes: readonly SvgShape[]): readonly Point[] =>
  shapes.flatMap(({ subpaths }) => subpaths.filter((path) => !isClosed(path)).flatMap((path) => [path.start, pathEnd(path)]));

const isClosed = (path: Path): boolean => path.closed || meets(path.start, pathEnd(path));

/** Ends of the board's runs that meet no other end. */
const looseEnds = ({ shapes }: SvgFile): readonly Point[] => {
  const ends = openEnds(shapes.filter(({ part, line }) => runs.test(part ?? '') && line === 'edge'));
  return ends.filter((end, i) => !ends.some((other, k) => k !== i && meets(end, other)));
};

/** Faults of one written SVG, as an independent reader of XML and path data finds them. `name` tells a canvas from a sheet. */
export function faultsOfSvg(name: string, text: string): readonly string[] {
  const file = readSvg(text);
  const wrong = file.shapes.find(({ d }) => /[^MLHVCSQTAZmlhvcsqtaz\d\s.,e+-]/.test(d));
  const canvas = !name.includes('/');
  const open = canvas ? file.shapes.filter(({ part, subpaths }) => closed.test(part ?? '') && subpaths.some((path) => !isClosed(path))) : [];
  return [
    ...(/NaN|Infinity|undefined/.test(text.replaceAll(/aria-label="[^"]*"|<(title|desc)>[^<]*/g, '')) ? ['a figure that is none'] : []),
    ...(wrong === undefined ? [] : [`not path data: ${wrong.d.slice(0, 60)}`]),
    ...open.map(({ part }) => `${part} is not closed`),
    ...(canvas ? looseEnds(file).map(({ x, y }) => `the board’s outline is open at ${x}, ${y}`) : []),
  ];
}
