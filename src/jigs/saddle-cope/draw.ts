import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { drawStrip } from './draw-strip.js';
import { jointPicture } from './joint-picture.js';
import { setUps } from './set-ups.js';
import type { SaddleCopeSolution } from './solve.js';

/** The wrap strip, a picture of each joint, and the set-ups. */
export const draw = (s: SaddleCopeSolution, context: Context, font: Font, findings: readonly Finding[]): JigDrawing => {
  const { name, units } = context;
  const ends = s.far === undefined ? [s.near] : [s.near, s.far];
  const picture = (end: typeof s.near) =>
    jointPicture(end, s.far === undefined ? `${name}: the joint, not to scale` : `${name}: ${end.name} joint, not to scale`, units, font);
  const rounds = new Map([s.branch, ...ends.map((end) => end.main)].map((round) => [round.name, round]));
  return {
    jig: name, kind: 'saddle-cope', title: `${name}: saddle cope`,
    patterns: [drawStrip(s, name, units, font), ...ends.map(picture)],
    setUps: setUps({ name, units, solution: s, findings, font }),
    assumed: [...rounds.values()].map((round) => `${round.name} Ø ${lengthLabel(round.diameter, units)}`),
    cautions: [
      'Clamp the round in a V or carrier at the saw: it rolls.',
      'Hands 150 mm (6 in) from the blade; let it stop.',
      'Throat on the acute side: try it dry before you cut.',
    ],
  };
};
