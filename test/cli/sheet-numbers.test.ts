import { describe, expect, it } from 'vitest';
import { sheetNumbersFrom, sheetsChosen } from '../../src/cli/sheet-numbers.js';
import { UserError } from '../../src/errors/user-error.js';
import type { SetPart } from '../../src/sheets/set-pages.js';

/** Two sheets that open the set, one of packed patterns, three tiles, two of set-ups. */
const parts: readonly SetPart[] = ['opening', 'opening', 'patterns', 'tiles', 'tiles', 'tiles', 'set-ups', 'set-ups'];
const set = { count: parts.length, parts };

const chosen = (given: Record<string, unknown>, of = set): [string, number[]] | undefined => {
  const numbers = sheetNumbersFrom(sheetsChosen(given), of);
  return numbers === undefined
    ? undefined
    : [numbers.text, parts.flatMap((_, i) => (numbers.has(i + 1) ? [i + 1] : []))];
};

const refusal = (given: Record<string, unknown>, of = set): UserError['mistakes'][number] => {
  try {
    chosen(given, of);
  } catch (error) {
    if (error instanceof UserError) return error.mistakes[0]!;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('sheetNumbersFrom', () => {
  it('takes the sheets of the parts chosen, under their numbers, and those that open the set', () => {
    expect(chosen({})).toBeUndefined();
    expect(chosen({ parts: 'tiles' })).toEqual(['tiles', [1, 2, 4, 5, 6]]);
    expect(chosen({ parts: 'set-ups, Patterns' })).toEqual(['patterns,set-ups', [1, 2, 3, 7, 8]]);
    expect(chosen({ parts: ['tiles', 'tiles'] })).toEqual(['tiles', [1, 2, 4, 5, 6]]);
    expect(chosen({ parts: 'patterns,tiles,set-ups' })).toEqual(['patterns,tiles,set-ups', [1, 2, 3, 4, 5, 6, 7, 8]]);
  });

  it('takes of the sheets named those of the parts chosen', () => {
    expect(chosen({ sheets: '3,5-7' })).toEqual(['3,5-7', [3, 5, 6, 7]]);
    expect(chosen({ sheets: '3,5-7', parts: 'tiles' })).toEqual(['tiles-3,5-7', [5, 6]]);
    expect(chosen({ sheets: '1,7', parts: 'set-ups' })).toEqual(['set-ups-1,7', [1, 7]]);
  });

  it('refuses what is no part, what this set has none of, and where nothing is left', () => {
    expect(refusal({ parts: 'tiles,setups' })).toMatchObject({
      message: '--parts: there is no “setups”',
      allowed: 'any of patterns, tiles, set-ups, with commas',
      nearest: 'set-ups',
    });
    expect(refusal({ parts: 'opening' })).toMatchObject({ message: '--parts: there is no “opening”' });
    expect(refusal({ parts: ' , ' })).toMatchObject({ message: '--parts needs a value behind it' });
    expect(refusal({ parts: 'set-ups,tiles' }, { count: 3, parts: ['opening', 'patterns', 'set-ups'] })).toMatchObject({
      message: '--parts: this set has no tiles',
      allowed: 'patterns, set-ups',
    });
    expect(refusal({ sheets: '7-8', parts: 'tiles' })).toMatchObject({
      message: '--sheets “7-8”: none of them holds tiles',
      allowed: 'of these: 1, 2, 4, 5, 6',
    });
  });
});
