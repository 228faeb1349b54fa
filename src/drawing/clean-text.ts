/** Characters that start a new line or column: set as one space, since a line of lettering is one line. */
const breaks = /[\t\n\v\f\r\u0085\u2028\u2029]+/gu;
/** Control and format characters (bidirectional marks, zero-width joiners, byte-order marks, tags): they have no shape. */
const shapeless = /[\p{Cc}\p{Cf}]/gu;
/** Half a surrogate pair, and the two code points that neither XML nor a PDF reader accepts. */
const broken = /[\p{Cs}\uFFFE\uFFFF]/gu;

/** What needs no cleaning; told apart first, since most words are this and the classes above are slow to compile. */
const plain = /^[\x20-\x7e]*$/;

/**
 * A user's words made safe to set on paper and to write into any file: composed (NFC), on one line, without control,
 * bidirectional or zero-width characters; what is no character at all becomes U+FFFD. Visible characters all stay.
 */
export const cleanText = (text: string): string =>
  plain.test(text) ? text : text.replace(broken, '\uFFFD').normalize('NFC').replace(breaks, ' ').replace(shapeless, '');
