import type { FigureColumn, FigureTable } from '../../drawing/set-up.js';
import { angleOf, lengthOf, words, type Words } from '../../units/quantity.js';
import type { Units } from '../../units/units.js';
import { layOutStrip } from './strip-layout.js';
import { isSquare, step, type SaddleCopeSolution, type SaddleEnd } from './solve.js';

const columns = (half: 1 | 2): readonly FigureColumn[] => [
  { code: `clock-${half}`, head: 'Clock' }, { code: `along-${half}`, head: 'Along the wrap' }, { code: `to-line-${half}`, head: 'To the line' },
];

const noteOf = (end: SaddleEnd, s: SaddleCopeSolution, datumToHorn: number): Words => {
  const zero = isSquare(end) ? 'Clock 0 in line with the main' : `Clock 0 at ${s.far === undefined ? 'the' : `this, the ${end.name},`} throat`;
  const way = 'growing to the right on the strip, far end up (counter-clockwise seen from the far end)';
  return end.name === 'near'
    ? words`${zero}, ${way}. Rule a ring round the branch ${lengthOf(datumToHorn)} from the horn; from it towards this end:`
    : words`${zero}, ${way}. From a ring at this horn, back towards the near end:`;
};

/** The edge in 24 steps round the branch from the end's own throat: what to mark where there is no printer. */
export function ordinateTable(end: SaddleEnd, s: SaddleCopeSolution, units: Units): FigureTable {
  const { datumToHorn } = layOutStrip(s, units);
  const toLine = (height: number): number => (end.name === 'near' ? datumToHorn - (height - end.horn) : height - end.horn);
  return {
    code: 'ordinates', heading: ['Without a printer'], note: noteOf(end, s, datumToHorn), columns: [...columns(1), ...columns(2)],
    rows: Array.from({ length: 12 }, (_, i) => [i, i + 12].flatMap((j): Words[] => [
      [angleOf(j * step)], [lengthOf((j * step * s.wrapLength) / (2 * Math.PI), 'bare')], [lengthOf(toLine(end.ordinates[j]!), 'bare')],
    ])),
  };
}
