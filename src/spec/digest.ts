import { createHash } from 'node:crypto';

/** First 8 hex digits of the SHA-256 of the texts that a piece was drawn from, line ends normalised, so that one spec has one digest on every system. */
export function digest(texts: readonly string[]): string {
  // A sign that no text file holds parts the texts, so that moving a line from one to the next shows.
  const whole = texts.map((text) => text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n')).join('\0');
  return createHash('sha256').update(whole).digest('hex').slice(0, 8);
}
