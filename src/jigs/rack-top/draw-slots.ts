import type { Item } from '../../drawing/drawing.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import { point } from '../../geometry/point.js';
import { circle, line } from '../../geometry/shapes.js';
import type { Board } from './board.js';
import { mouthCentre, seatCentre, type Slot } from './slot.js';
import { slotPath } from './slot-shape.js';

/** Half the tick across the spine at a slot's station, mm. */
const tick = 2.5;

/** What helps to set a slot out: its seat's centre, the item lying in it, ticks on the waste side of the edge cut on this paper (`offset` mm into the wood), and its station on the spine. */
export const slotMarks = (board: Board, slot: Slot, offset: number): Item[] => {
  const seat = seatCentre(board, slot);
  const mouth = mouthCentre(board, slot);
  const inward = slot.edge === 'front' ? -1 : 1;
  const spine = board.width / 2;
  return [
    ...wasteTicks(slotPath(board, slot, offset), { side: 'right', spacing: 6 }),
    shape('reference', circle(seat, slot.item / 2), `item-${slot.number}`),
    ...holeCross(seat, Math.min(slot.item, slot.radius)),
    shape('centre', line(point(mouth.x, mouth.y), point(mouth.x, seat.y - (slot.item / 2 + 1) * inward))),
    shape('reference', line(point(slot.at, spine - tick), point(slot.at, spine + tick)), `station-${slot.number}`),
  ];
};
