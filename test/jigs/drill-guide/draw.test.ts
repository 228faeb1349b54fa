import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/compile.js';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import type { DrillGuideFields } from '../../../src/jigs/drill-guide/schema.js';
import { registered } from '../../../src/jigs/jig.js';
import { describeFields } from '../../../src/spec/describe-fields.js';
import { makeFieldReader } from '../../../src/spec/fields.js';
import { radians } from '../../../src/units/units.js';
import { testFont } from '../../support/font.js';
import { labelCrossings, labelOverlaps } from '../../support/label-crossings.js';
import { partShapes } from '../../support/read-svg.js';
import { context, pattern, round, solved, writeAndRead } from './guide.js';

const drawn = (given: Partial<DrillGuideFields>, units: 'mm' | 'inch' = 'mm', name = 'brace guide') =>
  drillGuide.draw(solved(given), { ...context, units, name }, testFont);

const kinds = { 'drill-guide': registered(drillGuide) };

describe('every pattern and picture', () => {
  const angles = [90, 89, 75, 60, 45, 33, 26, 15];
  const works: readonly (readonly [string, Partial<DrillGuideFields>])[] = [
    ['flat', { thickness: 20 }], ['v', { onto: round(38), depth: 18 }], ['cove', { onto: round(38), depth: 18, sole: 'cove', offset: 4 }],
    ['flat on a round', { onto: round(60), sole: 'flat', offset: -6 }], ['thin', { onto: round(14), drill: 3, depth: 7 }],
    ['thick', { onto: round(120), drill: 25, offset: 20 }],
  ];
  it.each(works.flatMap(([what, given]) => angles.map((deg) => ({ what, deg, given }))))('$what at $deg°: no line crosses lettering, no lettering lies on other', ({ deg, given }) => {
    for (const units of ['mm', 'inch'] as const) {
      const jig = drawn({ ...given, angle: radians(deg) }, units);
      for (const { items, name } of [...jig.patterns, ...jig.setUps.map((setUp) => setUp.picture)]) {
        expect({ name, crossed: labelCrossings(items, testFont), overlapping: labelOverlaps(items, testFont) }).toEqual({ name, crossed: [], overlapping: [] });
        const { x0, y0, x1, y1 } = itemsBounds(items, testFont);
        expect([x0, y0, x1, y1].every(Number.isFinite)).toBe(true);
      }
    }
  });

  it('keeps its lettering apart and its patterns narrow under a name of 1 240 letters', () => {
    for (const given of [{ thickness: 20 }, { onto: round(38), depth: 18, angle: radians(40) }]) {
      for (const { items } of drawn(given, 'inch', 'a guide for the lower braces of the left end of the long rack '.repeat(20)).patterns) {
        expect(labelCrossings(items, testFont)).toEqual([]);
        expect(labelOverlaps(items, testFont)).toEqual([]);
        const { x0, x1 } = itemsBounds(items, testFont);
        expect(x1 - x0).toBeLessThan(240);
      }
    }
  });
});

/** Room for the whole wrap. */
const wide = { ...context, drawingArea: { width: 400, height: 400 } };

describe('the written faces', () => {
  it('carry the bore, its centre line and the sole round the block', async () => {
    const s = solved({ onto: round(40), angle: radians(50), offset: 3, depth: 15 });
    const { svg } = await writeAndRead(pattern(s, 'faces', wide));
    expect(partShapes(svg, 'bore')).toHaveLength(4);
    expect(partShapes(svg, 'centre-line')).toHaveLength(4);
    expect(partShapes(svg, 'sole-line')).toHaveLength(4);
    const block = pathBounds(partShapes(svg, 'block')[0]!.subpaths[0]!);
    expect(block.x1 - block.x0).toBeCloseTo(2 * (s.block.length + s.block.width), 3);
    // Right of the round's axis seen from the acute end: to the right on the front, which is seen from there; to the left on the back.
    const [left, front, right, back] = partShapes(svg, 'centre-line').map((c) => c.subpaths[0]!.start.x - block.x0);
    expect(left).toBeCloseTo(s.block.length / 2, 3);
    expect(front).toBeCloseTo(s.block.length + s.block.width / 2 + 3, 3);
    expect(right).toBeCloseTo(1.5 * s.block.length + s.block.width, 3);
    expect(back).toBeCloseTo(2 * s.block.length + 1.5 * s.block.width - 3, 3);
  });

  it('run on from face to face: each line leaves one edge at the height at which it enters the next', async () => {
    const { svg } = await writeAndRead(pattern(solved({ onto: round(40), angle: radians(50), depth: 15 }), 'faces', wide));
    const lines = partShapes(svg, 'sole-line').map((shape) => shape.subpaths[0]!);
    const points = lines.flatMap((path) => [path.start, ...path.segments.map((s) => ('to' in s ? s.to : path.start))]);
    const corners = [...new Set(points.map((p) => p.x.toFixed(3)))].map((x) => new Set(points.filter((p) => p.x.toFixed(3) === x).map((p) => p.y.toFixed(3))));
    expect(corners.map((heights) => heights.size)).toEqual([1, 1, 1, 1, 1]);
  });

  it('stand at the same places in the PDF', async () => {
    const { svg, pdf } = await writeAndRead(pattern(solved({ onto: round(40), angle: radians(50), offset: 3, depth: 15, sole: 'cove' }), 'faces', wide));
    const inPdf = pdf.flatMap((path) => path.subpaths).map(pathBounds);
    for (const part of ['block', 'sole-line', 'bore', 'centre-line', 'station', 'groove', 'groove-crown', 'fold']) {
      for (const shape of partShapes(svg, part)) {
        const { x0, y0, x1, y1 } = pathBounds(shape.subpaths[0]!);
        const apart = inPdf.map((b) => Math.max(Math.abs(b.x0 - x0), Math.abs(b.y0 - y0), Math.abs(b.x1 - x1), Math.abs(b.y1 - y1)));
        expect(Math.min(...apart)).toBeLessThan(1e-3);
      }
    }
  });

  it('come as two halves where no sheet holds the wrap', () => {
    const s = solved({ onto: round(60), depth: 20 });
    const names = (width: number) => drillGuide.draw(s, { ...context, drawingArea: { width: 180, height: width } }, testFont).patterns.map((p) => p.name);
    expect(names(400)).toEqual(['faces', 'top', 'opening', 'section']);
    expect(names(250)).toEqual(['faces', 'faces-right', 'top', 'opening', 'section']);
  });
});

describe('the top', () => {
  it('of a block that the bore all but fills leaves out the centre lines for which there is no room', () => {
    const top = pattern(solved({ drill: 19.135, angle: Math.PI / 2, block: { length: 20 } }), 'top');
    expect(top.items.filter((item) => item.kind === 'shape' && item.part === 'centre-line')).toHaveLength(2);
    expect(labelCrossings(top.items, testFont)).toEqual([]);
  });
});

describe('the section', () => {
  it('touches the round at R·cos h each side of its middle', async () => {
    const s = solved({ onto: round(40), depth: 15 });
    const { svg } = await writeAndRead(pattern(s, 'section'));
    const marks = partShapes(svg, 'contact').map((m) => pathBounds(m.subpaths[0]!)).map((b) => (b.x0 + b.x1) / 2);
    expect(marks[1]! - marks[0]!).toBeCloseTo(2 * 20 * Math.SQRT1_2, 3);
  });
});

describe('the starter', () => {
  it('draws as it stands, without a warning', () => {
    const { drawings, report } = compile({ text: drillGuide.starter, file: 'starter.yaml', kinds }, testFont);
    expect(drawings).toHaveLength(1);
    expect(report.jigs[0]!.findings.filter((f) => f.severity !== 'note')).toEqual([]);
  });
});

describe('the fields', () => {
  it('say each what they are', () => {
    const described = describeFields(drillGuide.schema(makeFieldReader('mm', {})));
    expect(described.filter((f) => f.about === '').map((f) => f.path)).toEqual([]);
  });

  const mistakes = (jig: string): string => {
    try {
      compile({ text: `title: t\nunits: mm\npaper: a4\nrounds: { post: 40 }\njigs:\n  - { kind: drill-guide, name: g${jig} }\n`, file: 't.yaml', kinds }, testFont);
      return '';
    } catch (error) {
      return (error as Error).message;
    }
  };
  it.each([
    [', drill: 10, angle: 60, onto: post', ''],
    [', drill: 10, angle: 60, onto: 40, depth: 12', ''],
    [', drill: 10, rake: 10, splay: 5, onto: flat, thickness: 20', ''],
    [', drill: 10, angle: { rake: 10, splay: 5 }, onto: flat, thickness: 20', ''],
    [', angle: 60, onto: post', 'drill'],
    [', drill: 10, onto: post', 'angle'],
    [', drill: 10, angle: 60', 'onto'],
    [', drill: 10, angle: 60, onto: flat', 'depth'],
    [', drill: 10, rake: 10, onto: flat, depth: 10', 'splay'],
    [', drill: 10, splay: 10, onto: flat, depth: 10', 'rake'],
    [', drill: 10, angle: 60, rake: 10, splay: 5, onto: flat, depth: 10', 'angle'],
    [', drill: 10, angle: 60, onto: post, thickness: 10', 'thickness'],
    [', drill: 10, angle: 60, onto: flat, depth: 10, offset: 2', 'offset'],
    [', drill: 10, angle: 60, onto: flat, depth: 10, sole: v', 'sole'],
    [', drill: 10, angle: 95, onto: post', 'angle'],
    [', drill: 10, angle: 60, onto: pots', 'onto'],
  ])('{ kind: drill-guide%s } complains of "%s"', (jig, field) => {
    // The path is the first word of the message; nothing at all where there is no mistake.
    expect(mistakes(jig).split(' ')[0]).toBe(field === '' ? '' : `jigs[0].${field}`);
  });
});
