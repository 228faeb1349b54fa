import { describe, expect, it } from 'vitest';
import { carrierPlan } from '../../../src/jigs/v-cradle/carrier-plan.js';
import { groovePath } from '../../../src/jigs/v-cradle/section.js';
import { cylinderSolid, sagitta, solids, vertices } from '../../support/solids.js';
import { cradle } from './cradle.js';
import { corners } from './written.js';

const facets = 1024;

/** Block and round as meshes: x across, y up from the block's top, z along the block. */
const meshes = (fields: string, lift = 0) => {
  const { solution: s } = cradle({ fields });
  const half = s.block.width / 2;
  const outline = [...corners(groovePath(s.groove)), { x: half, y: 0 }, { x: half, y: s.block.height }, { x: -half, y: s.block.height }, { x: -half, y: 0 }];
  // The path runs clockwise on the page (y down); with y up it runs counter-clockwise as the library asks.
  const block = solids.extrude([outline.map(({ x, y }): [number, number] => [x, -y]).reverse()], 40);
  const held = s.held[0]!;
  const axis = held.axisHeight - s.groove.apexDepth + lift;
  const round = cylinderSolid({ at: [0, axis, 0], axis: [0, 0, 1], from: 5, to: 35, radius: held.radius, facets });
  return { s, held, block, round };
};

const cases = [
  ['holds: [post], flat: 4'], ['holds: [post], flat: 0, includedAngle: 60'], ['holds: [25], flat: 2, includedAngle: 120'],
  ['holds: [leg], flat: 3, includedAngle: 75'], ['holds: [60], flat: 8'], ['holds: [12], flat: 2'],
];

describe('a round in the groove, as a mesh', () => {
  it.each(cases)('just touches at its solved height: %s', (fields) => {
    const { block, round, held } = meshes(fields);
    const error = sagitta(held.radius, facets) + 2e-5;
    expect(block.minGap(round, 1)).toBeLessThan(2 * error);
    expect(block.intersect(round).volume()).toBeLessThan(30 * error);
  });

  it.each(cases)('cuts into the block when lowered and comes free when raised: %s', (fields) => {
    const lowered = meshes(fields, -0.02);
    expect(lowered.block.intersect(lowered.round).volume()).toBeGreaterThan(0.01);
    const raised = meshes(fields, 0.02);
    expect(raised.block.intersect(raised.round).volume()).toBe(0);
    expect(raised.block.minGap(raised.round, 1)).toBeCloseTo(0.02 * Math.sin(raised.s.groove.halfAngle), 3);
  });

  it.each(cases)('touches where the numbers say: %s', (fields) => {
    const { block, round, held, s } = meshes(fields, -0.01);
    const points = vertices(block.intersect(round));
    for (const side of [-1, 1]) {
      const own = points.filter(([x]) => side * x > 0);
      const mean = (k: 0 | 1): number => own.reduce((sum, p) => sum + p[k], 0) / own.length;
      // The sliver of overlap is symmetric about the contact: √(2·r·0.01) either way along the flank.
      expect(Math.abs(mean(0) - side * held.contactHalfWidth)).toBeLessThan(0.05);
      expect(Math.abs(mean(1) + s.groove.apexDepth - held.contactHeight)).toBeLessThan(0.05);
    }
  });
});

describe('a round cut on the carrier, as a mesh', () => {
  it.each([[20, 0], [20, 15], [35, 10], [60, 0], [12, 30]])('has face and heel to toe of a cut at %d° with the saw at %d°', (sharp, reading) => {
    const { solution } = cradle({ fields: `holds: [post], carrier: { sharpAngle: ${sharp}, sawReading: ${reading} }` });
    const c = solution.carrier!;
    const plan = carrierPlan(c);
    const along = (p: readonly number[]): number => p[0]! * plan.away.x + p[1]! * plan.away.y;
    const at = [plan.crossing.x, plan.crossing.y, 0] as const;
    const stick = cylinderSolid({ at: [...at], axis: [plan.away.x, plan.away.y, 0], from: -300, to: 100, radius: 16, facets });
    // The blade is the plane through its line, upright; what lies on the far side of it from the carrier goes.
    const cut = stick.trimByPlane([-Math.cos(c.sawReading), -Math.sin(c.sawReading), 0], 0);
    const face = vertices(cut).filter((p) => Math.abs(p[0] * Math.cos(c.sawReading) + p[1] * Math.sin(c.sawReading)) < 1e-3);
    const [first, last] = [Math.min(...face.map(along)), Math.max(...face.map(along))];
    // Single precision at 300 mm, and the prism's own facets, both stretched by the slope of the cut.
    const error = (sagitta(16, facets) + 5e-5) / Math.sin(c.sharpAngle) * 2;
    expect(Math.abs(last - first - c.heelToToe)).toBeLessThan(error);
    expect(Math.abs(Math.hypot(last - first, 32) - c.faceLength)).toBeLessThan(error);
    // Nearest point of the face to the fence: the toe, so far off it along the blade's line.
    const nearest = Math.min(...face.map((p) => p[1]));
    expect(Math.abs(nearest - c.toeToFence * Math.cos(c.sawReading))).toBeLessThan(error);
  });
});
