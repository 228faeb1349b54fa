import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { barDepth, frameBars } from './bars.js';
import { codeBlock, type Neighbours } from './code-block.js';
import { pageCorrection, type LayoutRequest } from './layout-request.js';
import type { PageFrame } from './page-frame.js';
import { stripMeasure, stripText, type StripWords } from './strip-text.js';

/** What a strip says. */
export interface FurnitureWords {
  readonly code: string;
  readonly neighbours?: Neighbours;
  readonly words: StripWords;
}

const codeWidth = 22;

/** Makes the furniture of sheets of one frame. */
export type Furniture = (words: FurnitureWords) => Item[];

/**
 * Everything on a sheet beside its drawing: code, words and both bars, all inside the strip and the side. The bars are the
 * same on every sheet, so they are made once.
 */
export const furniture = (frame: PageFrame, request: LayoutRequest, font: Font): Furniture => {
  const { strip } = frame;
  const [top, bottom] = [strip.y0 + 0.1, strip.y1 - barDepth];
  const code = { x0: strip.x0 + 0.2, y0: top + 0.3, x1: strip.x0 + codeWidth, y1: bottom - 0.6 };
  const text = { x0: strip.x0 + codeWidth + 2, y0: top, x1: strip.x1, y1: bottom };
  const bars = frameBars(frame, pageCorrection(request.correction, frame.landscape), request.units);
  const measure = stripMeasure(font);
  return (words) => [
    ...codeBlock(code, words.code, words.neighbours, font),
    ...stripText(text, words.words, '… the rest is on the set-up sheets at the end of the set', { font, measure }),
    ...bars,
  ];
};
