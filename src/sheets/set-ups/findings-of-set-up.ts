import type { SetUp } from '../../drawing/set-up.js';
import type { About, Finding } from '../../errors/finding.js';

/** Two values that do not say different things: where one is silent it agrees. */
const agree = <T>(a: T | undefined, b: T | undefined): boolean => a === undefined || b === undefined || a === b;

const share = (a: readonly string[] | undefined, b: readonly string[] | undefined): boolean =>
  a === undefined || b === undefined || a.some((part) => b.includes(part));

const concerns = ({ operation, end, parts }: About, setUp: SetUp): boolean =>
  operation === setUp.code && agree(end, setUp.end) && share(parts, setUp.parts);

/**
 * For each set-up of a jig the findings that are printed on it: those of its own operation, end and parts. A finding whose
 * operation has no page stands on the first, so that none is lost.
 */
export const findingsOfSetUps = (setUps: readonly SetUp[], findings: readonly Finding[]): readonly (readonly Finding[])[] => {
  const homeless = findings.filter(({ about }) => !setUps.some((setUp) => concerns(about, setUp)));
  return setUps.map((setUp, i) => findings.filter((f) => concerns(f.about, setUp) || (i === 0 && homeless.includes(f))));
};
