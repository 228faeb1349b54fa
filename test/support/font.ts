import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { loadFont } from '../../src/drawing/load-font.js';

const file = createRequire(import.meta.url).resolve('@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf');

/** The font of the drawings, read once for all tests. */
export const testFont = loadFont(readFileSync(file));
