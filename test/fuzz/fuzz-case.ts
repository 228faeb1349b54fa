import { bytes, near, pathData, wild } from './mutate.js';
import { soundOptions, wildOptions } from './options.js';
import { piece, textOf, type Entry } from './piece.js';
import { randomFrom, type Random } from './random.js';

export const families = ['legal', 'near', 'wild', 'bytes', 'path'] as const;
export type Family = (typeof families)[number];

/** One try: a spec's bytes, and the words behind `roundwright draw piece.yaml --out out`. */
export interface FuzzCase {
  readonly number: number;
  readonly family: Family;
  readonly spec: Uint8Array;
  readonly words: readonly string[];
  /** Whether the PDFs are read and the drawing is made a second time: the dear checks, for a share of the cases. */
  readonly readPdf: boolean;
  readonly twice: boolean;
  /** Margins all round in which no ink may stand, mm; undefined where spec or options say otherwise than in the plain way. */
  readonly margin: number | undefined;
}

/** Shares of the cases that the dear checks are run on. */
export const shares = { readPdf: 1 / 8, twice: 1 / 8, sheets: 1 / 4 } as const;

const withPath = (spec: Entry, random: Random): Entry => {
  const at = ['150 mm', '80 mm'];
  const recess = {
    path: pathData(random),
    at,
    depth: '5 mm',
    ...(random.chance(0.95) ? { size: random.pick(['30 mm', '60 mm', '60 mm', '120 mm', '1e9 mm']) } : {}),
    ...(random.chance(0.3) ? { turn: random.pick(['0', '45°', '90°', '-30°', '1e9']) } : {}),
  };
  const board = { length: '300 mm', width: '160 mm', thickness: '20 mm' };
  return {
    ...spec,
    jigs: [
      {
        kind: 'rack-top',
        name: 'top',
        board,
        recesses: Array.from({ length: random.chance(0.8) ? 1 : 2 }, () => recess),
        ...(random.chance(0.5) ? { cutter: { diameter: '8 mm' } } : {}),
      },
    ],
  };
};

const specOf = (family: Family, random: Random): Uint8Array => {
  const spec = piece(random);
  if (family === 'bytes') return bytes(textOf(spec, random), random);
  const changed = {
    legal: () => spec,
    near: () => near(spec, random),
    wild: () => wild(spec, random),
    path: () => withPath(spec, random),
  }[family]();
  return Buffer.from(textOf(changed, random), 'utf8');
};

/** The margins that hold, where they are told by one option in millimetres, or by nothing. */
const marginOf = (spec: string, words: readonly string[]): number | undefined => {
  const at = words.indexOf('--margins');
  if (at >= 0) return /^\d+ ?mm$/.test(words[at + 1] ?? '') ? Number.parseInt(words[at + 1]!, 10) : undefined;
  return spec.includes('sheets') || spec.includes('margins') ? undefined : 10;
};

/** Case `number` of a run; the same for the same seed and number, by itself or among others. */
export function fuzzCase(seed: number, number: number): FuzzCase {
  const random = randomFrom(seed, number);
  const family = families[number % families.length]!;
  const spec = specOf(family, random);
  const options = (family === 'legal' || family === 'near' || random.chance(0.5) ? soundOptions : wildOptions)(random);
  const [readPdf, twice] = [random.chance(shares.readPdf), random.chance(shares.twice)];
  // Single sheets as SVG, for the reader of their ink, are many and large.
  const words = random.chance(shares.sheets) ? ['--format', 'svg,pdf', ...options] : options;
  return { number, family, spec, words, margin: marginOf(Buffer.from(spec).toString('latin1'), words), readPdf, twice };
}
