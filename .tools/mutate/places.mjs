// Finds where a formula could be broken, and how: places come from the syntax tree and are drawn by a seed.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'rolldown/parseAst';
import { rules } from './rules.mjs';

/** Where the formulae are; a constant with a name is a figure of the trade in the first two, and a matter of layout in the others. */
export const folders = ['geometry', 'shop', 'jigs', 'sheets'];
const figureFolders = ['geometry', 'shop', 'jigs/kit'];

/** What only says where words and their lines stand: whoever reads them reads the same, a millimetre further on. */
const lettering = new Set(['letter', 'leader', 'textBlock', 'paragraphs', 'heading', 'table', 'moveItems', 'besideEachOther', 'underEachOther', 'wrapText', 'fitText', 'arrow']);
/** Properties that say how big and how far off words stand. */
const letteringFields = new Set(['height', 'elbow', 'gap', 'anchor', 'offset', 'turn', 'labelAt', 'shelf']);

const isType = (type) => type.startsWith('TS') && !['TSAsExpression', 'TSNonNullExpression', 'TSSatisfiesExpression'].includes(type);
const isThrown = (node) => node.type === 'ThrowStatement' || (node.type === 'NewExpression' && (node.callee.name ?? '').endsWith('Error'));
// A generator of a kind gives the places where a label may stand, one after the other; nothing else.
const isLettering = (node, file) => (node.generator === true && file.startsWith('src/jigs/')) || (node.type === 'CallExpression' && lettering.has(node.callee.name))
  || (node.type === 'Property' && letteringFields.has(node.key.name));

const childrenOf = (node) => Object.entries(node)
  .filter(([key]) => !['parent', 'typeAnnotation', 'returnType', 'typeParameters', 'typeArguments', 'id'].includes(key))
  .flatMap(([, value]) => (Array.isArray(value) ? value : [value])).filter((value) => value !== null && typeof value === 'object' && typeof value.type === 'string');

/** `const blade = 3.2;` at the top of a file: the figure's node. */
const namedFigures = (program) => program.body.flatMap((statement) => {
  const declaration = statement.type === 'ExportNamedDeclaration' ? statement.declaration : statement;
  if (declaration?.type !== 'VariableDeclaration') return [];
  return declaration.declarations.map(({ init }) => init).filter((init) => init?.type === 'Literal' && typeof init.value === 'number' && Math.abs(init.value) > 1e-5);
});

const isSmallFigure = (node) => node?.type === 'Literal' && typeof node.value === 'number' && Math.abs(node.value) <= 1e-5 && node.value !== 0;

/**
 * Tolerances of the arithmetic itself, such as `const same = 1e-9;`, `const slack = 1e-12 * size;` or a parameter that is 1e-12 unless given: doubling
 * one changes nothing that a hand could measure. Their names, and the formulae that say them.
 */
const tolerancesIn = (program) => {
  const names = new Set();
  const formulae = new Set();
  const isTolerance = (node) => isSmallFigure(node) || (node?.type === 'Identifier' && names.has(node.name)) || (node?.type === 'UnaryExpression' && isTolerance(node.argument))
    || (node?.type === 'BinaryExpression' && node.operator === '*' && (isTolerance(node.left) || isTolerance(node.right)));
  const walk = (node) => {
    const [name, value] = node.type === 'VariableDeclarator' ? [node.id, node.init] : node.type === 'AssignmentPattern' ? [node.left, node.right] : [];
    if (name?.type === 'Identifier' && isTolerance(value)) {
      names.add(name.name);
      formulae.add(value);
    }
    Object.entries(node).filter(([key]) => key !== 'parent').flatMap(([, child]) => child).filter((child) => typeof child?.type === 'string').forEach(walk);
  };
  walk(program);
  return { isTolerance, formulae };
};

/** All that could be broken in one file: `{ file, line, rule, was, edits: [{ start, end, to }] }`. */
export const placesIn = (root, file) => {
  const source = readFileSync(join(root, file), 'utf8');
  const program = parseAst(source, { lang: 'ts' }, file);
  const text = ({ start, end }) => source.slice(start, end);
  const lineAt = (at) => source.slice(0, at).split('\n').length;
  const places = [];
  const add = (node, found) => {
    const edits = (found.edits ?? [{ at: found.at ?? node, to: found.to }]).map(({ at, to }) => ({ start: at.start, end: at.end, to }));
    const becomes = source.slice(node.start, edits[0].start) + edits.map((edit, i) => edit.to + source.slice(edit.end, edits[i + 1]?.start ?? Math.max(node.end, edit.end))).join('');
    const shown = (words) => words.replace(/\s+/g, ' ').slice(0, 150);
    const head = node.type === 'IfStatement' || node.type === 'ConditionalExpression' ? edits[0] : node;
    places.push({ file, line: lineAt(node.start), start: node.start, rule: found.rule, was: shown(text(head)), becomes: shown(head === node ? becomes : edits[0].to), edits });
  };
  const { isTolerance, formulae } = tolerancesIn(program);
  const isSmall = (node) => node.type === 'BinaryExpression' && [node.left, node.right].some(isTolerance);
  /** Products of which only the sign is asked: a quotient's is the same. */
  const signOnly = new Set();
  const walk = (node) => {
    if (isType(node.type) || node.type === 'ImportDeclaration' || formulae.has(node) || (node.type === 'BinaryExpression' && isTolerance(node)) || isThrown(node) || isLettering(node, file)) return;
    if (node.type === 'BinaryExpression' && /^[<>]=?$/.test(node.operator) && node.right.value === 0) signOnly.add(node.left);
    const isLeftOut = (found) => isSmall(node) || (found.rule === 'factor' && signOnly.has(node));
    for (const found of (rules[node.type]?.(node, text) ?? []).filter((one) => !isLeftOut(one))) add(node, found);
    for (const child of childrenOf(node)) walk(child);
  };
  walk(program);
  if (figureFolders.some((folder) => file.startsWith(`src/${folder}/`))) {
    for (const node of namedFigures(program)) for (const found of rules.NamedFigure(node, text)) add(node, found);
  }
  return places;
};

export const allPlaces = (root) => folders.flatMap((folder) => readdirSync(join(root, 'src', folder), { recursive: true })
  .map((name) => `src/${folder}/${name}`).filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts')).sort()
  .flatMap((file) => placesIn(root, file)));

/** mulberry32: small, seeded, the same on every machine. */
export const randomFrom = (seed) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

/** `count` of the places, no node twice, so that each says something of another formula. */
export const drawPlaces = (places, count, seed) => {
  const random = randomFrom(seed);
  const shuffled = places.map((place) => ({ place, key: random() })).sort((a, b) => a.key - b.key).map(({ place }) => place);
  const seen = new Set();
  return shuffled.filter(({ file, start }) => !seen.has(`${file}:${start}`) && seen.add(`${file}:${start}`)).slice(0, count);
};
