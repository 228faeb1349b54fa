import { expect, test } from 'vitest';
import type { SetUp } from '../../src/drawing/set-up.js';
import type { About, Finding } from '../../src/errors/finding.js';
import { findingsOfSetUps } from '../../src/sheets/set-ups/findings-of-set-up.js';
import { setUpJig } from './fixtures.js';

const [plain] = setUpJig().setUps as [SetUp];
const setUp = (code: string, more: Partial<SetUp> = {}): SetUp => ({ ...plain, code, ...more });
const finding = (code: string, about: Omit<About, 'jig'>): Finding => ({
  jig: 'j', code, severity: 'warn', measured: 1, limit: 2, about: { jig: 'j', ...about }, message: 'm', remedy: 'r', would: [],
});
const codes = (setUps: readonly SetUp[], findings: readonly Finding[]): string[][] =>
  findingsOfSetUps(setUps, findings).map((list) => list.map(({ code }) => code));

test('a finding goes to the page of its operation and to no other', () => {
  const pages = [setUp('make'), setUp('use')];
  expect(codes(pages, [finding('a', { operation: 'use' }), finding('b', { operation: 'make' })])).toEqual([['b'], ['a']]);
});

test('a finding about one end goes to that end’s page, one about neither to both', () => {
  const pages = [setUp('hollow', { end: 'near' }), setUp('hollow', { end: 'far' })];
  const found = [finding('n', { operation: 'hollow', end: 'near' }), finding('f', { operation: 'hollow', end: 'far' }), finding('w', { operation: 'hollow' })];
  expect(codes(pages, found)).toEqual([['n', 'w'], ['f', 'w']]);
});

test('an end is told by its code: a branch called “rail at the far end” keeps its near end’s warning', () => {
  const pages = [setUp('hollow', { end: 'near' }), setUp('hollow', { end: 'far' })];
  const near = { ...finding('n', { operation: 'hollow', end: 'near' }), message: 'The wing of rail at the far end is thin.' };
  expect(codes(pages, [near])).toEqual([['n'], []]);
});

test('a finding about parts goes to every page that works one of them', () => {
  const pages = [setUp('cut', { parts: ['slot-1', 'slot-2'] }), setUp('cut', { parts: ['slot-3'] })];
  expect(codes(pages, [finding('a', { operation: 'cut', parts: ['slot-2', 'slot-3'] }), finding('b', { operation: 'cut', parts: ['slot-1'] })])).toEqual([['a', 'b'], ['a']]);
});

test('a finding whose operation has no page stands on the first, so that none is lost', () => {
  expect(codes([setUp('a'), setUp('b')], [finding('x', { operation: 'not drawn' })])).toEqual([['x'], []]);
});
