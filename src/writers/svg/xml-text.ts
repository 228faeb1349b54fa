import { cleanText } from '../../drawing/clean-text.js';

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Words made fit for XML content or a quoted attribute, whatever they hold: cleaned, then the five signs of XML escaped. */
export const xmlText = (text: string): string => cleanText(text).replace(/[&<>"']/g, (sign) => entities[sign]!);
