// The library: the same steps as the command, for other programs. A bare number is mm, a bare angle radians.
//
//     import { compile, kinds, loadBundledFont, layOut, writePdf } from 'roundwright';
//     const font = loadBundledFont();
//     const { spec, report, drawings } = compile({ text, file: 'rack.yaml', kinds }, font);
//     const set = layOut(layoutRequest(spec, report, drawings), font);
//     const pdf = await writePdf(set.sheets(), { title: spec.title }, font);

export { check, compile, layoutRequest, type Checked, type Compiled, type Report, type Source } from './compile.js';
export type { JigReport, Kinds } from './jigs/solve-jigs.js';
export { kinds } from './jigs/index.js';
export type { AnyJigKind, Context, JigKind, Outcome, Value, Values } from './jigs/jig.js';

export { parseSpec, type SpecSource } from './spec/parse-spec.js';
export type { JigEntry, Round, SheetWishes, Spec } from './spec/spec.js';
export { jsonSchema } from './spec/json-schema.js';
export { describeFields, type FieldDescription } from './spec/describe-fields.js';

export { GeometryError } from './errors/geometry-error.js';
export { UserError, type Mistake } from './errors/user-error.js';
export { formatMistakes } from './errors/format-mistakes.js';
export type { About, Cure, Finding, Severity } from './errors/finding.js';

export { parseLength } from './units/parse-length.js';
export { parseAngle } from './units/parse-angle.js';
export { lengthLabel, fractionInches, millimetres, angleLabel } from './units/format.js';
export { papers, type Paper } from './units/paper.js';
export type { Units } from './units/units.js';
export { sayQuantity, sayWords, type Quantity, type Words } from './units/quantity.js';

export { loadFont } from './drawing/load-font.js';
export type { Font } from './drawing/font.js';
export type { Drawing, Item, JigDrawing, Lettering, Shape, Zone } from './drawing/drawing.js';
export type { Figure, FigureColumn, FigureTable, SetUp, Step } from './drawing/set-up.js';
export { lineStyles, type LineType } from './drawing/line-types.js';
export { loadBundledFont } from './cli/load-bundled-font.js';

export type { Arc, Cubic, Line, Path, Segment } from './geometry/path.js';
export type { Point } from './geometry/point.js';
export { saddleCurve, saddlePath } from './geometry/saddle-curve.js';
export { fitCurve } from './geometry/fit-curve.js';

export { layOut } from './sheets/lay-out.js';
export { fullSize } from './sheets/full-size.js';
export type { LayoutRequest, Correction } from './sheets/layout-request.js';
export type { Sheet } from './sheets/sheet.js';
export { writeSvg } from './writers/svg/write-svg.js';
export { writePdf, type PdfMeta } from './writers/pdf/write-pdf.js';
