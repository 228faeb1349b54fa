import type { SetUp } from '../../drawing/set-up.js';
import type { Font } from '../../drawing/font.js';
import type { Shop } from '../../spec/shop.js';
import type { Units } from '../../units/units.js';
import { hollowSetUp } from './hollow-set-up.js';
import { pinSetUp } from './pin-set-up.js';
import type { SaddleCopeSolution } from './solve.js';

/** What the set-up pages are made from. */
export interface SetUpSource {
  readonly name: string;
  readonly units: Units;
  readonly solution: SaddleCopeSolution;
  readonly shop: Shop;
  readonly font: Font;
}

/** The pages for the machines in the order of work: per end the pin’s holes, then the hollow. */
export const setUps = (source: SetUpSource): readonly SetUp[] => {
  const { near, far } = source.solution;
  return [near, ...(far === undefined ? [] : [far])].flatMap((end) => [...pinSetUp(end, source), hollowSetUp(end, source)]);
};
