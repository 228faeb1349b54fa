import { lengthLabel } from '../units/format.js';
import type { LayoutRequest } from './layout-request.js';
import { patternWords } from './strip-words.js';
import type { CutDrawing } from './tile-sheet.js';

/** Nearer to the paper's edge than this few printers lay ink (common practice), mm. */
const leastMargin = 4;

const sides = ['top', 'right', 'bottom', 'left'] as const;

const marginWarnings = ({ wishes: { margins }, units }: LayoutRequest): string[] => {
  const narrow = sides.filter((side) => margins[side] < leastMargin);
  if (narrow.length === 0) return [];
  const areAlike = sides.every((side) => margins[side] === margins.top);
  const said = areAlike ? lengthLabel(margins.top, units) : narrow.map((side) => `${side} ${lengthLabel(margins[side], units)}`).join(', ');
  return [`Margins of ${said}: few printers reach nearer to the edge of the paper than ${lengthLabel(leastMargin, units)}. `
    + 'What lies beyond is cut off without a word: see that both bars of this sheet are printed whole, or take wider margins.'];
};

/** Seams given that cut nothing are named, not dropped in silence. */
const seamWarnings = ({ wishes, jigs, units }: LayoutRequest, tiled: readonly CutDrawing[]): string[] => jigs.flatMap(({ jig }) => {
  const given = Object.hasOwn(wishes.seams, jig) ? wishes.seams[jig] : undefined;
  if (given === undefined) return [];
  const first = tiled.find((t) => t.jig.jig === jig);
  if (first === undefined) return [`${jig}: seams are given, but each of its patterns fits a sheet whole.`];
  const { grid, datum, toPage } = first.plan;
  const outside = (at: readonly number[], { from, to }: { from: number; to: number }, zero: number, factor: number): string[] =>
    at.filter((s) => zero + s * factor <= from || zero + s * factor >= to).map((s) => lengthLabel(s, units));
  const missed = [...outside(given.along, grid.x.extent, datum.x, toPage.a), ...outside(given.across, grid.y.extent, datum.y, toPage.d)];
  return missed.length === 0 ? [] : [`${patternWords(first.jig, first.plan.drawing)}: seams given outside the drawing cut nothing: ${missed.join(', ')}.`];
});

const planWarnings = ({ jig, plan }: CutDrawing): string[] => {
  const name = patternWords(jig, plan.drawing);
  return [
    ...(plan.drawing.whole
      ? [`${name} should stay on one sheet, but no sheet of this paper holds it: join its ${plan.tiles.length} sheets with care, or take a larger paper.`]
      : []),
    ...(plan.groups > 1
      ? [`${name}: its sheets lie in ${plan.groups} groups that no seam joins; set the groups by the stations printed on them.`]
      : []),
    ...(plan.advice === undefined ? [] : [`${name}: ${plan.advice}`]),
  ];
};

/** What could not be done as it should, or would be done better otherwise, for the first sheet. */
export const layoutWarnings = (request: LayoutRequest, tiled: readonly CutDrawing[]): string[] =>
  [...marginWarnings(request), ...seamWarnings(request, tiled), ...tiled.flatMap(planWarnings)];
