/** Signs that would act on a terminal or turn the reading direction instead of being seen. */
const unseen = /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text made safe to show: control signs and bidi marks written as U+…, nothing dropped. */
export const visible = (text: string): string =>
  text.replace(unseen, (sign) => `‹U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}›`);

/** The first sign in a text that `visible` would spell out. */
export const firstUnseen = (text: string): string | undefined => text.match(unseen)?.[0];

/** A user's text in typographic quotes, made safe to show and cut to 60 letters. */
export function quote(text: string): string {
  const letters = [...text.slice(0, 200)];
  const cut = letters.length > 60 || text.length > 200;
  return `“${visible(letters.slice(0, 60).join(''))}${cut ? '…' : ''}”`;
}
