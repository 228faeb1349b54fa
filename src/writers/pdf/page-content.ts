import type { Item, Lettering, Shape } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { lineStyles, type LineType } from '../../drawing/line-types.js';
import type { Path } from '../../geometry/path.js';
import { rotation, transformPoint } from '../../geometry/transform.js';
import { formatNumber } from '../format-number.js';
import { pathOperators } from './path-operators.js';
import type { Repeats } from './repeats.js';
import { glyphString, type UsedGlyphs } from './used-glyphs.js';

const mm = (value: number): string => formatNumber(value, 4);

/** Items that one operator paints, or one text object holds. */
type Group =
  | { readonly line: LineType; readonly style: string; readonly paint: 'S' | 'f'; readonly shapes: Shape[] }
  | { readonly clip: string; readonly lines: Lettering[] };

/** Pen width and dash as operators; each is given in full, so that a group does not depend on the one before. */
const styleOf = (shape: Shape): string => {
  if (shape.filled === true) return '';
  const { width, dash } = lineStyles[shape.line];
  const phase = dash.length === 0 ? 0 : (shape.phase ?? 0);
  return `${mm(width)} w [${dash.map(mm).join(' ')}] ${mm(phase)} d`;
};

const clipOf = ({ clip }: Lettering): string =>
  clip === undefined ? '' : `${mm(clip.x0)} ${mm(clip.y0)} ${mm(clip.x1 - clip.x0)} ${mm(clip.y1 - clip.y0)} re W n`;

/** Neighbours of one type and look together: the order of painting stays, the operators are fewer. */
const grouped = (items: readonly Item[]): Group[] => {
  const groups: Group[] = [];
  for (const item of items) {
    const last = groups.at(-1);
    if (item.kind === 'lettering') {
      const clip = clipOf(item);
      if (last !== undefined && 'lines' in last && last.clip === clip) last.lines.push(item);
      else groups.push({ clip, lines: [item] });
      continue;
    }
    const style = styleOf(item);
    const paint = item.filled === true ? 'f' : 'S';
    const joins = last !== undefined && 'shapes' in last && last.line === item.line && last.style === style && last.paint === paint;
    if (joins) last.shapes.push(item);
    else groups.push({ line: item.line, style, paint, shapes: [item] });
  }
  return groups;
};

/** A line of lettering inside a text object. Its frame has y up, the page's y down: hence the turned signs. */
const lineOperators = (item: Lettering, font: Font, used: UsedGlyphs): string[] => {
  const size = item.height / font.capHeight;
  const glyphs = font.glyphs(item.text);
  const width = glyphs.reduce((sum, g) => sum + g.advance, 0) * size;
  const turn = rotation(item.turn);
  const shift = transformPoint(turn, { x: -{ start: 0, middle: 0.5, end: 1 }[item.anchor] * width, y: 0 });
  const matrix = [turn.a, turn.b, -turn.c, -turn.d].map((n) => formatNumber(n, 6)).join(' ');
  return [
    `/F ${mm(size)} Tf`,
    `${matrix} ${mm(item.at.x + shift.x)} ${mm(item.at.y + shift.y)} Tm`,
    `${glyphString(glyphs, used)} Tj`,
  ];
};

/** A path's operators; the bars of a sheet are the same paths on all its neighbours, so they are written once. */
const writtenPath = (path: Path, written: Shared['written']): string => {
  const known = written.get(path) ?? pathOperators(path).join('\n');
  written.set(path, known);
  return known;
};

const groupOperators = (group: Group, { font, used, written }: Shared): string[] => {
  if ('shapes' in group) return [...(group.style === '' ? [] : [group.style]), ...group.shapes.map((s) => writtenPath(s.path, written)), group.paint];
  const text = ['BT', ...group.lines.flatMap((line) => lineOperators(line, font, used)), 'ET'];
  return group.clip === '' ? text : ['q', group.clip, ...text, 'Q'];
};

/** What the pages of a document share while they are written. */
export interface Shared {
  readonly font: Font;
  readonly used: UsedGlyphs;
  readonly repeats: Repeats;
  readonly written: WeakMap<Path, string>;
}

/**
 * The painting operators of a page, in mm from its top left with y down: the caller has set that frame. Round joins, flat
 * ends (a line ends where it ends). The font is resource /F. Refuses numbers that are not finite.
 */
export const pageContent = (items: readonly Item[], shared: Shared): string =>
  ['1 j', ...grouped(items).map((group) => shared.repeats(groupOperators(group, shared).join('\n')))].join('\n');
