import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { angleLabel, lengthLabel, lengthMain, millimetres } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import type { StripLayout } from './strip-layout.js';
import { isSquare, type SaddleCopeSolution, type SaddleEnd } from './solve.js';

const upwards = -Math.PI / 2;
const quarterNames = (end: SaddleEnd): readonly string[] => isSquare(end)
  ? ['0° – along the main', '90°', '180° – along the main', '270°']
  : ['THROAT – acute side', '90°', 'LONG POINT – obtuse side', '270°'];

/** Where a column of upright lettering may run: y from `top` to `bottom`. */
interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

const nearStretch = (s: SaddleCopeSolution, strip: StripLayout): Stretch =>
  ({ top: strip.datum + 2.5, bottom: strip.crossing - s.near.crest - 2.5 });

const farStretch = (far: SaddleEnd, strip: StripLayout): Stretch =>
  ({ top: strip.farCrossing! + far.crest + 2.5, bottom: strip.farLines! - 1 });

/** Upright lettering beside a line at x, on its left or right; left out where it does not fit (the card says the same). */
const beside = (x: number, text: string, stretch: Stretch, options: { side: 1 | -1; height: number; from: 'top' | 'bottom' }, font: Font): Item[] => {
  const { side, height, from } = options;
  if (font.width(text, height) > stretch.bottom - stretch.top) return [];
  const baseline = side === 1 ? x + 1.4 + height : x - 1.6;
  return from === 'bottom'
    ? [letter(point(baseline, stretch.bottom), text, { height, turn: upwards })]
    : [letter(point(baseline, stretch.top), text, { height, turn: upwards, anchor: 'end' })];
};

const quarterLettering = (end: SaddleEnd, stretch: Stretch, strip: StripLayout, font: Font): Item[] => {
  const quarter = strip.width / 4;
  if (quarter < 4) return [];
  const height = quarter < 6 ? 1.8 : 2.5;
  const far = end.name === 'far' ? 'FAR ' : '';
  const from = end.name === 'far' ? 'top' : 'bottom';
  return quarterNames(end).flatMap((name, i): Item[] => {
    const text = i % 2 === 0 ? `${far}${name}` : name;
    const turned = (i * Math.PI) / 2 + end.twist;
    const x = (((turned % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)) / (2 * Math.PI) * strip.width;
    const last = i === 0 && end.twist === 0 ? beside(strip.width, text, stretch, { side: -1, height, from }, font) : [];
    return [...beside(x, text, stretch, { side: x > strip.width - height - 2 ? -1 : 1, height, from }, font), ...last];
  });
};

/** What the strip says of itself, one line in the middle of each quarter; of each the wordings, longest first. */
const statements = (s: SaddleCopeSolution, name: string, units: Units): readonly (readonly string[])[] => {
  const { angle, offset } = s.near.joint;
  const [branch, main] = [s.branch.diameter, s.near.main.diameter];
  const aside = offset === 0 ? '' : `, offset ${lengthMain(offset, units)}`;
  return [
    [`${name}: wrap-round template`, name],
    [`Ø ${lengthLabel(branch, units)} on Ø ${lengthLabel(main, units)}`, `Ø ${lengthMain(branch, units)} on Ø ${lengthMain(main, units)}`],
    [`${angleLabel(angle)} between axes, ${angleLabel(Math.PI / 2 - angle)} off square${aside}`, `${angleLabel(angle)} between axes${aside}`, `${angleLabel(angle)}${aside}`],
    [`wrap ${lengthLabel(s.wrapLength, units)}, paper ${millimetres(s.paperThickness)}`, `wrap ${lengthMain(s.wrapLength, units)}`],
  ];
};

/** Beside the horn's line at the strip's left edge: within the hollow where that is deep enough, else beyond the first cut. */
const hornWords = (end: SaddleEnd, y: number, sense: 1 | -1, { strip, font }: { strip: StripLayout; font: Font }): Item[] => {
  const room = end.ordinates[0]! - end.horn;
  const height = 1.8;
  const away = room > 2 * height + 1 ? 0.7 : -(Math.max(0, end.firstCut.toeBeyondHorn) + height + 0.7);
  const base = sense === -1 ? y - away : y + away + height;
  // Beside the throat's line, where the edge lies furthest from the horn's.
  const text = end.name === 'far' ? 'far horn' : 'horn';
  const [throat, width] = [strip.width * (end.twist / (2 * Math.PI) - Math.floor(end.twist / (2 * Math.PI))), font.width(text, height)];
  const x = throat + 1.2 + width < strip.width - 0.5 ? throat + 1.2 : throat - 1.2 - width;
  return [letter(point(x, base), text, { height })];
};

/** All lettering of the strip. */
export const stripLettering = (s: SaddleCopeSolution, strip: StripLayout, of: { name: string; units: Units }, font: Font): readonly Item[] => {
  const quarter = strip.width / 4;
  const near = nearStretch(s, strip);
  const height = quarter < 12 ? 1.8 : 2.5;
  const middles = quarter < 8.5 ? [] : statements(s, of.name, of.units).flatMap((text, i): Item[] => {
    const words = text.find((wording) => font.width(wording, height) <= near.bottom - near.top);
    const x = (i + 0.5) * quarter + height / 2 + (i === 3 ? -1 : 1.5);
    return words === undefined ? [] : [letter(point(x, near.bottom), words, { height, turn: upwards })];
  });
  const small = { height: 1.8, anchor: 'middle' } as const;
  const ends = [strip.height - 2.2, ...(s.far === undefined ? [] : [4])];
  const waste = quarter < 9 ? [] : ends.flatMap((y) => [
    letter(point(quarter / 2, y), 'waste', small), letter(point(3.5 * quarter, y), 'waste', small),
    letter(point(2 * quarter, y), 'saw first, then hollow', small),
  ]);
  return [
    ...quarterLettering(s.near, near, strip, font),
    ...(s.far === undefined ? [] : quarterLettering(s.far, farStretch(s.far, strip), strip, font)),
    ...middles, ...waste, ...hornWords(s.near, strip.crossing - s.near.horn, -1, { strip, font }),
    ...(s.far === undefined ? [] : hornWords(s.far, strip.farCrossing! + s.far.horn, 1, { strip, font })),
  ];
};

