import { isMap, isScalar, parseAllDocuments, visit, type Document, type YAMLError } from 'yaml';
import type { Mistake } from '../errors/user-error.js';
import { visible } from '../errors/quote.js';
import { tooMuch } from './amount.js';
import { checkNodes, mostAliases, tooManyAliases } from './check-nodes.js';
import { makeLocator, type Locator } from './locate.js';
import { placeAt, sourceText, type SourceText } from './source-text.js';

/** A YAML file that holds one mapping, as plain data, with the means to find its places. */
export interface YamlFile {
  readonly source: SourceText;
  readonly locate: Locator;
  readonly data: Readonly<Record<string, unknown>>;
  /** Keys given twice: the rest can be read all the same, so that all mistakes are told together. */
  readonly duplicates: readonly Mistake[];
}

/** No spec of a piece of furniture comes near it. */
const largestFile = 1024 * 1024;

/**
 * Reads a YAML 1.2 file that holds one mapping. Refuses, with every place: files over 1 MiB, bad syntax, several documents,
 * anything but a mapping at the top, keys given twice, keys that are not plain names, anchors that multiply, control signs.
 */
export function readYaml(file: string, text: string): YamlFile | { readonly mistakes: readonly Mistake[] } {
  const size = Buffer.byteLength(text);
  if (size > largestFile) return wholeFile('file-too-large', `the file has ${size} bytes`, 'at most 1 MiB (1048576 bytes)');
  const source = sourceText(file, text);
  const stray = controlSign(source);
  if (stray) return { mistakes: [stray] };
  try {
    return readDocument(source);
  } catch (error) {
    // The composer recurses; nesting deep enough to end its stack is no spec.
    if (error instanceof RangeError) return wholeFile('nested-too-deep', 'lists and mappings are nested too deep to read', 'a few levels');
    throw error;
  }
}

const wholeFile = (code: string, message: string, allowed: string) => ({ mistakes: [{ code, path: '', message, allowed }] });

function controlSign(source: SourceText): Mistake | undefined {
  const match = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f]|\r(?!\n)/.exec(source.text);
  if (!match) return undefined;
  return {
    code: 'unseen-sign', path: '', ...placeAt(source, match.index),
    message: `the file holds the control sign ${visible(match[0])}`, allowed: 'plain text in UTF-8',
  };
}

function readDocument(source: SourceText): YamlFile | { readonly mistakes: readonly Mistake[] } {
  // Keys given twice are looked for below: yaml's own search grows with the square of a mapping's keys.
  const found = parseAllDocuments(source.text, { prettyErrors: false, uniqueKeys: false, strict: true });
  const documents = Array.isArray(found) ? found : [];
  const [document] = documents;
  if (!document) return wholeFile('empty-file', 'the file is empty', 'a mapping with title, rounds and jigs');
  const syntax = documents.flatMap((one) => [...one.errors, ...one.warnings]);
  if (syntax.length > 0) return { mistakes: syntaxMistakes(source, syntax) };
  if (documents.length > 1) return { mistakes: [severalDocuments(source, documents[1])] };
  if (!isMap(document.contents)) return { mistakes: [notAMapping(source, document)] };
  const mistakes = checkNodes(document, source);
  return mistakes.some(({ code }) => code !== 'duplicate-key') ? { mistakes } : toData(source, document, mistakes);
}

/**
 * One mistake a line, the first: what yaml finds further on in the same line follows from it. A tab indents nothing in YAML,
 * and all that comes after one is then read askew, so where there are tabs they alone are told.
 */
function syntaxMistakes(source: SourceText, errors: readonly YAMLError[]): readonly Mistake[] {
  const tabs = errors.filter(({ code }) => code === 'TAB_AS_INDENT');
  const lines = new Set<number>();
  return (tabs.length > 0 ? tabs : errors).flatMap((error): Mistake[] => {
    const place = placeAt(source, error.pos[0]);
    if (lines.has(place.line)) return [];
    lines.add(place.line);
    return [{
      code: 'not-yaml', path: '', ...place, message: syntaxMessage(error.message),
      ...(error.code === 'TAB_AS_INDENT' ? { allowed: 'spaces, as many on each line of a group' } : {}),
    }];
  });
}

/** yaml's own words, in our lower case, without its advice to its callers. */
const syntaxMessage = (message: string): string => `not valid YAML: ${visible(message.charAt(0).toLowerCase() + message.slice(1))}`;

function severalDocuments(source: SourceText, second: Document | undefined): Mistake {
  const at = placeAt(source, second?.range?.[0] ?? 0);
  return { code: 'several-documents', path: '', ...at, message: 'the file holds more than one document', allowed: 'one piece a file, without “---” between' };
}

function notAMapping(source: SourceText, document: Document): Mistake {
  const at = placeAt(source, document.contents?.range?.[0] ?? 0);
  const message = document.contents === null ? 'the file is empty' : 'the file is not a mapping';
  return { code: document.contents === null ? 'empty-file' : 'not-a-mapping', path: '', ...at, message, allowed: 'a mapping with title, rounds and jigs' };
}

/** Keys whose values are text whatever they look like: `revision: 1.10` is 1.10, and `name: 007` is 007. */
const textKeys = new Set(['title', 'revision', 'name', 'from', 'shop']);

/** Numbers that stand where text is wanted, as they are written. */
function keepText(document: Document): void {
  visit(document, {
    Pair(_, { key, value }) {
      if (isScalar(key) && textKeys.has(String(key.value)) && isScalar(value) && typeof value.value === 'number' && value.source !== undefined) value.value = value.source;
    },
  });
}

function toData(source: SourceText, document: Document, duplicates: readonly Mistake[]): YamlFile | { readonly mistakes: readonly Mistake[] } {
  try {
    keepText(document);
    const data = document.toJS({ maxAliasCount: mostAliases }) as Record<string, unknown>;
    const locate = makeLocator(document);
    const more = tooMuch(data, locate, source);
    return more === undefined ? { source, locate, duplicates, data } : { mistakes: [more] };
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    const at = placeAt(source, Math.max(0, source.text.search(/(?<=[\s[{,:-])\*/)));
    return { mistakes: [tooManyAliases(at)] };
  }
}
