import type { Finding } from '../errors/finding.js';
import { GeometryError } from '../errors/geometry-error.js';
import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import { UserError, type Mistake } from '../errors/user-error.js';
import type { JigEntry, Spec } from '../spec/spec.js';
import type { AnyJigKind, Context, JigAsked, Outcome, Value, Values } from './jig.js';
import { findingInReport, valuesInReport } from './report-figures.js';

/** The kinds of jig that a spec may ask for, by the name in its `kind`. */
export type Kinds = Readonly<Record<string, AnyJigKind>>;

/** Numbers and findings of one jig, as `check --json` prints them: mm and degrees, to 1e-6. No values where its geometry is refused. */
export interface JigReport {
  readonly name: string;
  readonly kind: string;
  readonly values: Values;
  readonly findings: readonly Finding[];
}

/** A jig with its numbers, not yet drawn. */
export interface SolvedJig {
  readonly entry: JigEntry;
  readonly kind: AnyJigKind;
  readonly context: Context;
  readonly outcome: Outcome<unknown>;
  readonly report: JigReport;
}

/** A checked spec and what its jigs may look at. */
export interface SolveRequest {
  readonly spec: Spec;
  /** How errors name the spec. */
  readonly file: string;
  readonly kinds: Kinds;
  readonly drawingArea: Context['drawingArea'];
}

/** A mistake that only shows once the geometry is worked, at the place where the spec asks for the jig, or at its field. */
const mistakeAt = ({ jigs }: Spec, entry: JigEntry, code: string, help: Partial<Mistake> & Pick<Mistake, 'message'> & { field?: string }): Mistake => {
  const { field, ...rest } = help;
  const path = `jigs[${jigs.indexOf(entry)}]`;
  const place = field === undefined ? undefined : entry.textPlaces[field];
  return { code, path: field === undefined ? path : `${path}.${field}`, ...entry.position, ...place, ...rest };
};

/** Runs one step of a kind; geometry that cannot be becomes a mistake of the jig that asked for it. */
export const stepOf = <T>({ spec, file }: Pick<SolveRequest, 'spec' | 'file'>, entry: JigEntry, work: () => T): T => {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    throw new UserError(file, [mistakeAt(spec, entry, 'impossible-geometry', { message: `${quote(entry.name)} cannot be drawn: ${error.message}` })]);
  }
};

const checkFinite = (value: Value, path: string): void => {
  if (typeof value === 'object') return Object.entries(value).forEach(([key, inner]) => checkFinite(inner, `${path}.${key}`));
  if (!Number.isFinite(value)) throw new GeometryError('not-finite', `${path} comes out as ${value}`, {});
};

const reportOf = (entry: JigEntry, kind: AnyJigKind, context: Context, outcome: Outcome<unknown>): JigReport => {
  const { name } = entry;
  if ('refused' in outcome) return { name, kind: entry.kind, values: {}, findings: outcome.refused.map(findingInReport) };
  const values = kind.values(outcome.solution);
  checkFinite(values, 'values');
  return { name, kind: entry.kind, values: valuesInReport(values), findings: kind.check(outcome.solution, context).map(findingInReport) };
};

/** A name that leads to no jig of the kind wanted, with those that it could have been. */
const wrongJig = (spec: Spec, asking: JigEntry, asked: JigAsked, found: JigEntry | undefined): Mistake => {
  const names = spec.jigs.filter((jig) => jig !== asking && jig.kind === asked.kind).map((jig) => jig.name);
  const like = nearest(asked.name, names) ?? (names.length === 1 ? names[0] : undefined);
  return mistakeAt(spec, asking, found === undefined ? 'unknown-jig' : 'jig-of-another-kind', {
    field: asked.field, got: quote(asked.name),
    message: found === undefined ? 'names no jig of this piece' : `names a ${found.kind}, and a ${asked.kind} is wanted`,
    allowed: names.length === 0 ? `the name of a ${asked.kind}; this piece has none` : names.map(quote).join(', '),
    ...(like === undefined ? {} : { nearest: like }),
  });
};

/** Solves a jig, and before it those that it looks at; each once. */
const solver = (request: SolveRequest) => {
  const { spec, file, kinds, drawingArea } = request;
  const solved = new Map<string, SolvedJig>();
  const open: string[] = [];
  const lookUp = (asking: JigEntry, asked: JigAsked): unknown => {
    const { name, field } = asked;
    const entry = spec.jigs.find((jig) => jig.name === name);
    if (entry !== undefined && open.includes(name)) {
      const circle = `waits for itself: ${[...open, name].map(quote).join(' → ')}`;
      throw new UserError(file, [mistakeAt(spec, asking, 'circular-reference', { field, message: circle })]);
    }
    if (entry?.kind !== asked.kind) throw new UserError(file, [wrongJig(spec, asking, asked, entry)]);
    const { outcome } = solve(entry);
    return 'refused' in outcome ? undefined : outcome.solution;
  };
  const contextOf = (entry: JigEntry): Context => ({
    name: entry.name, units: spec.units, rounds: spec.rounds, shop: spec.shop, drawingArea,
    jig: (asked) => lookUp(entry, asked),
    mistaken: (field, { code, ...mistake }) => {
      throw new UserError(file, [mistakeAt(spec, entry, code, { field, ...mistake })]);
    },
  });
  const solveNew = (entry: JigEntry): SolvedJig => {
    const context = contextOf(entry);
    const kind = kinds[entry.kind]!;
    const outcome = stepOf(request, entry, () => kind.solve(entry.fields, context));
    return { entry, kind, context, outcome, report: stepOf(request, entry, () => reportOf(entry, kind, context, outcome)) };
  };
  const solve = (entry: JigEntry): SolvedJig => {
    const before = solved.get(entry.name);
    if (before !== undefined) return before;
    open.push(entry.name);
    try {
      const jig = solveNew(entry);
      solved.set(entry.name, jig);
      return jig;
    } finally {
      open.pop();
    }
  };
  return solve;
};

/**
 * All jigs of a spec solved and checked, in its order; a jig that another looks at is solved before it. Throws one `UserError`
 * with the mistakes of all jigs: a reference to no jig or in a circle, geometry that cannot be, a figure that is not finite.
 */
export const solveJigs = (request: SolveRequest): readonly SolvedJig[] => {
  const solve = solver(request);
  const mistakes: Mistake[] = [];
  const jigs = request.spec.jigs.flatMap((entry) => {
    try {
      return [solve(entry)];
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      mistakes.push(...error.mistakes.filter((mistake) => !mistakes.some((same) => same.path === mistake.path && same.message === mistake.message)));
      return [];
    }
  });
  if (mistakes.length > 0) throw new UserError(request.file, mistakes);
  return jigs;
};

/** Whether nothing stops a jig from being drawn. */
export const isDrawable = ({ outcome, report }: SolvedJig): boolean => !('refused' in outcome) && report.findings.every(({ severity }) => severity !== 'stop');
