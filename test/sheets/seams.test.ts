import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/errors/user-error.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import { letter, shape } from '../../src/drawing/items.js';
import { circle, rectangle } from '../../src/geometry/shapes.js';
import { point } from '../../src/geometry/point.js';
import { choosePlan } from '../../src/sheets/choose-plan.js';
import { cores, windows, type Axis } from '../../src/sheets/axis.js';
import { bestPlan, isBetter, type TilePlan } from '../../src/sheets/plan-tiles.js';
import { seamsOf, tilesByPlace } from '../../src/sheets/seam-lines.js';
import type { LayoutRequest } from '../../src/sheets/layout-request.js';
import { testFont } from '../support/font.js';
import { corpusSheets } from './corpus-sheets.js';
import { jigOf, plainDrawing, requestFor, slottedBoard } from './fixtures.js';

const planOf = (drawing: Parameters<typeof choosePlan>[0], more: Partial<LayoutRequest> = {}): TilePlan => {
  const jig = jigOf('top', [drawing]);
  return choosePlan(drawing, jig, requestFor([jig], more), testFont);
};

const refusal = (make: () => unknown): UserError['mistakes'][number] => {
  try { make(); } catch (error) { if (error instanceof UserError) return error.mistakes[0]!; throw error; }
  throw new Error('nothing was refused');
};

describe('choosePlan', () => {
  it.each(['letter', 'a4'] as const)('never takes more sheets than the plain grid, 0.85 of them over sixty outlines, all joined by seams: %s', (paper) => {
    const rows = corpusSheets(paper, testFont);
    expect(rows).toHaveLength(60);
    expect(rows.filter((r) => r.sheets > r.plain || r.groups !== 1)).toEqual([]);
    const sum = (of: (r: (typeof rows)[number]) => number): number => rows.reduce((n, r) => n + of(r), 0);
    expect(sum((r) => r.sheets) / sum((r) => r.plain)).toBeLessThanOrEqual(0.85);
  });

  it('takes no better plan of more sheets than it may, unless all have more', () => {
    const plan = (name: string, groups: number, sheets: number): TilePlan => ({ drawing: { name }, groups, tiles: Array.from({ length: sheets }, () => ({})), cuts: 0, closeSeams: 0, letteringCuts: 0, seamsOutsideLands: 0 }) as unknown as TilePlan;
    const [together, apart] = [plan('together', 1, 7), plan('apart', 2, 5)];
    expect(bestPlan([together, apart], 6)).toBe(apart);
    expect(bestPlan([together, apart], 7)).toBe(together);
    expect(bestPlan([together, apart], 4)).toBe(together);
  });

  it('weighs groups before sheets, then cuts, near seams, cuts through lettering, seams outside lands', () => {
    const order = ['groups', 'tiles', 'cuts', 'closeSeams', 'letteringCuts', 'seamsOutsideLands'] as const;
    const plan = (of: readonly number[]): TilePlan => Object.fromEntries(order.map((name, i) => [name, name === 'tiles' ? Array.from({ length: of[i]! }) : of[i]])) as unknown as TilePlan;
    const same = [3, 6, 5, 5, 5, 5];
    for (const i of order.keys()) {
      // Less in one thing outweighs more in all that come after it.
      const less = plan(same.map((value, k) => (k < i ? value : k === i ? value - 1 : value + 5)));
      expect([isBetter(less, plan(same)), isBetter(plan(same), less)], order[i]).toEqual([true, false]);
    }
    expect(isBetter(plan(same), plan(same))).toBe(false);
  });

  it('prints no sheet for the blank middle of a ring', () => {
    const plan = planOf(plainDrawing('ring', [circle(point(0, 0), 400)]));
    const { x, y } = plan.grid;
    expect(plan.tiles.length).toBeLessThan((x.seams.length + 1) * (y.seams.length + 1));
  });

  it('runs its seams in lands and through no slot where the count of sheets allows', () => {
    const plan = planOf(slottedBoard());
    expect(plan.tiles.length).toBe(9);
    expect(plan.cuts).toBe(0);
    for (const at of plan.grid.x.seams) for (const { box } of slottedBoard().keepClear) expect(at > box.x0 && at < box.x1).toBe(false);
  });

  it('keeps the seam between two rows 8 mm off the spine and off the seats', () => {
    const board = slottedBoard();
    const { wishes } = requestFor([]);
    const plan = planOf(board, { wishes: { ...wishes, turn: 'landscape' } });
    expect([plan.grid.y.seams.length, plan.cuts]).toEqual([1, 0]);
    const [at] = plan.grid.y.seams as [number];
    expect(Math.abs(at - board.datum.y)).toBeGreaterThanOrEqual(8);
    for (const { box } of board.keepClear) expect(at <= box.y0 - 8 || at >= box.y1 + 8).toBe(true);
  });

  it('finds the one narrow gap in a row of lettering', () => {
    const words = ([[100, 41], [177.5, 45]] as const).map(([x, count]) => letter(point(x, 30), 'H'.repeat(count), { height: 1.8 }));
    expect(177.5 - itemBounds(words[0]!, testFont).x1).toBeCloseTo(2.8, 0);
    const plan = planOf({ ...plainDrawing('plate', []), items: [shape('edge', rectangle(0, 0, 360, 60)), ...words] });
    expect([plan.tiles.length, plan.letteringCuts]).toEqual([2, 0]);
  });

  it('lays the long edge of the paper along the board when that costs no sheet', () => {
    expect(planOf(plainDrawing('stick', [rectangle(0, 0, 1000, 40)])).frame.landscape).toBe(true);
    expect(planOf(plainDrawing('post', [rectangle(0, 0, 40, 1000)])).frame.landscape).toBe(false);
  });

  it('names the drawing that is too large for any set of sheets', () => {
    const vast = refusal(() => planOf(plainDrawing('top', [rectangle(0, 0, 90_000, 90_000)])));
    expect(vast).toMatchObject({ code: 'too-many-sheets', path: 'paper', message: 'top: Pattern top is too large for this paper' });
    expect(vast.got).toMatch(/^90000 mm \(3543 5⁄16″\) by 90000 mm .*, a grid of \d+ sheets$/);
  });

  it('takes seams that are given, from the datum', () => {
    const seams = { top: { along: [170, 340, 500, 670, 840, 1000, 1170, 1330], across: [] } };
    const { wishes } = requestFor([]);
    const plan = planOf(slottedBoard(), { wishes: { ...wishes, turn: 'portrait', seams } });
    expect(plan.grid.x.seams).toEqual(seams.top.along);
  });

  it('takes seams that are given across alone, though they make more sheets than the plain grid', () => {
    const { wishes } = requestFor([]);
    const across = [100, 200, 300];
    const plan = planOf(plainDrawing('top', [rectangle(0, 0, 150, 400)]), { wishes: { ...wishes, turn: 'portrait', seams: { top: { along: [], across } } } });
    expect([plan.grid.y.seams, plan.tiles.length]).toEqual([across, 4]);
  });

  it('refuses given seams that leave more between them than a sheet holds, or too little for the marks', () => {
    const { wishes } = requestFor([]);
    const given = (along: number[]): LayoutRequest['wishes'] => ({ ...wishes, seams: { top: { along, across: [] } } });
    expect(refusal(() => planOf(slottedBoard(), { wishes: given([300, 600]) }))).toMatchObject({ code: 'seams-not-possible', path: 'sheets.seams.top', got: 'along 300 mm (11 13⁄16″), 600 mm (23 5⁄8″); across none' });
    // A printer that prints 2 % too long upright and 1 % too short across is met by a drawing made as much shorter and longer: a sheet holds as much more of it, or less.
    const steps = (x: number, y: number): number[] =>
      [...refusal(() => planOf(slottedBoard(), { wishes: given([300, 600]), correction: { x, y } })).allowed!.matchAll(/([\d.]+) mm/g)].slice(0, 4).map((found) => Number(found[1]));
    const plain = steps(1, 1);
    // Upright along and across, lying along and across.
    for (const [i, step] of steps(1.02, 0.99).entries()) expect(Math.abs(step - plain[i]! * [1.02, 0.99, 0.99, 1.02][i]!)).toBeLessThan(0.2);
    expect(refusal(() => planOf(slottedBoard(), { wishes: given([170, 180, 340, 500, 670, 840, 1000, 1170, 1330]) }))).toMatchObject({ code: 'seams-not-possible' });
  });

  it.each([[80, 'overlap-too-large'], [8.9, 'overlap-too-small']])('refuses an overlap of %d mm: %s', (overlap, code) => {
    const { wishes } = requestFor([]);
    const mistake = refusal(() => planOf(slottedBoard(), { wishes: { ...wishes, overlap, turn: 'portrait' } }));
    expect(mistake).toMatchObject({ code, path: 'sheets.overlap', allowed: '9 mm (23⁄64″) to 62 mm (2 7⁄16″) on this paper' });
  });

  it.each([9, 62])('takes an overlap of %d mm', (overlap) => {
    const { wishes } = requestFor([]);
    expect(planOf(slottedBoard(), { wishes: { ...wishes, overlap, turn: 'portrait' } }).grid.x.overlap).toBe(overlap);
  });

  it('refuses a drawing whose grid would be endless, without searching it, with its count by the better turn of the paper', () => {
    const { wishes } = requestFor([]);
    const step = (turn: 'portrait' | 'landscape', side: 'x' | 'y'): number => { const { window, overlap } = planOf(slottedBoard(), { wishes: { ...wishes, turn } }).grid[side]; return window - overlap; };
    // 75 m by 72 m: more than 100 000 sheets, less than twice as many.
    const count = Math.min(...(['portrait', 'landscape'] as const).map((turn) => Math.ceil(75_000 / step(turn, 'x')) * Math.ceil(72_000 / step(turn, 'y'))));
    expect(count > 100_000 && count < 200_000).toBe(true);
    expect(refusal(() => planOf(plainDrawing('field', [rectangle(0, 0, 75_000, 72_000)]))).got).toContain(`a grid of ${count} sheets`);
  });

  it('takes given seams in any order, and one across alone', () => {
    const { wishes } = requestFor([]);
    const plan = (along: number[], across: number[]) => planOf(plainDrawing('top', [rectangle(0, 0, 450, 400)]), { wishes: { ...wishes, turn: 'portrait', seams: { top: { along, across } } } });
    expect(plan([300, 150], [210]).grid).toMatchObject({ x: { seams: [150, 300] }, y: { seams: [210] } });
    expect(plan([160, 310], []).grid.x.seams).toEqual([160, 310]);
    expect(plan([], [190]).grid.y.seams).toEqual([190]);
  });
});

describe('seamsOf', () => {
  it('puts two marks on each seam, far apart, inside both windows and off every other overlap', () => {
    const plan = planOf(plainDrawing('frame', [rectangle(0, 0, 700, 640), rectangle(200, 200, 300, 240)]));
    const tiles = tilesByPlace(plan);
    const places: string[] = [];
    for (const tile of plan.tiles) {
      for (const seam of seamsOf(plan, tiles, tile)) {
        for (const m of seam.marks) {
          for (const { window: w } of [seam.first, seam.second]) {
            expect(m.x - 4 >= w.x0 && m.x + 4 <= w.x1 && m.y - 4 >= w.y0 && m.y + 4 <= w.y1).toBe(true);
          }
          const [crossing, at] = seam.along === 'x' ? [plan.grid.y, m.y] : [plan.grid.x, m.x];
          for (const s of crossing.seams) expect(Math.abs(at - s)).toBeGreaterThanOrEqual(6 + 4);
          if (seam.first === tile) places.push(`${m.x.toFixed(3)},${m.y.toFixed(3)}`);
        }
        const [a, b] = seam.marks;
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(8);
      }
    }
    expect(new Set(places).size).toBe(places.length);
  });
});

describe('windows', () => {
  const axis: Axis = { window: 200, overlap: 12, extent: { from: 0, to: 500 }, seams: [150, 330] };
  it('overlap by the overlap, centred on the seam, and never pass the paper', () => {
    const [a, b, c] = windows(axis) as [{ from: number; to: number }, { from: number; to: number }, { from: number; to: number }];
    expect([a.to - b.from, b.to - c.from]).toEqual([12, 12]);
    for (const w of [a, b, c]) expect(w.to - w.from).toBeLessThanOrEqual(200);
    expect(cores(axis).map((k) => k.to - k.from)).toEqual([150, 180, 170]);
  });
});
