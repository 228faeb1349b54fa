import { visible } from './quote.js';
import { mistakeSentence, type Mistake, type UserError } from './user-error.js';

/** More than anyone mends in one go; the rest are counted. */
const mostShown = 40;
/** Signs of a source line shown round the place. */
const window = 96;

/**
 * A UserError as a terminal shows it: each mistake with `file:line:column`, its source line and a caret under the place, what was
 * got, what would do and the nearest. A blank line between mistakes, their number last. Control signs and bidi marks are spelt out.
 */
export function formatMistakes({ file, mistakes }: UserError): string {
  const shown = mistakes.slice(0, mostShown).map((mistake) => formatMistake(mistake, file));
  const left = mistakes.length - shown.length;
  const count = mistakes.length > 1 ? [`${mistakes.length} mistakes${file === undefined ? '' : ` in ${fileShown(file)}`}${left > 0 ? `; ${left} of them not shown` : ''}`] : [];
  return [...shown, ...count].join('\n\n') + '\n';
}

function formatMistake(mistake: Mistake, file: string | undefined): string {
  const { line, column, source, got, allowed, nearest } = mistake;
  const name = mistake.file ?? file;
  const place = [name === undefined ? [] : fileShown(name), line ?? [], column ?? []].flat().join(':');
  return [
    `${place === '' ? '' : `${place}: `}${visible(mistakeSentence(mistake))}`,
    ...(line === undefined || column === undefined || source === undefined ? [] : pointer(source, line, column)),
    ...labelled('got', got), ...labelled('would do', allowed), ...labelled('nearest', nearest),
  ].join('\n');
}

const fileShown = (file: string): string => (file === '-' ? 'standard input' : visible(file));

const labelled = (label: string, text: string | undefined): readonly string[] =>
  text === undefined ? [] : [`    ${`${label}:`.padEnd(10)}${visible(text)}`];

/** The source line and a caret under a column, cut to a window where it is long. */
function pointer(source: string, line: number, column: number): readonly string[] {
  const start = column > window * 0.75 ? column - 1 - Math.round(window / 2) : 0;
  const before = printable(source.slice(start, column - 1));
  const after = printable(source.slice(column - 1, start + window));
  const margin = String(line).padStart(5);
  const lead = start > 0 ? '…' : '';
  const tail = start + window < source.length ? '…' : '';
  return [`${margin} | ${lead}${before}${after}${tail}`, `${' '.repeat(margin.length)} | ${' '.repeat([...(lead + before)].length)}^`];
}

const printable = (text: string): string => visible(text.replace(/\t/g, ' '));
