import type { JigDrawing } from '../drawing/drawing.js';
import type { Finding } from '../errors/finding.js';
import type { SheetWishes } from '../spec/spec.js';
import type { Paper } from '../units/paper.js';
import type { Units } from '../units/units.js';

/** How a printer's measured bars stand to their nominal lengths: measured ÷ nominal, of the upright paper; 1 prints true. */
export interface Correction {
  readonly x: number;
  readonly y: number;
}

/** All that the sheets need to know of a piece. */
export interface LayoutRequest {
  readonly title: string;
  readonly revision: string;
  readonly digest: string;
  readonly units: Units;
  readonly paper: Paper;
  readonly wishes: SheetWishes;
  /** { x: 1, y: 1 } where nothing is corrected. */
  readonly correction: Correction;
  /** Name of the printer that the correction belongs to. */
  readonly printer?: string;
  readonly jigs: readonly JigDrawing[];
  readonly findings: readonly Finding[];
}

/**
 * The factors along the page's own x and y. A printer feeds a landscape page upright, so what it does along its feed
 * (the upright y) falls on the page's x.
 */
export const pageCorrection = (correction: Correction, landscape: boolean): Correction =>
  landscape ? { x: correction.y, y: correction.x } : correction;

/** Whether a correction changes anything. */
export const isCorrected = (correction: Correction): boolean => correction.x !== 1 || correction.y !== 1;
