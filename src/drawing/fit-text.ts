import { cleanText } from './clean-text.js';
import type { Font } from './font.js';

/** Text no wider than `width` mm: whole where it fits, else its beginning and `…`, so that it shows that there was more. */
export const fitText = (text: string, width: number, height: number, font: Font): string => {
  const clean = cleanText(text);
  if (font.width(clean, height) <= width) return clean;
  let room = width - font.width('…', height);
  let kept = '';
  for (const character of clean) {
    room -= font.width(character, height);
    if (room < 0) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
};
