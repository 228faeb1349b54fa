import { LineCounter } from 'yaml';
import type { Position } from './spec.js';

/** A file's text with its lines found: turns offsets into lines and columns, and shows a line. */
export interface SourceText {
  readonly file: string;
  readonly text: string;
  readonly counter: LineCounter;
}

/** Indexes the lines of a text; every line end counts, as yaml counts them. */
export function sourceText(file: string, text: string): SourceText {
  const counter = new LineCounter();
  counter.addNewLine(0);
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) counter.addNewLine(at + 1);
  return { file, text, counter };
}

/** Line and column, counted from 1, of an offset. Columns count UTF-16 units. */
export function positionAt({ counter }: SourceText, offset: number): Position {
  const { line, col } = counter.linePos(offset);
  return { line, column: col };
}

/** The line that holds an offset, without its line end. */
export function lineAt({ text }: SourceText, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  return text.slice(start, end < 0 ? undefined : end).replace(/\r$/, '');
}

/** The same as a mistake carries it. */
export function placeAt(source: SourceText, offset: number): Position & { readonly source: string } {
  return { ...positionAt(source, offset), source: lineAt(source, offset) };
}
