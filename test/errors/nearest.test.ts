import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../src/errors/nearest.js';

describe('nearest', () => {
  const kinds = ['saddle-cope', 'v-cradle', 'drill-guide', 'rack-top'];
  it.each([
    ['sadle-cope', 'saddle-cope'], ['saddleCope', 'saddle-cope'], ['VCradle', 'v-cradle'], ['drill-giude', 'drill-guide'], ['rack', undefined], ['racktop', 'rack-top'],
    ['xyz', undefined], ['', undefined], ['x'.repeat(100_000), undefined],
  ])('%.12s is %s', (word, name) => {
    expect(nearest(word, kinds)).toBe(name);
  });

  it('takes the first of equals, and nothing from nothing', () => {
    expect(nearest('post', ['past', 'pest'])).toBe('past');
    expect(nearest('post', [])).toBeUndefined();
    expect(nearest('a', ['b'])).toBeUndefined();
  });
});

describe('editDistance', () => {
  it('counts a swap of neighbours once', () => {
    expect(editDistance('angle', 'anlge')).toBe(1);
    // Levenshtein's textbook pair: two replaced, one added.
    expect(editDistance('kitten', 'sitting')).toBe(3);
  });

  it('is 0 for the same word alone, the same both ways, never more than the longer word', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
        expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });
});
