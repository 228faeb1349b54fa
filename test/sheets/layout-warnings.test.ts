import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/geometry/shapes.js';
import { layOut } from '../../src/sheets/lay-out.js';
import type { LayoutRequest } from '../../src/sheets/layout-request.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor, slottedBoard, tenMillimetres } from './fixtures.js';

const { wishes } = requestFor([]);
const every = (step: number, to: number): number[] => Array.from({ length: Math.ceil(to / step) - 1 }, (_, i) => (i + 1) * step);
const setOf = (more: Partial<LayoutRequest['wishes']>, patterns = [slottedBoard()], units: 'mm' | 'inch' = 'mm') =>
  layOut(requestFor([jigOf('top', patterns)], { wishes: { ...wishes, ...more }, units }), testFont);

describe('layoutWarnings', () => {
  it('names margins that few printers reach, and no others', () => {
    expect(setOf({ margins: { ...tenMillimetres, left: 0, top: 3.9 } }, undefined, 'inch').warnings[0])
      .toMatch(/^Margins of top 5⁄32″ \(3\.9 mm\), left 0″ \(0 mm\): few printers reach nearer .* than 5⁄32″ \(4 mm\)/);
    expect(setOf({ margins: { top: 0, right: 0, bottom: 0, left: 0 } }).warnings[0]).toMatch(/^Margins of 0 mm \(0″\): few/);
    expect(setOf({ margins: { ...tenMillimetres, left: 4 } }).warnings).toEqual([]);
  });

  it('says what seams a little nearer to each other would save where those given rule out the better turn of the paper', () => {
    const rows = [plainDrawing('panel', every(60, 900).map((y) => rectangle(0, y, 1500, 5)))];
    const set = setOf({ seams: { top: { along: every(180, 1500), across: [] } } }, rows);
    const free = setOf({ turn: 'portrait' }, rows);
    expect(set.tiled[0]!.plan.frame.landscape).toBe(true);
    expect(free.tiled[0]!.plan.tiles.length).toBeLessThan(set.tiled[0]!.plan.tiles.length);
    expect(set.warnings).toEqual([`top: Pattern panel: the seams given fit landscape sheets only, ${set.tiled[0]!.plan.tiles.length} of them. `
      + `Seams at most 176.1 mm (6 15⁄16″) apart along would go on portrait sheets: ${free.tiled[0]!.plan.tiles.length} may do.`]);
    expect(setOf({ seams: { top: { along: every(175, 1500), across: [] } } }, rows).warnings).toEqual([]);
  });

  it('puts given seams through the first pattern that is cut, and leaves the jig’s others to the search', () => {
    const along = every(170, 1500);
    const stick = plainDrawing('stick', [rectangle(0, 0, 1500, 140)]);
    const given = setOf({ seams: { top: { along, across: [] } } }, [plainDrawing('disc', [rectangle(0, 0, 50, 50)]), slottedBoard(), stick]);
    expect(given.tiled[0]!.plan.grid.x.seams).toEqual(along);
    expect(given.tiled[1]!.plan.grid).toEqual(setOf({}, [slottedBoard(), stick]).tiled[1]!.plan.grid);
  });

  it('names seams that are given and cut nothing', () => {
    expect(setOf({ seams: { top: { along: [10], across: [] } } }, [plainDrawing('disc', [rectangle(0, 0, 50, 50)])]).warnings)
      .toEqual(['top: seams are given, but each of its patterns fits a sheet whole.']);
    const beyond = setOf({ seams: { top: { along: [...every(170, 1500), 1600], across: [] } } });
    expect(beyond.warnings).toEqual(['top: Top, whole: seams given outside the drawing cut nothing: 1600 mm (62 63⁄64″).']);
    // Across, from the spine half-way up a board of 200: its edges are 100 off.
    const across = setOf({ turn: 'landscape', seams: { top: { along: every(200, 1500), across: [-130, 20, 140] } } });
    expect(across.warnings).toEqual(['top: Top, whole: seams given outside the drawing cut nothing: −130 mm (−5 1⁄8″), 140 mm (5 33⁄64″).']);
  });
});
