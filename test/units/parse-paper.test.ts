import { describe, expect, it } from 'vitest';
import { papers } from '../../src/units/paper.js';
import { parsePaper } from '../../src/units/parse-paper.js';

describe('papers', () => {
  // ISO 216:2007; ANSI/ASME Y14.1 for letter (A) and tabloid (B); legal 8.5 × 14 in from memory.
  it.each([
    ['letter', 215.9, 279.4], ['legal', 215.9, 355.6], ['tabloid', 279.4, 431.8], ['a4', 210, 297], ['a3', 297, 420], ['a2', 420, 594],
  ])('%s is %f × %f mm', (name, width, height) => {
    expect(papers[name]).toEqual({ name, width, height });
    expect(parsePaper(name.toUpperCase(), 'mm')).toEqual({ name, width, height });
  });

  it('of one’s own are read from two lengths, either way round', () => {
    expect(parsePaper('430x280', 'mm')).toEqual({ name: '280x430', width: 280, height: 430 });
    expect(parsePaper('11 × 17', 'inch')).toEqual({ name: '279.4x431.8', width: 279.4, height: 431.8 });
  });

  it('take the unit behind the second side for both', () => {
    for (const units of ['mm', 'inch'] as const) {
      expect(parsePaper('110x170mm', units)).toEqual({ name: '110x170', width: 110, height: 170 });
      for (const text of ['8-1/2x11in', '8 1/2 x 11 in', '8.5x11"', '21.59 x 27.94 cm', '8-1/2in x 279.4mm']) expect([text, parsePaper(text, units)]).toEqual([text, { name: '215.9x279.4', width: 215.9, height: 279.4 }]);
    }
  });

  it.each(['a5', '280', '280x', '0x430', '280x430x2', '280x9000', '__proto__', 'constructor'])('%s is none', (text) => {
    expect(parsePaper(text, 'mm')).toBeUndefined();
  });
});
