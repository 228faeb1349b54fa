import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { FigureTable, SetUp } from '../../drawing/set-up.js';
import { table } from '../../drawing/table.js';
import type { Finding } from '../../errors/finding.js';
import { point } from '../../geometry/point.js';
import { sayWords } from '../../units/quantity.js';
import type { Units } from '../../units/units.js';
import { heading, paragraphs, tableBlocks } from '../blocks.js';
import { stackHeight, type FlowBlock } from '../flow.js';
import { cautionsBlock } from './cautions.js';
import { columnGap } from './column-gap.js';
import { furtherTable } from './further-table.js';
import { pictureOf } from './picture.js';

/** An operation with what the check found of it. */
export interface SetUpRequest {
  readonly jig: JigDrawing;
  readonly setUp: SetUp;
  readonly findings: readonly Finding[];
  readonly units: Units;
  /** Figures in which operations that are joined differ. */
  readonly differing?: FigureTable;
  /** The operation before it in the set that shows just the same picture. */
  readonly pictureWith?: string;
}

/** A part of an operation's page, which stands across the page or in a column of it. */
export interface Section {
  readonly code: 'picture' | 'numbers' | 'findings' | 'cautions' | 'steps' | 'table';
  /** Its blocks at a width; undefined where it does not bear being so narrow. mm. */
  readonly at: (width: number) => readonly FlowBlock[] | undefined;
  /** The width that it takes where it is alone, where that is less than it is given: a picture's. */
  readonly natural?: number;
}

/** The room of a page, mm, and what its lettering is set with. */
export interface Room {
  readonly width: number;
  readonly height: number;
  readonly font: Font;
}

type Table = ReturnType<typeof table>;

/** Figures beside something else have at least this width, mm; they are at most so many, and no taller than a share of the page. */
const leastFigures = 75;
const mostFigures = 24;
const tallestFigures = 0.6;

const pictureSection = ({ setUp, units, pictureWith }: SetUpRequest, { width, height, font }: Room): Section[] => {
  if (pictureWith !== undefined)
    return [{ code: 'picture', at: (w) => paragraphs([`Picture: as for ${pictureWith}.`], w, font) }];
  const picture = pictureOf(setUp, { width, height }, font);
  const small = picture.scale !== 1 || setUp.pictureIs === 'not-to-scale';
  const note = [`${small ? 'Not to scale. ' : ''}${sayWords(setUp.pictureNote, units)}`.trim()].filter(
    (text) => text !== '',
  );
  if (picture.items.length === 0)
    return note.length === 0 ? [] : [{ code: 'picture', at: (w) => paragraphs(note, w, font) }];
  return [
    {
      code: 'picture',
      natural: picture.width,
      at: (w) =>
        w < width && picture.width > w + 1e-6
          ? undefined
          : [
              { items: picture.items, height: picture.height, before: 2, withNext: note.length > 0 },
              ...paragraphs(note, w, font),
            ],
    },
  ];
};

const numbersSection = ({ setUp: { numbers }, units }: SetUpRequest, { width, height, font }: Room): Section[] => {
  if (numbers.length === 0) return [];
  const rows = numbers.map(({ label, value }) => [sayWords(label, units), sayWords(value, units)] as const);
  return [
    {
      code: 'numbers',
      at: (w) => {
        if (w >= width) return lower(tableBlocks({ rows }, w, font), besideItself(rows, w, font));
        if (w < leastFigures || rows.length > mostFigures) return undefined;
        const set = table({ at: point(0, 0), rows, width: w }, font);
        return set.height > tallestFigures * height ? undefined : [{ ...set, before: 2 }];
      },
    },
  ];
};

/** The lower of two ways to set the same. */
const lower = (a: readonly FlowBlock[], b: readonly FlowBlock[]): readonly FlowBlock[] =>
  stackHeight(b) < stackHeight(a) ? b : a;

/** A table in two halves side by side. */
const besideItself = (rows: readonly (readonly string[])[], width: number, font: Font): FlowBlock[] => {
  const half = Math.ceil(rows.length / 2);
  const each = (width - columnGap) / 2;
  const set = (part: readonly (readonly string[])[], x: number): Table =>
    table({ at: point(x, 0), rows: part, width: each }, font);
  const [left, right] = [set(rows.slice(0, half), 0), set(rows.slice(half), each + columnGap)];
  return [{ items: [...left.items, ...right.items], height: Math.max(left.height, right.height), before: 2 }];
};

/** A section of statements that have no order. */
const listed = (code: 'findings', title: string, texts: readonly string[], font: Font): Section[] =>
  texts.length === 0
    ? []
    : [{ code, at: (w) => [heading(title, w, font), ...paragraphs(texts, w, font, { mark: () => '–' })] }];

const stepsSection = ({ setUp, units }: SetUpRequest, { font }: Room): Section[] => {
  const steps = setUp.steps.map(({ words }) => sayWords(words, units));
  const set = (w: number): readonly FlowBlock[] => paragraphs(steps, w, font, { mark: (i) => `${i + 1}` });
  return steps.length === 0 ? [] : [{ code: 'steps', at: (w) => [heading('Steps', w, font), ...set(w)] }];
};

/** A table only where it keeps its own width: its columns are not wrapped to stand beside something. */
const tableSection = (of: FigureTable, { units }: SetUpRequest, { width, font }: Room): Section => {
  const rows = of.rows.map((cells) => cells.map((cell) => sayWords(cell, units)));
  const natural = table(
    { at: point(0, 0), columns: of.columns.map(({ head }) => head), rows, width: 10 * width },
    font,
  ).width;
  return { code: 'table', at: (w) => (w < width && natural > w ? undefined : furtherTable(of, w, { units, font })) };
};

/** What the check found of an operation, as its page prints it: what is so, and what would do. */
const warningWords = ({ message, remedy }: Finding): string => (remedy === '' ? message : `${message} ${remedy}`);

/**
 * The parts of an operation's page in the orders in which they may be read: the numbers right after the picture, or after
 * what is said in warning; the cautions always before what is done. `tables`: those that are printed.
 */
export const sectionsOf = (
  of: SetUpRequest,
  tables: readonly FigureTable[],
  room: Room,
): readonly (readonly Section[])[] => {
  const { cautions } = of.setUp;
  const differing =
    of.differing === undefined || of.differing.rows.length === 0 ? [] : [tableSection(of.differing, of, room)];
  const [picture, numbers] = [pictureSection(of, room), [...numbersSection(of, room), ...differing]];
  const warnings: Section[] = [
    ...listed('findings', 'Before you cut', of.findings.map(warningWords), room.font),
    ...(cautions.length === 0
      ? []
      : [{ code: 'cautions', at: (width: number) => [cautionsBlock(cautions, width, room.font)] } as const]),
  ];
  const rest = [
    ...stepsSection(of, room),
    ...tables.filter(({ rows }) => rows.length > 0).map((each) => tableSection(each, of, room)),
  ];
  return [
    [...picture, ...numbers, ...warnings, ...rest],
    [...picture, ...warnings, ...numbers, ...rest],
  ];
};

/** What stands over an operation: what is done, at which machine, and the diameters that its figures were worked out from. */
export const headOf = ({ jig, setUp }: SetUpRequest, { width, font }: Room): FlowBlock[] => {
  const assumed = jig.assumed.length === 0 ? '' : `Assumed, as measured: ${jig.assumed.join('; ')}`;
  return [
    { ...heading(operationTitle(jig, setUp), width, font, 5), before: 0 },
    ...paragraphs(
      [[setUp.machine, assumed].filter((text) => text !== '').join('. ')].filter((text) => text !== ''),
      width,
      font,
    ),
  ].map((block) => ({ ...block, withNext: true }));
};

/** What an operation is called. */
export const operationTitle = (jig: JigDrawing, { operation }: SetUp): string => `${jig.title}: ${operation}`;
