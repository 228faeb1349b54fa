import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import type { LineType } from '../../drawing/line-types.js';
import { point } from '../../geometry/point.js';
import { line, rectangle } from '../../geometry/shapes.js';
import { patternLettering } from './pattern-lettering.js';
import type { VCradleSolution } from './solve.js';
import { spreadLabels } from './spread-labels.js';
import type { Say } from './words.js';

/** A pair of lines along the block, either side of the groove's middle. */
interface Pair {
  readonly half: number;
  readonly type: LineType;
  readonly part: string;
  readonly label: string;
}

/** From the block's side towards the middle. */
const pairs = (s: VCradleSolution, font: Font): Pair[] => [
  { half: s.groove.width / 2, type: 'edge', part: 'groove-edge', label: 'edge of the groove' } as const,
  ...s.held.map((h): Pair => ({ half: h.contactHalfWidth, type: 'hidden', part: `contact-line-${h.round.name}`, label: `${fitText(h.round.name, 30, 2.5, font)} touches` })),
  ...(s.groove.flat === 0 ? [] : [{ half: s.groove.flat / 2, type: 'reference', part: 'flat-edge', label: 'edge of the flat' } as const]),
].sort((a, b) => b.half - a.half);

/** Where clamps go: a quarter of the bearing each, an eighth in from its ends; the middle stays free for the bit. */
export const clampZones = ({ block }: VCradleSolution): readonly { readonly from: number; readonly to: number }[] => {
  const start = block.length - block.bearing;
  const at = (part: number): number => start + part * block.bearing;
  return [{ from: at(1 / 8), to: at(3 / 8) }, { from: at(5 / 8), to: at(7 / 8) }];
};

const clampWords = 'clamp here';

const zoneItems = (s: VCradleSolution): Item[] => clampZones(s).flatMap(({ from, to }, i) => [
  shape('hidden', rectangle(from, -s.block.width / 2, to - from, s.block.width), `clamp-zone-${i + 1}`),
  letter(point((from + to) / 2, -s.block.width / 2 - 2), clampWords, { anchor: 'middle' }),
]);

const stopItems = ({ stop, block }: VCradleSolution, say: Say, font: Font): Item[] => stop === undefined ? [] : [
  shape('edge', line(point(stop, -block.width / 2), point(stop, block.width / 2)), 'stop-line'),
  ...dimension({ from: point(0, block.width / 2), to: point(stop, block.width / 2), offset: -8, label: `stop ${say.length(stop)}` }, font),
];

/** Where leaders leave the block: in a row over it, clear of what stands there about the clamps; none where the row is longer than the block. */
const rowOver = (s: VCradleSolution, widths: readonly number[], font: Font): number[] | undefined => {
  const taken = clampZones(s).map(({ from, to }) => ({ middle: (from + to) / 2, half: font.width(clampWords, 2.5) / 2 + 1.5 }));
  const rooms: number[] = [];
  let x = 2;
  for (const width of widths) {
    for (const { middle, half } of taken) if (Math.abs(x - middle) < half) x = middle + half;
    rooms.push(x);
    x += width + 8;
  }
  return x - 8 > s.block.length ? undefined : rooms;
};

/** What each pair of lines is: the labels in a row over the block, each from its own line; beside its end where the block is too short for them. */
const lineLabels = (s: VCradleSolution, font: Font): Item[] => {
  const all = pairs(s, font);
  const row = rowOver(s, all.map(({ label }) => font.width(label, 2.5)), font);
  const heights = spreadLabels(all.map((p) => -p.half), 4.5);
  return all.flatMap((p, i) => (row === undefined
    ? leader({ at: point(s.block.length, -p.half), elbow: point(s.block.length + 6, heights[i]!), label: p.label, end: 'none', side: 'right' })
    : leader({ at: point(row[i]!, -p.half), elbow: point(row[i]!, -s.block.width / 2 - 9), label: p.label, end: 'dot', side: 'right' })));
};

const lineItems = (s: VCradleSolution, font: Font): Item[] => [
  ...pairs(s, font).flatMap((p) => [-1, 1].map((side) => shape(p.type, line(point(0, side * p.half), point(s.block.length, side * p.half)), p.part))),
  ...lineLabels(s, font),
];

/**
 * The block from above, true size; its left end is the datum. Parts `groove-edge`, `flat-edge`, `contact-line-<round>` (each a pair),
 * `stop-line`, `clamp-zone-1`, `clamp-zone-2`, `block-plan`.
 */
export const drawPlan = (s: VCradleSolution, name: string, say: Say, font: Font): Drawing => {
  const { length, width } = s.block;
  return {
    name: 'plan', title: 'block from above', whole: true, spine: false,
    datum: point(0, width / 2), keepClear: [], lands: [],
    items: [
      shape('edge', rectangle(0, -width / 2, length, width), 'block-plan'),
      ...lineItems(s, font),
      shape('centre', line(point(-3, 0), point(length + 3, 0))),
      ...zoneItems(s), ...stopItems(s, say, font),
      ...dimension({ from: point(0, width / 2), to: point(length, width / 2), offset: -17, label: say.length(length) }, font),
      ...patternLettering(point(0, width / 2 + 27), `${name}: block from above`, [
        'Left end: datum. Broken lines: where each round touches the flanks. Keep the middle free for the bit.',
      ], font),
    ],
  };
};
