import type { Drawing, Item } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import type { Font } from '../../drawing/font.js';
import { shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { add, point, polar, type Point } from '../../geometry/point.js';
import { circle, line } from '../../geometry/shapes.js';
import type { Groove, HeldRound } from './held-round.js';
import { levelDimension } from './level-dimension.js';
import { patternLettering } from './pattern-lettering.js';
import { blockPath, groovePath } from './section.js';
import type { VCradleSolution } from './solve.js';
import { spreadLabels } from './spread-labels.js';
import type { Say } from './words.js';

/** Room for a round's name and size beside the drawing, mm. */
const longestName = 70;

/** Centre of a round in the end view. */
export const centreInSection = (h: HeldRound, groove: Groove): Point => point(0, groove.apexDepth - h.axisHeight);

/** A short stroke square to the flank through the point of contact, left or right. */
const contact = (h: HeldRound, groove: Groove, side: -1 | 1): Item => {
  const at = point(side * h.contactHalfWidth, groove.apexDepth - h.contactHeight);
  // From the round's centre straight through the contact: square to the flank.
  const out = polar(Math.atan2(Math.sin(groove.halfAngle), side * Math.cos(groove.halfAngle)));
  return shape('mark', line(add(at, { x: -1.5 * out.x, y: -1.5 * out.y }), add(at, { x: 2.5 * out.x, y: 2.5 * out.y })), `contact-${h.round.name}`);
};

const centreCross = (at: Point, arm: number): Item[] => [
  shape('centre', line(point(at.x - arm, at.y), point(at.x + arm, at.y))),
  shape('centre', line(point(at.x, at.y - arm), point(at.x, at.y + arm))),
];

const roundItems = (h: HeldRound, groove: Groove): Item[] => [
  shape('reference', circle(centreInSection(h, groove), h.radius), `round-${h.round.name}`),
  ...centreCross(centreInSection(h, groove), 1.5),
  contact(h, groove, -1), contact(h, groove, 1),
];

/** One leader a round, from its upper right to a column beside the drawing, in the order of their heights. */
const roundLabels = (s: VCradleSolution, say: Say, font: Font): Item[] => {
  const edge = Math.max(s.block.width / 2, s.held[0]!.radius) + 6;
  const anchors = s.held.map((h) => add(centreInSection(h, s.groove), polar(-Math.PI / 3, h.radius)));
  const heights = spreadLabels(anchors.map((a) => a.y - 2), 9);
  return s.held.flatMap((h, i) => leader({
    at: anchors[i]!, elbow: point(edge, heights[i]!), side: 'right',
    label: [fitText(say.round(h.round), longestName, 2.5, font), `${h.proud >= 0 ? 'stands proud' : 'lies below by'} ${say.length(Math.abs(h.proud))}`],
  }));
};

/** How far the thickest stands proud, on the left. */
const proudDimension = (s: VCradleSolution, say: Say): Item[] => {
  const thickest = s.held[0]!;
  const left = -Math.max(s.block.width / 2, thickest.radius) - 8;
  const ends = [point(-s.block.width / 2, 0), point(0, -thickest.proud)].sort((a, b) => a.y - b.y);
  return levelDimension({ high: ends[0]!, low: ends[1]!, x: left, side: 'left', label: say.length(Math.abs(thickest.proud)) });
};

/** The end view with every round that is held, drawn in place: circles `round-<name>`, strokes `contact-<name>` across each contact. */
export const drawRounds = (s: VCradleSolution, name: string, say: Say, font: Font): Drawing => {
  const { groove, block } = s;
  return {
    name: 'rounds', title: 'rounds in the groove', whole: true, spine: false,
    datum: point(-block.width / 2, 0), keepClear: [], lands: [],
    items: [
      shape('edge', blockPath(groove, { a: block.width / 2, b: block.width / 2 }, block.height), 'block-section'), shape('edge', groovePath(groove), 'groove-section'),
      ...s.held.flatMap((h) => roundItems(h, groove)),
      ...proudDimension(s, say), ...roundLabels(s, say, font),
      ...patternLettering(point(-block.width / 2, block.height + 9), `${name}: rounds in the groove`, [
        'Short strokes across the flanks: where each round touches.',
        'Measure from the block’s top to the top of the round.',
      ], font),
    ],
  };
};
