import { expect, test } from 'vitest';
import { choosePlan } from '../../src/sheets/choose-plan.js';
import type { LayoutRequest } from '../../src/sheets/layout-request.js';
import { papers } from '../../src/units/paper.js';
import { testFont } from '../support/font.js';
import { corpus } from './corpus.js';
import { jigOf, requestFor, slottedBoard } from './fixtures.js';

/*
 * How the corpus's outlines are cut into sheets, as it has been: the seams' places, and which sheets are left out. A plan that
 * differs need not be worse, but whoever changes one reads the difference, runs this file with -u, and says in the commit why.
 */
const mm = (value: number): string => (Math.round(value * 100) / 100 + 0).toString();

const plan = (drawing: (typeof corpus)[number], more: Partial<LayoutRequest>): string => {
  const jig = jigOf('corpus', [drawing]);
  const { frame, grid: { x, y }, tiles, groups, plainSheets } = choosePlan(drawing, jig, requestFor([jig], more), testFont);
  return [
    drawing.name, frame.landscape ? 'landscape' : 'portrait', `${tiles.length} of ${plainSheets}`, `groups ${groups}`, `x ${[x.extent.from, ...x.seams, x.extent.to].map(mm).join(' ')}`,
    `y ${[y.extent.from, ...y.seams, y.extent.to].map(mm).join(' ')}`, tiles.map(({ row, column }) => `${row}.${column}`).join(' '),
  ].join(' | ');
};

const cases: Readonly<Record<string, Partial<LayoutRequest>>> = {
  a4: { paper: papers['a4']! },
  'letter-corrected': { paper: papers['letter']!, correction: { x: 1.006, y: 0.995 }, units: 'inch', wishes: { ...requestFor([]).wishes, overlap: 15, margins: { top: 6, right: 8, bottom: 12, left: 10 } } },
};

test.each(Object.entries(cases))('sixty outlines and a slotted board are cut as they have been: %s', async (name, more) => {
  await expect(`${[...corpus, slottedBoard(), slottedBoard(3900)].map((drawing) => plan(drawing, more)).join('\n')}\n`).toMatchFileSnapshot(`kept/${name}.txt`);
});
