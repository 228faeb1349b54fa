import type { Finding } from '../errors/finding.js';
import { visible } from '../errors/quote.js';
import type { JigEntry } from '../spec/spec.js';
import { wrapText } from './wrap-text.js';

const heads = { stop: 'STOP', warn: 'warning', note: 'note' } as const;
const order = ['stop', 'warn', 'note'] as const;

/** Findings for a reader, the gravest first: which jig, on which line of the spec, what is so and what would do. Empty where there are none. */
export const findingsText = (findings: readonly Finding[], jigs: readonly JigEntry[]): string => {
  const named = (name: string): string => {
    const entry = jigs.find((jig) => jig.name === name);
    return entry === undefined ? visible(name) : `${visible(name)} (line ${entry.position.line})`;
  };
  return [...findings]
    .sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
    .map(({ jig, severity, message, remedy }) => `${wrapText(`${heads[severity]}: ${named(jig)}: ${message}`, '  ')}\n${wrapText(remedy, '      ')}\n`)
    .join('');
};
