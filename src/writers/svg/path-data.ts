import { arcPoint, eachSegment, type Arc, type Cubic, type Path, type Segment } from '../../geometry/path.js';
import type { Point } from '../../geometry/point.js';
import { ellipseAxes } from '../ellipse-axes.js';
import { formatNumber } from '../format-number.js';
import { quadraticControl } from './quadratic-control.js';

/** Arcs are written in pieces of at most a quarter turn: a reader finds the centre from rounded ends, ill-posed near a half turn. */
const longestPiece = Math.PI / 2;

const pair = (p: Point, decimals: number): string => `${formatNumber(p.x, decimals)} ${formatNumber(p.y, decimals)}`;

const arcData = (arc: Arc, decimals: number): string => {
  const { rx, ry, turn, clockwise } = ellipseAxes(arc);
  const span = arc.t1 - arc.t0;
  const pieces = Math.max(1, Math.ceil(Math.abs(span) / longestPiece - 1e-9));
  const head = `A${pair({ x: rx, y: ry }, decimals)} ${formatNumber((turn * 180) / Math.PI, 6)} 0 ${clockwise === span > 0 ? 1 : 0} `;
  return Array.from({ length: pieces }, (_, i) => head + pair(arcPoint(arc, arc.t0 + (span * (i + 1)) / pieces), decimals)).join('');
};

const cubicData = (from: Point, cubic: Cubic, decimals: number): string => {
  const control = quadraticControl(from, cubic, 1e-6);
  const points = control === undefined ? [cubic.c1, cubic.c2, cubic.to] : [control, cubic.to];
  return (control === undefined ? 'C' : 'Q') + points.map((p) => pair(p, decimals)).join(' ');
};

const segmentData = (segment: Segment, from: Point, decimals: number): string => {
  switch (segment.kind) {
    case 'line': return `L${pair(segment.to, decimals)}`;
    case 'arc': return arcData(segment, decimals);
    case 'cubic': return cubicData(from, segment, decimals);
  }
};

/**
 * A path as SVG path data with absolute commands only: arcs as A, cubics as C (Q where one is exactly a quadratic).
 * Every point within half a unit of the last decimal; refuses numbers that are not finite.
 */
export const pathData = (path: Path, decimals: number): string => {
  const parts = [`M${pair(path.start, decimals)}`];
  eachSegment(path, (segment, from) => parts.push(segmentData(segment, from, decimals)));
  if (path.closed) parts.push('Z');
  return parts.join('');
};
