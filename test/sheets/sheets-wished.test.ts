import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/errors/user-error.js';
import { sheetsWished } from '../../src/sheets/sheets-wished.js';

/** Two pages, a row of three tiles, a second drawing of two, a page of set-ups. */
const codes = ['1', '2', 'A1', 'A2', 'A3', '2A1', '2A2', '8'];

const refusal = (text: string, of = codes): UserError['mistakes'][number] => {
  try { sheetsWished(text, of); } catch (error) { if (error instanceof UserError) return error.mistakes[0]!; throw error; }
  throw new Error('nothing was refused');
};

describe('sheetsWished', () => {
  it.each([
    ['3', [3]], ['2,5-7', [2, 5, 6, 7]], ['A3', [5]], ['a2', [4]], ['2A1', [6]], ['1,A1-A3', [1, 3, 4, 5]], ['A3-2A2', [5, 6, 7]], [' 8 , 1 ', [1, 8]], ['3,A1', [3]], ['2-A1', [2, 3]],
  ])('takes %j for the pages %j', (text, pages) => {
    expect(sheetsWished(text, codes).pages).toEqual(pages);
  });

  it.each([[' 3 , 5 - 7', '3,5-7'], ['a3,1', 'A3,1'], ['a1 - a3', 'A1-A3'], ['4-4', '4']])('writes %j plainly as %j', (text, plain) => {
    expect(sheetsWished(text, codes).text).toBe(plain);
  });

  it.each(['0', '9', '2-999', '99999', '123456', 'x', 'A4', '2A', '1,,2', '', '1-2-3', '-3', '3-', '1.5', '3-2', 'A3-A1', '../A1'])('refuses %j', (text) => {
    expect(refusal(text)).toMatchObject({ code: 'wrong-use' });
  });

  it('says which sheets there are, and which is nearest', () => {
    expect(refusal('9')).toMatchObject({ message: '--sheets “9”: there is no sheet 9', allowed: 'pages 1 to 8, or codes as printed on the tiles, A1 to 2A2; ranges too, e.g. 3,5-7,A1' });
    expect(refusal('2A3')).toMatchObject({ message: '--sheets “2A3”: “2A3” is no sheet of this set', nearest: 'A3' });
    expect(refusal('A3-A1')).toMatchObject({ message: '--sheets “A3-A1”: “A3-A1” runs backwards', allowed: 'A1-A3' });
    expect(refusal('A1', ['1', '2'])).toMatchObject({ allowed: 'pages 1 to 2; ranges too, e.g. 3,5-7' });
  });
});
