import type { Options } from 'yargs';
import { parsePaper } from '../units/parse-paper.js';
import { papers, type Paper } from '../units/paper.js';
import type { SheetWishes, Spec } from '../spec/spec.js';
import type { Units } from '../units/units.js';
import { quote } from '../errors/quote.js';
import { choiceOption, lengthOption, nearestOf, textOption } from './arguments.js';
import type { Arguments } from './command.js';
import { usageError } from './usage-error.js';

/** `--paper`, shared by the commands that print. */
export const paperOption: Readonly<Record<string, Options>> = {
  paper: { string: true, requiresArg: true, describe: `Paper instead of the spec's: ${Object.keys(papers).join(', ')}, or its sides: 280x430mm, 11x17in` },
};

/** Options that override what a spec says of its sheets. */
export const sheetOptions: Readonly<Record<string, Options>> = {
  ...paperOption,
  margins: { string: true, requiresArg: true, describe: 'Margin round the live area, all sides' },
  overlap: { string: true, requiresArg: true, describe: 'How far neighbouring sheets overlap' },
  turn: { string: true, requiresArg: true, describe: 'auto, portrait or landscape' },
};

/** The paper that `--paper` names; undefined where it is absent. Refuses an unknown one with the nearest. */
export const paperFrom = (given: Arguments, units: Units): Paper | undefined => {
  const text = textOption(given, 'paper');
  if (text === undefined) return undefined;
  const paper = parsePaper(text, units);
  if (paper !== undefined) return paper;
  const names = Object.keys(papers);
  // Bare sides are in the spec's units; millimetres may be meant in a piece in inches.
  const inMillimetres = parsePaper(text, 'mm') === undefined ? {} : { nearest: `${text}mm` };
  throw usageError(`--paper: there is no ${quote(text)}`, { allowed: `${names.join(', ')}, or two sides with their unit, of 90 to 5080 mm (3 9⁄16″ to 200″), such as 280x430mm or 11x17in`, ...nearestOf(text, names), ...inMillimetres });
};

/** Papers sold in inches are measured in them. */
const unitsOf = (paper: Paper): Units => (['letter', 'legal', 'tabloid'].includes(paper.name) ? 'inch' : 'mm');

/** `--units`, where no spec says in which unit bars are ruled. */
export const unitsOption: Readonly<Record<string, Options>> = {
  units: { string: true, requiresArg: true, describe: 'inch or mm: how the bars are ruled; without it as the paper is sold' },
};

/** Paper and units where there is no spec: letter in inches unless said otherwise, A4 where millimetres are asked for. */
export const paperAndUnits = (given: Arguments): { readonly paper: Paper; readonly units: Units } => {
  const asked = choiceOption(given, 'units', ['inch', 'mm']);
  const paper = paperFrom(given, asked ?? 'mm') ?? papers[asked === 'mm' ? 'a4' : 'letter']!;
  return { paper, units: asked ?? unitsOf(paper) };
};

const wishesFrom = (given: Arguments, { sheets, units }: Spec): SheetWishes => {
  const margin = lengthOption(given, 'margins', units);
  const overlap = lengthOption(given, 'overlap', units);
  const turn = choiceOption(given, 'turn', ['auto', 'portrait', 'landscape']);
  return {
    ...sheets,
    ...(margin === undefined ? {} : { margins: { top: margin, right: margin, bottom: margin, left: margin } }),
    ...(overlap === undefined ? {} : { overlap }),
    ...(turn === undefined ? {} : { turn }),
  };
};

/** The spec's paper and sheet wishes with the command line's put over them. A bare number is in the spec's units. */
export const sheetsAsked = (given: Arguments, spec: Spec): { readonly paper: Paper; readonly wishes: SheetWishes } => ({
  paper: paperFrom(given, spec.units) ?? spec.paper,
  wishes: wishesFrom(given, spec),
});
