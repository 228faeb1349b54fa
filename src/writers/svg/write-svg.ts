import type { Item, Lettering, Shape } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { lineStyles } from '../../drawing/line-types.js';
import type { Sheet } from '../../sheets/sheet.js';
import { formatNumber } from '../format-number.js';
import { letteringWriter } from './lettering-data.js';
import { pathData } from './path-data.js';
import { xmlText } from './xml-text.js';

/** Within 0.05 µm. */
const shapeDecimals = 4;

const mm = (value: number): string => formatNumber(value, shapeDecimals);

const partAttribute = (part: string | undefined): string => (part === undefined ? '' : ` data-part="${xmlText(part)}"`);

/** Presentation attributes of a stroke or of a filled shape. */
const styleAttributes = (shape: Shape): string => {
  if (shape.filled === true) return ' fill="#000" stroke="none"';
  const { width, dash } = lineStyles[shape.line];
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(mm).join(' ')}"`;
  const phase = dash.length === 0 || (shape.phase ?? 0) === 0 ? '' : ` stroke-dashoffset="${mm(shape.phase ?? 0)}"`;
  return ` stroke-width="${mm(width)}"${dashes}${phase}`;
};

/** Whether the two shapes may share one element: same look, and neither is to be found by its part. */
const sameElement = (a: Shape, b: Shape): boolean =>
  a.line === b.line && a.part === undefined && b.part === undefined && (a.filled ?? false) === (b.filled ?? false)
  && lineStyles[a.line].dash.length === 0;

const shapesElement = (shapes: readonly [Shape, ...Shape[]]): string => {
  const [first] = shapes;
  const data = shapes.map((s) => pathData(s.path, shapeDecimals)).join('');
  return `<path data-line="${first.line}"${partAttribute(first.part)}${styleAttributes(first)} d="${data}"/>`;
};

const letteringElement = (item: Lettering, data: string, clipId: string): string => {
  const clip = item.clip === undefined ? '' : ` clip-path="url(#${clipId})"`;
  return `<path data-line="lettering"${partAttribute(item.part)} role="img" aria-label="${xmlText(item.text)}"${clip} fill="#000" stroke="none" d="${data}"/>`;
};

const clipElement = (item: Lettering, id: string): string => {
  if (item.clip === undefined) return '';
  const { x0, y0, x1, y1 } = item.clip;
  return `<clipPath id="${id}"><rect x="${mm(x0)}" y="${mm(y0)}" width="${mm(x1 - x0)}" height="${mm(y1 - y0)}"/></clipPath>\n`;
};

const elements = (items: readonly Item[], font: Font): string[] => {
  const lines: string[] = [];
  const outlined = letteringWriter(font);
  let run: [Shape, ...Shape[]] | undefined;
  let clips = 0;
  const endRun = (): void => {
    if (run !== undefined) lines.push(shapesElement(run));
    run = undefined;
  };
  for (const item of items) {
    if (item.kind === 'shape') {
      if (run !== undefined && sameElement(run[0], item)) run.push(item);
      else { endRun(); run = [item]; }
      continue;
    }
    endRun();
    const id = `clip-${item.clip === undefined ? 0 : ++clips}`;
    lines.push(clipElement(item, id) + letteringElement(item, outlined(item), id));
  }
  endRun();
  return lines;
};

/**
 * A sheet as SVG text: `width`/`height` in mm, a viewBox in mm, absolute coordinates and no transform, so that a number in
 * the file is a place on the paper (outlines of lettering are written on from an absolute start). Shapes carry `data-line` and `data-part`; lettering is outlined and keeps its words in
 * `aria-label`. Neighbouring unnamed shapes of one look share an element. Shapes within 0.05 µm. The same sheet gives the
 * same text. Refuses numbers that are not finite.
 */
export const writeSvg = (sheet: Sheet, font: Font): string => [
  `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(sheet.width)}mm" height="${mm(sheet.height)}mm" viewBox="0 0 ${mm(sheet.width)} ${mm(sheet.height)}">`,
  `<title>${xmlText(sheet.title)}</title>`,
  '<g fill="none" stroke="#000" stroke-linejoin="round">',
  ...elements(sheet.items, font),
  '</g>',
  '</svg>',
  '',
].join('\n');
