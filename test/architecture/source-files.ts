import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** One file of src/, its path from there with forward slashes. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
  /** What it imports, types too: a path from src/ for our own files, a bare name for others. */
  readonly imports: readonly string[];
}

/** Static, dynamic and re-exporting imports, types too. The style has one line an import, or a brace list over several. */
const importPattern = /(?:^|\n)\s*(?:import|export)\s[^;'"]*?from\s*'([^']+)'|(?:^|\n)\s*import\s*'([^']+)'|import\(\s*'([^']+)'\s*\)/g;

const importsOf = (path: string, text: string): readonly string[] =>
  [...text.matchAll(importPattern)].map((found) => (found[1] ?? found[2] ?? found[3])!).map((name) =>
    (name.startsWith('.') ? posix.join(posix.dirname(path), name).replace(/\.js$/, '.ts') : name));

/** Every TypeScript file of src/ but declarations of other people's modules. */
export const sourceFiles = (): readonly SourceFile[] =>
  readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.ts') && !path.endsWith('.d.ts'))
    .sort()
    .map((path) => {
      const text = readFileSync(join(root, 'src', path), 'utf8');
      return { path, text, imports: importsOf(path, text) };
    });

/** The part of src/ that a file belongs to: its top folder, or its own name where it stands at the top. */
export const partOf = (path: string): string => (path.includes('/') ? path.slice(0, path.indexOf('/')) : path.replace(/\.ts$/, ''));
