import type { Font } from '../../src/drawing/font.js';
import { choosePlan, framesOf } from '../../src/sheets/choose-plan.js';
import { plainGridSheets } from '../../src/sheets/plan-tiles.js';
import { corpus } from '../sheets/corpus.js';
import { jigOf, requestFor } from '../sheets/fixtures.js';
import { atMost, type Row } from './measure.js';

/** Sheets of sixty outlines on letter against the plain grid: phase 0, upright, blank sheets left out. */
export const corpusRows = (font: Font): readonly Row[] => {
  const counts = corpus.map((drawing) => {
    const jig = jigOf(drawing.name, [drawing]);
    const request = requestFor([jig]);
    const frame = framesOf({ ...request, wishes: { ...request.wishes, turn: 'portrait' } })[0]!;
    const plain = plainGridSheets({ drawing, frame, correction: request.correction, overlap: request.wishes.overlap }, font);
    return { plain, found: choosePlan(drawing, jig, request, font).tiles.length };
  });
  const sum = (of: 'plain' | 'found'): number => counts.reduce((total, count) => total + count[of], 0);
  return [
    atMost(`sheets of ${counts.length} outlines ÷ plain grid (${sum('found')} of ${sum('plain')})`, sum('found') / sum('plain'), 0.85, '', 3),
    atMost('outlines that take more sheets than the plain grid', counts.filter(({ plain, found }) => found > plain).length, 0, '', 0),
  ];
};
