// Builds dist/: the command (one file, a code cache and a small starter), the library and its types, the font and licences.
import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { leanLibraries } from './lean-libraries.mjs';
import { thirdPartyLicences } from './third-party-licences.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const at = (...parts) => join(root, ...parts);
const { version } = JSON.parse(readFileSync(at('package.json'), 'utf8'));
const fontFolder = at('node_modules/@expo-google-fonts/ibm-plex-sans');

const common = { bundle: true, platform: 'node', target: 'node20.19', absWorkingDir: root, logLevel: 'warning', legalComments: 'none' };

/** esbuild leaves the text of tagged templates as it is: the command is read as ASCII, so every other sign is escaped. */
const escapeUnicode = (file) => {
  const escape = (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  writeFileSync(file, readFileSync(file, 'utf8').replace(/[^\0-\x7f]/g, escape));
};

/** The command: everything in one CommonJS file, so that the code cache covers all of it. */
const buildCommand = async () => {
  const result = await build({
    ...common, entryPoints: ['src/cli/main.ts'], outfile: 'dist/cli.cjs', format: 'cjs', minify: true, charset: 'ascii', metafile: true,
    // pdfkit ships an ESM and a CommonJS form; the `main` forms need no interop wrappers in a CommonJS bundle.
    mainFields: ['main', 'module'], plugins: [leanLibraries()],
    define: { 'import.meta.url': 'bundleUrl', versionAtBuild: JSON.stringify(version) },
    banner: { js: 'const bundleUrl=require("node:url").pathToFileURL(__filename).href;' },
  });
  escapeUnicode(at('dist/cli.cjs'));
  await build({ ...common, entryPoints: ['src/cli/start.ts'], outfile: 'dist/roundwright.cjs', format: 'cjs', minify: true, banner: { js: '#!/usr/bin/env node' } });
  chmodSync(at('dist/roundwright.cjs'), 0o755);
  return Object.keys(result.metafile.inputs);
};

/** The library keeps its imports: whoever uses it has the dependencies installed beside it. */
const buildLibrary = () => build({ ...common, entryPoints: ['src/index.ts'], outfile: 'dist/index.js', format: 'esm', packages: 'external' });

const run = (args, options = {}) => {
  const { status, error } = spawnSync(process.execPath, args, { stdio: ['ignore', 'inherit', 'inherit'], ...options });
  if (error) throw error;
  if (status !== 0) process.exit(status ?? 1);
};

/** V8's compiled form of what a draw runs through. Made by plain `node`: other flags would make another cache. */
const buildCodeCache = () => {
  const work = mkdtempSync(join(tmpdir(), 'roundwright-build-'));
  const { NODE_OPTIONS: _, ...env } = process.env;
  run([at('.tools/warm.cjs'), at('dist'), work], { env });
  rmSync(work, { recursive: true });
};

rmSync(at('dist'), { recursive: true, force: true });
mkdirSync(at('dist/font'), { recursive: true });
cpSync(join(fontFolder, '400Regular/IBMPlexSans_400Regular.ttf'), at('dist/font/IBMPlexSans-Regular.ttf'));
cpSync(join(fontFolder, 'LICENSE_FONT'), at('dist/font/LICENSE.txt'));
const [inputs] = await Promise.all([buildCommand(), buildLibrary()]);
writeFileSync(at('dist/THIRD-PARTY-LICENCES.txt'), thirdPartyLicences(root, inputs));
if (!process.argv.includes('--no-types')) run([at('node_modules/typescript/bin/tsc'), '-p', at('.tools/tsconfig.types.json')]);
buildCodeCache();
if (!existsSync(at('dist/cli.cache')) || readFileSync(at('dist/cli.cache')).length === 0) throw new Error('no code cache was made');
