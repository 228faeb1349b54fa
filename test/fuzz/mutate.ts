import type { Entry } from './piece.js';
import type { Random } from './random.js';
import { nearFigure, wildText, wildValue } from './wild-values.js';

interface Place {
  readonly holder: Entry | unknown[];
  readonly key: string | number;
}

const placesIn = (value: unknown): readonly Place[] => {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Entry | unknown[];
  return Object.keys(holder).flatMap((key): readonly Place[] => [{ holder, key }, ...placesIn((holder as Entry)[key])]);
};

const get = ({ holder, key }: Place): unknown => (holder as Entry)[key];
const set = ({ holder, key }: Place, value: unknown): void => {
  (holder as Entry)[key] = value;
};

/** The piece with up to three figures at or beside a limit. */
export const near = (spec: Entry, random: Random): Entry => {
  const copy = structuredClone(spec);
  const figures = placesIn(copy).filter((place) => /^-?[\d.]+\s*(?:mm|in|°)?$/.test(String(get(place))));
  for (let n = 0; n <= random.below(3) && figures.length > 0; n += 1) {
    const place = random.pick(figures);
    set(place, nearFigure(get(place), random));
  }
  return copy;
};

/** The piece with up to three parts replaced, dropped, copied or renamed. */
export const wild = (spec: Entry, random: Random): Entry => {
  const copy = structuredClone(spec);
  for (let n = 0; n <= random.below(3); n += 1) {
    const places = placesIn(copy);
    if (places.length > 0) change(random.pick(places), places, random);
  }
  return copy;
};

const change = (place: Place, places: readonly Place[], random: Random): void => {
  const { holder, key } = place;
  const act = random.below(10);
  if (act < 6) set(place, wildValue(random));
  else if (act === 6) delete (holder as Entry)[key];
  else if (act === 7) set(place, structuredClone(get(random.pick(places))));
  else if (act === 8 && !Array.isArray(holder)) holder[wildText(random)] = get(place);
  else if (Array.isArray(holder))
    holder.push(...Array.from({ length: random.pick([1, 5, 300, 2500]) }, () => structuredClone(holder[0])));
  else
    set(
      place,
      Array.from({ length: random.pick([1, 3, 50]) }, () => structuredClone(get(place))),
    );
};

const pieces = [
  '&a ',
  '*a',
  '!!set ',
  '!!str ',
  '<<: ',
  '- ',
  '? ',
  ': ',
  '{',
  '}',
  '[',
  ']',
  '|',
  '>',
  '#',
  '"',
  "'",
  '\t',
  '\r\n',
  '\u0000',
  '\ufeff',
  '%YAML 1.1\n',
  '---\n',
  '...\n',
  '1e999',
  '\\u0000',
  'ÿ',
  '\u2028',
];

/** The text with up to eight bytes, or runs of them, changed; sometimes no text in UTF-8 any more. */
export const bytes = (text: string, { below, pick, chance }: Random): Uint8Array => {
  let data = Buffer.from(text, 'utf8');
  for (let n = 0; n <= below(8); n += 1) {
    const at = below(data.length + 1);
    const length = chance(0.7) ? below(4) : below(200);
    const put = pick<() => Uint8Array>([
      () => Buffer.from(pick(pieces)),
      () => Buffer.from([below(256)]),
      () => data.subarray(at, at + length),
      () => Buffer.alloc(0),
    ])();
    data = Buffer.concat([data.subarray(0, at), put, data.subarray(chance(0.5) ? at : at + length)]);
  }
  return data;
};

const letters = 'MmLlHhVvCcSsQqTtAaZz';
const numbers = [
  '0',
  '-0',
  '1e-6',
  '1e-12',
  '.5',
  '-.5',
  '5',
  '40',
  '80',
  '-80',
  '1e3',
  '1e8',
  '1e11',
  '1e300',
  '1e308',
  '1e400',
  'NaN',
  '+',
  '-',
  '.',
  ',',
  '1 1',
  '00',
  '1..2',
  '01',
];
const sound = [
  'M0 0 C30 -20 60 -20 90 0 L70 50 Q45 60 20 50 Z',
  'M0 0H80V40H0Z',
  'M0 20A40 20 0 1 1 80 20A40 20 0 1 1 0 20Z',
  'M0 0h80v40h-80z m10 10h20v20h-20z',
  'M0 0S20 30 40 0T80 0V60H0Z',
  'M0 0L80 0L80 40L0 40L0 0',
  'M0 0H80V40A10 10 0 0 0 60 40Q50 10 30 40T0 40Z',
];

const tokensOf = (data: string): readonly string[] => data.match(/[A-Za-z]|-?[\d.]+/g) ?? [];
const isNumber = (token: string): boolean => /\d/.test(token);

/** One figure for another: the data stay path data, or nearly. */
const otherFigure = (tokens: readonly string[], { pick, next }: Random): readonly string[] => {
  const at = pick(tokens.flatMap((token, i) => (isNumber(token) ? [i] : [])));
  return tokens.with(
    at,
    pick([
      pick(numbers),
      (next() * 120 - 20).toFixed(2),
      String(Number(tokens[at]) * (1 + 1e-9)),
      String(Math.round(next() * 100)),
    ]),
  );
};

/** A token changed, dropped, doubled or put in. */
const otherToken = (tokens: readonly string[], { below, pick, chance }: Random): readonly string[] => {
  const at = below(tokens.length);
  const put = pick<() => readonly string[]>([
    () => [pick(numbers)],
    () => [pick([...letters])],
    () => [],
    () => [tokens[at]!, tokens[at]!],
    () => tokens.slice(0, below(tokens.length)),
  ])();
  return [...tokens.slice(0, at), ...put, ...tokens.slice(chance(0.7) ? at + 1 : at)];
};

/** Path data with up to four tokens changed, most of them figures. */
export const pathData = (random: Random): string => {
  let tokens = tokensOf(random.pick(sound));
  for (let n = random.below(4); n >= 0; n -= 1)
    tokens = random.chance(0.8) && tokens.some(isNumber) ? otherFigure(tokens, random) : otherToken(tokens, random);
  return tokens.join(random.pick([' ', ' ', ' ', ',']));
};
