import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatMistakes } from '../../src/errors/format-mistakes.js';
import { UserError } from '../../src/errors/user-error.js';
import { parseSpec, type SpecSource } from '../../src/spec/parse-spec.js';
import type { Spec } from '../../src/spec/spec.js';
import { toyKinds } from './toy-kinds.js';

const parse = (text: string, more: Partial<SpecSource> = {}): Spec => parseSpec({ text, file: 'work/paddle rack.yaml', kinds: toyKinds, ...more });

const codes = (text: string, more: Partial<SpecSource> = {}): readonly string[] => {
  try {
    parse(text, more);
    return [];
  } catch (error) {
    if (error instanceof UserError) return error.mistakes.map(({ code, file }) => (file === undefined ? code : `${file}: ${code}`));
    throw error;
  }
};

const jig = '{ kind: collar, on: 20, angle: 30 }';
const piece = (extra: string): string => `title: Rack\n${extra}\njigs: [${jig}]\n`;

describe('parseSpec reads a whole spec', () => {
  const spec = parse(`title: Paddle rack
revision: 3
units: inch
rounds:
  post: 1-3/8
  brace: { diameter: 1⅛", length: 3' 2-1/2", from: square }
jigs:
  - { kind: collar, name: Brace saddle, on: brace, angle: 24, pin: { diameter: 9.5 mm } }
  - kind: collar
    on: post
    angle: 1:4
    offset: -1/4
  - { kind: collar, on: 2, angle: 90° }
`);

  it('into mm and radians, rounds looked up, defaults filled in', () => {
    const brace = { name: 'brace', diameter: 28.575, length: 977.9, from: 'square' };
    expect(spec.rounds).toEqual({ post: { name: 'post', diameter: 34.925 }, brace });
    expect(spec.jigs.map(({ fields }) => fields)).toEqual([
      { on: brace, angle: (24 * Math.PI) / 180, offset: 0, pin: { diameter: 9.5, through: false } },
      { on: { name: 'post', diameter: 34.925 }, angle: Math.atan(1 / 4), offset: -6.35 },
      { on: { name: 'Ø 2″', diameter: 50.8, unnamed: true }, angle: Math.PI / 2, offset: 0 },
    ]);
  });

  it('with names, numbered where a kind is repeated, and places', () => {
    expect(spec.jigs.map(({ name }) => name)).toEqual(['Brace saddle', 'collar', 'collar 2']);
    expect(spec.jigs.map(({ position }) => position)).toEqual([{ line: 8, column: 5 }, { line: 9, column: 5 }, { line: 13, column: 5 }]);
    expect(spec).toMatchObject({ name: 'paddle-rack', title: 'Paddle rack', revision: '3', units: 'inch' });
  });

  it('with letter for inches, A4 for millimetres, and margins of 10 mm', () => {
    expect(spec.paper.name).toBe('letter');
    const plain = parse(piece(''));
    expect(plain.paper).toEqual({ name: 'a4', width: 210, height: 297 });
    expect(plain.sheets).toEqual({ margins: { top: 10, right: 10, bottom: 10, left: 10 }, overlap: 12, turn: 'auto', seams: {} });
    expect(plain).toMatchObject({ revision: '', units: 'mm', shop: {}, rounds: {} });
  });

  it('with the sheets as wished', () => {
    const { sheets, paper } = parse(piece('paper: { width: 43 cm, height: 280 }\nsheets: { margins: { top: 18 }, overlap: 0, turn: landscape, seams: { collar: { along: [1 m, 2 m] } } }'));
    expect(sheets).toEqual({ margins: { top: 18, right: 10, bottom: 10, left: 10 }, overlap: 0, turn: 'landscape', seams: { collar: { along: [1000, 2000], across: [] } } });
    expect(paper).toEqual({ name: '280x430', width: 280, height: 430 });
    expect(parse(piece('sheets: { margins: 1/2 in }')).sheets.margins).toEqual({ top: 12.7, right: 12.7, bottom: 12.7, left: 12.7 });
  });

  it('through anchors and aliases, each used once or twice', () => {
    const { jigs } = parse('title: &t Rack\nrounds: { post: &d 32, rail: *d }\njigs:\n  - &j { kind: collar, on: post, angle: 30 }\n  - *j\n');
    expect(jigs.map(({ name }) => name)).toEqual(['collar', 'collar 2']);
  });
});

describe('the name of a spec', () => {
  it.each([
    ['work/paddle rack.yaml', 'paddle-rack'], ['C:\\jobs\\Stand.YML', 'stand'], ['-', 'rack'], ['....yaml', 'rack'], ['../con.yaml', '_con'], ['report.yaml', '_report'],
  ])('of %s is %s', (file, name) => {
    expect(parse(piece(''), { file }).name).toBe(name);
  });
});

describe('the digest', () => {
  it('is eight hex digits, the same for every sort of line end', () => {
    const text = piece('revision: 2');
    const { digest } = parse(text);
    expect(digest).toMatch(/^[0-9a-f]{8}$/);
    expect(parse(text.replaceAll('\n', '\r\n')).digest).toBe(digest);
    expect(parse(`\ufeff${text}`).digest).toBe(digest);
    expect(parse(`${text}\n`).digest).not.toBe(digest);
  });

  it('changes with the shop file', () => {
    const read = (kerf: string) => parse(piece('shop: shop.yaml'), { readFile: () => `units: mm\nsaw: { kerf: ${kerf} }` }).digest;
    expect(read('2.4')).not.toBe(read('3.2'));
  });
});

describe('a round', () => {
  it('cannot be called flat, which says in fields that there is none', () => {
    expect(codes(piece('rounds: { flat: 20 mm }'))).toEqual(['name-is-kept']);
    expect(parse(piece('rounds: { flat bar: 20 mm, Flat: 21 mm }')).rounds['flat bar']?.diameter).toBe(20);
  });
});

describe('tags', () => {
  it.each([['rounds: !!set { a }', '!!set'], ['rounds: !!omap [a: 1]', '!!omap'], ['revision: !!binary aGk=', '!!binary'], ['revision: !shout hi', '!shout']])('of %s are refused by their names', (line, tag) => {
    try {
      parse(piece(line));
      expect.unreachable();
    } catch (error) {
      const [mistake] = (error as UserError).mistakes;
      expect(`${mistake!.code} ${mistake!.message}`).toMatch(/^(?:tagged|not-yaml)/);
      if (mistake!.code === 'tagged') expect(mistake!.message).toContain(tag);
      expect(formatMistakes(error as UserError)).not.toContain('not a mapping');
    }
  });
  it('that say what a value is anyway are read', () => expect(parse(piece('revision: !!str 3')).revision).toBe('3'));
});

describe('text that looks like a number', () => {
  it.each([['1.10', '1.10'], ['007', '007'], ['1e3', '1e3'], ['0x1F', '0x1F'], ['.nan', '.nan'], ['.inf', '.inf'], ['-0', '-0'], ['3', '3'], ['"1.10"', '1.10'], ['1_000', '1_000']])('revision: %s is printed as it is written, and so are a title and a name', (written, text) => {
    const spec = parse(`title: ${written}\nrevision: ${written}\njigs:\n  - { kind: collar, name: ${written}, on: 20, angle: 30 }\n`);
    expect([spec.title, spec.revision, spec.jigs[0]!.name]).toEqual([text, text, text]);
  });
});

describe('a shop', () => {
  const shopText = 'units: inch\nsaw: { maxReading: 50, maxTilt: 47°, kerf: 1/8 }\nbits: [{ diameter: 3/8, usableLength: 4 }, { diameter: 10 mm, usableLength: 90 mm, point: 2 mm }]\n';

  it('is read from its file, its path taken from the spec’s folder, in its own units', () => {
    const asked: string[] = [];
    const { shop } = parse(piece('shop: ../shop.yaml'), { readFile: (path) => (asked.push(path), shopText) });
    expect(asked).toEqual(['shop.yaml']);
    expect(shop.saw).toEqual({ maxReading: (50 * Math.PI) / 180, maxTilt: (47 * Math.PI) / 180, kerf: 3.175 });
    // The cone of a 118° point: half the diameter over tan 59°.
    expect(shop.bits?.[0]?.point).toBeCloseTo(9.525 / 2 / Math.tan((59 * Math.PI) / 180), 12);
    expect(shop.bits?.[1]).toEqual({ diameter: 10, usableLength: 90, point: 2 });
  });

  it('may stand in the spec itself', () => {
    expect(parse(piece('shop: { router: { maxBitDiameter: 50 }, formRadii: [19, 1 in] }')).shop).toEqual({ router: { maxBitDiameter: 50 }, formRadii: [19, 25.4] });
  });

  it('with mistakes is refused under its own file’s name, together with the spec’s', () => {
    expect(codes(`titel: Rack\nshop: shop.yaml\njigs: [${jig}]\n`, { readFile: () => 'saw: { kerff: 3 }\nsaw: {}\n' })).toEqual([
      'unknown-key', 'work/shop.yaml: duplicate-key', 'work/shop.yaml: missing-key',
    ]);
    expect(codes(piece('shop: shop.yaml'), { readFile: () => 'units: mm\nsaw: [' })).toEqual(['work/shop.yaml: not-yaml']);
  });

  it('is read where its path is written as a number', () => {
    const asked: string[] = [];
    expect(parse(piece('shop: 123'), { readFile: (path) => (asked.push(path), 'units: mm\nsaw: { kerf: 3 }') }).shop).toEqual({ saw: { kerf: 3 } });
    expect(asked).toEqual(['work/123']);
  });

  it.each(['[', 'root:x:0:0:root:/root:/bin/sh\n', 'password: hunter2\n', '- saw\n', '', '<html>'])('is refused without a word of what stands in it where that is no shop file: %j', (text) => {
    try {
      parse(piece('shop: shop.yaml'), { readFile: () => text });
      expect.unreachable();
    } catch (error) {
      const { mistakes } = error as UserError;
      expect(mistakes.map(({ code, file }) => [code, file])).toEqual([['not-a-shop-file', 'work/shop.yaml']]);
      for (const word of ['root', 'hunter2', 'html']) expect(formatMistakes(error as UserError)).not.toContain(word);
    }
  });

  it('that cannot be read is a mistake at its path', () => {
    const readFile = () => {
      throw new Error('ENOENT: no such file');
    };
    expect(codes(piece('shop: shop.yaml'), { readFile })).toEqual(['cannot-read']);
    expect(codes(piece('shop: shop.yaml'))).toEqual(['cannot-read']);
  });
});

describe('hostile text', () => {
  it.each(['</svg>', 'a & b', 'end) Tj', "<script>alert('x')</script>", 'שלום', '漢字'])('%s is kept as it is in a title and a name', (text) => {
    const spec = parse(`title: ${JSON.stringify(text)}\njigs: [{ kind: collar, name: ${JSON.stringify(text)}, on: 20, angle: 30 }]\n`);
    expect(spec.title).toBe(text);
    expect(spec.jigs[0]?.name).toBe(text);
  });

  it('of 10 000 letters is refused', () => {
    expect(codes(`title: ${'x'.repeat(10_000)}\njigs: [{ kind: collar, name: ${'y'.repeat(10_000)}, on: 20, angle: 30 }]\n`)).toEqual(['text-too-long', 'text-too-long']);
  });

  it('of half a letter pair is refused', () => {
    expect(codes(`title: "a\\ud800b"\njigs: [${jig}]\n`)).toEqual(['unseen-sign']);
  });
});

describe('files beyond reason are refused at once', () => {
  const quick = (text: string): readonly string[] => {
    const start = performance.now();
    const found = codes(text);
    expect(performance.now() - start).toBeLessThan(4000);
    return found;
  };

  it('over 1 MiB', () => expect(quick(`title: Rack\n#${'x'.repeat(1024 * 1024)}`)).toEqual(['file-too-large']));
  it('nested a hundred thousand deep', () => expect(quick(`title: ${'['.repeat(100_000)}`).length).toBeGreaterThan(0));
  it('with twenty thousand keys', () => {
    const keys = Array.from({ length: 20_000 }, (_, n) => `k${n}: 1`).join('\n');
    expect(quick(`title: Rack\nrounds: {}\n${keys}\njigs: [${jig}]\n`)).toEqual(['too-many-entries']);
    expect(quick(`title: Rack\nrounds: {${'a,'.repeat(400_000)}}\njigs: [${jig}]\n`)).toEqual(['too-many-entries']);
    expect(quick(`title: Rack\njigs:\n${'  - {}\n'.repeat(10_000)}`)).toEqual(['too-many-entries']);
    expect(quick(`title: Rack\njigs:\n${'  - {}\n'.repeat(1500)}`)).toEqual(['list-length']);
  });
  it('with aliases that would make a billion', () => {
    const rows = Array.from({ length: 9 }, (_, n) => `k${n + 1}: &a${n + 1} [${Array(10).fill(`*a${n}`).join(', ')}]`);
    expect(quick(`a: &a0 [x]\n${rows.join('\n')}\n`)).toEqual(['anchors-multiply']);
  });
  it('with a hundred thousand aliases', () => {
    expect(quick(`title: &a Rack\nx:\n${'- *a\n'.repeat(100_000)}`)).toEqual(['too-many-entries']);
    expect(quick(`title: &a Rack\nx:\n${'- *a\n'.repeat(1900)}`)).toEqual(['anchors-multiply']);
  });
  it('with more path data than a machine works through in a few seconds, counted as often as an alias repeats it', () => {
    const path = 'M'.repeat(20_000);
    const many = (count: number): string => `title: Rack\njigs: [${jig}]\nrounds:\n${Array.from({ length: count }, (_, n) => `  a${n}: ${path}`).join('\n')}\n`;
    expect(quick(many(5))).not.toContain('too-much-text');
    expect(quick(many(6))).toEqual(['too-much-text']);
    expect(() => parse(many(6))).toThrow(expect.objectContaining({ mistakes: [expect.objectContaining({ path: 'rounds.a5', line: 9 })] }));
    expect(quick(`title: Rack\njigs: [${jig}]\nrounds: { a: &p ${path}, b: [*p, *p, *p, *p, *p] }\n`)).toEqual(['too-much-text']);
  });
  it('with more values than any piece has, counted as often as an alias repeats them', () => {
    const row = `[${'x,'.repeat(1500)}]`;
    expect(quick(`title: Rack\njigs: [${jig}]\nrounds: { ${Array.from({ length: 7 }, (_, n) => `a${n}: ${row}`).join(', ')} }\n`)).toEqual(['too-many-values']);
    expect(quick(`title: Rack\njigs: [${jig}]\nrounds: { a: &r ${row}, b: [${'*r, '.repeat(7)}] }\n`)).toEqual(['too-many-values']);
    expect(quick(`title: Rack\njigs: [${jig}]\nrounds: { a: &r ${row}, b: [${'*r, '.repeat(5)}] }\n`)).not.toContain('too-many-values');
  });
  it('with 201 jigs', () => expect(quick(`title: Rack\njigs:\n${`  - ${jig}\n`.repeat(201)}`)).toEqual(['list-length']));
});

describe('parseSpec of any text', () => {
  const lines = fc.constantFrom('title: Rack', 'units: inch', 'jigs:', `  - ${jig}`, 'rounds: { a: 1 }', '- x', '{', '}', ': ', '&a', '*a', '? x', 'shop:', '"', '---', '  x: y', 'paper: a4', '\t', '!!set {x}', '<<: *a', 'sheets: []', 'jigs: {}', 'rounds: null');
  const texts = fc.oneof(fc.string({ unit: 'binary' }), fc.array(lines, { maxLength: 8 }).map((parts) => parts.join('\n')));

  it('gives a spec or a UserError with at least one mistake, nothing else', () => {
    fc.assert(
      fc.property(texts, (text) => {
        try {
          return parse(text).title !== '';
        } catch (error) {
          if (!(error instanceof UserError)) throw error;
          return error.mistakes.length > 0 && error.mistakes.every(({ message, code }) => message !== '' && code !== '');
        }
      }),
      { numRuns: 1500 },
    );
  });
});
