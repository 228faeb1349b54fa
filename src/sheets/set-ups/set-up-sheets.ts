import type { Item, JigDrawing } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import type { Font } from '../../drawing/font.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import { riseAbove } from '../../drawing/rise.js';
import type { FigureTable, SetUp } from '../../drawing/set-up.js';
import { boxHeight, boxWidth, growBox, type Box } from '../../geometry/box.js';
import { point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';
import type { PageFrame } from '../page-frame.js';
import { arrangements, bandOf, type Arrangement } from './arrange.js';
import { headOf, operationTitle, sectionsOf, type Room, type SetUpRequest } from './sections.js';
import { between, sharePages, type Placed } from './share-pages.js';

/** What stands of one operation on a page. */
export interface OnPage {
  readonly jig: JigDrawing;
  readonly setUp: SetUp;
  /** It began on the sheet before. */
  readonly continued: boolean;
  readonly items: readonly Item[];
}

/** The operations on one page, from its top down. */
export type SetUpPageContent = readonly OnPage[];

/** What the pages of a set are made in. */
interface Ground {
  readonly area: Box;
  readonly room: Room;
}

const isFixed = ({ ifItFits }: FigureTable): boolean => ifItFits !== true;

/** The ways of an operation, with those of its tables that are printed. */
const waysOf = (of: SetUpRequest, printed: (table: FigureTable) => boolean, { room }: Ground): Arrangement[] => {
  const head = headOf(of, room).map(bandOf);
  return sectionsOf(of, of.setUp.tables.filter(printed), room)
    .flatMap((sections) => arrangements(sections, room))
    .map((way) => [...head, ...way]);
};

const pageCount = (placed: readonly Placed[]): number => (placed.at(-1)?.places.at(-1)?.page ?? -1) + 1;
const splitCount = (placed: readonly Placed[]): number =>
  placed.filter(({ places }) => places[0]!.page !== places.at(-1)!.page).length;

/**
 * The operations placed with as few sheets as found. Tables that are printed only where they fit are then added one by one,
 * each where it takes no further sheet and sends no further operation over the foot of one.
 */
const placeAll = (requests: readonly SetUpRequest[], ground: Ground): readonly Placed[] => {
  let ways = requests.map((of) => waysOf(of, isFixed, ground));
  let best = sharePages(ways, ground.area);
  requests.forEach((of, i) => {
    const printed = new Set(of.setUp.tables.filter(isFixed));
    for (const table of of.setUp.tables.filter((each) => !isFixed(each))) {
      const tried = ways.with(
        i,
        waysOf(of, (each) => printed.has(each) || each === table, ground),
      );
      const placed = sharePages(tried, ground.area);
      if (pageCount(placed) > pageCount(best) || splitCount(placed) > splitCount(best)) continue;
      printed.add(table);
      [ways, best] = [tried, placed];
    }
  });
  return best;
};

/** Two lines across the sheet over an operation that is not the first on it. */
const doubleRule = (area: Box, top: number): Item[] =>
  [0, 0.9].map((down) => {
    const y = top - between / 2 + down;
    return shape('mark', line(point(area.x0, y), point(area.x1, y)), 'next-operation');
  });

const onPage = (
  { jig, setUp }: SetUpRequest,
  { way, places }: Placed,
  page: number,
  { area, room }: Ground,
): OnPage => {
  const own = places.flatMap((place, i) => (place.page === page ? [{ band: way[i]!, y: place.y }] : []));
  const continued = places[0]!.page !== page;
  const title = fitText(`${operationTitle(jig, setUp)}, continued`, room.width, 3.5, room.font);
  const [first] = own as [(typeof own)[number]];
  return {
    jig,
    setUp,
    continued,
    items: [
      ...(continued
        ? [letter(point(area.x0, area.y0 + 3.5 + riseAbove(title, 3.5, room.font)), title, { height: 3.5 })]
        : []),
      ...(!continued && first.y > area.y0 ? doubleRule(area, first.y) : []),
      ...own.flatMap(({ band, y }) => moveItems(band.make(), area.x0, y)),
    ],
  };
};

/** The pages of some operations in their order: several share a sheet where that saves one, with a double rule between them. */
export const sharedSetUpPages = (
  requests: readonly SetUpRequest[],
  frame: PageFrame,
  font: Font,
): SetUpPageContent[] => {
  const area = growBox(frame.area, -1);
  const ground: Ground = { area, room: { width: boxWidth(area), height: boxHeight(area), font } };
  const placed = placeAll(requests, ground);
  return Array.from({ length: pageCount(placed) }, (_, page) =>
    placed.flatMap((each, i) =>
      each.places.some((place) => place.page === page) ? [onPage(requests[i]!, each, page, ground)] : [],
    ),
  );
};

/** The drawn parts of the pages of one operation by itself. */
export const setUpSheets = (request: SetUpRequest, frame: PageFrame, font: Font): Item[][] =>
  sharedSetUpPages([request], frame, font).map((page) => page.flatMap(({ items }) => items));
