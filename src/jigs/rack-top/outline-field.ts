import type * as z from 'zod';
import { GeometryError } from '../../errors/geometry-error.js';
import { quote } from '../../errors/quote.js';
import { boxHeight, boxWidth } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { pathDataFault } from '../../geometry/path-data-fault.js';
import { pathsFromSvg } from '../../geometry/path-from-svg.js';
import { pathEnd, type Path } from '../../geometry/path.js';
import { distance, type Point } from '../../geometry/point.js';
import type { FieldReader } from '../../spec/fields.js';
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
  return openIssue(path, Math.max(boxWidth(box), boxHeight(box)));
};

/** The field for a recess's outline: text that is the data of one closed outline. */
export const outlineField = (f: FieldReader): z.ZodType<string> =>
  f.text({ about: 'Outline as SVG path data, one closed outline', max: 20_000 }).superRefine((data, ctx) => {
    const issue = outlineIssue(data);
    if (issue !== undefined) ctx.addIssue(customIssue(issue, data));
  });
