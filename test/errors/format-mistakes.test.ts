import { describe, expect, it } from 'vitest';
import { formatMistakes } from '../../src/errors/format-mistakes.js';
import { quote, visible } from '../../src/errors/quote.js';
import { UserError, type Mistake } from '../../src/errors/user-error.js';

const mistake: Mistake = {
  code: 'too-large', path: 'jigs[0].angle', line: 7, column: 12, source: '    angle: 240', message: 'is too large: at most 90°', got: '240', allowed: '0° to 90°', nearest: '90°',
};

describe('formatMistakes', () => {
  it('shows place, line, caret, got, would do and nearest', () => {
    expect(formatMistakes(new UserError('rack.yaml', [mistake]))).toBe(`rack.yaml:7:12: jigs[0].angle is too large: at most 90°
    7 |     angle: 240
      |            ^
    got:      240
    would do: 0° to 90°
    nearest:  90°
`);
  });

  it('parts several by a blank line and counts them', () => {
    const lines = formatMistakes(new UserError('rack.yaml', [mistake, mistake])).split('\n\n');
    expect(lines).toHaveLength(3);
    expect(lines[2]).toBe('2 mistakes in rack.yaml\n');
  });

  it('shows forty of many and counts the rest', () => {
    const text = formatMistakes(new UserError('rack.yaml', Array<Mistake>(100).fill(mistake)));
    expect(text.endsWith('100 mistakes in rack.yaml; 60 of them not shown\n')).toBe(true);
    expect(text.match(/\^/g)).toHaveLength(40);
  });

  it('names standard input, another file of its own, or none', () => {
    expect(formatMistakes(new UserError('-', [mistake]))).toMatch(/^standard input:7:12: /);
    expect(formatMistakes(new UserError('rack.yaml', [{ ...mistake, file: 'shop.yaml' }]))).toMatch(/^shop\.yaml:7:12: /);
    expect(formatMistakes(new UserError(undefined, [{ code: 'wrong-use', path: '', message: 'no spec is named' }]))).toBe('no spec is named\n');
  });

  it('keeps the caret under the column in a long line, after tabs and after spelt-out signs', () => {
    const under = (source: string, column: number): string => {
      const [, line = '', caret = ''] = formatMistakes(new UserError('x', [{ ...mistake, source, column }])).split('\n');
      return [...line][[...caret].indexOf('^')] ?? '';
    };
    expect(under(`${'a'.repeat(500)}X${'b'.repeat(500)}`, 501)).toBe('X');
    expect(under('\t\tX', 3)).toBe('X');
    expect(under('ab\u202eX', 4)).toBe('X');
    expect(under('X', 1)).toBe('X');
  });

  it('never lets a control sign or a bidi mark through', () => {
    const text = formatMistakes(new UserError('a\u001b[31m.yaml', [{ ...mistake, source: '\u0007\u202e', message: 'is \u001b[2J', got: '\u0000' }]));
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });
});

describe('UserError', () => {
  it('says each mistake as a sentence in its message', () => {
    const error = new UserError('rack.yaml', [mistake, { code: 'x', path: 'rounds.post', message: '“x” is not a unit of length' }]);
    expect(error.message).toBe('jigs[0].angle is too large: at most 90°\nrounds.post: “x” is not a unit of length');
  });
});

describe('quote', () => {
  it('cuts after sixty letters and counts letters, not halves of pairs', () => {
    expect(quote('🪵'.repeat(70))).toBe(`“${'🪵'.repeat(60)}…”`);
    expect(quote('post')).toBe('“post”');
  });
  it('spells out what does not show', () => expect(visible('a\u200bb\ud800c')).toBe('a‹U+200B›b‹U+D800›c'));
});
