import { boxHeight, boxWidth, boxesMeet, growBox, uniteBoxes, type Box } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import type { Board } from './board.js';
import { openingPath } from './draw-holes.js';
import type { LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import type { Recess } from './recess.js';
import { recessBounds } from './solve-recesses.js';

/** A part of the underside that the top does not show as well: what is in it, and its box on paper as seen from above. mm. */
export interface UndersidePatch {
  readonly holes: readonly LegHole[];
  readonly recesses: readonly Recess[];
  readonly box: Box;
}

/** Paper round a feature: room for the arrow beside an opening. */
const margin = 18;
/** An edge of the board this near to a feature is shown, and so much paper beyond it. */
const reach = 60;
const beyond = 5;
/** A patch is not stretched to an edge beyond this. */
const most = 120;

const byNumber = (a: { readonly number: number }, b: { readonly number: number }): number => a.number - b.number;

const join = (a: UndersidePatch, b: UndersidePatch): UndersidePatch =>
  ({
  holes: [...a.holes, ...b.holes].sort(byNumber), recesses: [...a.recesses, ...b.recesses].sort(byNumber), box: uniteBoxes([a.box, b.box]),
});

/** Patches that meet become one, until none meet. */
const merge = (patches: readonly UndersidePatch[]): readonly UndersidePatch[] => patches.reduce<readonly UndersidePatch[]>((done, patch) => {
  const near = done.filter((other) => boxesMeet(other.box, patch.box));
  if (near.length === 0) return [...done, patch];
  return merge([...done.filter((other) => !near.includes(other)), near.reduce(join, patch)]);
}, []);

/** The box stretched to the edges of the board that are within reach, the nearest first, for as long as it stays small. */
const toEdges = (box: Box, { length, width }: Board): Box => {
  const edges = [
    { away: box.x0, to: { ...box, x0: -beyond } }, { away: length - box.x1, to: { ...box, x1: length + beyond } },
    { away: width - box.y1, to: { ...box, y1: width + beyond } }, { away: box.y0, to: { ...box, y0: -beyond } },
  ].filter(({ away }) => away + margin <= reach).sort((a, b) => a.away - b.away);
  return edges.reduce((grown, { to }) => {
    const next = uniteBoxes([grown, to]);
    const larger = (size: (b: Box) => number): boolean => size(next) > size(grown) && size(next) > most;
    return larger(boxWidth) || larger(boxHeight) ? grown : next;
  }, box);
};

/**
 * What has to be drawn from below: round each hole that leans and each recess cut from below a patch of its own, neighbours' on one where they would overlap.
 * Nothing else differs on the underside, so no more of it is printed.
 */
export const undersidePatches = ({ holes, recesses, board }: RackTop): readonly UndersidePatch[] => {
  const around = (boxes: readonly Box[]): Box => growBox(uniteBoxes(boxes), margin);
  const alone: UndersidePatch[] = [
    ...holes.filter((h) => h.lean > 0).map((h) => ({ holes: [h], recesses: [], box: around([openingPath(h, h.under), openingPath(h, h.top)].map(pathBounds)) })),
    ...recesses.filter((r) => r.face === 'under').map((r) => ({ holes: [], recesses: [r], box: around([recessBounds(r), ...(r.template === undefined ? [] : [pathBounds(r.template)])]) })),
  ];
  // Neighbours are told by the paper round them; the edges come in after, and may overlap another patch's.
  return merge(alone).map((patch) => ({ ...patch, box: toEdges(patch.box, board) }));
};
