// Writes all broken forms into one copy of the source, each behind a switch: the copy is built once, not once for each of them.

/** At the head of each file, on one line. A command that a test started says when it ends which switches it passed. */
const prelude = [
  'const mutants = (globalThis.mutants ??= { on: Number(process.env.MUTANT ?? 0), reached: new Set(), reports: process.env.MUTANTS_REACHED_BY });',
  'if (mutants.reports !== undefined && !mutants.registered) { mutants.registered = true; process.on("exit", () => ',
  'process.getBuiltinModule("node:fs").appendFileSync(process.env.MUTANTS_REACHED, ',
  'JSON.stringify({ file: mutants.reports, reached: [...mutants.reached] }) + "\\n")); }',
  'const isMutant = (id) => { mutants.reached.add(id); return mutants.on === id; };\n',
].join(' ');

const contains = (outer, inner) => outer.start <= inner.start && outer.end >= inner.end
  && outer.end - outer.start > inner.end - inner.start;

/** The source from `start` to `end` with its edits behind switches; `edits`: `{ id, start, end, to }`, nested or apart, never crossing. */
const written = (source, start, end, edits) => {
  const outermost = edits.filter((edit) => !edits.some((other) => contains(other, edit)));
  const ranges = [...new Map(outermost.map((edit) => [edit.start, edit])).values()].sort((a, b) => a.start - b.start);
  let text = '';
  let at = start;
  for (const range of ranges) {
    const switches = outermost.filter((edit) => edit.start === range.start).map(({ id, to }) => `isMutant(${id}) ? (${to}) : `);
    const whole = written(source, range.start, range.end, edits.filter((edit) => contains(range, edit)));
    text += `${source.slice(at, range.start)}(${switches.join('')}(${whole}))`;
    at = range.end;
  }
  return text + source.slice(at, end);
};

export const instrumented = (source, edits) => prelude + written(source, 0, source.length, edits);
