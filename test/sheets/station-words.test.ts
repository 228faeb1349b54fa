import { describe, expect, it } from 'vitest';
import type { Drawing, Lettering } from '../../src/drawing/drawing.js';
import { point } from '../../src/geometry/point.js';
import { rectangle } from '../../src/geometry/shapes.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor } from './fixtures.js';

/** Seams at 150 and 300 along and 210 across, from the datum or from the corner of the outline, as the case has it. */
const sheetsOf = (more: Partial<Drawing>, seams: { along: readonly number[]; across: readonly number[] }, [x, y]: readonly [number, number] = [0, 0]): string[] => {
  const drawing = plainDrawing('board', [rectangle(x, y, 450, 400)], more);
  const request = requestFor([jigOf('top', [drawing])], { wishes: { ...requestFor([]).wishes, turn: 'portrait', seams: { top: { along: [...seams.along], across: [...seams.across] } } } });
  return [...layOut(request, testFont).sheets()].flatMap((sheet) => {
    const words = sheet.items.filter((item): item is Lettering => item.kind === 'lettering' && item.part === 'sheet-station').map(({ text }) => text);
    return words.length === 0 ? [] : [words.join(' ')];
  });
};

/** What the words say of left and top: figures in mm with their sense. */
const said = (words: string): string[] => [...words.matchAll(/(?:at|[\d.]+ mm \([^)]*\)) ?(?:before|above|below|from|to the left of|to the right of)? ?the (?:left end|spine|datum)/g)].map(([all]) => all.replace(/ \([^)]*\)/, ''));

describe('the words of a sheet’s station', () => {
  it('count from the left end and the spine where the datum stands there', () => {
    expect(sheetsOf({ spine: true, datum: point(0, 200) }, { along: [150, 300], across: [10] }).map(said)).toEqual([
      ['at the left end', '200 mm above the spine'], ['150 mm from the left end', '200 mm above the spine'], ['300 mm from the left end', '200 mm above the spine'],
      ['at the left end', '10 mm below the spine'], ['150 mm from the left end', '10 mm below the spine'], ['300 mm from the left end', '10 mm below the spine'],
    ]);
  });

  it('count from the datum where it stands elsewhere, left and right of it, above and below', () => {
    expect(sheetsOf({ spine: true, datum: point(200, 200) }, { along: [-50, 100], across: [0] }).map(said)).toEqual([
      ['200 mm to the left of the datum', '200 mm above the spine'], ['50 mm to the left of the datum', '200 mm above the spine'], ['100 mm to the right of the datum', '200 mm above the spine'],
      ['200 mm to the left of the datum', 'at the spine'], ['50 mm to the left of the datum', 'at the spine'], ['100 mm to the right of the datum', 'at the spine'],
    ]);
    expect(sheetsOf({ datum: point(150, 0) }, { along: [0, 150], across: [210] }).slice(0, 4).map(said)).toEqual([
      ['150 mm to the left of the datum', 'at the datum'], ['at the datum', 'at the datum'], ['150 mm to the right of the datum', 'at the datum'], ['150 mm to the left of the datum', '210 mm below the datum'],
    ]);
  });

  it('call nothing what no rule shows, under a twentieth of a millimetre', () => {
    for (const [off, words] of [[0.04, 'at the datum'], [0.07, '0.1 mm to the right of the datum'], [-0.07, '0.1 mm to the left of the datum']] as const) {
      expect(said(sheetsOf({}, { along: [150, 300], across: [210] }, [off, off])[0]!)[0]).toBe(words);
    }
    // A spine’s left end likewise: farther off it is the datum that is counted from.
    expect(said(sheetsOf({ spine: true, datum: point(0, 200) }, { along: [150, 300], across: [10] }, [0.04, 0])[1]!)[0]).toBe('150 mm from the left end');
    expect(said(sheetsOf({ spine: true, datum: point(0, 200) }, { along: [150, 300], across: [10] }, [0.07, 0])[1]!)[0]).toBe('150 mm to the right of the datum');
  });

  it('name a seam where there is one, else the edge or the top', () => {
    expect(sheetsOf({}, { along: [150, 300], across: [210] }).map((words) => [/Station of the left (\w+)/.exec(words)![1], /\. Top ([\w ]+):/.exec(words)![1]])).toEqual([
      ['edge', 'of the drawing'], ['seam', 'of the drawing'], ['seam', 'of the drawing'], ['edge', 'seam'], ['seam', 'seam'], ['seam', 'seam'],
    ]);
  });
});
