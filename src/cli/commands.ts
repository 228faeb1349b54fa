import type { Options } from 'yargs';
import type { Command } from './command.js';
import { paperOption, sheetOptions, unitsOption } from './sheet-options.js';

const text = (describe: string): Options => ({ string: true, requiresArg: true, describe });
const flag = (describe: string): Options => ({ boolean: true, describe });

const json = flag('Print the numbers and findings as JSON, and nothing else, on standard output');

const quiet: Options = { ...flag('Print nothing but mistakes and stops'), alias: 'q' };

const printerOptions: Readonly<Record<string, Options>> = {
  'x-bar': text('The x-bar as it measures on your print, e.g. "6-15/16 in" or "176.4 mm"'),
  'y-bar': text('The y-bar as it measures on your print'),
};

/** All commands, in the order in which `--help` lists them. Each loads its own part of the program when it runs. */
export const commands: readonly Command[] = [
  {
    name: 'draw', usage: 'draw <spec..>', about: 'Draw the jigs of a spec at true size, ready to print',
    options: {
      out: { ...text('Folder to write into; without it output/<spec name>. With several specs, one folder each inside'), alias: 'o' },
      ...sheetOptions,
      format: text('svg, pdf or svg,pdf. Without it: sheets and full-size pages as PDF, each jig as SVG. svg also writes every sheet as SVG'),
      jig: text('Only this jig; may be repeated, or a list with commas'),
      sheets: text('Write only these sheets of the set again, under the same numbers: e.g. 3,5-7'),
      parts: text('Write only these parts of the set, each sheet under its number in the whole; patterns, tiles, set-ups, or several with commas. The scale check comes with them'),
      printer: text('Correct the scale for a printer that was measured with roundwright printer'),
      ...printerOptions,
      json,
      quiet,
    },
    examples: [
      ['roundwright draw rack.yaml', 'everything of one piece, into output/rack/'],
      ['roundwright draw rack.yaml --paper a3 --out plans', 'on A3, into plans/'],
      ['roundwright draw rack.yaml --jig "brace saddle"', 'only that jig'],
      ['roundwright draw rack.yaml --printer office', 'corrected for the printer measured as office'],
      ['roundwright draw rack.yaml --sheets 3,5-7', 'sheets 3, 5, 6 and 7 again, after a paper jam'],
      ['roundwright draw rack.yaml --parts patterns,tiles', 'what is cut out and taped, without the set-up sheets'],
      ['cat rack.yaml | roundwright draw -', 'the spec from standard input'],
    ],
    run: async (given, io) => (await import('./draw.js')).draw(given, io),
  },
  {
    name: 'check', usage: 'check <spec..>', about: 'Print the numbers and the findings of a spec; draw nothing',
    options: { json },
    examples: [
      ['roundwright check rack.yaml', 'a table, lengths in both units'],
      ['roundwright check rack.yaml --json', 'mm and degrees, for another program'],
    ],
    run: async (given, io) => (await import('./check.js')).check(given, io),
  },
  {
    name: 'print-test', usage: 'print-test', about: 'Draw one sheet with bars and a square, to see whether your printer is true',
    options: { out: { ...text('Folder to write into; without it output/print-test'), alias: 'o' }, ...paperOption, ...unitsOption, printer: text('Correct the scale for a printer measured before'), ...printerOptions, quiet },
    examples: [
      ['roundwright print-test', 'on letter paper'],
      ['roundwright print-test --paper a4', 'on A4'],
    ],
    run: async (given, io) => (await import('./print-test.js')).printTest(given, io),
  },
  {
    name: 'printer', usage: 'printer [name]', about: 'Keep what a printed test sheet measures, for draw --printer NAME; without measures, show what is kept',
    options: { ...printerOptions, diagonals: text('Both diagonals of the square as measured, from its top left and from its top right, e.g. "141.4 mm, 141.2 mm"'), ...paperOption, ...unitsOption },
    examples: [
      ['roundwright printer office --x-bar "6-15/16 in" --y-bar "8-63/64 in"', 'measured on the letter test sheet'],
      ['roundwright printer office --x-bar 179.5mm --y-bar 239.2mm --paper a4', 'measured on A4'],
      ['roundwright printer', 'the printers kept'],
    ],
    run: async (given, io) => (await import('./printer.js')).printer(given, io),
  },
  {
    name: 'new', usage: 'new <kind>', about: 'Print a commented spec to start from',
    options: {},
    examples: [['roundwright new saddle-cope > my-brace.yaml', 'a starter that draws as it stands']],
    run: async (given, io) => (await import('./new-spec.js')).newSpec(given, io),
  },
  {
    name: 'fields', usage: 'fields [kind]', about: 'List what may be written in a spec, with units, limits and defaults',
    options: {},
    examples: [
      ['roundwright fields', 'the spec itself, and the kinds of jig'],
      ['roundwright fields saddle-cope', 'the fields of one kind'],
    ],
    run: async (given, io) => (await import('./fields.js')).fields(given, io),
  },
];
