import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { distance, dot, subtract, type Point } from '../../../src/geometry/point.js';
import { degrees } from '../../../src/units/units.js';
import { partShapes } from '../../support/read-svg.js';
import { drawn, partCorners, pattern, pdfPathAlong, writeAndRead } from './written.js';

const usual = { fields: 'holds: [post, rail], depth: 14, stop: 12, carrier: { sharpAngle: 20, sawReading: 10, twist: 30 }' };

/** SVG is written to 0.1 µm, PDF to 1e-4 pt. */
const svgTolerance = 2e-4;
const pdfTolerance = 1e-3;

/** Angle between two directions, degrees, 0 … 90. */
const between = (a: Point, b: Point): number => degrees(Math.acos(Math.min(1, Math.abs(dot(a, b)) / Math.hypot(a.x, a.y) / Math.hypot(b.x, b.y))));

const direction = (points: readonly Point[]): Point => subtract(points[1]!, points[0]!);

describe('the written end of the block', () => {
  it('has the groove’s depth, width, flat and angle in millimetres, in SVG and PDF', async () => {
    const { svg, pdf } = await writeAndRead(pattern(drawn(usual).drawing, 'end-section'));
    const groove = partCorners(svg, 'groove');
    const [a, b, c, d] = groove as [Point, Point, Point, Point];
    expect(groove).toHaveLength(4);
    expect(Math.abs(distance(a, d) - 32)).toBeLessThan(svgTolerance);
    expect(Math.abs(distance(b, c) - 4)).toBeLessThan(svgTolerance);
    expect(Math.abs(b.y - a.y - 14)).toBeLessThan(svgTolerance);
    expect(Math.abs(between(subtract(b, a), subtract(d, c)) - 90)).toBeLessThan(1e-3);
    pdfPathAlong(pdf, groove, pdfTolerance);
  });

  it('carries the block round the groove', async () => {
    const { drawing, solution } = drawn(usual);
    const { svg, pdf } = await writeAndRead(pattern(drawing, 'end-section'));
    const outline = partCorners(svg, 'block-end');
    const box = pathBounds(partShapes(svg, 'block-end')[0]!.subpaths[0]!);
    expect(Math.abs(box.x1 - box.x0 - solution.block.width)).toBeLessThan(svgTolerance);
    expect(Math.abs(box.y1 - box.y0 - solution.block.height)).toBeLessThan(svgTolerance);
    pdfPathAlong(pdf, outline, pdfTolerance);
  });
});

describe('the written rounds', () => {
  it('lie in the groove as circles of the measured diameter, as far proud as the numbers say', async () => {
    const { drawing, solution } = drawn(usual);
    const { svg, pdf } = await writeAndRead(pattern(drawing, 'rounds'));
    const top = partCorners(svg, 'groove-section')[0]!.y;
    for (const held of solution.held) {
      const circle = partShapes(svg, `round-${held.round.name}`)[0]!.subpaths[0]!;
      const box = pathBounds(circle);
      expect(Math.abs(box.x1 - box.x0 - held.round.diameter)).toBeLessThan(svgTolerance);
      expect(Math.abs(top - box.y0 - held.proud)).toBeLessThan(svgTolerance);
      const inPdf = pdf.flatMap((p) => p.subpaths).map(pathBounds)
        .filter((b) => Math.abs(b.x0 - box.x0) + Math.abs(b.x1 - box.x1) + Math.abs(b.y0 - box.y0) + Math.abs(b.y1 - box.y1) < 4 * pdfTolerance);
      expect(inPdf).toHaveLength(1);
    }
  });

  it('touch the written flanks, and are crossed there by their strokes', async () => {
    const { drawing, solution } = drawn(usual);
    const { svg } = await writeAndRead(pattern(drawing, 'rounds'));
    const [a, b, c, d] = partCorners(svg, 'groove-section') as [Point, Point, Point, Point];
    for (const held of solution.held) {
      const box = pathBounds(partShapes(svg, `round-${held.round.name}`)[0]!.subpaths[0]!);
      const centre = { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 };
      const strokes = partShapes(svg, `contact-${held.round.name}`).map((s) => s.subpaths[0]!);
      [[a, b], [d, c]].forEach(([from, to], i) => {
        const along = subtract(to!, from!);
        const unit = { x: along.x / Math.hypot(along.x, along.y), y: along.y / Math.hypot(along.x, along.y) };
        const reach = dot(subtract(centre, from!), unit);
        const foot = { x: from!.x + reach * unit.x, y: from!.y + reach * unit.y };
        expect(Math.abs(distance(foot, centre) - held.radius)).toBeLessThan(svgTolerance);
        expect(reach).toBeGreaterThan(0);
        expect(reach).toBeLessThan(Math.hypot(along.x, along.y));
        const stroke = strokes[i]!;
        const way = direction([stroke.start, pathEndOf(stroke)]);
        expect(Math.abs(between(way, unit) - 90)).toBeLessThan(0.01);
        expect(Math.abs(distance(stroke.start, foot) + distance(foot, pathEndOf(stroke)) - Math.hypot(way.x, way.y))).toBeLessThan(1e-3);
      });
    }
  });
});

const pathEndOf = (path: { readonly start: Point; readonly segments: readonly { readonly kind: string }[] }): Point =>
  (path.segments.at(-1) as unknown as { readonly to: Point }).to;

describe('the written plan', () => {
  it('has groove edges, contact lines, stop and clamp zones where the numbers put them', async () => {
    const { drawing, solution } = drawn(usual);
    const { svg, pdf } = await writeAndRead(pattern(drawing, 'plan'));
    const block = pathBounds(partShapes(svg, 'block-plan')[0]!.subpaths[0]!);
    expect(Math.abs(block.x1 - block.x0 - solution.block.length)).toBeLessThan(svgTolerance);
    const apart = (part: string): number => {
      const [p, q] = partShapes(svg, part).map((s) => s.subpaths[0]!.start.y) as [number, number];
      return Math.abs(p - q);
    };
    expect(Math.abs(apart('groove-edge') - solution.groove.width)).toBeLessThan(svgTolerance);
    expect(Math.abs(apart('flat-edge') - 4)).toBeLessThan(svgTolerance);
    for (const held of solution.held) {
      expect(Math.abs(apart(`contact-line-${held.round.name}`) - 2 * held.contactHalfWidth)).toBeLessThan(svgTolerance);
    }
    expect(Math.abs(partCorners(svg, 'stop-line')[0]!.x - block.x0 - 12)).toBeLessThan(svgTolerance);
    for (const part of ['clamp-zone-1', 'clamp-zone-2']) {
      const zone = pathBounds(partShapes(svg, part)[0]!.subpaths[0]!);
      expect(zone.x0).toBeGreaterThan(block.x0 + 12);
      expect(zone.x1).toBeLessThan(block.x1);
    }
    pdfPathAlong(pdf, partCorners(svg, 'stop-line'), pdfTolerance);
  });
});

describe('the written carrier', () => {
  it('meets the fence at its end cut, the round at its sharp angle, with the toe 10 mm from the fence', async () => {
    const { svg, pdf } = await writeAndRead(pattern(drawn(usual).drawing, 'carrier'));
    const [end, axis, blade] = ['end-cut', 'v-axis', 'blade-line'].map((part) => partCorners(svg, part)) as [Point[], Point[], Point[]];
    const fence = partCorners(svg, 'fence-edge');
    expect(between(direction(axis), direction(blade))).toBeCloseTo(20, 3);
    expect(between(direction(axis), direction(end))).toBeCloseTo(60, 3);
    expect(between(direction(blade), direction(fence))).toBeCloseTo(80, 3);
    expect(between(direction(end), direction(fence))).toBeCloseTo(0, 3);
    expect(Math.abs(end[0]!.y - fence[0]!.y)).toBeLessThan(svgTolerance);
    for (const corner of [end, axis, blade]) pdfPathAlong(pdf, corner, pdfTolerance);
  });

  it('draws the finished end at true size: heel to toe, sharp angle and elliptical face', async () => {
    const { drawing, solution } = drawn(usual);
    const { svg, pdf } = await writeAndRead(pattern(drawing, 'finished-end'));
    const [, heel, toe] = partCorners(svg, 'finished-side') as [Point, Point, Point];
    expect(Math.abs(toe.x - heel.x - 32 / Math.tan(Math.PI / 9))).toBeLessThan(svgTolerance);
    expect(Math.abs(toe.y - heel.y - 32)).toBeLessThan(svgTolerance);
    const face = pathBounds(partShapes(svg, 'end-face')[0]!.subpaths[0]!);
    expect(Math.abs(face.x1 - face.x0 - solution.carrier!.faceLength)).toBeLessThan(svgTolerance);
    expect(Math.abs(face.y1 - face.y0 - 32)).toBeLessThan(svgTolerance);
    pdfPathAlong(pdf, partCorners(svg, 'finished-side'), pdfTolerance);
  });

  it('turns the other end’s toe by the twist, counter-clockwise seen from there', async () => {
    const { svg } = await writeAndRead(pattern(drawn(usual).drawing, 'finished-end'));
    const [here, other] = ['twist-here', 'twist-other'].map((part) => direction(partCorners(svg, part))) as [Point, Point];
    expect(between(here, other)).toBeCloseTo(30, 3);
    // y down: from straight down, counter-clockwise is towards the right.
    expect(here.y).toBeGreaterThan(0);
    expect(other.x).toBeGreaterThan(0);
  });
});
