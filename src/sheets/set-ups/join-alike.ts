import { besideEachOther, pictureOf, underEachOther } from '../../drawing/arrange.js';
import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { letter, moveItems } from '../../drawing/items.js';
import type { Figure, FigureTable, SetUp } from '../../drawing/set-up.js';
import { boxWidth } from '../../geometry/box.js';
import { point } from '../../geometry/point.js';
import { joinWords, type Words } from '../../units/quantity.js';
import type { SetUpRequest } from './sections.js';

// Several set-ups of a jig may be one piece of work with other figures: slots of three widths, the two ends of a rail. Their steps and
// cautions are then printed once, with all of the figures.

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Whether two set-ups ask for just the same to be done, at the same machine and with the same cautions. */
const isAlike = (a: SetUpRequest, b: SetUpRequest): boolean =>
  a.jig === b.jig &&
  (['code', 'machine', 'steps', 'cautions'] as const).every((key) => isSame(a.setUp[key], b.setUp[key]));

/** A picture under the name of its operation. */
const named = ({ operation, picture }: SetUp, font: Font): readonly Item[] => {
  const box = itemsBounds(picture.items, font);
  return [letter(point(0, 2.5), operation), ...moveItems(picture.items, -box.x0, 5 - box.y0)];
};

/** Pictures in rows of a width; alike ones once, without a name. */
const pictures = (setUps: readonly SetUp[], width: number, font: Font): readonly Item[] => {
  const [first, ...others] = setUps as [SetUp, ...SetUp[]];
  if (others.every(({ picture }) => isSame(picture.items, first.picture.items))) return first.picture.items;
  const rows: (readonly Item[])[] = [];
  for (const view of setUps.map((setUp) => named(setUp, font))) {
    const longer = besideEachOther([rows.at(-1) ?? [], view], 8, font);
    if (rows.length > 0 && boxWidth(itemsBounds(longer, font)) <= width) rows[rows.length - 1] = longer;
    else rows.push(view);
  }
  return underEachOther(rows, 5, font);
};

const valueOf = ({ numbers }: SetUp, code: string): Words | undefined =>
  numbers.find((figure) => figure.code === code)?.value;

/** Figures that are the same throughout, and those that are not in a column for each operation. */
const figures = (
  setUps: readonly SetUp[],
): { readonly numbers: readonly Figure[]; readonly differing: FigureTable } => {
  const all = setUps
    .flatMap(({ numbers }) => numbers)
    .filter(({ code }, i, every) => every.findIndex((figure) => figure.code === code) === i);
  const isShared = ({ code, value }: Figure): boolean => setUps.every((setUp) => isSame(valueOf(setUp, code), value));
  return {
    numbers: all.filter(isShared),
    differing: {
      code: 'differing',
      heading: ['Figures one by one'],
      columns: [
        { code: 'figure', head: '' },
        ...setUps.map(({ operation }, i) => ({ code: `operation-${i + 1}`, head: operation })),
      ],
      rows: all
        .filter((figure) => !isShared(figure))
        .map(({ code, label }) => [label, ...setUps.map((setUp) => valueOf(setUp, code) ?? ['–'])]),
    },
  };
};

/** Tables that differ in their rows alone become one. */
const tables = (setUps: readonly SetUp[]): FigureTable[] =>
  setUps
    .flatMap((setUp) => setUp.tables)
    .reduce<FigureTable[]>((joined, table) => {
      const at = joined.findIndex((other) => isSame({ ...other, rows: [] }, { ...table, rows: [] }));
      if (at < 0) return [...joined, table];
      const { rows } = joined[at]!;
      const fresh = table.rows.filter((row) => !rows.some((other) => isSame(other, row)));
      return joined.with(at, { ...table, rows: [...rows, ...fresh] });
    }, []);

const joined = (requests: readonly SetUpRequest[], width: number, font: Font): SetUpRequest => {
  const [first] = requests as [SetUpRequest];
  const setUps = requests.map(({ setUp }) => setUp);
  if (setUps.length === 1) return first;
  const notes = setUps
    .map(({ pictureNote }) => pictureNote)
    .filter((note, i, all) => all.findIndex((other) => isSame(other, note)) === i);
  const { numbers, differing } = figures(setUps);
  return {
    ...first,
    findings: [...new Set(requests.flatMap(({ findings }) => findings))],
    differing,
    setUp: {
      ...first.setUp,
      operation: setUps.map(({ operation }) => operation).join('; '),
      picture: pictureOf(first.setUp.picture.name, first.setUp.picture.title, pictures(setUps, width, font)),
      pictureIs: setUps.every(({ pictureIs }) => pictureIs === 'true-size') ? 'true-size' : 'not-to-scale',
      pictureNote: joinWords(notes, ' '),
      numbers,
      tables: tables(setUps),
    },
  };
};

/** The operations in their order, those that are alike joined where the first of them stands. `width`: of a page, mm. */
export const joinAlike = (requests: readonly SetUpRequest[], width: number, font: Font): SetUpRequest[] =>
  requests
    .filter((request, i) => requests.findIndex((other) => isAlike(other, request)) === i)
    .map((request) =>
      joined(
        requests.filter((other) => isAlike(other, request)),
        width,
        font,
      ),
    );
