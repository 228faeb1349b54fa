import { point, type Point } from '../../geometry/point.js';
import { boardPoint, type Board } from './board.js';
import { capsule, hullOf, type Convex } from './convex.js';
import type { Liner } from './liner.js';

/** The mouth of a slot: walls opening by `flare` over the last `run`, corners eased by a radius. mm, radians. */
export interface Mouth {
  readonly ease: number;
  readonly flare: number;
  readonly run: number;
}

/** A slot as it is cut in the wood, mm. */
export interface Slot {
  /** Counted from the left end. */
  readonly number: number;
  readonly at: number;
  readonly edge: 'front' | 'rear';
  readonly itemName: string;
  /** Whether the item is only a written diameter. */
  readonly unnamed: boolean;
  /** Diameter of the round in it. */
  readonly item: number;
  /** Widest part of what hangs from it. */
  readonly widest: number;
  readonly gap: number;
  readonly clearance: number;
  readonly liner: Liner;
  readonly glue: number;
  /** The wood's half-width and the seat's radius. */
  readonly radius: number;
  /** Whether the width was given rather than solved from the item. */
  readonly widthGiven: boolean;
  /** Edge to the axis of the seat. */
  readonly depth: number;
  readonly mouth: Mouth;
}

/** Wood half-width = item/2 + clearance + lining squeezed + glue. Exact. */
export const woodRadius = (slot: Pick<Slot, 'item' | 'clearance' | 'liner' | 'glue'>): number =>
  slot.item / 2 + slot.clearance + slot.liner.squeezed + slot.glue;

/** Half the throat's width where the walls meet the edge, before the corners are eased. Exact. */
export const edgeHalfWidth = ({ radius, mouth }: Pick<Slot, 'radius' | 'mouth'>): number => radius + mouth.run * Math.tan(mouth.flare);

/** How far an eased corner reaches along the edge, and along the wall, from the corner itself. Exact. */
export const easeReach = ({ ease, flare }: Mouth): number => ease * Math.tan((Math.PI / 2 - flare) / 2);

/** Half the whole opening along the edge of the board, eased corners included. Exact. */
export const mouthHalfWidth = (slot: Pick<Slot, 'radius' | 'mouth'>): number => edgeHalfWidth(slot) + easeReach(slot.mouth);

/** How far in from the edge an eased corner reaches. Exact. */
export const easedDepth = (mouth: Mouth): number => easeReach(mouth) * Math.cos(mouth.flare);

/** How far in from the edge the throat is wider than its seat. Exact. */
export const mouthLength = ({ mouth }: Pick<Slot, 'mouth'>): number => Math.max(mouth.run, easedDepth(mouth));

/** The axis of the seat on paper. */
export const seatCentre = (board: Board, slot: Slot): Point =>
  boardPoint(board, slot.at, slot.edge === 'front' ? slot.depth : board.width - slot.depth);

/** Where the slot's axis crosses its edge, on paper. */
export const mouthCentre = (board: Board, slot: Slot): Point => boardPoint(board, slot.at, slot.edge === 'front' ? 0 : board.width);

/** The slot's throat and seat as a region, on paper. Exact but for the mouth. */
export const slotRegion = (board: Board, slot: Slot): Convex => capsule(mouthCentre(board, slot), seatCentre(board, slot), slot.radius);

/** The mouth as a region: the hull of its corners, which holds the eased mouth and is at most 0.3 of the easing radius larger. */
export const mouthRegion = (board: Board, slot: Slot): Convex => {
  const { x, y } = mouthCentre(board, slot);
  const inward = slot.edge === 'front' ? -mouthLength(slot) : mouthLength(slot);
  const half = mouthHalfWidth(slot);
  return hullOf([point(x - half, y), point(x + half, y), point(x + slot.radius, y + inward), point(x - slot.radius, y + inward)]);
};

/** Wood between the throats and seats of two slots at its narrowest; negative where they run into each other. Exact. */
export const throatsApart = (board: Board, a: Slot, b: Slot): number => {
  const along = Math.abs(a.at - b.at);
  const across = a.edge === b.edge ? 0 : Math.max(0, board.width - a.depth - b.depth);
  return Math.hypot(along, across) - a.radius - b.radius;
};

/** Wood between the outlines of two slots at its narrowest: flares and eased corners of mouths on one edge counted. Exact. */
export const landBetween = (board: Board, a: Slot, b: Slot): number =>
  Math.min(throatsApart(board, a, b), a.edge === b.edge ? Math.abs(a.at - b.at) - mouthHalfWidth(a) - mouthHalfWidth(b) : Infinity);
