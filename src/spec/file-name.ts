/** Longest file name made, bytes in UTF-8: leaves room for endings under every file system's 255. */
const longestName = 120;

/** Device names on Windows, with or without an ending; and what this program writes beside the jigs. */
const taken = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]|conin\$|conout\$)(?:\.|$)|^report$|^sheets-/i;

/** Told apart first: the classes of all scripts' letters take milliseconds to compile, and most names need none. */
const ascii = /^[\x00-\x7f]*$/;

/**
 * A file name without folder or ending from a title or a name: letters, digits, `.`, `_` and `-` kept, every run of other
 * signs or of dashes one dash, dots and dashes at the ends dropped, lower case. What would be a device or one of this program's own
 * files (`report`, `sheets-…`) gets an underscore in front. Undefined where no letter or digit is left, or it is over 120 bytes.
 */
export function fileName(text: string): string | undefined {
  const lower = text.normalize('NFC').toLowerCase();
  const safe = (ascii.test(lower) ? lower.replace(/[^a-z0-9._-]+/g, '-') : lower.replace(/[^\p{L}\p{M}\p{N}._-]+/gu, '-'))
    .replace(/-*\.\.+-*/g, '-')
    .replace(/--+/g, '-')
    .replace(/^[-.]+|[-.]+$/g, '');
  if (!(/[a-z0-9]/.test(safe) || /[\p{L}\p{N}]/u.test(safe)) || Buffer.byteLength(safe) > longestName) return undefined;
  return taken.test(safe) ? `_${safe}` : safe;
}
