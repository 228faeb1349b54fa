/** Letters of drawing grids: I and O are left out, being read as figures (ISO 5457). */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** The letters of a row counted from 0: A … Z without I and O, then AA, AB, … */
export const rowLetters = (row: number): string => {
  const last = letters[row % letters.length]!;
  return row < letters.length ? last : rowLetters(Math.floor(row / letters.length) - 1) + last;
};
