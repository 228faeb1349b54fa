import * as z from 'zod';
import { expect, test } from 'vitest';
import { check } from '../../src/compile.js';
import { UserError, type Mistake } from '../../src/errors/user-error.js';
import { registered, type JigKind } from '../../src/jigs/jig.js';

interface Fields {
  readonly from?: string | undefined;
  readonly inner?: { readonly from: string } | undefined;
}

/** A kind that only looks at another jig. */
const toy = (kind: string): JigKind<Fields, { readonly seen: unknown }> => ({
  kind, summary: '', starter: '',
  schema: (f) => z.strictObject({
    from: f.text({ about: 'another jig' }).optional(), inner: z.strictObject({ from: f.text({ about: 'another jig' }) }).optional(),
  }),
  solve: ({ from, inner }, context) => {
    if (from === 'complain') return context.mistaken('from', { code: 'no-far-end', message: 'has no far end' });
    const seen = from !== undefined ? context.jig({ name: from, field: 'from', kind: 'hub' })
      : inner !== undefined ? context.jig({ name: inner.from, field: 'inner.from', kind: 'hub' }) : kind;
    return { solution: { seen } };
  },
  check: () => [], values: () => ({}),
  draw: () => { throw new Error('not drawn'); },
});

const mistakes = (jigs: string): readonly Mistake[] => {
  try {
    check({ text: `title: t\nunits: mm\njigs:\n${jigs}`, file: 'toy.yaml', kinds: { hub: registered(toy('hub')), rim: registered(toy('rim')) } });
    return [];
  } catch (error) {
    if (error instanceof UserError) return error.mistakes;
    throw error;
  }
};

test('a misspelt name of another jig points at the field’s own line and column, with the line and the nearest name', () => {
  const [wrong] = mistakes('  - { kind: hub, name: brace saddle }\n  - kind: rim\n    name: guide\n    from: brace sadle\n');
  expect(wrong).toMatchObject({
    code: 'unknown-jig', path: 'jigs[1].from', line: 7, column: 11, source: '    from: brace sadle', got: '“brace sadle”', nearest: 'brace saddle',
  });
});

test('so does one in a group of fields', () => {
  const [wrong] = mistakes('  - { kind: hub, name: brace saddle }\n  - kind: rim\n    inner:\n      from: brase saddle\n');
  expect(wrong).toMatchObject({ code: 'unknown-jig', path: 'jigs[1].inner.from', line: 7, column: 13, nearest: 'brace saddle' });
});

test('a jig of another kind is no answer, and the nearest of the right kind is named', () => {
  const [wrong] = mistakes('  - { kind: hub, name: saddle }\n  - { kind: rim, name: saddles }\n  - { kind: rim, from: saddles }\n');
  expect(wrong).toMatchObject({ code: 'jig-of-another-kind', path: 'jigs[2].from', line: 6, nearest: 'saddle' });
  expect(wrong!.message).toBe('names a rim, and a hub is wanted');
});

test('the only jig of the kind is named however unlike, and where there is none that is said', () => {
  expect(mistakes('  - { kind: hub, name: saddle }\n  - { kind: rim, from: wheel }\n')[0]).toMatchObject({ nearest: 'saddle' });
  expect(mistakes('  - { kind: rim, from: wheel }\n')[0]).toMatchObject({ allowed: 'the name of a hub; this piece has none' });
});

test('jigs that wait for each other are told at the field that closes the circle', () => {
  const found = mistakes('  - { kind: hub, name: a, from: b }\n  - { kind: hub, name: b, from: a }\n');
  expect(found.map(({ code, path }) => [code, path])).toContainEqual(['circular-reference', 'jigs[1].from']);
});

test('a mistake of a jig that others wait for is said once, at its own field', () => {
  const found = mistakes('  - { kind: hub, name: a, from: nosuch }\n  - { kind: rim, name: b, from: a }\n  - { kind: rim, name: c, from: a }\n  - { kind: rim, name: d, from: wheel }\n');
  expect(found.map(({ code, path, got }) => [code, path, got])).toEqual([['unknown-jig', 'jigs[0].from', '“nosuch”'], ['unknown-jig', 'jigs[3].from', '“wheel”']]);
});

test('a mistake that a jig finds in another stands at the jig’s own field', () => {
  expect(mistakes('  - { kind: rim, from: complain }\n')[0]).toMatchObject({ code: 'no-far-end', path: 'jigs[0].from', line: 4, column: 24 });
});

test('a sound reference is no mistake', () => {
  expect(mistakes('  - { kind: rim, from: saddle }\n  - { kind: hub, name: saddle }\n')).toEqual([]);
});
