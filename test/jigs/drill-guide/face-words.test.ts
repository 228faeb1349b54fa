import { expect, test } from 'vitest';
import type { Item, Lettering } from '../../../src/drawing/drawing.js';
import { letteringCorners } from '../../../src/drawing/item-bounds.js';
import type { DrillGuideFields } from '../../../src/jigs/drill-guide/schema.js';
import { testFont } from '../../support/font.js';
import { labelCrossings } from '../../support/label-crossings.js';
import { pattern, round, solved } from './guide.js';

const rad = (deg: number): number => (deg * Math.PI) / 180;
const blocks: readonly DrillGuideFields['block'][] = [{}, { length: 60, width: 60, height: 150 }, { length: 40, width: 50, height: 120 }, { length: 100, width: 90, height: 200 }];
const works: readonly Partial<DrillGuideFields>[] = [{ onto: 'flat', thickness: 30 }, { onto: round(40), depth: 20 }, { onto: round(40), depth: 20, offset: 6, sole: 'cove' }, { onto: round(60), depth: 20, offset: -8 }];

const all = [28, 34, 40, 47, 53, 60, 66, 72, 78, 84, 88, 90].flatMap((angle) => blocks.flatMap((block) => works.map((work) => ({ angle, block, work }))));
/** The left side of each guide that can be, as it is drawn first in its pattern of faces. */
const drawn = all.flatMap(({ angle, block, work }) => {
  try {
    const s = solved({ drill: 10, angle: rad(angle), block, ...work });
    return [{ angle, s, items: pattern(s, 'faces').items }];
  } catch { return []; }
});
const words = (items: readonly Item[], begins: string): Lettering | undefined => items.find((item): item is Lettering => item.kind === 'lettering' && item.text.startsWith(begins));

test('what is said along the sole’s line stands in the waste, half a millimetre off the line, the block’s bottom and its acute end', () => {
  let seen = 0;
  const longest = new Set<number>();
  for (const { angle, s, items } of drawn) {
    const said = words(items, 'saw: ');
    if (said === undefined) continue;
    seen++;
    const { length, height } = s.block;
    for (const { x, y } of letteringCorners(said, testFont)) {
      // The sole’s line from the bottom of the obtuse end, x = 0, up at 90° − θ; square to it the waste lies below.
      const rise = height - x / Math.tan(rad(angle));
      expect((y - rise) * Math.sin(rad(angle)), `${angle}`).toBeGreaterThan(0.5);
      expect(y).toBeLessThan(height - 0.5);
      expect(x).toBeLessThan(length - 0.5);
    }
    longest.add(said.text.split(',').length);
    // The next longer wording would reach past the acute end.
    expect(said.turn).toBeCloseTo(rad(angle) - Math.PI / 2, 9);
  }
  expect(seen).toBeGreaterThan(30);
  expect(longest.size).toBeGreaterThan(1);
});

test('no word on a face crosses a line or another word, whatever the guide', () => {
  expect(drawn.length).toBeGreaterThan(120);
  for (const { angle, s, items } of drawn) expect({ angle, block: s.block, work: s.work, crossed: labelCrossings(items, testFont) }).toEqual({ angle, block: s.block, work: s.work, crossed: [] });
});
