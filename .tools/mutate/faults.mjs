// Nineteen faults that once passed all tests, or are of that sort: on a machine page each would have spoilt wood.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A fault by name: the one place where `find` stands in the file, and what stands there instead. */
const named = [
  ['hole in the branch counted from the throat, not from the horn', 'saddle-cope/pin.ts', 'saddleHeights(joint).least', 'saddleHeights(joint).throat'],
  ['hole in the main without its allowance', 'saddle-cope/pin.ts', 'intoMain + holeAllowance', 'intoMain'],
  ['travel from the axis, not from the rim’s first touch', 'saddle-cope/pin.ts', 'holeInMain + rim - entry', 'holeInMain'],
  ['tan for 1/tan where the bit enters', 'saddle-cope/entry.ts', 'entryHeight(main, offset) / Math.tan(angle)', 'entryHeight(main, offset) * Math.tan(angle)'],
  ['twist doubled', 'saddle-cope/hollow-figures.ts', 'Math.abs(end.twist) * wrapLength', '2 * Math.abs(end.twist) * wrapLength'],
  ['ordinate table shifted by a step', 'saddle-cope/ordinates.ts', 'end.ordinates[j]!', 'end.ordinates[(j + 1) % 24]!'],
  ['toe on the wrong side of the horn', 'saddle-cope/first-cut.ts', 'horn - toe', 'toe - horn'],
  ['sine for its square in what half a degree moves', 'saddle-cope/first-cut.ts', 'Math.sin(joint.angle) ** 2', 'Math.sin(joint.angle)'],
  ['saw set to the complement', 'saddle-cope/solve.ts', 'Math.PI / 2 - joint.angle', 'joint.angle'],
  ['blade’s reach without the face', 'v-cradle/carrier.ts', 'toeToFence + face', 'toeToFence'],
  ['waste beyond the toe divided for multiplied', 'v-cradle/carrier.ts', 'toeToFence * alongRound', 'toeToFence / alongRound'],
  ['far end’s distance along the round, not from the blade', 'v-cradle/carrier.ts', '(length - endToBlade) * Math.sin(sharpAngle)', 'length - endToBlade'],
  ['fence to the far side of the groove', 'v-cradle/sawing.ts', 'sides.a - groove.width / 2', 'sides.a + groove.width / 2'],
  ['stop out of the sole that counts the bore', 'drill-guide/budget.ts', 'reachToTip({ ...way, guide: 0 }, point)', 'reachToTip(way, point)'],
  ['end of a blind hole as far back as it is deep', 'drill-guide/solve.ts', 'thicknessUnder(work) ?? depth * Math.sin(angle)', 'thicknessUnder(work) ?? depth'],
  ['underside’s mark on the wrong side', 'rack-top/hole.ts', 'top.x - way.x * shift', 'top.x + way.x * shift'],
  ['bushing offset dropped', 'rack-top/solve.ts', '(bushing - diameter) / 2', '0'],
  ['plunge without the template', 'rack-top/recess-set-up.ts', 'lengthOf(depth + templateThickness)', 'lengthOf(depth)'],
  ['spline as wide as its grooves', 'rack-top/draw-joint.ts', 'groove - splinePlay / 2', 'groove'],
];

export const faults = (root) => named.map(([name, path, find, to]) => {
  const file = `src/jigs/${path}`;
  const source = readFileSync(join(root, file), 'utf8');
  const start = source.indexOf(find);
  if (start < 0 || source.includes(find, start + 1)) throw new Error(`${file}: “${find}” does not stand there once`);
  const line = source.slice(0, start).split('\n').length;
  return { file, line, rule: name, was: find, becomes: to, edits: [{ start, end: start + find.length, to }] };
});
