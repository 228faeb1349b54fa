import { cleanText } from './clean-text.js';
import type { Font } from './font.js';

/** Breaks one word that is wider than the line: as many characters a line as fit, at least one. */
const breakWord = (word: string, width: number, measure: (text: string) => number): string[] => {
  const lines = [''];
  let used = 0;
  for (const character of word) {
    const advance = measure(character);
    if (used + advance > width && used > 0) {
      lines.push('');
      used = 0;
    }
    lines[lines.length - 1] += character;
    used += advance;
  }
  return lines;
};

/** Splits text into lines no wider than `width` mm at capitals `height` mm high. No word is lost: one too long is broken. */
export const wrapText = (text: string, width: number, height: number, font: Font): string[] => {
  const measure = (part: string): number => font.width(part, height);
  const space = measure(' ');
  const lines: string[] = [];
  let used = Infinity;
  for (const word of cleanText(text).split(/ +/).filter((w) => w !== '')) {
    const length = measure(word);
    if (used + space + length <= width) {
      lines[lines.length - 1] += ` ${word}`;
      used += space + length;
      continue;
    }
    const parts = length <= width ? [word] : breakWord(word, width, measure);
    lines.push(...parts);
    used = measure(parts.at(-1)!);
  }
  return lines;
};
