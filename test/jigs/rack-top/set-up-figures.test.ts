import { describe, expect, test } from 'vitest';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { testFont } from '../../support/font.js';
import { codesWithFigures, columnFigures, figure, figureText, setUpOf, stepFigures, stepText } from '../../support/set-up-figures.js';
import { context, solved, type Given } from './rack.js';

/* Every figure of every page of a rack top, worked out again by its code: slots, holes, recesses, joints. */

const rad = (deg: number): number => (deg * Math.PI) / 180;

const close = (got: readonly number[], want: readonly number[], tolerance = 1e-6): void => {
  expect(got.length).toBe(want.length);
  want.forEach((value, i) => expect(Math.abs(got[i]! - value)).toBeLessThan(tolerance));
};

const draw = (given: Given) => rackTop.draw(solved(given), context, testFont);

const checked = (page: ReturnType<typeof setUpOf>) => {
  const done: string[] = [];
  return {
    done,
    is: (code: string, ...want: number[]): void => { done.push(`number ${code}`); close(figure(page, code), want); },
    step: (code: string, ...want: number[]): void => { done.push(`step ${code}`); close(stepFigures(page, code), want); },
    column: (table: string, name: string, ...want: number[]): void => { done.push(`table ${table} ${name}`); close(columnFigures(page, table, name).flat(), want); },
  };
};

describe('cutting slots', () => {
  test('with a bushing: width, seat, template, stick and every allowance in the order applied', () => {
    const page = setUpOf(draw({
      board: { length: 800, width: 200, thickness: 27 }, cutter: { diameter: 12, bushing: 17 }, indexPins: { diameter: 6 },
      slots: { count: 3, pitch: 150, item: 24, clearance: 1.2, liner: 'felt', glue: 0.15, depth: 60, mouth: { ease: 5 } },
    }), 'cut-slots');
    const { is, step, column, done } = checked(page);
    // Felt of 2 mm gives a third: half the item + clearance + felt squeezed + glue.
    const radius = 12 + 1.2 + (2 * 2) / 3 + 0.15;
    is('item', 24);
    is('width', 2 * radius);
    is('seat', radius);
    is('depth', 60);
    is('mouth', 5);
    // The largest whole millimetre that leaves half a millimetre all round.
    const bit = Math.floor(2 * (radius - 0.5));
    is('bottom-bit', bit, radius - bit / 2);
    is('cutter', 12, 17);
    is('offset', 2.5);
    is('edges', 27);
    // Clear of the mouth by 10 mm on both sides, template's edge and pin counted, up to 5 mm.
    is('pins', 6, Math.ceil((2 * (radius + 5 + 2.5 + 10) + 6) / 5) * 5);
    // The bushing and 3 mm on both sides, up to 5 mm.
    is('stand-off', Math.ceil((17 + 6) / 5) * 5);
    is('land', 150 - 2 * (radius + 5));
    [250, 400, 550].forEach((at, i) => is(`station-${i + 1}`, at));
    step('template', 6, 12, 1.5);
    step('stick', 25);
    step('waste', 1.5);
    column('allowances', 'half-item', 12);
    column('allowances', 'clearance', 1.2);
    column('allowances', 'lining', 2, 4 / 3);
    column('allowances', 'glue', 0.15);
    column('allowances', 'wood', radius);
    column('allowances', 'offset', 2.5);
    column('allowances', 'template', radius + 2.5);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test('flush trim, flared, five slots in a table of stations', () => {
    const page = setUpOf(draw({
      board: { length: 1200, width: 200, thickness: 20 }, cutter: { diameter: 10 }, indexPins: { diameter: 8, spacing: 90 },
      slots: { count: 5, at: 100, pitch: 180, item: 30, clearance: 0.5, liner: 3, glue: 0, depth: 70, mouth: { flare: 8, run: 30, ease: 0 } },
    }), 'cut-slots');
    const { is, step, column, done } = checked(page);
    const radius = 15 + 0.5 + 3;
    is('item', 30);
    is('width', 37);
    is('seat', radius);
    is('depth', 70);
    is('mouth', 8, 30);
    is('bottom-bit', 36, 0.5);
    is('cutter', 10);
    is('edges', 20);
    is('pins', 8, 90);
    is('stand-off', 20);
    is('land', 180 - 37 - 2 * 30 * Math.tan(rad(8)));
    is('number', 5);
    step('template', 6, 12, 1.5);
    step('stick', 20);
    step('waste', 1.5);
    column('stations', 'station-1', 100, 640);
    column('stations', 'station-2', 280, 820);
    column('stations', 'station-3', 460);
    column('allowances', 'half-item', 15);
    column('allowances', 'clearance', 0.5);
    column('allowances', 'lining', 3);
    column('allowances', 'glue', 0);
    column('allowances', 'wood', radius);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });
});

describe('drilling holes', () => {
  test.each([[14, 60], [35, 200], [5, 315]])('leaning %d° towards %d°', (lean, toward) => {
    const [T, d, along, across] = [27, 30, 400, 100];
    const page = setUpOf(draw({ board: { length: 800, width: 200, thickness: T }, holes: [{ round: d, clearance: 0.4, at: [along, across], lean, toward, below: 0 }] }), 'drill-holes');
    const { is, step, column, done } = checked(page);
    const bit = d + 0.4;
    const [c, t] = [Math.cos(rad(lean)), Math.tan(rad(lean))];
    is('leg', d);
    is('bit', bit, 0.4);
    is('lean', lean);
    is('to-face', 90 - lean);
    is('opening', bit / c, bit);
    is('shift', T * t);
    is('bore', T / c);
    is('reach', T / c + (bit / 2) * t + 3);
    is('travel', T / c + bit * t + 3);
    is('number', 1);
    column('places', 'along', along, along - T * t * Math.cos(rad(toward)));
    column('places', 'across', across, across - T * t * Math.sin(rad(toward)));
    column('places', 'arrow', toward);
    step('tilt', lean);
    step('exit', T * t);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
  });

  test('square: no lean, no shift, no arrow', () => {
    const page = setUpOf(draw({ holes: [{ round: 30, at: [200, 80] }, { round: 30, at: [600, 80] }] }), 'drill-holes');
    const { is, column, done } = checked(page);
    is('leg', 30);
    is('bit', 30);
    is('bore', 27);
    is('reach', 30);
    is('travel', 30);
    is('number', 2);
    column('places', 'along', 200, 600);
    column('places', 'across', 80, 80);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
    expect(page.steps.flatMap((s) => s.words).join(' ')).not.toMatch(/uphill|tilt|arrow/i);
  });
});

describe('routing recesses', () => {
  test('with a bushing: plunge stop is depth and template', () => {
    const page = setUpOf(draw({ recesses: [{ box: { width: 120, height: 60, radius: 10 }, at: [400, 110], depth: 8 }], cutter: { diameter: 12, bushing: 17, templateThickness: 10 } }), 'rout-recess');
    const { is, step, done } = checked(page);
    is('size', 120, 60);
    is('middle', 400, 110);
    is('depth', 8);
    is('floor', 19);
    is('inside-radius', 10);
    is('cutter', 12);
    is('plunge', 18, 8, 10);
    is('bushing', 17, 2.5);
    is('collar', 10);
    step('plunge', 18, 6);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
    expect(stepText(page, 'guide', 'mm')).toContain('from the first pass');
  });

  test('with a bearing on the shank: its edges no longer than template and first pass, and from which depth it rides', () => {
    const page = setUpOf(draw({ recesses: [{ circle: 60, at: [400, 110], depth: 9, face: 'under' }], cutter: { diameter: 12, length: 19 } }), 'rout-recess');
    const { is, step, done } = checked(page);
    is('size', 60, 60);
    is('middle', 400, 110);
    is('depth', 9);
    is('floor', 18);
    is('inside-radius', 30);
    is('cutter', 12);
    is('plunge', 21, 9, 12);
    is('edges', 18, 6);
    is('first-pass', 7);
    close(figure(page, 'first-pass'), [19 - 12]);
    step('guide', 7);
    step('plunge', 21, 6);
    expect(codesWithFigures(page).sort()).toEqual(done.sort());
    expect(figureText(page, 'first-pass', 'mm')).toContain('With edges of 19 mm');
    expect(page.cautions.join(' ')).not.toContain('starting pin');
  });

  test('a shallow recess takes its whole depth as the first pass', () => {
    const page = setUpOf(draw({ recesses: [{ circle: 60, at: [400, 110], depth: 4 }], cutter: { diameter: 12 } }), 'rout-recess');
    close(figure(page, 'edges'), [16, 4]);
    expect(stepText(page, 'guide', 'mm')).toMatch(/bearing on the SHANK; one with a bearing at the tip .* template below/);
  });
});

test('joining: a spline 1.5 mm narrower than its two grooves together, parts and stations', () => {
  const page = setUpOf(draw({ board: { length: 1600, width: 200, thickness: 27 }, split: [1100, 500], spline: { thickness: 9, groove: 14, margin: 25 } }), 'join');
  const { is, step, column, done } = checked(page);
  is('spline', 9, 26.5);
  is('groove', 14);
  is('play', 1.5);
  is('margin', 25);
  is('spline-length', 150);
  is('number', 2);
  column('parts', 'length', 500, 600, 500);
  column('joints', 'station', 500, 1100);
  step('groove', 14);
  expect(codesWithFigures(page).sort()).toEqual(done.sort());
});
