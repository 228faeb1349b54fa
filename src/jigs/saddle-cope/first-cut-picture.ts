import type { Item } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { point, type Point } from '../../geometry/point.js';
import { line, polyline, rectangle } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import { isSquare, type SaddleEnd } from './solve.js';

/** The round as drawn: its thickness at most, the length of the cut at most, and what is shown on either side, mm. */
const thickest = 12;
const longestCut = 30;
const shown = 15;

/** One way to make the first cut: the round level across the page, the blade through its middle. */
interface Way {
  readonly code: 'turned' | 'tilted-towards' | 'tilted-away';
  readonly title: readonly [string, string];
  /** On which side of the page the finished part lies, and where on the page its toe is. */
  readonly kept: 'left' | 'right';
  readonly toe: 'top' | 'bottom';
  /** What the round lies against. */
  readonly against: 'fence' | 'table';
}

const turned: Way = { code: 'turned', title: ['Blade turned', 'from above'], kept: 'left', toe: 'top', against: 'fence' };
/** The blade leans to the left in both. */
const tilted: readonly Way[] = [
  { code: 'tilted-towards', title: ['Blade tilted', 'kept part where it leans'], kept: 'left', toe: 'bottom', against: 'table' },
  { code: 'tilted-away', title: ['Blade tilted', 'kept part opposite'], kept: 'right', toe: 'top', against: 'table' },
];

interface Frame {
  readonly half: number;
  /** Half the length of the cut along the round; the cut meets the round's upper side at x = top and its lower at −top. */
  readonly top: number;
  readonly left: number;
  readonly right: number;
}

const frameOf = ({ sawAngle }: SaddleEnd, { toe, kept }: Way): Frame => {
  const slope = Math.tan(sawAngle);
  const half = Math.min(thickest, longestCut / Math.max(slope, 1e-9)) / 2;
  const reach = half * slope;
  // The kept part is longest at its toe.
  const outward = kept === 'left' ? 1 : -1;
  return { half, top: (toe === 'top' ? 1 : -1) * outward * reach, left: -reach - shown, right: reach + shown };
};

/** The two parts, blade and what the round lies against. Parts are called after the way: `turned-kept-part`. */
const lines = (way: Way, { half, top, left, right }: Frame): Item[] => {
  const [above, below] = [point(top, -half), point(-top, half)];
  const part = (end: number): Point[] => [above, below, point(end, half), point(end, -half)];
  const name = (side: 'left' | 'right'): string => `${way.code}-${side === way.kept ? 'kept-part' : 'off-cut'}`;
  const steep = 1 + 9 / half;
  return [
    shape(way.kept === 'left' ? 'edge' : 'reference', polyline(part(left), true), name('left')),
    shape(way.kept === 'right' ? 'edge' : 'reference', polyline(part(right), true), name('right')),
    shape('saw', line(point(top * steep, -half * steep), point(-top * steep, half * steep)), `${way.code}-blade`),
    way.against === 'fence' ? shape('reference', rectangle(left, -half - 3, right - left, 3), `${way.code}-fence`)
      : shape('reference', rectangle(left, half, right - left, 3), `${way.code}-table`),
  ];
};

const callOuts = (way: Way, { half, top, left, right }: Frame, square: boolean): Item[] => {
  const onTop = way.toe === 'top';
  const [toe, heel] = onTop ? [point(top, -half), point(-top, half)] : [point(-top, half), point(top, -half)];
  // Away from the blade, which leaves the round on the side of the corner that it leans to.
  const note = (at: Point, label: string[]): Item[] => leader({
    at, elbow: point(at.x - Math.sign(at.x) * 5, at.y < 0 ? -half - 9 : half + 9), side: at.x > 0 ? 'left' : 'right', label, end: 'arrow',
  });
  const words = (side: 'left' | 'right'): Item => letter(
    point(side === 'left' ? left + 1.5 : right - 1.5, 1.25), side === way.kept ? 'kept' : 'off-cut', { anchor: side === 'left' ? 'start' : 'end' });
  return [
    words('left'), words('right'),
    letter(point(left + 1, way.against === 'fence' ? -half - 0.6 : half + 2.4), way.against, { height: 1.8 }),
    ...(square ? [] : [...note(toe, ['toe, long', 'point']), ...note(heel, ['heel,', 'throat'])]),
  ];
};

const view = (end: SaddleEnd, way: Way): Item[] => {
  const frame = frameOf(end, way);
  const square = isSquare(end);
  const title = square ? ['First cut, square', 'from above'] : [`${way.title[0]} ${angleLabel(end.sawAngle)}`, way.title[1]];
  const words = title.map((text, i) => letter(point(frame.left, -frame.half - 21 + 4 * i), text));
  return [...lines(way, frame), ...callOuts(way, frame, square), ...words];
};

/**
 * The first cut as it lies at the machine, each way a view of its own: under a turned blade from above, and under a blade
 * that leans to the left seen along the feed, the finished part on either side. `mostTilt`: beyond it no blade leans.
 */
export function firstCutViews(end: SaddleEnd, mostTilt: number): readonly (readonly Item[])[] {
  if (isSquare(end) || end.sawAngle > mostTilt + 1e-9) return [view(end, turned)];
  return [turned, ...tilted].map((way) => view(end, way));
}
