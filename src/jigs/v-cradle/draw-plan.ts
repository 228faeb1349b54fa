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
  { half: s.groove.width / 2, type: 'cut', part: 'groove-edge', label: 'edge of the groove' } as const,
  ...s.held.map((h): Pair => ({ half: h.contactHalfWidth, type: 'hidden', part: `contact-line-${h.round.name}`, label: `${fitText(h.round.name, 30, 2.5, font)} touches` })),
  ...(s.groove.flat === 0 ? [] : [{ half: s.groove.flat / 2, type: 'reference', part: 'flat-edge', label: 'edge of the flat' } as const]),
].sort((a, b) => b.half - a.half);

/** Where clamps go: a quarter of the bearing each, an eighth in from its ends; the middle stays free for the bit. */
export const clampZones = ({ block }: VCradleSolution): readonly { readonly from: number; readonly to: number }[] => {
  const start = block.length - block.bearing;
  const at = (part: number): number => start + part * block.bearing;
  return [{ from: at(1 / 8), to: at(3 / 8) }, { from: at(5 / 8), to: at(7 / 8) }];
};

const zoneItems = (s: VCradleSolution): Item[] => clampZones(s).flatMap(({ from, to }, i) => [
  shape('hidden', rectangle(from, -s.block.width / 2, to - from, s.block.width), `clamp-zone-${i + 1}`),
  letter(point((from + to) / 2, -s.block.width / 2 - 2), 'clamp here', { anchor: 'middle' }),
]);

const stopItems = ({ stop, block }: VCradleSolution, say: Say, font: Font): Item[] => stop === undefined ? [] : [
  shape('cut', line(point(stop, -block.width / 2), point(stop, block.width / 2)), 'stop-line'),
  ...dimension({ from: point(0, block.width / 2), to: point(stop, block.width / 2), offset: -8, label: `stop ${say.length(stop)}` }, font),
];

const lineItems = (s: VCradleSolution, font: Font): Item[] => {
  const { length } = s.block;
  const all = pairs(s, font);
  const heights = spreadLabels(all.map((p) => -p.half), 4.5);
  return all.flatMap((p, i) => [
    ...[-1, 1].map((side) => shape(p.type, line(point(0, side * p.half), point(length, side * p.half)), p.part)),
    ...leader({ at: point(length, -p.half), elbow: point(length + 6, heights[i]!), label: p.label, end: 'none', side: 'right' }),
  ]);
};

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
      shape('cut', rectangle(0, -width / 2, length, width), 'block-plan'),
      ...lineItems(s, font),
      shape('centre', line(point(-4, 0), point(length + 4, 0))),
      ...zoneItems(s), ...stopItems(s, say, font),
      ...dimension({ from: point(0, width / 2), to: point(length, width / 2), offset: -17, label: say.length(length) }, font),
      ...patternLettering(point(0, width / 2 + 27), `${name}: block from above`, [
        'Left end: datum. Broken lines: where each round touches the flanks. Keep the middle free for the bit.',
      ], font),
    ],
  };
};
