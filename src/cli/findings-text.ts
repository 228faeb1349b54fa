import type { Finding } from '../errors/finding.js';
import { visible } from '../errors/quote.js';
import { wrapText } from './wrap-text.js';

const heads = { stop: 'STOP', warn: 'warning', note: 'note' } as const;
const order = ['stop', 'warn', 'note'] as const;

/** Findings for a reader, the gravest first: what is so and what would do. Empty where there are none. */
export const findingsText = (findings: readonly Finding[]): string =>
  [...findings]
    .sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
    .map(({ jig, severity, message, remedy }) => `${wrapText(`${heads[severity]}: ${visible(jig)}: ${message}`, '  ')}\n${wrapText(remedy, '      ')}\n`)
    .join('');
