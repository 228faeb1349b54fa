import { endInset, landLimits, type Board } from './board.js';
import { axesApart, eachPairInReach } from './neighbours.js';
import type { RackTop } from './rack-top.js';
import type { Cure } from '../../errors/finding.js';
import { radiusToSpare } from '../../shop/router.js';
import { cureLength } from '../kit/report.js';
import { below, reportsAbout, type Part, type TopFinding, type Say } from './report.js';
import { cutterCure, cutterInto } from './router-cures.js';
import { mouthLength, type Slot } from './slot.js';
import { saidOnce } from './slot-reports.js';

/** A finger of wood more than this many times longer than it is wide snaps along its short grain; common practice. */
const fingerRatio = 2;

const partsOf = (...slots: readonly Slot[]): Part[] => slots.map((s) => `slot-${s.number}` as const);

/** Wood between a slot and the nearer end, along the board, at its narrowest from the edge to the seat. Exact. */
export const woodToEnd = (board: Board, slot: Slot): number => {
  const near = Math.min(slot.at, board.length - slot.at) - slot.radius;
  const seat = slot.edge === 'front' ? board.width - slot.depth : slot.depth;
  return near - Math.max(endInset(board, 0), endInset(board, seat));
};

/** A field of the slots, where all of them come from one row. */
const rowCure = (oneRow: boolean, field: string, mm: number): readonly Cure[] => (oneRow ? [cureLength(`slots.${field}`, mm)] : []);

const checkLand = ({ board, land, oneRow }: RackTop, say: Say): TopFinding[] => {
  const { sound, least } = landLimits(board);
  if (land === undefined) return [];
  const [a, b] = land.between;
  const pitch = Math.abs(b.at - a.at) + sound - land.width;
  return reportsAbout(partsOf(a, b), below({ measured: land.width, sound, least }, (limit) => ({
    code: 'land-narrow',
    message: `The land between slots ${a.number} and ${b.number} is ${say(land.width)} wide, less than ${say(limit)}${limit === least ? ': it breaks at the first knock' : ''}.`,
    remedy: `A pitch of ${say.least(pitch)}, a smaller item or a thinner lining.`, would: rowCure(oneRow, 'pitch', say.up(pitch)),
  })));
};

const checkEnds = ({ board, slots }: RackTop, say: Say): TopFinding[] => {
  const { sound, least } = landLimits(board);
  return slots.flatMap((slot) => {
    const wood = woodToEnd(board, slot);
    return reportsAbout(partsOf(slot), below({ measured: wood, sound, least }, (limit) => ({
      code: 'end-land-narrow',
      message: `The wood between slot ${slot.number} and the end of the board is ${say(wood)}, less than ${say(limit)}.`,
      remedy: `Move the slot ${say.least(sound - wood)} inwards or make the board longer.`,
    })));
  });
};

interface Finger {
  readonly width: number;
  readonly length: number;
  readonly where: string;
  readonly slots: readonly Slot[];
}

/** The fingers of wood that stand between slots of one edge, and between the outer slots and the ends. */
const fingersOf = ({ board, slots }: RackTop, edge: Slot['edge']): Finger[] => {
  const row = slots.filter((s) => s.edge === edge);
  const length = (s: Slot): number => s.depth + s.radius;
  const inner = row.slice(1).map((b, i): Finger => {
    const a = row[i]!;
    return { width: b.at - a.at - a.radius - b.radius, length: Math.min(length(a), length(b)), where: `between slots ${a.number} and ${b.number}`, slots: [a, b] };
  });
  const outer = [row[0], row.at(-1)].flatMap((s) => (s === undefined ? [] : [{ width: woodToEnd(board, s), length: length(s), where: `between slot ${s.number} and the end`, slots: [s] }]));
  return [...inner, ...outer];
};

const checkShortGrain = (top: RackTop, say: Say): TopFinding[] => {
  const weakest = [...fingersOf(top, 'front'), ...fingersOf(top, 'rear')]
    .reduce<Finger | undefined>((worst, f) => (worst === undefined || f.length / f.width > worst.length / worst.width ? f : worst), undefined);
  if (weakest === undefined || weakest.length <= fingerRatio * weakest.width) return [];
  return [{
    about: partsOf(...weakest.slots), code: 'short-grain', severity: 'warn', measured: weakest.length / weakest.width, limit: fingerRatio,
    message: `The finger ${weakest.where} is ${say(weakest.length)} long across the grain and ${say(weakest.width)} wide: it snaps along its short grain.`,
    remedy: `Slots at most ${say.most(fingerRatio * weakest.width)} long to the bottom of the seat, a wider land, or plywood.`,
  }];
};

const checkBehind = ({ board, slots, oneRow }: RackTop, say: Say): TopFinding[] => saidOnce(slots.flatMap((slot) => {
  const wood = board.width - slot.depth - slot.radius;
  const { sound, least } = landLimits(board);
  const shallower = slot.depth - sound + wood;
  return below({ measured: wood, sound, least }, (limit) => ({
    code: 'slot-deep', message: `there is ${say(wood)} of board left, less than ${say(limit)}.`,
    remedy: shallower >= mouthLength(slot) && shallower > 0 ? `A depth of at most ${say.most(shallower)} or a wider board.` : `A board ${say.least(board.width + sound - wood)} wide.`,
    would: shallower >= mouthLength(slot) && shallower > 0 ? rowCure(oneRow, 'depth', say.down(shallower)) : [cureLength('board.width', say.up(board.width + sound - wood))],
  })).map((report) => ({ ...report, slot, message: (name: string) => `Behind ${name} ${report.message}` }));
}));

const checkSeat = ({ slots, cutter }: RackTop, say: Say): TopFinding[] => {
  const limit = cutter.diameter / 2 + radiusToSpare;
  const tight = slots.filter((s) => s.radius < limit);
  const [first] = tight;
  if (first === undefined) return [];
  const thinner = cutterInto(2 * first.radius);
  return [{
    about: partsOf(...tight), code: 'seat-tight-for-cutter', severity: 'warn', measured: first.radius, limit,
    message: `The seat of slot ${first.number}${tight.length > 1 ? ` and ${tight.length - 1} more` : ''} has a radius of ${say(first.radius)}, and the cutter ${say(cutter.diameter / 2)}: it fills the seat and burns.`,
    remedy: `${thinner === undefined ? 'A' : `A cutter of at most ${say.most(thinner)}, or a`} seat of at least ${say.least(limit)}.`,
    would: tight.every((s) => s.radius === first.radius) ? cutterCure(thinner, cutter, say) : [],
  }];
};

/** What is between the widest parts of the pair that comes nearest to what it should keep. Any two slots, either edge. */
const checkItems = ({ board, slots, oneRow }: RackTop, say: Say): TopFinding[] => {
  let worst: { a: Slot; b: Slot; room: number; limit: number } | undefined;
  let pairs = 0;
  eachPairInReach(slots, (s) => s.widest / 2 + s.gap, (a, b) => {
    const apart = axesApart(board, a, b) - (a.widest + b.widest) / 2;
    // Parts that just touch do not overlap by what arithmetic leaves behind.
    const room = Math.abs(apart) < 1e-9 ? 0 : apart;
    const limit = Math.max(a.gap, b.gap);
    if (room >= limit - 1e-9) return;
    pairs++;
    if (worst === undefined || room - limit < worst.room - worst.limit) worst = { a, b, room, limit };
  });
  if (worst === undefined) return [];
  const { a, b, room, limit } = worst;
  const others = pairs > 1 ? ` (${pairs} pairs in all)` : '';
  return [{
    about: partsOf(a, b), code: room < 0 ? 'items-touch' : 'items-close', severity: 'warn', measured: room, limit: room < 0 ? 0 : limit,
    message: room < 0
      ? `The widest parts in slots ${a.number} and ${b.number} overlap by ${say(-room)}${others}.`
      : `The widest parts in slots ${a.number} and ${b.number} leave ${say(room)} between them, less than ${say(limit)}${others}.`,
    remedy: `Axes at least ${say.least((a.widest + b.widest) / 2 + Math.max(a.gap, b.gap))} apart.`,
    would: rowCure(oneRow && a.edge === b.edge && pairs === slots.length - 1, 'pitch', say.up((a.widest + b.widest) / 2 + Math.max(a.gap, b.gap))),
  }];
};

const checkMargin = ({ board, slots }: RackTop, say: Say): TopFinding[] => slots.flatMap((slot) => {
  const margin = Math.min(slot.at, board.length - slot.at);
  return margin >= slot.widest / 2 - 1e-9 ? [] : [{
    about: partsOf(slot), code: 'item-past-end', severity: 'warn' as const, measured: margin, limit: slot.widest / 2,
    message: `What hangs in slot ${slot.number} is ${say(slot.widest)} wide and stands ${say(slot.widest / 2 - margin)} out past the end of the board.`,
    remedy: `A station at least ${say.least(slot.widest / 2)} from the end.`,
  }];
});

const checkRoom = ({ slots, oneRow }: RackTop, say: Say): TopFinding[] => saidOnce(slots.flatMap((slot) => {
  const room = slot.radius - slot.liner.squeezed - slot.glue - slot.item / 2;
  return !slot.widthGiven || room >= slot.clearance - 1e-9 ? [] : [{
    slot, code: 'slot-tight', severity: 'warn' as const, measured: room, limit: slot.clearance,
    message: (name: string) => `${name}: ${say(2 * slot.radius)} wide, which leaves ${say(room)} on each side of the item inside the lining, less than the ${say(slot.clearance)} asked for.`,
    remedy: `A width of ${say.least(2 * (slot.radius + slot.clearance - room))}, or a thinner lining.`, would: rowCure(oneRow, 'width', say.up(2 * (slot.radius + slot.clearance - room))),
  }];
}));

/** What is weak, tight or in the way about the slots. */
export const checkSlots = (top: RackTop, say: Say): TopFinding[] =>
  [checkLand, checkEnds, checkShortGrain, checkBehind, checkSeat, checkItems, checkMargin, checkRoom].flatMap((check) => check(top, say));
