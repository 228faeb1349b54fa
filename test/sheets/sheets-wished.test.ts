import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/errors/user-error.js';
import { sheetsWished } from '../../src/sheets/sheets-wished.js';

const refusal = (text: string, count = 8): UserError['mistakes'][number] => {
  try { sheetsWished(text, count); } catch (error) { if (error instanceof UserError) return error.mistakes[0]!; throw error; }
  throw new Error('nothing was refused');
};

describe('sheetsWished', () => {
  it.each([
    ['3', [3]], ['2,5-7', [2, 5, 6, 7]], ['7,1', [1, 7]], [' 8 , 1 ', [1, 8]], ['2-4,3-5', [2, 3, 4, 5]], ['1-8', [1, 2, 3, 4, 5, 6, 7, 8]],
  ])('takes %j for the sheets %j', (text, numbers) => {
    expect(sheetsWished(text, 8).numbers).toEqual(numbers);
  });

  it.each([[' 3 , 5 - 7', '3,5-7'], ['03', '3'], ['4-4', '4']])('writes %j plainly as %j', (text, plain) => {
    expect(sheetsWished(text, 8).text).toBe(plain);
  });

  it.each(['0', '9', '2-999', '99999', '123456', 'x', 'A4', '2A', '1,,2', '', '1-2-3', '-3', '3-', '1.5', '3-2', '../1'])('refuses %j', (text) => {
    expect(refusal(text)).toMatchObject({ code: 'wrong-use' });
  });

  it('says which sheets there are, and what a sheet is called by', () => {
    expect(refusal('9')).toMatchObject({ message: '--sheets “9”: there is no sheet 9', allowed: 'sheets 1 to 8, one by one or from one to another: 1,8 or 1-8' });
    expect(refusal('7-5')).toMatchObject({ message: '--sheets “7-5”: “7-5” runs backwards', allowed: '5-7' });
    expect(refusal('3A2')).toMatchObject({ message: '--sheets “3A2”: “3A2” is no number: a sheet is called by the number that stands large at its foot' });
    expect(refusal('2', 1)).toMatchObject({ allowed: 'sheet 1' });
  });
});
