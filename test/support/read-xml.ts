/** An element of an XML text with its attributes and what is inside, entities undone. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

const undo = (text: string): string => {
  // XML 1.0, production 2: no control characters but tab and line ends, no lone surrogates, no U+FFFE and U+FFFF.
  if (/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF\p{Cs}]/u.test(text)) throw new Error('a character that XML forbids');
  if (/&(?!(amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);)/i.test(text) || text.includes('<')) throw new Error(`unescaped & or < in ${text.slice(0, 80)}`);
  return text.replace(/&(#x?)?(\w+);/g, (_, code: string | undefined, name: string) =>
    code === undefined ? entities[name]! : String.fromCodePoint(parseInt(name, code === '#' ? 10 : 16)));
};

const readAttributes = (source: string): Record<string, string> => {
  const found: Record<string, string> = {};
  const rest = source.replace(/\s+([\w:-]+)="([^"]*)"/g, (_, name: string, value: string) => {
    if (name in found) throw new Error(`attribute ${name} twice`);
    found[name] = undo(value);
    return '';
  });
  if (rest.trim() !== '') throw new Error(`not attributes: ${rest.slice(0, 80)}`);
  return found;
};

/** Reads a well-formed XML text of elements and text (no comments, no doctype); throws at anything else. */
export const readXml = (source: string): XmlElement => {
  type Open = { name: string; attributes: Record<string, string>; children: XmlElement[]; text: string };
  const root: Open = { name: '', attributes: {}, children: [], text: '' };
  const stack = [root];
  const token = /<(\/?)([A-Za-z][\w:-]*)((?:[^<>"]|"[^"]*")*?)(\/?)>|([^<]+)/gy;
  let at = 0;
  while (at < source.length) {
    token.lastIndex = at;
    const found = token.exec(source);
    if (found === null) throw new Error(`not well-formed at ${at}: ${source.slice(at, at + 60)}`);
    at = token.lastIndex;
    const [, end, name, attributes, empty, text] = found;
    const top = stack.at(-1)!;
    if (text !== undefined) top.text += undo(text);
    else if (end === '/') {
      if (stack.length < 2 || top.name !== name) throw new Error(`</${name}> closes <${top.name}>`);
      stack.pop();
    } else {
      const element: Open = { name: name!, attributes: readAttributes(attributes!), children: [], text: '' };
      top.children.push(element);
      if (empty !== '/') stack.push(element);
    }
  }
  if (stack.length !== 1 || root.children.length !== 1) throw new Error('not one element, or one left open');
  return root.children[0]!;
};
