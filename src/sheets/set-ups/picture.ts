import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { moveItems, placeItems } from '../../drawing/items.js';
import type { SetUp } from '../../drawing/set-up.js';
import { boxHeight, boxWidth } from '../../geometry/box.js';
import { scaling } from '../../geometry/transform.js';

/** The picture of a set-up as a page shows it, its corner at (0, 0); mm. */
export interface Picture {
  readonly items: readonly Item[];
  readonly width: number;
  readonly height: number;
  /** 1 in true size. */
  readonly scale: number;
}

/** Lettering of 2.5 mm is set no smaller than 1.8 mm, so a picture is made no smaller than this where the page holds it. */
const smallest = 0.72;

/** Shares of a page's height that a picture keeps to, and that it takes at most rather than letter smaller than 1.8 mm. */
const [wantedShare, mostShare] = [0.45, 0.8];

/** The picture in true size, or made small enough for a page of `width` × `height`, its lettering with it. */
export const pictureOf = (
  setUp: SetUp,
  { width, height }: { readonly width: number; readonly height: number },
  font: Font,
): Picture => {
  const { items } = setUp.picture;
  if (items.length === 0) return { items: [], width: 0, height: 0, scale: 1 };
  const bounds = itemsBounds(items, font);
  const fitting = (share: number): number => Math.min(width / boxWidth(bounds), (share * height) / boxHeight(bounds));
  const wanted = Math.min(1, fitting(wantedShare));
  const lettered = items.some((item) => item.kind === 'lettering');
  const scale = lettered ? Math.max(wanted, Math.min(smallest, fitting(mostShare))) : wanted;
  const small =
    scale === 1
      ? items
      : placeItems(items, scaling(scale, scale), 0).map((item) =>
          item.kind === 'lettering' ? { ...item, height: item.height * scale } : item,
        );
  const box = itemsBounds(small, font);
  return { items: moveItems(small, -box.x0, -box.y0), width: boxWidth(box), height: boxHeight(box), scale };
};
