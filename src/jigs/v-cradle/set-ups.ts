import type { SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import { carrierSetUp } from './carrier-set-up.js';
import { drillSetUp } from './drill-set-up.js';
import { sawSetUp } from './saw-set-up.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** What the set-up pages are made from. */
export interface SetUpSource {
  readonly solution: VCradleSolution;
  readonly findings: readonly Finding[];
  readonly say: Words;
  readonly font: Font;
}

/** A page a machine: the V at the table saw, holding and drilling in it, the steep cut on the carrier where there is one. */
export const setUps = (source: SetUpSource): readonly SetUp[] => {
  const { carrier } = source.solution;
  return [sawSetUp(source), drillSetUp(source), ...(carrier === undefined ? [] : [carrierSetUp(carrier, source)])];
};
