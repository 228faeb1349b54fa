import type { Item } from '../drawing/drawing.js';
import { placeItems } from '../drawing/items.js';
import { ruleBar, ruleDepth } from '../drawing/rule-bar.js';
import { after, scaling, translation } from '../geometry/transform.js';
import { mmPerInch, type Units } from '../units/units.js';
import type { Correction } from './layout-request.js';
import { barOverhang, leastBar, type PageFrame } from './page-frame.js';

/** What a bar with one rule takes across its length, mm: ticks and figures on one side, end strokes on the other. */
export const barDepth = ruleDepth + 1.6;

/** What a figure of four digits at the bar's end takes more, mm. */
const fourthDigit = 0.8;

/** The longest round nominal length whose bar fits `room` once printed by `factor`: whole inches, or tens of millimetres. mm. */
export const barLength = (room: number, factor: number, units: Units): number => {
  const step = units === 'inch' ? mmPerInch : 10;
  const within = (overhang: number): number => Math.max(leastBar(units), Math.floor(((room - overhang) * factor) / step + 1e-9) * step);
  const length = within(barOverhang);
  return length < 1000 ? length : within(barOverhang + fourthDigit);
};

/** Nominal lengths of the two bars, mm. */
export interface BarLengths {
  readonly x: number;
  readonly y: number;
}

/** Nominal lengths of the bars of a frame. `factors` along the page's own x and y. */
export const barLengths = (frame: PageFrame, factors: Correction, units: Units): BarLengths => ({
  x: barLength(frame.strip.x1 - frame.strip.x0, factors.x, units),
  y: barLength(frame.side.y1 - frame.side.y0, factors.y, units),
});

/**
 * The x-bar at the foot of the strip and the y-bar in the side, one rule each in the units of the piece. Corrected along
 * their length like the drawing, so that they measure their nominal length on the printed sheet.
 */
export const frameBars = (frame: PageFrame, factors: Correction, units: Units): Item[] => {
  const lengths = barLengths(frame, factors, units);
  const rules = units;
  const inch = units === 'inch';
  const placed = (axis: 'x' | 'y', x: number, y: number): Item[] => placeItems(
    ruleBar({ x: 0, y: 0 }, { axis, length: lengths[axis], rules }),
    after(axis === 'x' ? scaling(1 / factors.x, 1) : scaling(1, 1 / factors.y), translation(x, y)), 0);
  const top = frame.strip.y1 - barDepth;
  return [
    ...placed('x', frame.strip.x0 + barOverhang / 2, inch ? top + 1.55 : frame.strip.y1 - 1.6),
    ...placed('y', inch ? frame.side.x0 + 1.6 : frame.side.x0 + ruleDepth + 0.1, frame.side.y1 - barOverhang / 2),
  ];
};
