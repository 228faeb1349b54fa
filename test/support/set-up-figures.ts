import type { JigDrawing } from '../../src/drawing/drawing.js';
import type { SetUp } from '../../src/drawing/set-up.js';
import { figuresOf, sayWords, type Quantity, type Words } from '../../src/units/quantity.js';
import type { Units } from '../../src/units/units.js';

/** A figure as a bare number: mm, degrees, a count or a ratio. */
export const numberOf = (quantity: Quantity): number => {
  switch (quantity.kind) {
    case 'length': return quantity.mm;
    case 'angle': return (quantity.rad * 180) / Math.PI;
    case 'count': return quantity.count;
    case 'ratio': return quantity.ratio;
  }
};

/** The figures of a sentence as bare numbers. */
export const numbersIn = (words: Words): number[] => figuresOf(words).map(numberOf);

/** The set-up of an operation, and of an end where the operation has one page an end. */
export const setUpOf = (drawing: JigDrawing, code: string, end?: 'near' | 'far'): SetUp => {
  const found = drawing.setUps.filter((setUp) => setUp.code === code && (end === undefined || setUp.end === undefined || setUp.end === end));
  if (found.length !== 1) throw new Error(`${found.length} set-ups called ${code}, of ${drawing.setUps.map((s) => s.code).join(', ')}`);
  return found[0]!;
};

const byCode = <T extends { readonly code: string }>(list: readonly T[], code: string): T => {
  const found = list.filter((each) => each.code === code);
  if (found.length !== 1) throw new Error(`${found.length} called ${code}, of ${list.map((each) => each.code).join(', ')}`);
  return found[0]!;
};

/** The figures of one line of a set-up's numbers: mm and degrees, in the order printed. */
export const figure = (setUp: SetUp, code: string): number[] => numbersIn(byCode(setUp.numbers, code).value);

/** The words of one line's label and value, as printed. */
export const figureText = (setUp: SetUp, code: string, units: Units): string => {
  const { label, value } = byCode(setUp.numbers, code);
  return `${sayWords(label, units)}: ${sayWords(value, units)}`;
};

/** The figures of one step: mm and degrees, in the order printed. */
export const stepFigures = (setUp: SetUp, code: string): number[] => numbersIn(byCode(setUp.steps, code).words);

/** The words of one step, as printed. */
export const stepText = (setUp: SetUp, code: string, units: Units): string => sayWords(byCode(setUp.steps, code).words, units);

/** The figures of one column of a table, row by row. */
export const columnFigures = (setUp: SetUp, table: string, column: string): number[][] => {
  const { columns, rows } = byCode(setUp.tables, table);
  const index = columns.findIndex(({ code }) => code === column);
  if (index < 0) throw new Error(`no column ${column}, of ${columns.map(({ code }) => code).join(', ')}`);
  return rows.map((row) => numbersIn(row[index] ?? []));
};

/** Every code of a set-up that holds figures: a test that recomputes all of them compares its own list with this one. */
export const codesWithFigures = (setUp: SetUp): string[] => [
  ...setUp.numbers.filter(({ value, label }) => figuresOf(value).length + figuresOf(label).length > 0).map(({ code }) => `number ${code}`),
  ...setUp.steps.filter(({ words }) => figuresOf(words).length > 0).map(({ code }) => `step ${code}`),
  ...setUp.tables.flatMap(({ code, columns, rows }) => columns
    .filter((_, i) => rows.some((row) => figuresOf(row[i] ?? []).length > 0)).map((column) => `table ${code} ${column.code}`)),
];
