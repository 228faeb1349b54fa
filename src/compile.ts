import type { JigDrawing } from './drawing/drawing.js';
import type { Font } from './drawing/font.js';
import { UserError } from './errors/user-error.js';
import type { Context } from './jigs/jig.js';
import { isDrawable, solveJigs, stepOf, type JigReport, type Kinds, type SolvedJig } from './jigs/solve-jigs.js';
import type { LayoutRequest } from './sheets/layout-request.js';
import { pageFrame } from './sheets/page-frame.js';
import { reachOf } from './sheets/plan-tiles.js';
import { parseSpec } from './spec/parse-spec.js';
import type { Spec } from './spec/spec.js';

/** A spec to compile. */
export interface Source {
  readonly text: string;
  /** How errors name it, `-` for standard input; its last part names the output folder. */
  readonly file: string;
  /** The kinds that the spec may use: `kinds` of the register has all. */
  readonly kinds: Kinds;
  /** Reads a shop file that the spec names by its path; without it such a spec is refused. */
  readonly readFile?: (path: string) => string;
  /** Puts other wishes over the spec's own (its paper, its margins) before anything is solved. */
  readonly adjust?: (spec: Spec) => Spec;
}

/** What `check --json` prints and `report.json` holds. */
export interface Report {
  readonly title: string;
  readonly digest: string;
  readonly jigs: readonly JigReport[];
}

/** A spec with its numbers and findings: the first half of the way to paper, without a font. */
export interface Checked {
  readonly spec: Spec;
  readonly report: Report;
  /** Draws the jigs that no finding stops, in the spec's order: those named, or all. */
  readonly draw: (font: Font, only?: readonly string[]) => readonly JigDrawing[];
}

/** A spec on its way to the sheets. */
export interface Compiled extends Checked {
  readonly drawings: readonly JigDrawing[];
}

/** What one sheet holds of a drawing, upright. A paper too small for the furniture is a mistake of the spec. */
const areaOf = (file: string, { paper, sheets, units }: Spec): Context['drawingArea'] => {
  try {
    const { x, y } = reachOf(pageFrame(paper, sheets.margins, false, units), sheets.overlap);
    return { width: x.window, height: y.window };
  } catch (error) {
    throw error instanceof UserError && error.file === undefined ? new UserError(file, error.mistakes) : error;
  }
};

const drawJig = (source: Source, spec: Spec, { entry, kind, context, outcome }: SolvedJig, font: Font): JigDrawing => {
  if ('refused' in outcome) throw new Error(`${entry.name} is refused and cannot be drawn`);
  return stepOf({ spec, file: source.file }, entry, () => kind.draw(outcome.solution, context, font));
};

/**
 * Text to numbers and findings: parses the spec, solves and checks its jigs. Nothing is drawn and no font is needed.
 * Throws `UserError` with all mistakes of the spec, or, once it reads well, of all its jigs.
 */
export const check = (source: Source): Checked => {
  const read = parseSpec(source);
  const spec = source.adjust?.(read) ?? read;
  const jigs = solveJigs({ spec, file: source.file, kinds: source.kinds, drawingArea: areaOf(source.file, spec) });
  return {
    spec,
    report: { title: spec.title, digest: spec.digest, jigs: jigs.map(({ report }) => report) },
    draw: (font, only) => jigs
      .filter((jig) => isDrawable(jig) && (only === undefined || only.includes(jig.entry.name)))
      .map((jig) => drawJig(source, spec, jig, font)),
  };
};

/**
 * The stages in order, from a spec's text to drawings in true millimetres. Pure: the same text gives the same result.
 *
 *     text ─parseSpec→ Spec ─solve→ numbers ─check→ findings ─draw→ JigDrawing[]     and from there to paper:
 *                                                 layoutRequest, layOut→ Sheet[] ─writeSvg, writePdf→ text, bytes
 *
 * A jig that a finding stops is in the report and not among the drawings. Throws `UserError` as `check` does.
 */
export const compile = (source: Source, font: Font): Compiled => {
  const checked = check(source);
  return { ...checked, drawings: checked.draw(font) };
};

/** What the sheets need to know of a compiled spec; to be printed without correction. */
export const layoutRequest = ({ title, revision, digest, units, paper, sheets }: Spec, report: Report, jigs: readonly JigDrawing[]): LayoutRequest => ({
  title, revision, digest, units, paper, wishes: sheets, jigs, correction: { x: 1, y: 1 }, findings: report.jigs.flatMap((jig) => jig.findings),
});
