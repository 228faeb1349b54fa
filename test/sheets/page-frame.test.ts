import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/errors/user-error.js';
import { boxHeight, boxWidth } from '../../src/geometry/box.js';
import { barLengths } from '../../src/sheets/bars.js';
import { pageFrame } from '../../src/sheets/page-frame.js';
import { papers } from '../../src/units/paper.js';
import { tenMillimetres } from './fixtures.js';

const cases = Object.values(papers).flatMap((paper) => [false, true].flatMap((landscape) => (['mm', 'inch'] as const).map((units) => ({ paper, landscape, units }))));

describe('pageFrame', () => {
  it.each(cases)('leaves the drawing 88 % of the live area of $paper.name, landscape $landscape, $units', ({ paper, landscape, units }) => {
    const { live, area, strip, side } = pageFrame(paper, tenMillimetres, landscape, units);
    expect((boxWidth(area) * boxHeight(area)) / (boxWidth(live) * boxHeight(live))).toBeGreaterThanOrEqual(0.88);
    expect([area.x0, area.y1, strip.y1, strip.x0]).toEqual([side.x1, strip.y0, live.y1, live.x0]);
  });

  it.each(cases)('holds bars of at least 150 mm or 6 in on $paper.name, landscape $landscape, $units', ({ paper, landscape, units }) => {
    const frame = pageFrame(paper, tenMillimetres, landscape, units);
    for (const factors of [{ x: 1, y: 1 }, { x: 0.98, y: 1.02 }]) {
      const { x, y } = barLengths(frame, factors, units);
      const step = units === 'inch' ? 25.4 : 10;
      for (const [bar, room, factor] of [[x, boxWidth(frame.strip), factors.x], [y, boxHeight(frame.side), factors.y]] as const) {
        expect(bar).toBeGreaterThanOrEqual((units === 'inch' ? 152.4 : 150) - 1e-9);
        expect(Math.abs(bar / step - Math.round(bar / step))).toBeLessThan(1e-9);
        // Half of a figure of three digits at each end; of four from a metre on.
        const overhang = (length: number): number => (length < 1000 ? 4.4 : 5.2);
        expect(bar / factor).toBeLessThanOrEqual(room - overhang(bar) + 1e-9);
        expect((bar + step) / factor).toBeGreaterThan(room - overhang(bar + step) - 1e-9);
      }
    }
  });

  it.each([
    ['margins that eat the paper up', papers['letter']!, { top: 90, right: 90, bottom: 90, left: 90 }, 'margins-too-large'],
    ['margins of more than 20 mm on one side', papers['letter']!, { top: 9, right: 45, bottom: 9, left: 21 }, 'margins-too-large'],
    ['a paper too small for usual margins', { name: 'card', width: 190, height: 190 }, { top: 20, right: 20, bottom: 20, left: 20 }, 'paper-too-small'],
    ['a paper smaller than its bars', { name: 'card', width: 148, height: 210 }, tenMillimetres, 'paper-too-small'],
  ] as const)('refuses %s with what would do', (_, paper, margins, code) => {
    const thrown = (): unknown => { try { return pageFrame(paper, margins, false, 'mm'); } catch (error) { return error; } };
    const error = thrown();
    expect(error).toBeInstanceOf(UserError);
    const [mistake] = (error as UserError).mistakes;
    expect(mistake).toMatchObject({ code, allowed: 'a live area of at least 154.4 mm (6 5⁄64″) × 172.6 mm (6 51⁄64″)' });
  });

  it('takes the least live area that it asks for', () => {
    const least = { name: 'least', width: 154.4 + 20, height: 172.6 + 20 };
    expect(() => pageFrame(least, tenMillimetres, false, 'mm')).not.toThrow();
    expect(() => pageFrame({ ...least, width: least.width - 0.2 }, tenMillimetres, false, 'mm')).toThrow(UserError);
  });
});
