import type { Font } from '../../drawing/font.js';
import type { SetUp } from '../../drawing/set-up.js';
import type { Units } from '../../units/units.js';
import { carrierSetUp } from './carrier-set-up.js';
import { drillSetUp } from './drill-set-up.js';
import { blockPiece, carrierPiece } from './saw-figures.js';
import { sawSetUp } from './saw-set-up.js';
import type { VCradleSolution } from './solve.js';
import type { Say } from './words.js';

/** What the set-up pages are made from. */
export interface SetUpSource {
  readonly solution: VCradleSolution;
  readonly units: Units;
  readonly say: Say;
  readonly font: Font;
}

/** In the order of work: both are made, the block and the carrier, before either holds a round. Only of what is made. */
export const setUps = (source: SetUpSource): readonly SetUp[] => {
  const { solution: s } = source;
  const carrier = carrierPiece(s);
  return [
    ...(s.makesBlock ? [sawSetUp(blockPiece(s), source)] : []),
    ...(carrier === undefined ? [] : [sawSetUp(carrier, source)]),
    ...(s.makesBlock ? [drillSetUp(source)] : []),
    ...(s.carrier === undefined ? [] : [carrierSetUp(s.carrier, source)]),
  ];
};
