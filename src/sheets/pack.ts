/** A rectangle to be placed, mm, the gap round it included. */
export interface Piece {
  readonly width: number;
  readonly height: number;
}

/** Where a piece went: top left corner on sheet number `sheet`, turned by a quarter or not. */
export interface Placed {
  readonly piece: number;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

interface Free { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
interface Spot { readonly sheet: number; readonly free: Free; readonly turned: boolean; readonly short: number }

const slack = 1e-9;

const sizeOf = (piece: Piece, turned: boolean): Piece => (turned ? { width: piece.height, height: piece.width } : piece);

/** The place in free rectangles that a piece fills best in one position: least left over on the shorter side. */
const spotIn = (frees: readonly Free[], piece: Piece, of: { sheet: number; turned: boolean }): Spot | undefined => {
  const { width, height } = sizeOf(piece, of.turned);
  return frees.reduce<Spot | undefined>((best, free) => {
    const [dx, dy] = [free.width - width, free.height - height];
    if (dx < -slack || dy < -slack) return best;
    const spot = { ...of, free, short: Math.min(dx, dy) };
    return best === undefined || isTighter(spot, best) ? spot : best;
  }, undefined);
};

const isTighter = (a: Spot, b: Spot): boolean => a.short < b.short;

/** Whether pieces are turned wherever that fits tighter, or only where they fit no other way. */
type Turning = 'tighter' | 'needed';

/** Where a piece goes: the first sheet that has room. */
const bestSpot = (piece: Piece, sheets: readonly (readonly Free[])[], turning: Turning): Spot | undefined => {
  for (const [sheet, frees] of sheets.entries()) {
    const upright = spotIn(frees, piece, { sheet, turned: false });
    if (upright !== undefined && turning === 'needed') return upright;
    const lying = spotIn(frees, piece, { sheet, turned: true });
    if (upright === undefined || lying === undefined) {
      if (upright !== undefined || lying !== undefined) return upright ?? lying;
    } else return isTighter(lying, upright) ? lying : upright;
  }
  return undefined;
};

/** What of a free rectangle stays free once `used` is taken out: up to four rectangles that may overlap. */
const without = (free: Free, used: Free): Free[] => {
  const [fx, fy, ux, uy] = [free.x + free.width, free.y + free.height, used.x + used.width, used.y + used.height];
  if (used.x >= fx - slack || ux <= free.x + slack || used.y >= fy - slack || uy <= free.y + slack) return [free];
  return [
    { ...free, width: used.x - free.x }, { ...free, x: ux, width: fx - ux },
    { ...free, height: used.y - free.y }, { ...free, y: uy, height: fy - uy },
  ].filter((f) => f.width > slack && f.height > slack);
};

const holds = (a: Free, b: Free): boolean =>
  a.x <= b.x + slack && a.y <= b.y + slack && a.x + a.width >= b.x + b.width - slack && a.y + a.height >= b.y + b.height - slack;

const take = (frees: readonly Free[], used: Free): Free[] => {
  const cut = frees.flatMap((f) => without(f, used));
  return cut.filter((f, i) => !cut.some((g, k) => k !== i && holds(g, f) && (!holds(f, g) || k < i)));
};

const packInOrder = (pieces: readonly Piece[], order: readonly number[], area: Piece, turning: Turning): Placed[] => {
  const sheets: Free[][] = [];
  return order.map((index) => {
    const piece = pieces[index]!;
    let spot = bestSpot(piece, sheets, turning);
    if (spot === undefined) {
      sheets.push([{ x: 0, y: 0, width: area.width, height: area.height }]);
      spot = bestSpot(piece, sheets, turning);
      if (spot === undefined) throw new RangeError('a piece to pack is larger than the sheet');
    }
    const size = sizeOf(piece, spot.turned);
    sheets[spot.sheet] = take(sheets[spot.sheet]!, { x: spot.free.x, y: spot.free.y, ...size });
    return { piece: index, sheet: spot.sheet, x: spot.free.x, y: spot.free.y, turned: spot.turned };
  });
};

const keys: readonly ((p: Piece) => number)[] = [(p) => p.width * p.height, (p) => Math.max(p.width, p.height), (p) => p.height];

const turnings: readonly Turning[] = ['needed', 'tighter'];

const sheetCount = (placed: readonly Placed[]): number => placed.reduce((n, p) => Math.max(n, p.sheet + 1), 0);

/** Shares of one, the same at every call (Lehmer's generator, Park and Miller 1988). */
function* shares(): Generator<number, never> {
  for (let seed = 20_011; ;) {
    seed = (seed * 48_271) % 2_147_483_647;
    yield seed / 2_147_483_647;
  }
}

/** Orders near to largest first: each piece's area taken a little larger or smaller by chance. */
function* shuffled(pieces: readonly Piece[], count: number): Iterable<readonly number[]> {
  const chance = shares();
  for (let i = 0; i < count; i++) {
    const weights = pieces.map(({ width, height }) => width * height * (0.4 + chance.next().value));
    yield pieces.map((_, k) => k).sort((a, b) => weights[b]! - weights[a]!);
  }
}

/** Orders tried by chance, fewer where each costs more. */
const triesFor = (count: number): number => Math.min(mostTries, Math.floor(60_000 / (count * count + 1)));
const mostTries = 160;

/** No packing takes fewer sheets: all of the area filled. */
const leastSheets = (pieces: readonly Piece[], area: Piece): number =>
  Math.ceil(pieces.reduce((sum, { width, height }) => sum + width * height, 0) / (area.width * area.height) - slack);

/** The first of some orders by chance that takes fewer sheets than were found, and so on down to the least that may be. */
const searched = (found: readonly Placed[], pieces: readonly Piece[], area: Piece): readonly Placed[] => {
  let best = found;
  for (const order of shuffled(pieces, triesFor(pieces.length))) {
    if (sheetCount(best) <= leastSheets(pieces, area)) return best;
    for (const turning of turnings) {
      const placed = packInOrder(pieces, order, area, turning);
      if (sheetCount(placed) < sheetCount(best)) best = placed;
    }
  }
  return best;
};

/**
 * Packs rectangles to as few sheets as found, quarter turns allowed: free space kept as maximal rectangles (Jylänki, "A
 * thousand ways to pack the bin", 2010), largest first in three senses of large, in the order given where that is no worse,
 * and in orders by chance where none of these fills the sheets; always the same of the same. Every piece must fit the area,
 * turned if need be.
 */
export const pack = (pieces: readonly Piece[], area: Piece): readonly Placed[] => {
  const given = pieces.map((_, i) => i);
  const orders = [given, ...keys.map((key) => [...given].sort((a, b) => key(pieces[b]!) - key(pieces[a]!) || a - b))];
  const plain = orders.flatMap((order) => turnings.map((turning) => packInOrder(pieces, order, area, turning)));
  return searched(plain.reduce((a, b) => (sheetCount(b) < sheetCount(a) ? b : a)), pieces, area);
};

/** Whether a piece fits an area, turned if need be. */
export const fits = (piece: Piece, area: Piece): boolean => [false, true].some((turned) => {
  const { width, height } = sizeOf(piece, turned);
  return width <= area.width + slack && height <= area.height + slack;
});
