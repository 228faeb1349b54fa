import { expect, test } from 'vitest';
import { sourceFiles } from './source-files.js';

const files = sourceFiles();
/** More lines than this want a word on why. */
const longest = 200;

const kebab = /^[a-z0-9]+(-[a-z0-9]+)*\.ts$/;

test('files are named in kebab-case', () => {
  expect(files.filter(({ path }) => !kebab.test(path.split('/').at(-1)!)).map(({ path }) => path)).toEqual([]);
});

test(`a file of over ${longest} lines says why in a comment that begins “Long because”`, () => {
  const wrong = files.filter(({ text }) => text.split('\n').length > longest && !/(\/\/|\*) Long because /.test(text));
  expect(wrong.map(({ path, text }) => `${path}: ${text.split('\n').length} lines`)).toEqual([]);
});

test('nothing is exported as default', () => {
  expect(files.filter(({ text }) => /^export default\b/m.test(text)).map(({ path }) => path)).toEqual([]);
});

/** Exports whose name is all there is to say (aliases and small shapes are seen in use), one line each. */
const declaration = /^export (?:abstract )?(?:async )?(?:const|function\*?|class|interface|type) (\w+)/;

test('every exported function, constant, class and interface has a doc comment', () => {
  const bare = files.flatMap(({ path, text }) => {
    const lines = text.split('\n');
    return lines.flatMap((line, index) => {
      const name = declaration.exec(line)?.[1];
      return name === undefined || (lines[index - 1] ?? '').trimEnd().endsWith('*/') ? [] : [`${path}: ${name}`];
    });
  });
  expect(bare).toEqual([]);
});

test('no type is left open and no check is switched off', () => {
  const wrong = files.filter(({ text }) => /:\s*any\b|<any>|\bas any\b|@ts-(ignore|expect-error|nocheck)|oxlint-disable|\bTODO\b|\bFIXME\b/.test(text));
  expect(wrong.map(({ path }) => path)).toEqual([]);
});
