import type { Units } from '../../units/units.js';
import type { SaddleCopeSolution, SaddleEnd } from './solve.js';

/** Paper left beyond the last line at a cut end, and the band above the datum line that holds its lettering, mm. */
const beyond = 12;
/** Depth of the band above the datum line that holds its lettering, mm. */
export const band = 6;
/** Room along the branch for the quarter lines' lettering. */
const labelRoom = 62;
/** Width of the glue tab, mm. */
export const tabWidth = 10;

/** Where things lie on the wrap strip: mm, origin at its top left, y down; x = 0 is φ = 0. */
export interface StripLayout {
  /** π(d + t); the glue tab comes on top of it. */
  readonly width: number;
  readonly height: number;
  /** y of the near and of the far crossing of the axes. */
  readonly crossing: number;
  readonly farCrossing?: number;
  /** y of the datum line, and its distance from the near horn. */
  readonly datum: number;
  readonly datumToHorn: number;
  /** y where the far end's own quarter lines begin. */
  readonly farLines?: number;
}

/** Length of branch, mm, from the horn to where the paper ends beyond it. */
const tail = (end: SaddleEnd): number => Math.max(0, end.firstCut.toeBeyondHorn) + beyond;

/** A datum distance that reads well: the next 10 mm or half inch up, but within what a short branch has. */
const roundDatum = (least: number, most: number, units: Units): number => {
  const step = units === 'inch' ? 12.7 : 10;
  const rounded = Math.ceil(least / step) * step;
  return rounded <= most ? rounded : most;
};

/** Lays the strip out. The far end of the branch is up. */
export const layOutStrip = (s: SaddleCopeSolution, units: Units): StripLayout => {
  const rise = s.near.crest - s.near.horn;
  const wanted = rise + labelRoom;
  if (s.far === undefined || s.centres === undefined) {
    const datumToHorn = roundDatum(wanted, Infinity, units);
    const datum = band;
    const horn = datum + datumToHorn;
    return { width: s.wrapLength, height: horn + tail(s.near), crossing: horn + s.near.horn, datum, datumToHorn };
  }
  const farHorn = tail(s.far);
  const farCrossing = farHorn - s.far.horn;
  const crossing = farCrossing + s.centres;
  const horn = crossing - s.near.horn;
  const farCrest = farCrossing + s.far.crest;
  const most = horn - farCrest - band - 2;
  const datumToHorn = roundDatum(Math.min(wanted, Math.max(rise + 2, most / 2)), Math.max(rise + 1, most), units);
  const datum = horn - datumToHorn;
  const farLines = Math.max(farCrest, Math.min(farCrest + labelRoom, datum - band));
  return { width: s.wrapLength, height: horn + tail(s.near), crossing, farCrossing, datum, datumToHorn, farLines };
};
