import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileName } from '../../src/spec/file-name.js';

describe('fileName makes a safe name', () => {
  it.each([
    ['brace saddle', 'brace-saddle'], ['Brace  Saddle!', 'brace-saddle'], ['../../etc/passwd', 'etc-passwd'], ['/etc/passwd', 'etc-passwd'],
    ['C:\\Windows\\system32', 'c-windows-system32'], ['..', undefined], ['...', undefined], ['', undefined], ['///', undefined], ['🪵', undefined],
    ['.hidden', 'hidden'], ['trailing...', 'trailing'], ['a..b', 'a-b'], ['v1.2', 'v1.2'], ['a--2', 'a-2'], ['a - - 2', 'a-2'], ['-rf', 'rf'], ['Ø 32', 'ø-32'], ['стойка', 'стойка'],
    ['con', '_con'], ['CON', '_con'], ['nul.txt', '_nul.txt'], ['LPT1', '_lpt1'], ['com9', '_com9'], ['console', 'console'],
    ['report', '_report'], ['Report', '_report'], ['sheets-letter', '_sheets-letter'], ['sheets', 'sheets'], ['a\u0000b', 'a-b'], ['a\u202eb', 'a-b'],
    ['x'.repeat(120), 'x'.repeat(120)], ['x'.repeat(121), undefined], ['x'.repeat(300), undefined], ['漢'.repeat(41), undefined], ['e\u0301', 'é'],
  ])('%j is %j', (text, name) => {
    expect(fileName(text)).toBe(name);
  });

  it('that never climbs, hides, ends in a dot or grows past 121 bytes, whatever the text', () => {
    const pieces = fc.constantFrom('.', '..', '/', '\\', ':', 'con', 'a', ' ', '-', '\0', 'é', 'report', 'sheets-');
    const texts = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.array(pieces, { maxLength: 10 }).map((parts) => parts.join('')));
    fc.assert(
      fc.property(texts, (text) => {
        const name = fileName(text);
        if (name === undefined) return;
        expect(name).not.toMatch(/[/\\:*?"<>|\s\u0000-\u001f]|\.\.|^[.-]|[.-]$|^(con|nul|report|sheets-.*)$/);
        expect(Buffer.byteLength(name)).toBeLessThanOrEqual(121);
        if (Buffer.byteLength(name) <= 120) expect(fileName(name)).toBe(name);
      }),
      { numRuns: 2000 },
    );
  });
});
