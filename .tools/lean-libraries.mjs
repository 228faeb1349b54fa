// Parts of the libraries that a draw never needs but that every start would pay for. Measured with `npm run bench`.
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
        return { contents: replacement.contents, loader: 'js', resolveDir: join(path, '..') };
      });
    }
    build.onEnd(() => {
      const missed = replacements.filter((replacement) => !met.has(replacement));
      return missed.length === 0 ? undefined : { warnings: missed.map(({ path }) => ({ text: `no module matches ${path}: a library has changed` })) };
    });
  },
});
