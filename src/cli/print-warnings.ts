import { visible } from '../errors/quote.js';
import type { Arguments } from './command.js';
import type { Io } from './io.js';
import { wrapText } from './wrap-text.js';

/** Warnings on standard error, one a paragraph; none with `--quiet`. */
export const printWarnings = (warnings: readonly string[], given: Arguments, io: Io): void => {
  if (given['quiet'] === true) return;
  for (const warning of warnings) io.err(`${wrapText(`warning: ${visible(warning)}`, '')}\n`);
};
