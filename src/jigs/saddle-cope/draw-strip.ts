import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { line, polyline } from '../../geometry/shapes.js';
import { lengthLabel, lengthMain } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import { endLines } from './end-lines.js';
import { stripLettering } from './strip-lettering.js';
import { band, layOutStrip, tabWidth, type StripLayout } from './strip-layout.js';
import type { SaddleCopeSolution } from './solve.js';

/** Edges that the scissors follow, the two that meet round the branch, and the tab that goes under. */
const outline = ({ width, height }: StripLayout, font: Font): readonly Item[] => {
  const chamfer = 4;
  const tab = [
    point(width, 0), point(width + tabWidth, chamfer), point(width + tabWidth, height - chamfer), point(width, height),
  ];
  const words = 'glue tab: under the left edge';
  return [
    shape('reference', line(point(0, 0), point(width, 0)), 'top-edge'),
    shape('reference', line(point(0, height), point(width, height)), 'bottom-edge'),
    shape('reference', line(point(0, 0), point(0, height)), 'wrap-edge'),
    shape('reference', line(point(width, 0), point(width, height)), 'wrap-edge'),
    shape('reference', polyline(tab), 'glue-tab'),
    ...(font.width(words, 2.5) < height - 2 * chamfer - 2
      ? [letter(point(width + tabWidth / 2 + 1.25, height / 2), words, { anchor: 'middle', turn: -Math.PI / 2 })] : []),
  ];
};

/** The first wording that fits the width with 2 mm at each end, 2.5 mm high; else one of 1.8 mm with 1 mm. */
const fitting = (wordings: readonly string[], width: number, font: Font): { readonly words: string; readonly height: number } | undefined =>
  ([[2.5, width - 4], [1.8, width - 2]] as const).flatMap(([height, room]) => wordings.map((words) => ({ words, height, room })))
    .find(({ words, height, room }) => font.width(words, height) <= room);

/** The datum line, divided every 15°, and what it is from the horn. */
const datumLine = (s: SaddleCopeSolution, strip: StripLayout, units: Units, font: Font): readonly Item[] => {
  const { width, datum, datumToHorn } = strip;
  const both = lengthLabel(datumToHorn, units);
  const main = lengthMain(datumToHorn, units);
  const end = s.far === undefined ? '' : 'near ';
  const wordings = [`DATUM LINE: ${both} to the ${end}horn, the tip of the finished end`, `DATUM: ${both} to the ${end}horn`, `${main} to the ${end}horn`, main];
  const text = fitting(wordings, width, font);
  const divisions = width / 24 < 1 ? [] : Array.from({ length: 23 }, (_, i) => i + 1).filter((i) => i % 6 !== 0);
  return [
    shape('reference', line(point(0, datum), point(width, datum)), 'datum'),
    ...divisions.map((i): Item => shape('reference', line(point((i * width) / 24, datum), point((i * width) / 24, datum + 1.5)))),
    ...(text === undefined ? [] : [letter(point(width / 2, datum - 1.4), text.words, { anchor: 'middle', height: text.height })]),
  ];
};

/** The wrap-round template of a branch: both ends on one strip, far end up, φ = 0 at its left edge, read from outside. */
export const drawStrip = (s: SaddleCopeSolution, name: string, units: Units, font: Font): Drawing => {
  const strip = layOutStrip(s, units);
  const { width, height, crossing } = strip;
  const near = endLines(s, s.near, strip);
  const far = s.far === undefined ? [] : endLines(s, s.far, strip);
  const saddleZone = (top: number, bottom: number, why: string) =>
    ({ box: { x0: 0, y0: top, x1: width + tabWidth, y1: bottom }, why });
  return {
    name: 'wrap',
    title: 'wrap-round template',
    items: [
      ...outline(strip, font), ...near, ...far,
      ...datumLine(s, strip, units, font), ...stripLettering(s, strip, { name, units }, font),
    ],
    whole: true,
    datum: point(0, strip.datum),
    spine: false,
    keepClear: [
      saddleZone(crossing - s.near.crest - 2, height, 'near saddle'),
      saddleZone(strip.datum - band, strip.datum + 2, 'datum line'),
      ...(s.far === undefined ? [] : [saddleZone(0, strip.farCrossing! + s.far.crest + 2, 'far saddle')]),
    ],
    lands: [],
  };
};

