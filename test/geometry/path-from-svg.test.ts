import { describe, expect, it } from 'vitest';
import { svgPathProperties } from 'svg-path-properties';
import { GeometryError } from '../../src/errors/geometry-error.js';
import { pathLength } from '../../src/geometry/length.js';
import { pathEnd } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { pathsFromSvg } from '../../src/geometry/path-from-svg.js';
import { near, nearPoint } from './near.js';

describe('pathsFromSvg', () => {
  it.each([
    'M0 0L10 10 20 20H5V40h3v-4l9 9',
    'm5 5c10 0 10 10 20 10s10 -20 30 3S90 90 100 80',
    'M0 0q10 20 30 0t30 0T90 20',
    'M10 80 A 45 30 20 1 0 125 125',
    'M10 80a45 30 -40 0 1 25 25 5 5 0 0 1 10 10',
    'M0 0 A1 1 0 0 1 30 40',
  ])('reads %s as long as an independent reader does, to the same end', (data) => {
    const [path, ...rest] = pathsFromSvg(data);
    const theirs = new svgPathProperties(data);
    expect(rest).toEqual([]);
    near(pathLength(path!), theirs.getTotalLength(), 2e-3 * theirs.getTotalLength());
    nearPoint(pathEnd(path!), theirs.getPointAtLength(theirs.getTotalLength()), 1e-2);
  });

  it('gives each subpath, closed ones closed, relative moves counted from where the last began', () => {
    const paths = pathsFromSvg('M0 0h10v10z m20 5h4v4 M90 90 1 1');
    expect(paths.map((p) => p.closed)).toEqual([true, false, false]);
    expect(paths.map((p) => p.start)).toEqual([point(0, 0), point(20, 5), point(90, 90)]);
  });

  it('reads arc flags that stand close', () =>
    expect(pathsFromSvg('M0 0a5 5 0 0110 10 5 5 0 016 6')).toEqual(pathsFromSvg('M0 0a5 5 0 0 1 10 10 5 5 0 0 1 6 6')));

  it('keeps an arc an exact arc', () => {
    const [path] = pathsFromSvg('M-5 0A5 5 0 0 1 5 0A5 5 0 0 1 -5 0z');
    expect(path!.segments.map((s) => s.kind)).toEqual(['arc', 'arc']);
    near(pathLength(path!), 10 * Math.PI, 1e-12);
  });

  it('takes a negative half-axis for its size, as SVG 2 has it', () => {
    for (const [rx, ry] of [[-30, 20], [30, -20], [-30, -20], [-3, 2], [3, -2]]) {
      const [given] = pathsFromSvg(`M 0 0 A ${rx} ${ry} 35 0 1 40 10`);
      expect(given).toEqual(pathsFromSvg(`M 0 0 A ${Math.abs(rx!)} ${Math.abs(ry!)} 35 0 1 40 10`)[0]);
    }
  });

  it('follows SVG 2 where an arc is out of range', () => {
    expect(pathsFromSvg('M0 0A0 5 0 0 1 9 9')[0]!.segments).toEqual([{ kind: 'line', to: point(9, 9) }]);
    expect(pathsFromSvg('M0 0A5 5 0 0 1 0 0')).toEqual([]);
    near(pathLength(pathsFromSvg('M0 0A-1 -1 0 0 1 6 8')[0]!), 5 * Math.PI, 1e-9);
    // Too small by far: enlarged to the half circle over its ends.
    near(pathLength(pathsFromSvg('M0 0A1 1 0 0 1 6 8')[0]!), 5 * Math.PI, 1e-9);
  });

  it.each(['', '10 10', 'L5 5', 'M0 0L10', 'M0 0 L 10 10 foo', 'M0 0 10,,20', 'M0 0A5 5 0 2 1 3 3', 'M0 0L1e999 4', 'M0 0 L NaN 3', 'M', 'M0 0L3 4 <script>'])(
    'refuses %j', (data) => expect(() => pathsFromSvg(data)).toThrow(GeometryError));
});
