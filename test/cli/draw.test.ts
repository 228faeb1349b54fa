import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, lstatSync, mkdirSync, openSync, readFileSync, readdirSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { command, emptyFolder, roundwright, saddleSpec } from './run-command.js';

/** All files below a folder, in order, paths from there. */
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => !entry.isDirectory())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1)).sort();

const folderWith = (text: string, name = 'piece.yaml'): string => {
  const folder = emptyFolder();
  writeFileSync(join(folder, name), text);
  return folder;
};

test('draw writes the sheets, each jig at full size and the report into output/<spec name>', () => {
  const folder = folderWith(saddleSpec());
  const { code, out, err } = roundwright(folder, ['draw', 'piece.yaml']);
  expect([code, err]).toEqual([0, '']);
  expect(filesIn(join(folder, 'output/piece'))).toEqual(['brace-saddle-full.pdf', 'brace-saddle.svg', 'report.json', 'sheets-letter.pdf']);
  expect(filesIn(folder).filter((file) => !file.startsWith('output'))).toEqual(['piece.yaml']);
  expect(out).toContain('sheets-letter.pdf');
  expect(out).toMatch(/steel rule on both bars/);
});

test('report.json is what check --json prints', () => {
  const folder = folderWith(saddleSpec());
  roundwright(folder, ['draw', 'piece.yaml', '--out', 'x']);
  expect(readFileSync(join(folder, 'x/report.json'), 'utf8')).toBe(roundwright(folder, ['check', 'piece.yaml', '--json']).out);
});

test('the same spec gives the same bytes', () => {
  const folder = folderWith(saddleSpec());
  roundwright(folder, ['draw', 'piece.yaml', '--out', 'a', '--format', 'svg,pdf']);
  roundwright(folder, ['draw', 'piece.yaml', '--out', 'b', '--format', 'svg,pdf']);
  expect(filesIn(join(folder, 'a'))).toEqual(filesIn(join(folder, 'b')));
  for (const file of filesIn(join(folder, 'a'))) expect(readFileSync(join(folder, 'a', file)).equals(readFileSync(join(folder, 'b', file)))).toBe(true);
});

test('--format svg writes every sheet as SVG and no PDF', () => {
  const folder = folderWith(saddleSpec());
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--format', 'svg']).code).toBe(0);
  const files = filesIn(join(folder, 'x'));
  expect(files.filter((file) => file.endsWith('.pdf'))).toEqual([]);
  expect(files).toContain(join('sheets-letter', '01.svg'));
});

test('--paper goes over the spec’s paper', () => {
  const folder = folderWith(saddleSpec());
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--paper', 'a4']).code).toBe(0);
  expect(existsSync(join(folder, 'x/sheets-a4.pdf'))).toBe(true);
});

test('sheets of an earlier, longer run are taken away; other files stay', () => {
  const folder = folderWith(saddleSpec());
  mkdirSync(join(folder, 'x/sheets-letter'), { recursive: true });
  for (const name of ['99.svg', 'mine.svg', 'notes.txt']) writeFileSync(join(folder, 'x/sheets-letter', name), 'old');
  roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--format', 'svg']);
  const files = filesIn(join(folder, 'x/sheets-letter'));
  expect(files).not.toContain('99.svg');
  expect(files).toEqual(expect.arrayContaining(['mine.svg', 'notes.txt']));
});

test('--sheets writes those sheets again and nothing else', () => {
  const folder = folderWith(saddleSpec());
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--sheets', '2']).code).toBe(0);
  expect(filesIn(join(folder, 'x'))).toEqual(['sheets-letter-2.pdf']);
  const over = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--sheets', '2-999']);
  expect(over.code).toBe(2);
  expect(over.err).toMatch(/1 to \d+/);
});

test('--parts writes the sheets of those parts under their numbers in the set of the jigs asked for, and nothing else', () => {
  const folder = folderWith(saddleSpec());
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'all', '--format', 'svg']).code).toBe(0);
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--format', 'svg,pdf', '--parts', 'set-ups', '--jig', 'brace saddle']).code).toBe(0);
  const [all, some] = ['all', 'x'].map((out) => filesIn(join(folder, out, 'sheets-letter')));
  expect(filesIn(join(folder, 'x')).filter((file) => !file.startsWith('sheets-letter/'))).toEqual(['sheets-letter-set-ups.pdf']);
  expect(some!.length).toBeGreaterThan(1);
  expect(some!.length).toBeLessThan(all!.length);
  for (const file of some!) expect(readFileSync(join(folder, 'x/sheets-letter', file), 'utf8')).toBe(readFileSync(join(folder, 'all/sheets-letter', file), 'utf8'));
  expect(roundwright(folder, ['draw', 'piece.yaml', '--parts', 'tiles']).err).toContain('this set has no tiles');
});

test.each(['0', '3-2', 'x', '1,,2', '', '3A2'])('--sheets %j is refused', (sheets) => {
  expect(roundwright(folderWith(saddleSpec()), ['draw', 'piece.yaml', '--sheets', sheets]).code).toBe(2);
});

test('--jig draws only that jig; an unknown one is refused with the nearest', () => {
  const more = '  - { kind: saddle-cope, name: rail saddle, branch: 1, main: post, angle: 90 }\n';
  const folder = folderWith(saddleSpec({ more }));
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--jig', 'rail saddle']).code).toBe(0);
  expect(filesIn(join(folder, 'x'))).toEqual(['rail-saddle-full.pdf', 'rail-saddle.svg', 'report.json', 'sheets-letter.pdf']);
  const { code, err } = roundwright(folder, ['draw', 'piece.yaml', '--jig', 'rail sadle']);
  expect(code).toBe(2);
  expect(err).toContain('rail saddle');
});

test('a stopped jig is not drawn, the others are, and the exit code is 1', () => {
  const more = '  - { kind: saddle-cope, name: askew, branch: brace, main: post, angle: 64, offset: 7/8 }\n';
  const folder = folderWith(saddleSpec({ more }));
  const { code, out, err } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x']);
  expect([code, out.includes('STOP')]).toEqual([1, false]);
  expect(err).toContain('STOP: askew (line 7)');
  // However quiet, a stop is told.
  for (const option of ['--quiet', '--json']) expect([roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', option]).err]).toEqual([err]);
  expect(filesIn(join(folder, 'x'))).toEqual(['brace-saddle-full.pdf', 'brace-saddle.svg', 'report.json', 'sheets-letter.pdf']);
});

test('warns of letters that the lettering lacks, of narrow margins and of a printer measured on another paper, unless quiet', () => {
  const folder = folderWith(saddleSpec({ title: 'Brace 木 é on ☃ 木 post', more: 'sheets: { margins: 2 mm }\n' }).replace('name: brace saddle', 'name: 木 saddle'));
  expect(roundwright(folder, ['printer', 'office', '--x-bar', '176.4mm', '--y-bar', '239mm', '--paper', 'a4']).code).toBe(0);
  const args = ['draw', 'piece.yaml', '--out', 'x', '--printer', 'office'];
  const { code, err } = roundwright(folder, args);
  expect(code).toBe(0);
  const told = err.replaceAll(/\s+/g, ' ');
  expect(told).toContain('warning: piece.yaml:1:8: “Brace 木 é on ☃ 木 post”: the lettering has no “木”, “☃”; sheets show a box');
  expect(told).toContain('warning: piece.yaml:6:5: “木 saddle”: the lettering has no “木”;');
  expect(told).toContain('warning: “office” was measured on a4, and this is letter');
  expect(told).toContain('warning: Margins of 5⁄64″ (2 mm): few printers reach nearer');
  expect(err.match(/warning:/g)).toHaveLength(4);
  expect(roundwright(folder, [...args, '--quiet']).err).toBe('');
  expect(roundwright(folder, ['print-test', '--out', 'y', '--printer', 'office']).err).toContain('was measured on a4');
  expect(roundwright(folder, ['print-test', '--out', 'y', '--printer', 'office', '--paper', 'a4']).err).toBe('');
});

test('with every jig stopped only the report is written', () => {
  const folder = folderWith(saddleSpec({ jig: ', offset: 7/8' }));
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x']).code).toBe(1);
  expect(filesIn(join(folder, 'x'))).toEqual(['report.json']);
});

test('a spec with mistakes writes nothing', () => {
  const folder = folderWith('title: Bad\njigs: 7\n');
  expect(roundwright(folder, ['draw', 'piece.yaml']).code).toBe(2);
  expect(filesIn(folder)).toEqual(['piece.yaml']);
});

test('several specs get a folder each; two of one name are refused', () => {
  const folder = folderWith(saddleSpec({ title: 'A' }), 'a.yaml');
  writeFileSync(join(folder, 'b.yaml'), saddleSpec({ title: 'B' }));
  expect(roundwright(folder, ['draw', 'a.yaml', 'b.yaml', '--out', 'x', '--format', 'svg']).code).toBe(0);
  expect(readdirSync(join(folder, 'x')).sort()).toEqual(['a', 'b']);
  mkdirSync(join(folder, 'other'));
  writeFileSync(join(folder, 'other/a.yaml'), saddleSpec({ title: 'Other' }));
  const { code, err } = roundwright(folder, ['draw', 'a.yaml', 'other/a.yaml', '--out', 'y', '--format', 'svg']);
  expect(code).toBe(2);
  expect(err).toContain('over another spec');
});

test('standard input is named after its title', () => {
  const folder = emptyFolder();
  expect(roundwright(folder, ['draw', '-', '--format', 'svg'], saddleSpec({ title: 'Brace on post' })).code).toBe(0);
  expect(readdirSync(join(folder, 'output'))).toEqual(['brace-on-post']);
});

test('--json prints the report and nothing else; --quiet prints nothing', () => {
  const folder = folderWith(saddleSpec());
  const { out } = roundwright(folder, ['draw', 'piece.yaml', '--json']);
  expect(JSON.parse(out)).toMatchObject({ title: 'Brace on post' });
  expect(roundwright(folder, ['draw', 'piece.yaml', '--quiet'])).toEqual({ code: 0, out: '', err: '' });
});

const hostileNames = ['../../climb', '/etc/absolute', '..', 'con', 'nul.txt', 'C:\\windows', 'a/b\\c', '~/home', 'sheets-letter', 'report', '.hidden', `${'n'.repeat(79)}`];
test.each(hostileNames)('a jig named %j stays inside the folder, or is refused', (name) => {
  const folder = folderWith(saddleSpec().replace('brace saddle', JSON.stringify(name)));
  mkdirSync(join(folder, 'deep/er'), { recursive: true });
  const { code } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'deep/er/out', '--format', 'svg']);
  expect([0, 2]).toContain(code);
  const stray = filesIn(folder).filter((file) => file !== 'piece.yaml' && !file.startsWith(join('deep', 'er', 'out')));
  expect(stray).toEqual([]);
  if (code === 0) expect(filesIn(join(folder, 'deep/er/out')).every((file) => /^(sheets-letter\/\d\d|[\p{L}\p{N}_][\p{L}\p{N}._-]*)\.(svg|json)$/u.test(file))).toBe(true);
});

test('hostile text in title and name is drawn as text', () => {
  const folder = folderWith(saddleSpec({ title: JSON.stringify('</svg><script>alert(1)</script> & ) ]]> \u202e') }));
  const { code } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--format', 'svg,pdf']);
  expect([0, 2]).toContain(code);
  if (code === 0) expect(readFileSync(join(folder, 'x/brace-saddle.svg'), 'utf8')).not.toContain('<script>');
});

test('a folder that cannot be made ends with 3, path and reason', () => {
  const folder = folderWith(saddleSpec());
  writeFileSync(join(folder, 'taken'), 'a file');
  const { code, err } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'taken/x']);
  expect(code).toBe(3);
  expect(err).toMatch(/cannot write taken.x: a file stands where a folder is needed/);
  expect(readFileSync(join(folder, 'taken'), 'utf8')).toBe('a file');
});

test('a file that cannot be replaced ends with 3, and no part of it is left', () => {
  const folder = folderWith(saddleSpec());
  mkdirSync(join(folder, 'x/report.json'), { recursive: true });
  const { code, err } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x']);
  expect(code).toBe(3);
  expect(err).toContain('report.json: a folder of that name is in the way');
  expect(filesIn(join(folder, 'x')).filter((file) => file.includes('part'))).toEqual([]);
});

test.runIf(process.getuid !== undefined && process.getuid() !== 0)('a folder without permission ends with 3', () => {
  const folder = folderWith(saddleSpec());
  mkdirSync(join(folder, 'x'));
  chmodSync(join(folder, 'x'), 0o500);
  const { code, err } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x']);
  expect(code).toBe(3);
  expect(err).toContain('no permission');
});

test('a link in a file’s place is replaced, and what it led to is left alone', () => {
  const folder = folderWith(saddleSpec());
  mkdirSync(join(folder, 'x'));
  writeFileSync(join(folder, 'precious'), 'mine');
  symlinkSync('../precious', join(folder, 'x/report.json'));
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x']).code).toBe(0);
  expect(readFileSync(join(folder, 'precious'), 'utf8')).toBe('mine');
  expect(lstatSync(join(folder, 'x/report.json')).isSymbolicLink()).toBe(false);
});

test('a link in the place of the sheets’ folder is refused with 3', () => {
  const folder = folderWith(saddleSpec());
  mkdirSync(join(folder, 'x'));
  mkdirSync(join(folder, 'elsewhere'));
  symlinkSync('../elsewhere', join(folder, 'x/sheets-letter'));
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--format', 'svg']).code).toBe(3);
  expect(readdirSync(join(folder, 'elsewhere'))).toEqual([]);
});

test('a shop file is read from the spec’s folder; one that is not there is a mistake of the spec', () => {
  const folder = folderWith(saddleSpec().replace('units: inch', 'units: inch\nshop: our-shop.yaml'));
  const { code, err } = roundwright(folder, ['check', 'piece.yaml']);
  expect(code).toBe(2);
  expect(err).toContain('no such file');
  writeFileSync(join(folder, 'our-shop.yaml'), 'units: inch\nsaw: { maxReading: 60 }\n');
});

const rackJig = (name: string, length: number): string => `  - { kind: rack-top, ${name === '' ? '' : `name: ${name}, `}board: { length: ${length} mm, width: 200 mm, thickness: 27 mm } }\n`;

test('no two canvases share a file: a jig’s further page and another jig whose name looks like it', () => {
  const folder = folderWith(`title: Boards\npaper: a2\njigs:\n${rackJig('', 9000)}${rackJig('', 300)}${rackJig('rack top--2', 400)}`);
  const { code, err } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--quiet']);
  expect([code, err]).toEqual([0, '']);
  const canvases = filesIn(join(folder, 'x')).filter((file) => file.endsWith('.svg'));
  expect(canvases).toEqual(['rack-top--2.svg', 'rack-top-2.svg', 'rack-top-3.svg', 'rack-top.svg'].filter((name) => canvases.includes(name)));
  expect(canvases).toContain('rack-top--2.svg');
  // The board of 300 mm, by its own length.
  const widths = canvases.map((name) => Number(/width="([\d.]+)mm"/.exec(readFileSync(join(folder, 'x', name), 'utf8'))![1]));
  expect(widths.filter((width) => width < 600)).toHaveLength(2);
  expect(widths.filter((width) => width > 4000)).toHaveLength(2);
});

const full = '/dev/full';
test.skipIf(!existsSync(full))('what cannot be written to standard output is told, and ends with 3', () => {
  const folder = folderWith(saddleSpec());
  for (const args of [['check', 'piece.yaml', '--json'], ['check', 'piece.yaml'], ['--help'], ['draw', 'piece.yaml', '--json', '--out', 'x']]) {
    const { status, stderr } = spawnSync(process.execPath, [command, ...args], { cwd: folder, encoding: 'utf8', stdio: ['ignore', openSync(full, 'w'), 'pipe'] });
    expect([args, status, stderr]).toEqual([args, 3, 'roundwright: cannot write standard output: the disk is full\n']);
  }
  // Standard error is full: nothing can be said.
  expect(spawnSync(process.execPath, [command, 'draw', 'gone.yaml'], { cwd: folder, stdio: ['ignore', 'ignore', openSync(full, 'w')] }).status).toBe(3);
});

test('a reader that stops early is no loss', () => {
  const folder = folderWith(saddleSpec());
  const { status } = spawnSync('sh', ['-c', `"${process.execPath}" "${command}" check piece.yaml --json | head -c 10 > /dev/null`], { cwd: folder });
  expect(status).toBe(0);
});

test.skipIf(process.platform === 'win32')('a shop file that is a pipe, a device, a folder or not text is refused at once, at the spec’s own line', () => {
  const folder = emptyFolder();
  expect(spawnSync('mkfifo', [join(folder, 'pipe')]).status).toBe(0);
  symlinkSync('/dev/zero', join(folder, 'zero'));
  mkdirSync(join(folder, 'folder'));
  writeFileSync(join(folder, 'latin'), Buffer.from([0x75, 0xe4, 0x0a]));
  writeFileSync(join(folder, 'long'), `units: mm\n${'#'.repeat(1024 * 1024)}`);
  writeFileSync(join(folder, 'secret'), 'root:x:0:0\n');
  for (const [shop, reason] of [['pipe', 'no regular file'], ['zero', 'no regular file'], ['folder', 'a folder'], ['latin', 'not text in UTF-8'], ['long', 'longer than 1024 KiB'], ['secret', 'is no shop file']] as const) {
    writeFileSync(join(folder, 'piece.yaml'), saddleSpec({ more: `shop: ${shop}\n` }));
    const { code, err } = roundwright(folder, ['check', 'piece.yaml']);
    expect([shop, code]).toEqual([shop, 2]);
    expect(err).toContain(reason);
    expect(err).not.toContain('root');
    expect(err).toMatch(shop === 'secret' ? /^secret: / : /^piece\.yaml:7:7: /);
  }
});

test('half files that an ended run left are swept, those of a run that may still write are not', () => {
  const folder = folderWith(saddleSpec());
  mkdirSync(join(folder, 'x'));
  for (const [name, hours] of [['.0123456789abcdef01234567.roundwright-part', 2], ['.fedcba9876543210fedcba98.roundwright-part', 0], ['.42.roundwright-part', 2], ['.mine.roundwright-part', 2]] as const) {
    writeFileSync(join(folder, 'x', name), 'half');
    const then = Date.now() / 1000 - 3600 * hours;
    utimesSync(join(folder, 'x', name), then, then);
  }
  expect(roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', '--quiet']).code).toBe(0);
  expect(readdirSync(join(folder, 'x')).filter((name) => name.endsWith('part')).sort()).toEqual(['.fedcba9876543210fedcba98.roundwright-part', '.mine.roundwright-part']);
});

test('a refusal of the sheets stands at the spec’s own line, names the option that made it, or neither', () => {
  const folder = emptyFolder();
  const refused = (spec: string, args: readonly string[] = []) => {
    writeFileSync(join(folder, 'piece.yaml'), spec);
    const { code, err } = roundwright(folder, ['draw', 'piece.yaml', '--out', 'x', ...args]);
    expect([code, existsSync(join(folder, 'x'))]).toEqual([2, false]);
    return err;
  };
  expect(refused(saddleSpec({ more: 'sheets: { overlap: 4 in }\n' }))).toMatch(/^piece\.yaml:7:20: sheets\.overlap/);
  expect(refused(saddleSpec({ more: 'sheets:\n  margins: { left: 3 in, right: 3 in }\n' }))).toMatch(/^piece\.yaml:8:12: sheets\.margins/);
  expect(refused(saddleSpec().replace('paper: letter', 'paper: { width: 4 in, height: 7 in }'))).toMatch(/^piece\.yaml:3:8: paper/);
  expect(refused(saddleSpec(), ['--overlap', '4 in'])).toMatch(/^piece\.yaml: --overlap/);
  expect(refused(saddleSpec({ more: 'sheets: { overlap: 0.5 in }\n' }), ['--overlap', '4 in'])).toMatch(/^piece\.yaml: --overlap/);
  expect(refused(saddleSpec(), ['--margins', '4 in'])).toMatch(/^piece\.yaml: --margins/);
  writeFileSync(join(folder, 'piece.yaml'), saddleSpec({ more: 'sheets: { margins: { left: 3 in, right: 3 in } }\n' }));
  expect(roundwright(folder, ['check', 'piece.yaml']).err).toMatch(/^piece\.yaml:7:20: sheets\.margins/);
});
