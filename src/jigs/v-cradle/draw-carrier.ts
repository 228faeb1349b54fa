import { angleDimension } from '../../drawing/angle-dimension.js';
import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import { add, point, scale } from '../../geometry/point.js';
import { line, polyline } from '../../geometry/shapes.js';
import type { Carrier } from './carrier.js';
import { carrierPlan, type CarrierPlan } from './carrier-plan.js';
import type { Groove } from './held-round.js';
import { patternLettering } from './pattern-lettering.js';
import type { Say } from './words.js';

/** The pattern breaks off this far beyond the heel, and beyond the corner of side A: the rest of the carrier is plain. */
const beyondHeel = 13;

interface Sight {
  readonly carrier: Carrier;
  readonly groove: Groove;
  readonly plan: CarrierPlan;
  /** Along the groove from abreast of the crossing to where the pattern breaks off. */
  readonly reach: number;
}

/** How much of the fence is drawn to the left of the carrier, mm: its word, and the turn's arc. */
const fenceStub = 25;

/** Lines along the groove from the fence to where the pattern breaks off. */
const alongGroove = ({ plan, reach }: Sight, off: number) => line(plan.onFence(off), plan.at(reach, off));

const outline = (sight: Sight): Item[] => {
  const { plan, carrier: c, reach } = sight;
  const zigzag = [-c.seatSide, -4, -1.5, 1.5, 4, c.bladeSide].map((off, i) => plan.at(reach + [0, 0, 5, -5, 0, 0][i]!, off));
  return [
    shape('edge', line(plan.onFence(-c.seatSide), plan.onFence(c.bladeSide)), 'end-cut'),
    shape('edge', alongGroove(sight, -c.seatSide), 'carrier-side'), shape('edge', alongGroove(sight, c.bladeSide), 'carrier-side'),
    shape('reference', polyline(zigzag), 'break'),
  ];
};

const grooveLines = (sight: Sight): Item[] => {
  const { groove, carrier: c, plan } = sight;
  const both = [-1, 1] as const;
  return [
    ...both.map((s) => shape('edge', alongGroove(sight, (s * groove.width) / 2), 'carrier-groove-edge')),
    ...(groove.flat === 0 ? [] : both.map((s) => shape('reference', alongGroove(sight, (s * groove.flat) / 2), 'carrier-flat-edge'))),
    ...[plan.toe, plan.heel].map((end, i) =>
      shape('hidden', line(end, plan.at(sight.reach, ([-1, 1][i]! * c.round.diameter) / 2)), 'carrier-round')),
    shape('centre', line(plan.onFence(0), plan.at(sight.reach + 6, 0)), 'v-axis'),
  ];
};

/** Fence to both sides of the carrier, and the blade's line across it. */
const sawLines = ({ plan, carrier: c, reach }: Sight): Item[] => {
  const left = plan.onFence(-c.seatSide).x;
  const right = plan.onFence(c.bladeSide).x;
  const far = c.bladeToAxis + c.faceLength / 2 + Math.min(20, reach);
  return [
    shape('reference', line(point(left - fenceStub, 0), point(left, 0)), 'fence-edge'),
    shape('reference', line(point(right, 0), point(right + 2, 0)), 'fence-edge'),
    shape('saw', line(scale(plan.blade, -12), scale(plan.blade, far)), 'blade-line'),
    ...wasteTicks(line(plan.toe, plan.heel), { side: 'left', spacing: 8 }),
    letter(point(left - fenceStub, -2), 'fence'),
  ];
};

/** Where the carrier's side towards the blade is at a height, growing away from the fence: right of it the paper is free. */
const sideAt = ({ plan, carrier: c, reach }: Sight, y: number): number => {
  const [from, to] = [plan.onFence(c.bladeSide), plan.at(reach, c.bladeSide)];
  return from.x + ((to.x - from.x) * Math.min(y, to.y)) / Math.max(to.y, 1e-9);
};

/** The blade's note over the fence, the others beside the carrier's side, low enough that they take no more width than the fence. */
const labels = (sight: Sight, say: Say, font: Font): Item[] => {
  const { plan, carrier: c } = sight;
  const lowest = plan.at(sight.reach, c.bladeSide).y;
  const note = (at: { x: number; y: number }, y: number, label: string) =>
    leader({ at, elbow: point(Math.max(sideAt(sight, y), at.x) + 6, y), side: 'right', label });
  const first = Math.max(plan.toe.y, 8, Math.min(0.45 * lowest, lowest - 16));
  const blade = scale(plan.blade, -6);
  return [
    ...leader({ at: blade, elbow: point(Math.max(blade.x, 0) + 8, -10), side: 'right', label: `blade: saw at ${say.angle(c.sawReading)} from square` }),
    ...note(plan.toe, first, 'toe of the finished cut'),
    ...note(plan.crossing, Math.max(plan.crossing.y, first + 8), fitText(`middle of ${c.round.name}`, 45, 2.5, font)),
    ...note(plan.heel, Math.max(plan.heel.y, first + 16), 'heel of the finished cut'),
  ];
};

/** The turn, between fence and the carrier's side, where the wedge between them is wide enough to letter. */
const turnDimension = ({ plan, carrier: c }: Sight, say: Say, font: Font): Item[] => {
  const corner = plan.onFence(-c.seatSide);
  return c.turn < 0.2 ? [] : angleDimension({
    centre: corner, radius: Math.max(22, 9 / c.turn), from: Math.PI - c.turn, to: Math.PI, label: say.angle(c.turn),
  }, font);
};

const seatDimension = ({ plan, carrier: c }: Sight, say: Say, font: Font): Item[] =>
  dimension({ from: plan.onFence(-c.seatSide), to: point(0, 0), offset: 9, label: `seat ${say.length(c.seat)}` }, font);

/**
 * The carrier's end on the saw, true size, from above. Part `end-cut` is its end, which stands against the fence, `blade-line` the
 * saw's cut, `v-axis` the groove's middle, `fence-edge` the fence beside it.
 */
export const drawCarrier = (c: Carrier, groove: Groove, name: string, { say, font }: { say: Say; font: Font }): Drawing => {
  const plan = carrierPlan(c);
  const sight: Sight = { carrier: c, groove, plan, reach: Math.max(c.heelToToe / 2, c.seatSide / Math.tan(c.turn) - c.endToBlade) + beyondHeel };
  const left = plan.onFence(-c.seatSide);
  const bottom = Math.max(plan.at(sight.reach + 6, -c.seatSide).y, plan.at(sight.reach, c.bladeSide).y, plan.heel.y + 20);
  const leftMost = Math.min(left.x - fenceStub, plan.at(sight.reach, -c.seatSide).x);
  return {
    name: 'carrier', title: 'carrier on the saw', whole: true, spine: false, datum: left, keepClear: [], lands: [],
    items: [
      ...outline(sight), ...grooveLines(sight), ...sawLines(sight), ...labels(sight, say, font),
      ...turnDimension(sight, say, font), ...seatDimension(sight, say, font),
      ...patternLettering(add(point(leftMost, bottom), point(0, 10)), `${name}: carrier on the saw, from above`, [
        `Saw the carrier's end at ${say.angle(c.endCut)} from square; that end stands against the fence.`,
        `The groove then leads away at ${say.angle(c.turn)} to the fence, and the blade meets the round at ${say.angle(c.sharpAngle)}.`,
        `Carrier ${say.length(c.width)} wide, ${say.length(c.length)} long in the groove’s middle, from a blank ${say.length(c.blankLength)} long; its far end is broken off here.`,
      ], font),
    ],
  };
};
