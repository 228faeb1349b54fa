import { readFileSync } from 'node:fs';
import { loadFont } from '../drawing/load-font.js';
import type { Font } from '../drawing/font.js';

/** The font that comes with the program, read from beside the built file (the build puts it there with its licence). */
export const loadBundledFont = (): Font => loadFont(readFileSync(new URL('./font/IBMPlexSans-Regular.ttf', import.meta.url)));
