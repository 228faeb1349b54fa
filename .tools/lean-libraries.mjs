// Parts of the libraries that a draw never needs but that every start would pay for. Measured with `npm run bench`.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const replacements = [
  {
    // pdfkit's font engine. The PDF writer embeds the one font itself and gives pdfkit none to read.
    path: /[\\/]fontkit[\\/]dist[\\/]module\.mjs$/,
    contents: 'export const create = () => { throw new Error("pdfkit\'s own fonts are left out of this build"); };',
  },
  {
    // pdfkit's line breaking: lines are broken, and lettering set, before the writer sees them.
    path: /[\\/]linebreak[\\/]dist[\\/]module\.mjs$/,
    contents: 'export default class { constructor() { throw new Error("pdfkit\'s line breaking is left out of this build"); } }',
  },
  {
    // pdfkit's encryption: a template is for handing round.
    path: /[\\/]@noble[\\/]ciphers[\\/](?:esm[\\/])?aes\.js$/,
    contents: 'const none = () => { throw new Error("encryption is left out of this build"); }; export { none as cbc, none as ecb };',
  },
  {
    // How wide emoji and East Asian signs stand in a help text: tables that take a tenth of a small draw's time to make. Ours has neither.
    path: /[\\/]string-width[\\/]index\.js$/,
    contents: 'export default (text) => [...text].length;',
  },
  {
    // yargs' checks of its caller: node:assert brings in a dozen modules of Node's for two comparisons.
    path: /[\\/]yargs[\\/]lib[\\/]platform-shims[\\/]esm\.mjs$/,
    change: (text) => text.replace("import { notStrictEqual, strictEqual } from 'assert'",
      'const strictEqual = (a, b, m) => { if (!Object.is(a, b)) throw new Error(m); }; const notStrictEqual = (a, b, m) => { if (Object.is(a, b)) throw new Error(m); };'),
  },
  {
    // zod's messages in some fifty languages; ours are our own, on top of English.
    path: /[\\/]zod[\\/]v4[\\/]locales[\\/]index\.js$/,
    contents: 'export { default as en } from "./en.js";',
  },
];

/** esbuild plugin: replaces those modules, and fails the build when one of them is no longer where it was. */
export const leanLibraries = () => ({
  name: 'lean-libraries',
  setup: (build) => {
    const met = new Set();
    for (const replacement of replacements) {
      build.onLoad({ filter: replacement.path }, ({ path }) => {
        met.add(replacement);
        const contents = replacement.contents ?? replacement.change(readFileSync(path, 'utf8'));
        return { contents, loader: 'js', resolveDir: join(path, '..') };
      });
    }
    build.onEnd(() => {
      const missed = replacements.filter((replacement) => !met.has(replacement));
      return missed.length === 0 ? undefined : { warnings: missed.map(({ path }) => ({ text: `no module matches ${path}: a library has changed` })) };
    });
  },
});
