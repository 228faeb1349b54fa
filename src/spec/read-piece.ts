import type { Mistake } from '../errors/user-error.js';
import { nearest } from '../errors/nearest.js';
import type { Units } from '../units/units.js';
import { parseLength } from '../units/parse-length.js';
import { makeFieldReader, type FieldReader } from './fields.js';
import { mistakeAt, mistakesFromIssues } from './mistakes-from-issues.js';
import { pieceSchema, type Piece } from './piece-schema.js';
import { readText } from './plain-fields.js';
import type { YamlFile } from './read-yaml.js';
import { roundSchema } from './round-schema.js';
import { schemaKeys } from './schema-keys.js';
import type { Round } from './spec.js';

/** The top level of a spec, as far as it reads well, and what is needed to go on reading the jigs. */
export interface PieceRead {
  readonly piece: Piece | undefined;
  readonly mistakes: readonly Mistake[];
  /** Reads the jigs' fields: knows the rounds, and which rounds have a mistake of their own. */
  readonly fields: FieldReader;
  readonly rounds: Readonly<Record<string, Round>>;
}

/** Reads everything but the jigs. */
export function readPiece(yaml: YamlFile): PieceRead {
  const units = unitsMeant(yaml.data['units']);
  const plainReader = makeFieldReader(units, {});
  const schema = pieceSchema(plainReader);
  const read = schema.safeParse(yaml.data, { jitless: true });
  const issues = read.success ? [] : read.error.issues;
  const { rounds, mistaken } = readRounds(yaml.data['rounds'], plainReader);
  const mistakes = [
    ...mistakesFromIssues(issues, yaml, { at: [], keysAt: (path) => schemaKeys(schema, path) }),
    ...roundNameMistakes(yaml, units),
  ];
  return { piece: read.data, mistakes, rounds, fields: makeFieldReader(units, rounds, mistaken) };
}

/** The units that a spec means; where the word is mistaken, the nearest, so that one mistake does not make others. */
function unitsMeant(written: unknown): Units {
  const word = typeof written === 'string' ? written : 'mm';
  return word === 'inch' || word === 'in' || nearest(word, ['inch', 'mm']) === 'inch' ? 'inch' : 'mm';
}

function readRounds(written: unknown, fields: FieldReader): { readonly rounds: Readonly<Record<string, Round>>; readonly mistaken: readonly string[] } {
  const entries = typeof written === 'object' && written !== null && !Array.isArray(written) ? Object.entries(written) : [];
  const schema = roundSchema(fields);
  const read = entries.map(([name, entry]) => ({ name, result: schema.safeParse(entry, { jitless: true }) }));
  return {
    rounds: Object.fromEntries(read.flatMap(({ name, result }) => (result.success ? [[name, { name, ...result.data }]] : []))),
    mistaken: read.flatMap(({ name, result }) => (result.success ? [] : [name])),
  };
}

/** What stands where a round may stand and is none: `onto: flat`. */
const keptWords = ['flat'];

/** A round's name must be fit to print, and must not read as a diameter or as a word that fields keep for what is no round. */
function roundNameMistakes(yaml: YamlFile, units: Units): readonly Mistake[] {
  const written = yaml.data['rounds'];
  const names = typeof written === 'object' && written !== null && !Array.isArray(written) ? Object.keys(written) : [];
  return names.flatMap((name): readonly Mistake[] => {
    const text = readText(name, 60);
    if ('issue' in text) return [mistakeAt(text.issue, ['rounds', name], yaml)];
    if (keptWords.includes(name)) return [mistakeAt({ code: 'name-is-kept', message: 'names a round, but says that there is none, as in onto: flat', allowed: 'any other name' }, ['rounds', name], yaml)];
    if ('refusal' in parseLength(name, units)) return [];
    const allowed = 'a name that is not a length';
    return [mistakeAt({ code: 'name-is-a-length', message: 'names a round, but reads as a length', allowed }, ['rounds', name], yaml)];
  });
}
