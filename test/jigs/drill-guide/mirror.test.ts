import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findingsOf, round, solved } from './guide.js';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const any = fc.record({
  diameter: size(24, 90), drill: size(4, 14), angle: size(0.5, Math.PI / 2), offset: size(0.1, 0.4), depth: fc.option(size(5, 25), { nil: undefined }),
  sole: fc.constantFrom('v' as const, 'cove' as const, 'flat' as const), width: fc.option(size(30, 110), { nil: undefined }),
});
interface Given { readonly diameter: number; readonly drill: number; readonly angle: number; readonly offset: number; readonly depth: number | undefined; readonly sole: 'v' | 'cove' | 'flat'; readonly width: number | undefined }
const given = ({ diameter, drill, angle, offset, depth, sole, width }: Given, side: 1 | -1) =>
  ({ onto: round(diameter), drill, angle, offset: side * offset * diameter, sole, ...(depth !== undefined && { depth }), block: width === undefined ? {} : { width } });

test('a guide for a hole on one side of the round is the mirror of that on the other: sizes, hole and bit the same, and what is found', () => {
  fc.assert(fc.property(any, (of) => {
    const findings = ([1, -1] as const).map((side) => findingsOf(given(of, side)).map(({ code, measured, limit, severity }) => ({ code, severity, measured: expect.closeTo(measured, 6), limit: expect.closeTo(limit, 6) })));
    expect(findingsOf(given(of, -1)).map(({ code, severity, measured, limit }) => ({ code, severity, measured, limit }))).toEqual(findings[0]);
    if (findingsOf(given(of, 1)).some(({ severity }) => severity === 'stop')) return;
    const [right, left] = [solved(given(of, 1)), solved(given(of, -1))];
    const near = (value: unknown): unknown => (typeof value === 'number' ? expect.closeTo(value, 6) : typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, near(each)])) : value);
    for (const part of ['block', 'hole', 'bit', 'budget', 'sole'] as const) expect(left[part]).toEqual(near(right[part]));
    const [a, b] = [drillGuide.values(right), drillGuide.values(left)];
    expect(Object.keys(a)).toEqual(Object.keys(b));
    for (const [key, value] of Object.entries(a)) if (typeof value === 'number') expect(Math.abs(b[key] as number), key).toBeCloseTo(Math.abs(value), 6);
  }), { numRuns: 150 });
});
