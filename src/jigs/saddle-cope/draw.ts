import { pictureOf } from '../../drawing/arrange.js';
import type { Drawing, JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, moveItems } from '../../drawing/items.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { point } from '../../geometry/point.js';
import { shortCautionsAt } from '../../shop/cautions.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { drawStrip } from './draw-strip.js';
import { jointViews } from './joint-picture.js';
import { setUps } from './set-ups.js';
import { isSquare, type SaddleCopeSolution, type SaddleEnd } from './solve.js';

const jointPattern = (end: SaddleEnd, title: string, { name, units }: Context, font: Font): Drawing => {
  const items = jointViews(end, units, font);
  const box = itemsBounds(items, font);
  const words = letter(point(0, 3.5), `${name}: ${title}`);
  return { ...pictureOf(end.name === 'near' ? 'joint' : 'far-joint', title, [words, ...moveItems(items, -box.x0, 8 - box.y0)]), isPicture: true };
};

/** The wrap strip, a picture of each joint, and the set-ups. */
export const draw = (s: SaddleCopeSolution, context: Context, font: Font): JigDrawing => {
  const { name, units, shop } = context;
  const ends = s.far === undefined ? [s.near] : [s.near, s.far];
  const title = (end: SaddleEnd): string => `${s.far === undefined ? 'the' : end.name} joint, not to scale`;
  const rounds = new Map([s.branch, ...ends.map((end) => end.main)].map((round) => [round.name, round]));
  const named = [...rounds.values()].map((round) => `${round.unnamed === true ? '' : `${round.name} `}Ø ${lengthLabel(round.diameter, units)}`);
  return {
    jig: name, kind: 'saddle-cope', title: `${name}: saddle cope`,
    patterns: [drawStrip(s, name, units, font), ...ends.map((end) => jointPattern(end, title(end), context, font))],
    setUps: setUps({ name, units, solution: s, shop, font }),
    assumed: named,
    cautions: [
      ...shortCautionsAt(['saw-a-round'], units),
      ...(ends.every(isSquare) ? [] : ['Throat on the acute side: try it dry before you cut.']),
    ],
  };
};
