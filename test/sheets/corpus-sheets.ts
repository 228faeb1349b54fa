import type { Shape } from '../../src/drawing/drawing.js';
import { boxHeight, boxWidth } from '../../src/geometry/box.js';
import { pathArea } from '../../src/geometry/path-area.js';
import type { Font } from '../../src/drawing/font.js';
import { choosePlan } from '../../src/sheets/choose-plan.js';
import { pageFrame } from '../../src/sheets/page-frame.js';
import { plainGridSheets } from '../../src/sheets/plan-tiles.js';
import { papers } from '../../src/units/paper.js';
import { corpus } from './corpus.js';
import { jigOf, requestFor, tenMillimetres } from './fixtures.js';

export interface CorpusRow {
  readonly name: string;
  readonly sheets: number;
  /** Of the plain grid: phase 0, portrait, sheets without ink left out. */
  readonly plain: number;
  /** The part's own area over a sheet's drawing area, rounded up: what no overlap and no waste would take to cover it. */
  readonly bound: number;
  /** Groups of sheets that no seam joins. */
  readonly groups: number;
}

/** How many sheets each outline of the corpus takes on a paper, overlap 12 mm. */
export const corpusSheets = (paperName: 'letter' | 'a4', font: Font): CorpusRow[] => {
  const paper = papers[paperName]!;
  const frame = pageFrame(paper, tenMillimetres, false, 'mm');
  const sheetArea = boxWidth(frame.area) * boxHeight(frame.area);
  return corpus.map((drawing) => {
    const jig = jigOf('corpus', [drawing]);
    const plan = choosePlan(drawing, jig, requestFor([jig], { paper }), font);
    const [outer, ...inner] = drawing.items.filter((i): i is Shape => i.kind === 'shape').map((s) => Math.abs(pathArea(s.path)));
    return {
      name: drawing.name, sheets: plan.tiles.length, groups: plan.groups,
      plain: plainGridSheets({ drawing, frame, correction: { x: 1, y: 1 }, overlap: 12 }, font),
      bound: Math.ceil((outer! - inner.reduce((a, b) => a + b, 0)) / sheetArea),
    };
  });
};
