import type { Report } from '../compile.js';
import type { Finding } from '../errors/finding.js';
import { visible } from '../errors/quote.js';
import type { JigEntry } from '../spec/spec.js';
import { findingsText } from './findings-text.js';

/** What a draw came to, for its last words. */
export interface DrawnSummary {
  readonly report: Report;
  /** The jigs as the spec asks for them, for the lines that they stand on. */
  readonly jigs: readonly JigEntry[];
  readonly files: readonly string[];
  readonly sheets: number;
  readonly paper: string;
}

const isStop = ({ severity }: Finding): boolean => severity === 'stop';

/** What stops jigs of a report, for standard error: whatever else is kept quiet, these are told. Empty where nothing does. */
export const stopsText = ({ jigs: reports }: Report, jigs: readonly JigEntry[]): string => {
  const stopped = reports.filter(({ findings }) => findings.some(isStop)).length;
  if (stopped === 0) return '';
  return `${findingsText(reports.flatMap(({ findings }) => findings.filter(isStop)), jigs)}${stopped === 1 ? 'One jig is' : `${stopped} jigs are`} not drawn: see STOP above.\n`;
};

/** The last words of a draw: files, sheets, findings that stop nothing, and what to do before any wood is cut. */
export const drawnText = ({ report, jigs, files, sheets, paper }: DrawnSummary): string => {
  const findings = findingsText(report.jigs.flatMap((jig) => jig.findings.filter((finding) => !isStop(finding))), jigs);
  return [
    `${visible(report.title)}: ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} of ${paper}, spec ${report.digest}`,
    ...files.map((file) => `  ${file}`),
    ...(findings === '' ? [] : [findings.trimEnd()]),
    ...(sheets === 0 ? [] : ['Print at 100 %, true size, single-sided. Lay a steel rule on both bars of every sheet before cutting.']),
    '',
  ].join('\n');
};
