import { expect, test } from 'vitest';
import { check } from '../../src/compile.js';
import { kinds } from '../../src/jigs/index.js';
import { findingInReport, valuesInReport } from '../../src/jigs/report-figures.js';
import { anySpec } from '../support/any-spec.js';

test('a report keeps a millionth of a millimetre, and no crumbs and no −0 of it', () => {
  expect(
    valuesInReport({ a: 4e-15, b: [-4e-15, 26.8333333333], c: { near: 1.0000004, far: { deep: -0 } } }),
  ).toStrictEqual({ a: 0, b: [0, 26.833333], c: { near: 1, far: { deep: 0 } } });
  const finding = findingInReport({
    jig: 'j',
    code: 'c',
    severity: 'note',
    measured: -1e-9,
    limit: 2 / 3,
    about: { jig: 'j', operation: 'o' },
    message: '',
    remedy: '',
    would: [{ field: 'f', value: 1 / 3, unit: 'mm' }],
  });
  expect([finding.measured, finding.limit, finding.would[0]!.value]).toStrictEqual([0, 0.666667, 0.333333]);
});

const figuresIn = (value: unknown): readonly number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(figuresIn)
      : [];

test.each(['saddle-cope', 'v-cradle', 'drill-guide', 'rack-top'] as const)(
  'every figure of a report of %s is one of at most six decimals',
  (kind) => {
    let seen = 0;
    for (let number = 0; number < 30; number += 1) {
      try {
        for (const figure of figuresIn(check({ text: anySpec(kind, number), file: 'any.yaml', kinds }).report.jigs)) {
          expect(JSON.stringify(figure)).toMatch(/^-?\d+(?:\.\d{1,6})?$/);
          seen += 1;
        }
      } catch (error) {
        expect(error).toHaveProperty('mistakes');
      }
    }
    expect(seen).toBeGreaterThan(100);
  },
);
