import type { Item } from '../../drawing/drawing.js';
import { shape } from '../../drawing/items.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import type { Curve } from '../../geometry/curve.js';
import { fitCurve } from '../../geometry/fit-curve.js';
import type { Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';
import { saddleCurve, wingParameters } from '../../geometry/saddle-curve.js';
import { firstCutHeight } from './first-cut.js';
import { band, type StripLayout } from './strip-layout.js';
import type { SaddleCopeSolution, SaddleEnd } from './solve.js';

const tolerance = 0.0008;
const quarters = [0, 0.5 * Math.PI, Math.PI, 1.5 * Math.PI, 2 * Math.PI];

/** y of the crossing of an end, and the sense in which heights grow on the paper: up at the near end, down at the far. */
const frameOf = (end: SaddleEnd, strip: StripLayout) =>
  end.name === 'near' ? { crossing: strip.crossing, sense: -1 } : { crossing: strip.farCrossing!, sense: 1 };

/** A line of an end over the whole strip: `curve` is of the end's own clock, y = −height. */
const onStrip = (curve: Curve, end: SaddleEnd, strip: StripLayout): Path => {
  const { crossing, sense } = frameOf(end, strip);
  const girth = strip.width / (2 * Math.PI);
  const placed: Curve = {
    point: (phi) => point(girth * phi, crossing - sense * curve.point(phi - end.twist).y),
    slope: (phi, side) => point(girth, -sense * curve.slope(phi - end.twist, side).y),
  };
  const breaks = wingParameters(-end.twist, 2 * Math.PI - end.twist).map((phi) => phi + end.twist);
  return fitCurve(placed, { from: 0, to: 2 * Math.PI, tolerance, breaks });
};

/** The plane first cut as a curve of the strip: a sine, for a plane cuts a cylinder so (Apostol & Mnatsakanian 2007, sec. 2). */
const firstCut = ({ joint, firstCut: { allowance } }: SaddleEnd): Curve => {
  const { branch, angle } = joint;
  return {
    point: (phi) => point(0, -firstCutHeight(joint, allowance, phi)),
    slope: (phi) => point(0, (branch * Math.sin(phi)) / Math.tan(angle)),
  };
};

/** Where an end's quarter lines run, y on the strip: from its own edge to the datum band, or to where the other end's begin. */
const reachOf = (end: SaddleEnd, strip: StripLayout): number =>
  end.name === 'near' ? strip.datum : strip.farLines!;

/** The quarter lines of an end, on its own clock; throat and long point are shapes of meaning. */
const quarterLines = (end: SaddleEnd, strip: StripLayout): readonly Item[] => {
  const { crossing, sense } = frameOf(end, strip);
  const prefix = end.name === 'far' ? 'far-' : '';
  const girth = strip.width / (2 * Math.PI);
  const turns = end.twist === 0 ? quarters : [0, 1, 2, 3].map((q) => positive(q * (Math.PI / 2) + end.twist));
  return turns.map((phi): Item => {
    const clock = positive(phi - end.twist);
    const quarter = Math.round(clock / (Math.PI / 2)) % 4;
    const edge = crossing + sense * [end.throat, sideHeight(end, 1), end.longPoint, sideHeight(end, -1)][quarter]!;
    const part = quarter === 0 ? `${prefix}throat` : quarter === 2 ? `${prefix}long-point` : undefined;
    return shape('centre', line(point(girth * phi, edge), point(girth * phi, reachOf(end, strip))), part);
  });
};

/** An angle in 0…2π; 2π stays. */
const positive = (phi: number): number => (phi < 0 ? phi + 2 * Math.PI : phi > 2 * Math.PI ? phi - 2 * Math.PI : phi);

/** Height of the edge at ±90° of the end's clock. */
const sideHeight = ({ ordinates }: SaddleEnd, side: 1 | -1): number => ordinates[side === 1 ? 6 : 18]!;

/** Between the two ends the near quarter lines go on, so that nothing has to be carried over by eye. */
const throughLines = (strip: StripLayout): readonly Item[] => {
  if (strip.farLines === undefined || strip.datum - band - strip.farLines < 1) return [];
  return quarters.map((phi): Item => {
    const x = (strip.width * phi) / (2 * Math.PI);
    return shape('centre', line(point(x, strip.datum - band), point(x, strip.farLines!)));
  });
};

/** The level of the horn, across the strip: where the finished branch ends. */
const hornLine = (end: SaddleEnd, strip: StripLayout, prefix: string): Item => {
  const { crossing, sense } = frameOf(end, strip);
  const y = crossing + sense * end.horn;
  return shape('reference', line(point(0, y), point(strip.width, y)), `${prefix}horn`);
};

/** The finished edge with its waste ticked, the first saw cut and the quarter lines of one end. */
export const endLines = (s: SaddleCopeSolution, end: SaddleEnd, strip: StripLayout): readonly Item[] => {
  const prefix = end.name === 'far' ? 'far-' : '';
  const saddle = onStrip(saddleCurve(end.joint, s.paperThickness), end, strip);
  return [
    shape('edge', saddle, `${prefix}saddle-line`),
    ...wasteTicks(saddle, { side: end.name === 'near' ? 'right' : 'left' }),
    shape('saw', onStrip(firstCut(end), end, strip), `${prefix}first-cut`),
    hornLine(end, strip, prefix),
    ...quarterLines(end, strip),
    ...(end.name === 'far' ? throughLines(strip) : []),
  ];
};
