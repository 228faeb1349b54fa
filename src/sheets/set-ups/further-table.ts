import type { Font } from '../../drawing/font.js';
import type { FigureTable } from '../../drawing/set-up.js';
import { table } from '../../drawing/table.js';
import { point } from '../../geometry/point.js';
import { sayWords, type Words } from '../../units/quantity.js';
import type { Units } from '../../units/units.js';
import { heading, paragraphs, tableBlocks } from '../blocks.js';
import type { FlowBlock } from '../flow.js';

/** Between tables set side by side, mm. */
const gutter = 6;
/** A table set side by side is no taller, mm: beyond that it breaks over pages. */
const tallest = 180;

/** A table in parts side by side where several fit the width, so that a page is not one narrow column of figures. */
export const furtherTable = (
  of: FigureTable,
  width: number,
  { units, font }: { units: Units; font: Font },
): FlowBlock[] => {
  const { heading: title, note = [], columns, rows } = of;
  if (rows.length === 0) return [];
  const say = (cells: readonly Words[]): string[] => cells.map((cell) => sayWords(cell, units));
  const cells = { columns: columns.map(({ head: text }) => text), rows: rows.map(say) };
  const noted = paragraphs(note.length === 0 ? [] : [sayWords(note, units)], width, font).map((block) => ({
    ...block,
    withNext: true,
  }));
  const over = [heading(sayWords(title, units), width, font), ...noted];
  const plain = (): FlowBlock[] => [...over, ...tableBlocks(cells, width, font)];
  const natural = table({ at: point(0, 0), ...cells, width }, font).width;
  const beside = Math.max(1, Math.min(3, Math.floor((width + gutter) / (natural + gutter))));
  if (beside === 1 || rows.length < 8) return plain();
  const perPart = Math.ceil(rows.length / beside);
  const parts = Array.from({ length: beside }, (_, i) => cells.rows.slice(i * perPart, (i + 1) * perPart)).filter(
    (r) => r.length > 0,
  );
  const across = (width + gutter) / beside;
  const blocks = parts.map((part, i) =>
    table({ at: point(i * across, 0), columns: cells.columns, rows: part, width: across - gutter }, font),
  );
  const height = Math.max(...blocks.map((b) => b.height));
  return height > tallest ? plain() : [...over, { items: blocks.flatMap((b) => b.items), height, before: 2 }];
};
