import { stream } from '../support/any-spec.js';

/** A spec that once broke the program, hung it or ate its memory, and what must come of it. */
export interface Find {
  readonly name: string;
  readonly spec: () => string;
  /** 0 drawn, 1 with a stop, 2 refused. */
  readonly code: 0 | 1 | 2;
}

const board = 'board: { length: 400, width: 200, thickness: 20 }';
const rack = (fields: string): string => `title: Find\nunits: mm\njigs:\n  - { kind: rack-top, ${board}, ${fields} }\n`;
const recess = (path: string, size = 120): string => `{ path: "${path}", size: ${size}, at: [200, 100], depth: 5 }`;

const wave = (pieces: number, phase: number): string => {
  const point = (turn: number, far: number): string => {
    const angle = (2 * Math.PI * (turn + phase)) / pieces;
    return `${(50 + far * Math.cos(angle)).toFixed(2)} ${(50 + far * Math.sin(angle)).toFixed(2)}`;
  };
  return `M${point(0, 40)}${Array.from({ length: pieces }, (_, i) => `C${point(i + 0.3, 42)} ${point(i + 0.7, 42)} ${point(i + 1, 40)}`).join('')}Z`;
};

/** A path of cubics that leap about the plane: it crosses itself everywhere. */
const leaps = (pieces: number): string => {
  const next = stream(7);
  const at = (): string => (next() * 99).toFixed(0);
  return `M0 0${Array.from({ length: pieces }, () => `C${Array.from({ length: 6 }, at).join(' ')}`).join('')}Z`;
};

const rows = (count: number, row: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => row(i)).join(', ');

export const finds: readonly Find[] = [
  {
    name: 'path with handles of 1e11',
    code: 2,
    spec: () => rack(`recesses: [${recess('M0 0H80V40C80 1e11 0 1e11 0 40Z')}]`),
  },
  {
    name: 'path with handles of 1e8',
    code: 2,
    spec: () => rack(`recesses: [${recess('M0 0H80V40C80 1e8 0 1e8 0 40Z')}]`),
  },
  {
    name: 'arc with an axis of 1e-6',
    code: 2,
    spec: () => rack(`recesses: [${recess('M0 0H80V40A1e-6 10 0 0 1 0 40Z')}]`),
  },
  {
    name: 'arc with axes of 1e9',
    code: 2,
    spec: () => rack(`recesses: [${recess('M0 0H80V40A1e9 1e9 0 0 1 0 40Z')}]`),
  },
  {
    name: 'path with a handle of 1e308',
    code: 2,
    spec: () => rack(`recesses: [${recess('M .5 0 S 20 30 1e308 0 T 80 0 V 60 H 0 Z')}]`),
  },
  { name: '10 000 empty jigs', code: 2, spec: () => `title: Find\njigs:\n${'  - {}\n'.repeat(10_000)}` },
  {
    name: 'mapping of 500 000 keys alike',
    code: 2,
    spec: () => `title: Find\nrounds: {${'a,'.repeat(500_000)}}\njigs: []\n`,
  },
  { name: 'outline of 900 leaping cubics', code: 2, spec: () => rack(`recesses: [${recess(leaps(900))}]`) },
  {
    name: 'eight outlines of 300 cubics',
    code: 0,
    spec: () =>
      `title: Find\nunits: mm\njigs:\n${Array.from({ length: 8 }, (_, i) => `  - { kind: rack-top, name: top ${i}, ${board}, recesses: [${recess(wave(300, i / 8))}] }\n`).join('')}`,
  },
  {
    name: '1 MiB of outlines',
    code: 2,
    spec: () =>
      `title: Find\nunits: mm\njigs:\n${Array.from({ length: 45 }, (_, i) => `  - { kind: rack-top, name: top ${i}, ${board}, recesses: [${recess(wave(600, i / 45))}] }\n`).join('')}`,
  },
  {
    name: '200 holes and 100 recesses',
    code: 1,
    spec: () =>
      rack(
        `holes: [${rows(200, (i) => `{ round: 20, at: [${2 * i}, 100] }`)}], recesses: [${rows(100, (i) => `{ circle: 30, at: [${4 * i}, 60], depth: 5 }`)}]`,
      ),
  },
  {
    name: '1000 rows of 1000 slots',
    code: 2,
    spec: () =>
      `title: Find\nunits: mm\njigs:\n  - kind: rack-top\n    ${board}\n    slots:\n${'      - { count: 1000, item: 24, pitch: 30 }\n'.repeat(1000)}`,
  },
  {
    name: '90 boards of 4 m with 100 outlines each',
    code: 2,
    spec: () =>
      `title: Find\nunits: mm\njigs:\n${Array.from({ length: 90 }, (_, i) => `  - { kind: rack-top, name: top ${i}, cutter: { diameter: 6 }, board: { length: 4000, width: 400, thickness: 20 }, recesses: [${rows(100, (k) => `{ path: "M0 0C30 -20 60 -20 90 0L70 50Q45 60 20 50Z", size: 30, at: [${40 + 35 * k}, 200], depth: 5 }`)}] }\n`).join('')}`,
  },
  {
    name: '200 boards with 100 round recesses each',
    code: 2,
    spec: () =>
      `title: Find\nunits: mm\njigs:\n${Array.from({ length: 200 }, (_, i) => `  - { kind: rack-top, name: t${i}, board: { length: 900, width: 200, thickness: 20 }, recesses: [${rows(100, (k) => `{ circle: 20, at: [${20 + 8 * k}, 90], depth: 5 }`)}] }\n`).join('')}`,
  },
  { name: 'a kind that is a mapping', code: 2, spec: () => 'title: Find\njigs: [{ kind: { a: 1 } }]\n' },
  { name: 'a set', code: 2, spec: () => 'title: Find\njigs: !!set { a, b }\n' },
  {
    name: 'corners that use up a side, beside a recess',
    code: 0,
    spec: () =>
      rack(
        'recesses: [{ box: { width: 60, height: 20, radius: 15 }, at: [200, 100], depth: 5 }, { circle: 16, at: [241, 100], depth: 5 }]',
      ),
  },
];
