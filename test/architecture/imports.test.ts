import { builtinModules } from 'node:module';
import { expect, test } from 'vitest';
import { partOf, sourceFiles, type SourceFile } from './source-files.js';

/** From the ground up: a part may import from itself and from those before it. */
const order = ['errors', 'units', 'geometry', 'spec', 'shop', 'drawing', 'jigs', 'sheets', 'writers', 'compile', 'cli', 'index'];

/** Where each library may be used. */
const libraries: Readonly<Record<string, (path: string) => boolean>> = {
  pdfkit: (path) => path.startsWith('writers/pdf/'),
  'opentype.js': (path) => path.startsWith('drawing/'),
  yaml: (path) => path.startsWith('spec/'),
  zod: (path) => path.startsWith('spec/') || path.startsWith('jigs/'),
  yargs: (path) => path.startsWith('cli/'),
  'clipper2-ts': (path) => path.startsWith('geometry/'),
  'svg-path-commander': (path) => path.startsWith('geometry/'),
};

/** The pure parts touch neither disk nor process; these may use what Node has for hashing, packing and streams. */
const nodeModules: Readonly<Record<string, readonly string[]>> = {
  spec: ['node:crypto', 'node:path'],
  writers: ['node:crypto', 'node:zlib'],
};

const files = sourceFiles();
const isOwn = (name: string): boolean => files.some(({ path }) => path === name);
const packageOf = (name: string): string => name.split('/').slice(0, name.startsWith('@') ? 2 : 1).join('/');

test('src/ holds the parts that the design names, and no others', () => {
  expect(files.length).toBeGreaterThan(50);
  expect([...new Set(files.map(({ path }) => partOf(path)))].filter((part) => !order.includes(part))).toEqual([]);
});

test('every relative import leads to a file of src/', () => {
  const lost = files.flatMap(({ path, imports }) => imports.filter((name) => name.endsWith('.ts') && !isOwn(name)).map((name) => `${path} → ${name}`));
  expect(lost).toEqual([]);
});

test('imports run one way: from a part to itself and to the parts before it', () => {
  const wrong = files.flatMap(({ path, imports }) => imports.filter(isOwn)
    .filter((name) => order.indexOf(partOf(name)) > order.indexOf(partOf(path))).map((name) => `${path} → ${name}`));
  expect(wrong).toEqual([]);
});

test('a kind of jig imports no other kind, but for the type of its solution, which a paired jig reads', () => {
  const kindOf = (path: string): string | undefined => /^jigs\/(?!kit\/)([^/]+)\//.exec(path)?.[1];
  const wrong = files.flatMap(({ path, text, imports }) => imports.filter((name) => {
    const [own, other] = [kindOf(path), kindOf(name)];
    const onlyType = name === `jigs/${other}/solve.ts` && new RegExp(`import type \\{[^}]*\\} from '\\.\\./${other}/solve\\.js'`).test(text);
    return own !== undefined && other !== undefined && own !== other && !onlyType;
  }).map((name) => `${path} → ${name}`));
  expect(wrong).toEqual([]);
});

test('the kit that kinds are built with imports no kind', () => {
  const wrong = files.filter(({ path }) => path.startsWith('jigs/kit/'))
    .flatMap(({ path, imports }) => imports.filter((name) => /^jigs\/(?!kit\/)[^/]+\//.test(name)).map((name) => `${path} → ${name}`));
  expect(wrong).toEqual([]);
});

test('each library is used only in the part that it is for', () => {
  const wrong = files.flatMap(({ path, imports }) => imports
    .filter((name) => !isOwn(name) && !name.startsWith('node:'))
    .filter((name) => !(libraries[packageOf(name)]?.(path) ?? false)).map((name) => `${path} → ${name}`));
  expect(wrong).toEqual([]);
});

test('only the command line touches disk and process', () => {
  const wrong = files.flatMap(({ path, imports }) => imports
    .filter((name) => name.startsWith('node:') || builtinModules.includes(name))
    .filter((name) => partOf(path) !== 'cli' && !(nodeModules[partOf(path)] ?? []).includes(name)).map((name) => `${path} → ${name}`));
  expect(wrong).toEqual([]);
});

/** Types vanish when the program is built, so only what is left after that can close a circle at run time. */
const importsAtRunTime = ({ path, text }: SourceFile): readonly string[] => {
  const values = text.replace(/(^|\n)\s*(import|export)\s+type\s[^;]*;/g, '\n');
  const { imports } = files.find((file) => file.path === path)!;
  return imports.filter((name) => isOwn(name) && values.includes(`/${name.split('/').at(-1)!.replace(/\.ts$/, '.js')}'`));
};

test('no file imports itself by way of others', () => {
  const graph = new Map(files.map((file) => [file.path, importsAtRunTime(file)]));
  const done = new Set<string>();
  const circles: string[] = [];
  const visit = (path: string, way: readonly string[]): void => {
    if (way.includes(path)) circles.push([...way.slice(way.indexOf(path)), path].join(' → '));
    if (way.includes(path) || done.has(path)) return;
    for (const next of graph.get(path) ?? []) visit(next, [...way, path]);
    done.add(path);
  };
  for (const path of graph.keys()) visit(path, []);
  expect(circles).toEqual([]);
});
