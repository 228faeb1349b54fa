import type { Drawing } from '../../src/drawing/drawing.js';
import { shape } from '../../src/drawing/items.js';
import type { Path } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { circle, circularArc, ellipse, polyline, rectangle } from '../../src/geometry/shapes.js';
import { rotation, transformPath } from '../../src/geometry/transform.js';

/** A board with half-round ends, its length along x. */
const roundEnded = (length: number, width: number): Path => {
  const r = width / 2;
  return {
    start: point(r, 0), closed: true,
    segments: [
      { kind: 'line', to: point(length - r, 0) }, circularArc(point(length - r, r), r, -Math.PI / 2, Math.PI / 2),
      { kind: 'line', to: point(r, width) }, circularArc(point(r, r), r, Math.PI / 2, (3 * Math.PI) / 2),
    ],
  };
};

/** A bent part of even width: two arcs about one centre and square ends, `chord` long with the rise `rise`. */
const bow = (chord: number, rise: number, width: number): Path => {
  const radius = (chord * chord) / (8 * rise) + rise / 2;
  const half = Math.asin(chord / 2 / radius);
  const [from, to] = [-Math.PI / 2 - half, -Math.PI / 2 + half];
  const centre = point(0, 0);
  return {
    start: point(radius * Math.cos(from), radius * Math.sin(from)), closed: true,
    segments: [
      circularArc(centre, radius, from, to),
      { kind: 'line', to: point((radius - width) * Math.cos(to), (radius - width) * Math.sin(to)) },
      circularArc(centre, radius - width, to, from),
    ],
  };
};

const ell = (a: number, b: number, leg: number): Path =>
  polyline([point(0, 0), point(a, 0), point(a, leg), point(leg, leg), point(leg, b), point(0, b)], true);

const tee = (a: number, b: number, leg: number): Path => {
  const [left, right] = [(a - leg) / 2, (a + leg) / 2];
  return polyline([point(0, 0), point(a, 0), point(a, leg), point(right, leg), point(right, b), point(left, b), point(left, leg), point(0, leg)], true);
};

const turned = (path: Path, degrees: number): Path => transformPath(rotation((degrees * Math.PI) / 180), path);

const outlines: readonly (readonly Path[])[] = [
  // Rack tops, shelves, benches.
  ...([[600, 180], [760, 150], [900, 200], [1000, 240], [1200, 160], [1422.4, 203.2], [1500, 300], [1800, 250], [2000, 350], [2400, 220]] as const)
    .map(([l, w]) => [roundEnded(l, w)]),
  ...([[450, 300], [620, 420], [800, 500], [1100, 330], [1350, 280], [1700, 170]] as const).map(([l, w]) => [rectangle(0, 0, l, w)]),
  // Seats, stool tops and their rings.
  ...[300, 360, 420, 480, 600, 750, 900].map((d) => [circle(point(0, 0), d / 2)]),
  ...([[500, 60], [640, 70], [780, 80], [1000, 90]] as const).map(([d, w]) => [circle(point(0, 0), d / 2), circle(point(0, 0), d / 2 - w)]),
  ...([[450, 380], [800, 450], [1200, 600]] as const).map(([a, b]) => [ellipse(point(0, 0), a / 2, b / 2, 0)]),
  // Rockers, crest rails, bows.
  ...([[500, 60, 70], [620, 90, 80], [700, 60, 90], [760, 120, 60], [840, 150, 75], [900, 200, 60], [1000, 110, 100], [1100, 250, 80], [1250, 180, 90], [1500, 300, 70]] as const)
    .map(([c, r, w]) => [bow(c, r, w)]),
  // Splayed legs and struts as they stand.
  ...([[500, 50, 60], [650, 60, 75], [800, 45, 14], [1000, 70, 30], [1200, 50, 45], [1400, 80, 12]] as const).map(([l, w, a]) => [turned(roundEnded(l, w), a)]),
  // Story sticks and rails.
  ...([[900, 40], [1200, 30], [1500, 45], [1800, 60], [2100, 50], [2600, 70]] as const).map(([l, w]) => [rectangle(0, 0, l, w)]),
  // Brackets, cross stretchers, frames.
  ...([[500, 700, 80], [900, 600, 100], [1200, 450, 70], [650, 650, 120]] as const).map(([a, b, leg]) => [ell(a, b, leg)]),
  ...([[600, 500, 90], [1000, 700, 110]] as const).map(([a, b, leg]) => [tee(a, b, leg)]),
  ...([[900, 600, 80], [1400, 900, 100]] as const).map(([a, b, w]) => [rectangle(0, 0, a, b), rectangle(w, w, a - 2 * w, b - 2 * w)]),
];

/** Sixty outlines of furniture parts, mm: the fixed measure of how many sheets a layout takes. */
export const corpus: readonly Drawing[] = outlines.map((paths, i) => ({
  name: `outline-${i + 1}`, title: `Outline ${i + 1}`, whole: false, spine: false, datum: point(0, 0), keepClear: [], lands: [],
  items: paths.map((path) => shape('edge', path)),
}));
