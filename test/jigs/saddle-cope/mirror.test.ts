import fc from 'fast-check';
import { expect, test } from 'vitest';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import { context, fields } from './written.js';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const any = fc.record({
  main: size(20, 80), share: size(0.2, 0.9), aside: size(0.02, 0.5), angle: size(0.2, Math.PI / 2), pin: fc.option(size(3, 30), { nil: undefined }),
  far: fc.option(fc.record({ main: size(20, 80), angle: size(0.3, Math.PI / 2), aside: size(0.02, 0.5), twist: size(-3, 3), centres: size(30, 500) }), { nil: undefined }),
});

test('a cope with its offsets and twist turned round is the mirror of itself: heights, cuts, pin and findings the same, ordinates run back', () => {
  let solved = 0;
  fc.assert(fc.property(any, ({ main, share, aside, angle, pin, far }) => {
    const of = (side: 1 | -1) => fields({
      mainDiameter: main, branchDiameter: share * main, angle, offset: (side * aside * main) / 2, pin: pin === undefined ? {} : { diameter: pin },
      ...(far !== undefined && { centres: far.centres, farEnd: { main: { name: 'leg', diameter: far.main }, angle: far.angle, offset: (-side * far.aside * far.main) / 2, twist: side * far.twist } }),
    });
    const [right, left] = ([1, -1] as const).map((side) => saddleCope.solve(of(side), context)) as [ReturnType<typeof saddleCope.solve>, ReturnType<typeof saddleCope.solve>];
    const said = (outcome: typeof right) => ('refused' in outcome ? outcome.refused : saddleCope.check(outcome.solution, context)).map(({ code, severity, measured, limit, about }) => ({ code, severity, about, measured, limit }));
    const near = (findings: ReturnType<typeof said>) => findings.map((f) => ({ ...f, measured: expect.closeTo(f.measured, 5), limit: expect.closeTo(f.limit, 5) }));
    expect(said(left)).toEqual(near(said(right)));
    if ('refused' in right || 'refused' in left) return;
    solved++;
    const ends = (s: typeof right.solution) => [s.near, ...(s.far === undefined ? [] : [s.far])];
    ends(right.solution).forEach((end, i) => {
      const other = ends(left.solution)[i]!;
      for (const key of ['throat', 'longPoint', 'wing', 'horn', 'crest', 'saddleDepth', 'wingAngle', 'sawAngle', 'formRadius'] as const) expect(other[key], key).toBeCloseTo(end[key], 6);
      expect(other.ordinates[0]).toBeCloseTo(end.ordinates[0]!, 6);
      end.ordinates.slice(1).toReversed().forEach((height, k) => { expect(other.ordinates[k + 1]).toBeCloseTo(height, 6); });
      for (const key of Object.keys(end.firstCut) as (keyof typeof end.firstCut)[]) expect(other.firstCut[key], key).toBeCloseTo(end.firstCut[key], 6);
      for (const key of Object.keys(end.entry) as (keyof typeof end.entry)[]) expect(other.entry[key], key).toBeCloseTo(end.entry[key], 4);
      expect([other.noPin, other.pin === undefined]).toEqual([end.noPin, end.pin === undefined]);
      for (const [key, value] of Object.entries(end.pin ?? {})) if (typeof value === 'number') expect((other.pin as unknown as Record<string, number>)[key], key).toBeCloseTo(value, 5);
    });
    expect(Object.values(left.solution.lengths ?? {})).toEqual(Object.values(right.solution.lengths ?? {}).map((value) => expect.closeTo(value, 5)));
  }), { numRuns: 250, seed: 5 });
  expect(solved).toBeGreaterThan(80);
});
