import type * as z from 'zod';
import { GeometryError } from '../../errors/geometry-error.js';
import { quote } from '../../errors/quote.js';
import { boxHeight, boxWidth } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { flattenPath } from '../../geometry/flatten-path.js';
import { pathDataFault } from '../../geometry/path-data-fault.js';
import { pathsFromSvg } from '../../geometry/path-from-svg.js';
import { pathEnd, type Path } from '../../geometry/path.js';
import { distance, type Point } from '../../geometry/point.js';
import { selfCrossing } from '../../geometry/self-crossing.js';
import type { FieldReader } from '../../spec/fields.js';
import { longestBoard } from './board.js';
import { customIssue, type FieldIssue } from '../../spec/issue.js';

const allowed = 'one closed outline as SVG path data, such as M0 0 H80 V40 H0 Z';
/** A gap this small beside the outline's size is rounding of what was written: 0.1 mm in a metre. */
const rounding = 1e-4;

const figure = (value: number): string => String(Number(value.toFixed(3)));
const place = ({ x, y }: Point): string => `${figure(x)} ${figure(y)}`;

/** Some of the data about a place, the place itself marked. */
const about = (data: string, at: number): string => {
  const [from, to] = [Math.max(0, at - 16), Math.min(data.length, at + 12)];
  return quote(`${from > 0 ? '…' : ''}${data.slice(from, at)}‸${data.slice(at, to)}${to < data.length ? '…' : ''}`);
};

const notOutline = (message: string): FieldIssue => ({ code: 'not-an-outline', message, allowed });

const openIssue = (path: Path, size: number): FieldIssue | undefined => {
  const end = pathEnd(path);
  const apart = distance(path.start, end);
  if (path.closed || apart <= rounding * size) return undefined;
  return {
    code: 'outline-open', got: `begins at ${place(path.start)}, ends at ${place(end)}: ${figure(apart)} of its own units apart`,
    message: 'does not come back to where it began, and has no Z', allowed: 'the rest of the outline, or Z at the end where a straight line back is meant',
  };
};

/** Chords that stand for an outline's curves keep within this share of its size: a tenth of a millimetre in a metre. */
const fine = 1e-4;

const crossingIssue = (path: Path, size: number): FieldIssue | undefined => {
  const at = selfCrossing(flattenPath({ ...path, closed: true }, fine * size));
  return at === undefined ? undefined : { code: 'outline-crosses-itself', message: `crosses itself at ${place(at)}, in its own units`, allowed: 'an outline that goes round once, such as M0 0 H80 V40 H0 Z' };
};

/** Why path data are not the one closed outline of a recess; undefined where they are. Each place is a character counted from 1. */
export const outlineIssue = (data: string): FieldIssue | undefined => {
  const fault = pathDataFault(data);
  if (fault !== undefined) {
    return { ...notOutline(`cannot be read from character ${fault.at + 1} on: ${fault.message}`), got: `${about(data, fault.at)} (‸: the place)` };
  }
  let paths: readonly Path[];
  try {
    paths = pathsFromSvg(data);
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    return notOutline(`cannot be read: ${error.message}`);
  }
  const [path] = paths;
  if (path === undefined || paths.length > 1) return notOutline(`holds ${paths.length === 0 ? 'no outline' : `${paths.length} outlines`}, not one`);
  const box = pathBounds({ ...path, closed: true });
  if (!(boxWidth(box) > 0 && boxHeight(box) > 0)) return notOutline('encloses nothing');
  const size = Math.max(boxWidth(box), boxHeight(box));
  return openIssue(path, size) ?? crossingIssue(path, size);
};

/** No arc is drawn of a greater half-axis, mm: over the longest board it differs from a straight run by 3 mm. */
const greatestAxis = 1e8;

/** Where in the data the number stands that is most out of keeping with the others, be it great or small; characters before it. */
const wildest = (data: string): number => {
  const numbers = [...data.matchAll(/[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi)].map((found) => ({ at: found.index, size: Math.log10(Math.abs(Number(found[0]))) })).filter(({ size }) => Number.isFinite(size));
  // With a usual one among them, so that of two the odd one is told.
  const sizes = [...numbers.map(({ size }) => size), Math.log10(30)].sort((a, b) => a - b);
  const middle = sizes[Math.floor(sizes.length / 2)]!;
  return numbers.reduce((most, each) => (Math.abs(each.size - middle) > Math.abs(most.size - middle) ? each : most), { at: 0, size: middle }).at;
};

/** Why an outline that is sound as data is none that a board could hold, scaled to `size` mm; undefined where one could. */
export const reachIssue = (data: string, size: number): FieldIssue | undefined => {
  const [path] = pathsFromSvg(data);
  if (path === undefined) return undefined;
  const box = pathBounds({ ...path, closed: true });
  const scale = size / boxWidth(box);
  const high = scale * boxHeight(box);
  const axis = scale * path.segments.reduce((most, s) => (s.kind === 'arc' ? Math.max(most, Math.hypot(s.u.x, s.u.y), Math.hypot(s.v.x, s.v.y)) : most), 0);
  if (high <= longestBoard && axis <= greatestAxis) return undefined;
  const at = wildest(data);
  const what = high > longestBoard ? `comes out ${metres(high)} across the board at that size` : `holds an arc with a half-axis of ${metres(axis)} at that size`;
  return {
    code: 'outline-out-of-reach', message: `${what}: the number at character ${at + 1} stands out`, got: `${about(data, at)} (‸: the place)`,
    allowed: high > longestBoard ? `at most ${metres(longestBoard)}` : `at most ${metres(greatestAxis)}; what is flatter is a straight run`,
  };
};

const metres = (mm: number): string => `${Number((mm / 1000).toPrecision(3))} m`;

/** The field for a recess's outline: text that is the data of one closed outline. */
export const outlineField = (f: FieldReader): z.ZodType<string> =>
  f.text({ about: 'Outline as SVG path data, one closed outline', max: 20_000 }).superRefine((data, ctx) => {
    const issue = outlineIssue(data);
    if (issue !== undefined) ctx.addIssue(customIssue(issue, data));
  });
