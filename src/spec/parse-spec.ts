import { UserError, type Mistake } from '../errors/user-error.js';
import { papers } from '../units/paper.js';
import type { Paper } from '../units/paper.js';
import { digest } from './digest.js';
import { fileName } from './file-name.js';
import { mistakeAt } from './mistakes-from-issues.js';
import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import type { Piece } from './piece-schema.js';
import { readJigs, type Kinds } from './read-jigs.js';
import { readPiece } from './read-piece.js';
import { readShop, type ReadFile } from './read-shop.js';
import { readYaml, type YamlFile } from './read-yaml.js';
import type { JigEntry, Round, Spec } from './spec.js';

/** A spec's text and what it takes to read it. */
export interface SpecSource {
  readonly text: string;
  /** As the user named it; `-` for standard input. */
  readonly file: string;
  readonly kinds: Kinds;
  /** For a shop file; without it a spec that names one is refused. */
  readonly readFile?: ReadFile;
}

/**
 * A checked spec from YAML text: mm and radians, rounds looked up, defaults filled in. All the mistakes of the file (and of
 * the shop file) are collected and thrown as one UserError, each with its place, what was got and what would do.
 */
export function parseSpec({ text, file, kinds, readFile }: SpecSource): Spec {
  const yaml = readYaml(file, text);
  if ('mistakes' in yaml) throw new UserError(file, yaml.mistakes);
  const { piece, mistakes, fields, rounds } = readPiece(yaml);
  const { jigs, mistakes: jigMistakes } = readJigs(yaml, kinds, fields);
  const shopPath = [piece?.shop, yaml.data['shop']].find((path) => typeof path === 'string');
  const shop = shopPath === undefined ? undefined : readShop(shopPath, yaml, readFile);
  const name = specName(file, piece?.title);
  const all: readonly Mistake[] = [
    ...inOrder([...yaml.duplicates, ...mistakes, ...jigMistakes, ...seamMistakes(yaml, jigs, jigMistakes), ...(name === undefined ? [noName(yaml)] : [])]),
    ...(shop && 'mistakes' in shop ? shop.mistakes : []),
  ];
  if (all.length > 0 || !piece || name === undefined || (shop && 'mistakes' in shop)) throw new UserError(file, all);
  return toSpec(piece, { name, rounds, jigs, shop, text });
}

interface Parts {
  readonly name: string;
  readonly rounds: Readonly<Record<string, Round>>;
  readonly jigs: readonly JigEntry[];
  readonly shop: { readonly shop: Spec['shop']; readonly text: string } | undefined;
  readonly text: string;
}

function toSpec(piece: Piece, { name, rounds, jigs, shop, text }: Parts): Spec {
  const { title, revision, units, sheets } = piece;
  const inline = typeof piece.shop === 'string' ? {} : piece.shop;
  return {
    name, title, revision, units, sheets, rounds, jigs,
    paper: piece.paper ?? defaultPaper(units),
    shop: shop?.shop ?? inline,
    digest: digest(shop ? [text, shop.text] : [text]),
  };
}

/** Letter where inches are spoken, A4 elsewhere. */
const defaultPaper = (units: Spec['units']): Paper => (units === 'inch' ? papers['letter'] : papers['a4']) as Paper;

/** The file's own name without folder and ending, made safe; the title for standard input and where the file has no name to use. */
function specName(file: string, title: string | undefined): string | undefined {
  const base = file.split(/[\\/]/).at(-1)?.replace(/\.(?:ya?ml|json)$/i, '') ?? '';
  return fileName(base) ?? (title === undefined ? 'piece' : fileName(title));
}

const noName = (yaml: YamlFile): Mistake =>
  mistakeAt({ code: 'no-file-name', message: 'makes no file name', allowed: 'a title with a letter or a digit, at most 120 bytes in UTF-8' }, ['title'], yaml);

/** Seams are given by jig; a name that no jig has is a mistake, unless a jig with a mistake may have it. */
function seamMistakes(yaml: YamlFile, jigs: readonly JigEntry[], jigMistakes: readonly Mistake[]): readonly Mistake[] {
  const sheets = yaml.data['sheets'] as { readonly seams?: unknown } | undefined;
  const seams = sheets?.seams;
  if (typeof seams !== 'object' || seams === null || jigMistakes.length > 0) return [];
  const names = jigs.map((jig) => jig.name);
  return Object.keys(seams).filter((name) => !names.includes(name)).map((name) => {
    const near = nearest(name, names);
    const issue = { code: 'unknown-jig', message: 'is not a jig of this piece', got: quote(name), allowed: names.map(quote).join(', ') };
    return mistakeAt({ ...issue, ...(near === undefined ? {} : { nearest: near }) }, ['sheets', 'seams', name], yaml);
  });
}

/** As one reads the file: from the top. */
const inOrder = (mistakes: readonly Mistake[]): readonly Mistake[] =>
  [...mistakes].sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
