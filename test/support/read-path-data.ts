import type { Arc, Path, Segment } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';

/** End-point to centre form of an arc: W3C SVG 2, "Elliptical arc implementation notes", B.2.4. */
const arcFromEnds = (from: Point, numbers: readonly number[]): Arc => {
  const [rx0, ry0, turnDeg, large, sweep, x, y] = numbers as [number, number, number, number, number, number, number];
  const turn = (turnDeg * Math.PI) / 180;
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const dx = (from.x - x) / 2;
  const dy = (from.y - y) / 2;
  const px = cos * dx + sin * dy;
  const py = -sin * dx + cos * dy;
  const grow = Math.max(1, Math.hypot(px / rx0, py / ry0));
  const rx = rx0 * grow;
  const ry = ry0 * grow;
  const rest = Math.max(0, (rx * ry) ** 2 - (rx * py) ** 2 - (ry * px) ** 2) / ((rx * py) ** 2 + (ry * px) ** 2);
  const k = (large === sweep ? -1 : 1) * Math.sqrt(rest);
  const cx = (k * rx * py) / ry;
  const cy = (-k * ry * px) / rx;
  const t0 = Math.atan2((py - cy) / ry, (px - cx) / rx);
  let span = Math.atan2((-py - cy) / ry, (-px - cx) / rx) - t0;
  if (sweep === 1 && span < 0) span += 2 * Math.PI;
  if (sweep === 0 && span > 0) span -= 2 * Math.PI;
  return {
    kind: 'arc', t0, t1: t0 + span, u: { x: rx * cos, y: rx * sin }, v: { x: -ry * sin, y: ry * cos },
    centre: { x: cos * cx - sin * cy + (from.x + x) / 2, y: sin * cx + cos * cy + (from.y + y) / 2 },
  };
};

/** Numbers as SVG lets them be written: `.5-.3 1`. */
const readNumbers = (list: string): number[] => {
  const number = /[+-]?(?:\d+\.?\d*|\.\d+)/g;
  if (list.replace(number, '').replace(/[\s,]/g, '') !== '') throw new Error(`not numbers: ${list}`);
  return (list.match(number) ?? []).map(Number);
};

const counts: Readonly<Record<string, number>> = { M: 2, L: 2, A: 7, C: 6, Q: 4, Z: 0 };

/** The sub-paths of SVG path data in commands M L A C Q Z and m l c q z; throws at any other. Written anew from the SVG specification. */
export const readPathData = (data: string): Path[] => {
  const paths: { start: Point; segments: Segment[]; closed: boolean }[] = [];
  let pen: Point = { x: 0, y: 0 };
  const rest = data.replace(/([A-Za-z])([^A-Za-z]*)/g, (_, letter: string, list: string) => {
    const command = letter.toUpperCase();
    const shift = letter === command ? [0, 0] : [pen.x, pen.y];
    const numbers = readNumbers(list).map((n, i) => n + shift[i % 2]!);
    if (counts[command] !== numbers.length || letter === 'a') throw new Error(`not path data: ${letter}${list}`);
    const to = { x: numbers.at(-2) ?? NaN, y: numbers.at(-1) ?? NaN };
    const current = paths.at(-1);
    const [a, b, c, d] = numbers as [number, number, number, number];
    if (command === 'M') paths.push({ start: to, segments: [], closed: false });
    else if (command === 'Z') { current!.closed = true; pen = current!.start; return ''; }
    else if (command === 'L') current!.segments.push({ kind: 'line', to });
    else if (command === 'A') current!.segments.push(arcFromEnds(pen, numbers));
    else if (command === 'C') current!.segments.push({ kind: 'cubic', c1: { x: a, y: b }, c2: { x: c, y: d }, to });
    else current!.segments.push({
      kind: 'cubic', to, c1: { x: (pen.x + 2 * a) / 3, y: (pen.y + 2 * b) / 3 }, c2: { x: (to.x + 2 * a) / 3, y: (to.y + 2 * b) / 3 },
    });
    pen = to;
    return '';
  });
  if (rest.trim() !== '') throw new Error(`not path data: ${rest}`);
  return paths;
};
