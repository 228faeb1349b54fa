import type { Lettering } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { eachSegment, type Path, type Segment } from '../../geometry/path.js';
import { add, type Point } from '../../geometry/point.js';
import { rotation, scaling, after, transformPath, transformPoint } from '../../geometry/transform.js';
import { formatNumber } from '../format-number.js';
import { quadraticControl } from './quadratic-control.js';

/** Lettering is looked at, not measured: whole hundredths of a millimetre. */
const unit = 100;

/** A glyph about its own origin: where its outline starts, mm, and the rest in relative commands. */
interface GlyphData {
  readonly start: Point;
  readonly rest: string;
}

const grid = (p: Point): Point => ({ x: Math.round(p.x * unit), y: Math.round(p.y * unit) });

/** Whole hundredths as a decimal number, without the zero that no reader needs. */
const decimal = (hundredths: number): string => {
  const text = String(hundredths / unit);
  if (text.startsWith('0.')) return text.slice(1);
  return text.startsWith('-0.') ? `-${text.slice(2)}` : text;
};

/** Differences of grid points as one list of numbers; a minus sign separates as well as a space does. */
const relative = (command: string, from: Point, points: readonly Point[]): string => {
  let data = command;
  for (const p of points) {
    const [x, y] = [p.x - from.x, p.y - from.y];
    data += `${data.length > 1 && x >= 0 ? ' ' : ''}${decimal(x)}${y >= 0 ? ' ' : ''}${decimal(y)}`;
  }
  return data;
};

const segmentData = (segment: Segment, from: Point): string => {
  const start = grid(from);
  if (segment.kind === 'line') return relative('l', start, [grid(segment.to)]);
  if (segment.kind === 'arc') throw new Error('glyphs have no arcs');
  const control = quadraticControl(from, segment, 1e-6);
  return control === undefined
    ? relative('c', start, [segment.c1, segment.c2, segment.to].map(grid))
    : relative('q', start, [control, segment.to].map(grid));
};

const glyphData = (contours: readonly Path[]): GlyphData | undefined => {
  const [first] = contours;
  if (first === undefined) return undefined;
  let pen = grid(first.start);
  const rest = contours.map((contour) => {
    const move = contour === first ? '' : relative('m', pen, [grid(contour.start)]);
    pen = grid(contour.start);
    let data = move;
    eachSegment(contour, (segment, from) => { data += segmentData(segment, from); });
    return `${data}z`;
  }).join('');
  return { start: { x: grid(first.start).x / unit, y: grid(first.start).y / unit }, rest };
};

/**
 * Makes the writer of outlined lettering for one file. A glyph's outline at one height and turn is put into words once and
 * then only placed: relative commands from an absolute start, mm, within 15 µm.
 */
export const letteringWriter = (font: Font): ((item: Lettering) => string) => {
  const known = new Map<string, GlyphData | undefined>();
  return ({ at, text, height, anchor, turn }) => {
    const size = height / font.capHeight;
    const map = after(scaling(size, size), rotation(turn));
    let pen = -{ start: 0, middle: 0.5, end: 1 }[anchor] * (font.width(text, height) / size);
    let data = '';
    for (const { id, advance } of font.glyphs(text)) {
      const key = `${id} ${height} ${turn}`;
      const glyph = known.has(key) ? known.get(key) : glyphData(font.outline(id).map((path) => transformPath(map, path)));
      known.set(key, glyph);
      const origin = add(at, transformPoint(map, { x: pen, y: 0 }));
      const start = add(origin, glyph?.start ?? { x: 0, y: 0 });
      // A blank has no outline, but a place that is no number must be refused all the same.
      const move = `M${formatNumber(start.x, 2)} ${formatNumber(start.y, 2)}`;
      if (glyph !== undefined) data += move + glyph.rest;
      pen += advance;
    }
    return data;
  };
};
