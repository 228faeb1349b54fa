import { kinds } from '../jigs/index.js';
import { describeFields, type FieldDescription } from '../spec/describe-fields.js';
import { makeFieldReader } from '../spec/fields.js';
import { pieceSchema } from '../spec/piece-schema.js';
import { angleLabel, millimetres, fractionInches } from '../units/format.js';
import { chosen } from './arguments.js';
import type { Arguments } from './command.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { wrapText } from './wrap-text.js';

const length = (mm: number): string => (mm === 0 ? '0' : `${millimetres(mm)}${Math.abs(mm) < 0.5 ? '' : ` (${fractionInches(mm)})`}`);

/** A figure as its field would have it written. Lengths below half a millimetre keep their decimals: paper is 0.1 mm thick. */
const figure = ({ sort }: FieldDescription, value: number): string => {
  if (sort === 'angle') return angleLabel(value);
  if (sort !== 'length') return String(value);
  return Math.abs(value) < 0.5 && value !== 0 ? `${value} mm` : length(value);
};

const shown = (field: FieldDescription, value: unknown): string => {
  if (typeof value === 'number') return figure(field, value);
  if (value === '' || (typeof value === 'object' && value !== null && Object.keys(value).length === 0)) return '';
  return typeof value === 'string' ? value : JSON.stringify(value);
};

const range = (field: FieldDescription): string => {
  const { min, max, choices } = field.meta ?? {};
  if (field.sort === 'angle' && choices !== undefined) return `${figure(field, min ?? 0)} to ${figure(field, max ?? 0)}, or ${choices.join(' | ')}`;
  if (choices !== undefined) return choices.join(' | ');
  if (min === undefined || max === undefined || field.sort === 'text') return '';
  return `${figure(field, min)} to ${figure(field, max)}`;
};

const sortNames: Readonly<Record<FieldDescription['sort'], string>> = {
  length: 'length', angle: 'angle', number: 'number', count: 'whole number', flag: 'true or false', text: 'text', choice: 'one of',
  round: 'a round by name, or a diameter', group: 'group', list: 'list', names: 'by name', either: 'in one of several forms',
};

/** `again`: another form of the field right above it. */
const fieldText = (field: FieldDescription, again: boolean): string => {
  const depth = (field.path.match(/\./g) ?? []).length;
  const standIn = field.default === undefined ? '' : shown(field, field.default);
  const needed = field.required ? 'required' : standIn === '' ? 'optional' : `default ${standIn}`;
  const form = [sortNames[field.sort], range(field)].filter((part) => part !== '').join(' ');
  const indent = '  '.repeat(depth + 1);
  return [again ? `${indent}or: ${form}` : `${indent}${field.path}   ${form}; ${needed}`, ...(field.about === '' ? [] : [wrapText(field.about, `${indent}    `)])].join('\n');
};

const fieldTexts = (fields: readonly FieldDescription[]): readonly string[] => {
  const seen = new Set<string>();
  return fields.map((field) => {
    const again = seen.has(field.path);
    seen.add(field.path);
    return fieldText(field, again);
  });
};

const forms = `Lengths: 1-3/8, 1 3/8 in, 1⅜", 3' 2-1/2", 34.9 mm, 3.5 cm; a bare number is in the spec's units.
Angles: 24, 24 deg, 24°, or a slope 1:6.`;

const reader = makeFieldReader('mm', {});

const pieceText = (): string => `${[
  'A spec is one YAML file for one piece.', forms, '',
  ...fieldTexts(describeFields(pieceSchema(reader))), '',
  'Kinds of jig, each an entry under jigs with its kind, a name of its own if wanted, and its fields:',
  ...Object.values(kinds).map(({ kind, summary }) => `  ${kind.padEnd(14)} ${summary}`), '',
  'roundwright fields KIND lists the fields of one; roundwright new KIND prints a spec to start from.',
].join('\n')}\n`;

const kindText = (name: string): string => {
  const { kind, summary, schema } = kinds[name]!;
  return `${[`${kind}: ${summary}`, forms, '', ...fieldTexts(describeFields(schema(reader)))].join('\n')}\n`;
};

/** `fields [KIND]`: what may be written in a spec, or in a jig of one kind, with limits and defaults. */
export const fields = async (given: Arguments, io: Io): Promise<number> => {
  const kind = given['kind'];
  io.out(kind === undefined ? pieceText() : kindText(chosen(String(kind), 'fields', Object.keys(kinds))));
  return exitCodes.done;
};
