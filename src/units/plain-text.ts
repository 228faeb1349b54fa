/** Signs that people and word processors write for the same thing, and the one that the readers of lengths and angles know. */
const alike: readonly (readonly [RegExp, string])[] = [
  [/[\u00bc-\u00be\u2150-\u215f]/g, ' $&'],
  [/[\u2044\u2215]/g, '/'],
  [/[\u2032\u2019\u2018\u02b9]/g, "'"],
  [/[\u2033\u201d\u201c\u02ba]|''/g, '"'],
  [/[\u2010-\u2014\u2212]/g, '-'],
  [/[\u00ba\u02da]/g, '°'],
];

/**
 * Text with vulgar fractions (⅜) spelt as 3/8 behind a space, prime marks and typographic quotes as ' and ", dashes and
 * the minus sign as -, every space as one plain space, in lower case.
 */
export function plainText(text: string): string {
  let plain = text;
  for (const [signs, plainSign] of alike) plain = plain.replace(signs, plainSign);
  // NFKC turns ⅜ into 3⁄8 with a fraction slash, and the narrow and no-break spaces into plain ones.
  return plain.normalize('NFKC').replace(/\u2044/g, '/').replace(/\s+/g, ' ').trim().toLowerCase();
}
