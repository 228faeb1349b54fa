import { describe, expect, it } from 'vitest';
import { UserError } from '../../../src/errors/user-error.js';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import { outlineIssue, reachIssue } from '../../../src/jigs/rack-top/outline-field.js';
import { parseSpec } from '../../../src/spec/parse-spec.js';

const cutShort = 'M0 0 H80 V30 A10 10 0 0 1 70 40 H10';

describe('outlineIssue', () => {
  it.each(['M0 0H80V40H0Z', `${cutShort} A10 10 0 0 1 0 30 Z`, ' m 0,0 80,0 0,40 -80,0 z ', 'M0 0H80V40H0V0', 'M0 0L80 0 80 40 0 40 1e-4 0', 'M-5 0a5 5 0 0110 0 5 5 0 01-10 0z', 'M0 0.5.5.5 0 0Z'])(
    'passes %s', (data) => expect(outlineIssue(data)).toBeUndefined());

  it('tells how far the ends of an open outline are apart', () =>
    expect(outlineIssue(cutShort)).toMatchObject({ code: 'outline-open', got: 'begins at 0 0, ends at 10 40: 41.231 of its own units apart', allowed: expect.stringContaining('Z') }));

  it('refuses what crosses itself, with the place; what touches itself passes', () => {
    expect(outlineIssue('M0 0L10 6V0L0 6Z')).toMatchObject({ code: 'outline-crosses-itself', message: 'crosses itself at 5 3, in its own units' });
    // A loop of one cubic, and two arcs that cross.
    expect(outlineIssue('M0 0C40 40 -30 40 10 0V-9H0Z')?.code).toBe('outline-crosses-itself');
    expect(outlineIssue('M0 0A10 10 0 0 1 20 0A10 10 0 0 1 20 -12L0 -12Z')?.code).toBe('outline-crosses-itself');
    expect(outlineIssue('M0 0H10V5L5 0L0 5Z')).toBeUndefined();
  });

  it('an end that lies off its start by more than rounding is open, and by rounding is not', () => {
    expect(outlineIssue('M0 0H100V40H0V0.011')).toMatchObject({ code: 'outline-open' });
    expect(outlineIssue('M0 0H100V40H0V0.009')).toBeUndefined();
  });

  // Each place by the characters before it.
  it.each([
    [`${cutShort} A10 10 0 0 1 0`, 50, 'the data end; A takes 7'], ['M0 0 H80 V-', 10, 'a number is wanted; V takes 1'], ['M0 0 H80 V1.5e Z', 13, 'no command'],
    ['M0 0 L10 10 foo', 12, 'no command'], ['M0 0 10,,20 Z', 8, 'a number is wanted'], ['M0 0A5 5 0 2 1 3 3Z', 11, 'a 0 or a 1'], ['L0 0 Z', 0, 'begin with a move'],
    // The place with fifteen to seventeen signs before it, and with eleven to thirteen and more after it.
    ['M0 0 H9 foo H1 V1 H', 8, 'no command'], ['M0 0 H9 foo H1 V1 H2', 8, 'no command'], ['M0 0 H9 foo H1 V1 H23', 8, 'no command'], ['M0 0 H9 foo H1 V1 H234 V5', 8, 'no command'],
    ['M0 0 H10 V10 H5 foo H1', 16, 'no command'],
    ['M0 0 H10 V10 H 5 foo bar and', 17, 'no command'],
    ['M0 0 H10 V10H5 foo H1 V1 H2', 15, 'no command'],
    ['M0 0 H9 foo H1 V1 H', 8, 'no command'],
    ['M0 0 H9 foo H1 V1 ', 8, 'no command'],
    ['M0 0 H9 foo H1 V1', 8, 'no command'],
    ['M0 0 H9 foo H1 V', 8, 'no command'],
    // Handles of such a size add up to no number: the outline was flattened for ever.
    ['M0 0S20 30 1e308 0T80 0V60H0Z', 11, 'no number of a drawing is beyond 1000000000000'], ['M0 0H80V-2e12H0Z', 8, 'no number of a drawing'],
    ['', 0, 'begin with a move'], ['M0 0 H9, V9 Z', 9, 'a number is wanted'], ['M0 0 H9 V9 Z 3', 13, 'no command'], ['M0', 2, 'the data end; M takes 2 numbers at a time, and 1 stands'],
  ])('says where %j goes wrong', (data, before, words) => {
    const issue = outlineIssue(data)!;
    expect(issue.message).toContain(`from character ${before + 1} on`);
    expect(issue.message).toContain(words);
    expect(issue.got).toContain(`${data.slice(Math.max(0, before - 4), before)}‸${data.slice(before, before + 4)}`);
    // Sixteen signs before the place and twelve after it; an ellipsis where there are more.
    expect([issue.got!.startsWith('“…'), issue.got!.includes('…” (‸')]).toEqual([before > 16, before + 12 < data.length]);
  });

  it.each(['M0 0 H9 V9 Z M20 20 h9 v9 Z', 'M0 0', 'M0 0 H80 Z'])('refuses %s: it is not one outline that encloses something', (data) =>
    expect(outlineIssue(data)).toMatchObject({ code: 'not-an-outline', allowed: expect.stringContaining('such as') }));
});

describe('reachIssue', () => {
  it.each([
    ['M0 0H80V40C80 1e11 0 1e11 0 40Z', '1e11'], ['M0 0H80V40C80 1e8 0 1e8 0 40Z', '1e8'], ['M0 0H80V40A1e-6 10 0 0 1 0 40Z', '1e-6'], ['M0 0H80V40A1e9 1e9 0 0 1 0 40Z', '1e9'],
    ['M0 0H0.00001V40H0Z', '0.00001'], ['M0 0H80V-9e9H0Z', '-9e9'],
  ])('tells the number that makes %s larger than any board, at its character', (data, number) => {
    const before = data.indexOf(number);
    const issue = reachIssue(data, 120)!;
    expect(issue).toMatchObject({ code: 'outline-out-of-reach', message: expect.stringContaining(`the number at character ${before + 1} stands out`) });
    expect(issue.got).toContain(`‸${number}`);
    expect(outlineIssue(data)).toBeUndefined();
  });

  it('passes what a board of 50 m could hold, and arcs of up to 100 km', () => {
    // Scaled to 100 mm: 500 times as high as wide is 50 m.
    expect([reachIssue('M0 0H1V500H0Z', 100), reachIssue('M0 0H1V501H0Z', 100)?.code]).toEqual([undefined, 'outline-out-of-reach']);
    expect([reachIssue('M0 0H1V1A999999 999999 0 0 1 0 1Z', 100), reachIssue('M0 0H1V1A1000001 1000001 0 0 1 0 1Z', 100)?.code]).toEqual([undefined, 'outline-out-of-reach']);
    expect(reachIssue('M0 0H80V40H0Z', 50_000)).toBeUndefined();
  });
});

describe('a spec with outlines', () => {
  const text = (recesses: readonly string[]) => `title: Test\nunits: inch\njigs:\n  - kind: rack-top\n    name: top\n    board: { length: 30, width: 6, thickness: 1 }\n    recesses:\n${recesses.map((r) => `      - { ${r}, at: [15, 3], depth: 1/4 }\n`).join('')}`;
  const mistakesIn = (recesses: readonly string[]) => {
    try {
      parseSpec({ text: text(recesses), file: 'spec.yaml', kinds: { 'rack-top': rackTop } });
    } catch (error) {
      if (error instanceof UserError) return error.mistakes;
      throw error;
    }
    return [];
  };

  it('has every one of them that will not do told at its field, line and column, and a missing size with what to write', () => {
    const mistakes = mistakesIn([`path: "${cutShort}", size: 4`, 'path: "M0 0 H8 V8 Z"', 'path: "M0 0 H8 V", size: 3', 'path: "M0 0 H8 V8 Z", size: 3']);
    expect(mistakes.map((m) => [m.path, m.line])).toEqual([['jigs[0].recesses[0].path', 8], ['jigs[0].recesses[1].size', 9], ['jigs[0].recesses[2].path', 10]]);
    expect(mistakes[0]!.column).toBe(17);
    expect(mistakes.map((m) => m.code)).toEqual(['outline-open', expect.any(String), 'not-an-outline']);
    expect(mistakes[0]!.got).toContain('41.231');
    expect(mistakes[2]!.message).toContain('V takes 1 number');
    expect(mistakes[1]!.allowed).toContain('size: 6');
    const [wild] = mistakesIn(['path: "M0 0 H8 V8 C8 1e11 0 1e11 0 8 Z", size: 4']);
    expect([wild!.path, wild!.line, wild!.code]).toEqual(['jigs[0].recesses[0].path', 8, 'outline-out-of-reach']);
  });
});
