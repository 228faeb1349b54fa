/** What a field's refusal says beyond its message; travels in a zod custom issue's `params`. */
export interface IssueParams {
  /** kebab-case, stable: `not-a-length`, `too-long`. */
  readonly code: string;
  readonly got?: string;
  readonly allowed?: string;
  readonly nearest?: string;
  /** The mistake is reported elsewhere already, and this is what follows from it: not to be reported again. */
  readonly follows?: true;
}

/** A refusal on its way to becoming a Mistake. */
export interface FieldIssue extends IssueParams {
  readonly message: string;
}

/** The issue as zod takes it, from a transform (`ctx.issues.push`) or a refinement (`ctx.addIssue`). */
export const customIssue = ({ message, ...params }: FieldIssue, input: unknown) => ({
  code: 'custom' as const,
  message,
  input,
  params: { mistake: params },
});

const words: Readonly<Record<string, string>> = { string: 'text', number: 'a number' };

/** What a value is, in a maker's words: `text`, `a list`, `true`, `nothing`. */
export function sortOf(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'boolean' ? String(value) : (words[typeof value] ?? 'a mapping');
}
