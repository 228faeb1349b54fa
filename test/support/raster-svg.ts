import { Resvg } from '@resvg/resvg-js';

/** Pixels of a page on white paper: RGBA, row by row from the top. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
  readonly png: () => Uint8Array;
}

/** Renders an SVG sheet (sized in mm) with resvg, whole and true to size at `dpi`. */
export const rasterSvg = (source: string, dpi: number): Raster => {
  const image = new Resvg(source, { dpi, background: 'white', font: { loadSystemFonts: false } }).render();
  return { width: image.width, height: image.height, pixels: image.pixels, png: () => image.asPng() };
};

/** How dark a pixel is, 0 (paper) … 1 (black). */
export const darkness = ({ width, pixels }: Raster, x: number, y: number): number => 1 - pixels[4 * (y * width + x)]! / 255;
