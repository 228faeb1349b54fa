import { svgPathProperties } from 'svg-path-properties';
import type { Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { readPathData } from './read-path-data.js';
import { readXml, type XmlElement } from './read-xml.js';

/** One element of a drawing, as another program finds it. */
export interface SvgShape {
  readonly line: string;
  readonly part: string | undefined;
  /** The words of lettering. */
  readonly label: string | undefined;
  readonly d: string;
  readonly subpaths: readonly Path[];
  readonly attributes: Readonly<Record<string, string>>;
}

export interface SvgFile {
  /** mm */
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly shapes: readonly SvgShape[];
}

const lengthMm = (text: string | undefined): number => {
  const found = /^([\d.]+)mm$/.exec(text ?? '');
  if (found === null) throw new Error(`not a length in mm: ${text}`);
  return Number(found[1]);
};

const gather = (element: XmlElement): XmlElement[] => {
  if ('transform' in element.attributes) throw new Error('coordinates under a transform are not millimetres of the sheet');
  return [element, ...element.children.flatMap(gather)];
};

const readShape = ({ attributes }: XmlElement): SvgShape => ({
  line: attributes['data-line']!, part: attributes['data-part'], label: attributes['aria-label'],
  d: attributes['d']!, subpaths: readPathData(attributes['d']!), attributes,
});

/**
 * Reads an SVG drawing with a reader of its own: millimetres of the sheet, y down. Throws where the text is not well-formed,
 * where the viewBox is not the size in mm, and at any transform.
 */
export const readSvg = (source: string): SvgFile => {
  const root = readXml(source);
  const width = lengthMm(root.attributes['width']);
  const height = lengthMm(root.attributes['height']);
  if (root.attributes['viewBox'] !== `0 0 ${width} ${height}`) throw new Error('the viewBox is not in mm');
  const elements = gather(root);
  return {
    width, height,
    title: elements.find((e) => e.name === 'title')?.text ?? '',
    shapes: elements.filter((e) => e.name === 'path').map(readShape),
  };
};

/** The shapes of a part; throws where there is none. */
export const partShapes = (file: SvgFile, part: string): readonly SvgShape[] => {
  const found = file.shapes.filter((s) => s.part === part);
  if (found.length === 0) throw new Error(`no shape of part ${part}; there are ${[...new Set(file.shapes.map((s) => s.part))].join(', ')}`);
  return found;
};

/** `count` + 1 points at even distances along path data, by the svg-path-properties package. */
export const samplePathData = (d: string, count: number): Point[] => {
  const properties = new svgPathProperties(d);
  const length = properties.getTotalLength();
  return Array.from({ length: count + 1 }, (_, i) => {
    const { x, y } = properties.getPointAtLength((length * i) / count);
    return { x, y };
  });
};
