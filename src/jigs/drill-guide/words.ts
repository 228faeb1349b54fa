import type { Lettering } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import { wrapText } from '../../drawing/wrap-text.js';
import type { Font } from '../../drawing/font.js';
import { letter, type LetteringOptions } from '../../drawing/items.js';
import { point, type Point } from '../../geometry/point.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import type { DrillGuideSolution } from './solve.js';

/** What every pattern of one guide is drawn with. */
export interface Page {
  readonly s: DrillGuideSolution;
  readonly name: string;
  readonly units: Units;
  readonly font: Font;
}

/** Between base lines, in heights of a capital. */
const pitch = 1.6;

/** No title or instruction is wider, mm: it would push a small pattern off its sheet. */
const greatestWidth = 170;

/** A pattern's title and what to do with it, set under the pattern. */
export const titled = (at: Point, title: string, lines: readonly string[], font: Font): Lettering[] => [
  letter(at, fitText(title, greatestWidth, 3.5, font), { height: 3.5 }),
  ...lines.flatMap((text) => wrapText(text, greatestWidth, 2.5, font)).map((text, i) => letter(point(at.x, at.y + 5.2 + i * pitch * 2.5), text)),
];

/** A box in which lettering may stand, mm, and how it is turned. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/**
 * Lines of lettering in a room that lies with its top left corner at `at`; `upwards` turns the room so that its width runs up the
 * page from `at`. Of each line the wordings, longest first: the longest that fits is set, in 2.5 mm or else in 1.8; a line
 * for which there is no room is left out, for the pattern's title says the same.
 */
export const lettersIn = (at: Point, room: Room, lines: readonly (readonly string[])[], page: { font: Font; upwards?: boolean }): Lettering[] => {
  const { font, upwards = false } = page;
  const options: LetteringOptions = upwards ? { turn: -Math.PI / 2 } : {};
  let down = 0;
  return lines.flatMap((wordings) => {
    for (const height of [2.5, 1.8]) {
      const text = wordings.find((words) => font.width(words, height) <= room.width);
      if (text === undefined || down + height > room.height) continue;
      const base = down + height;
      down += pitch * height;
      return [letter(upwards ? point(at.x + base, at.y) : point(at.x, at.y + base), text, { ...options, height })];
    }
    return [];
  });
};

/** Room that a name gets at least on a face, mm. */
const shortName = 24;

/** What a cut-out part says of itself: the jig, its drill, its angle; of each the wordings, longest first. */
export const identity = ({ s, name, units, font }: Page): readonly (readonly string[])[] => [
  [name, fitText(name, shortName, 2.5, font)],
  [`drill ${lengthLabel(s.drill, units)}`, `Ø ${lengthLabel(s.drill, units)}`],
  [`${angleLabel(s.angle)} to the ${s.work.kind === 'flat' ? 'face' : 'axis'}`, angleLabel(s.angle)],
  ...(s.work.kind === 'flat' ? [] : [[`${s.work.round.name} ${lengthLabel(2 * s.work.radius, units)}`, s.work.round.name]]),
];
