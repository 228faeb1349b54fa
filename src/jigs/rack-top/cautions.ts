import type { Units } from '../../units/units.js';
import { practice } from './practice.js';

const manual = 'The machine’s manual and local rules come first; for anything people hang from, climb or sleep under, ask a qualified person.';
const dust = 'Extraction, and a respirator for MDF, oak and beech.';

/** Three to five lines a machine; the last is always the manual. Common practice. */
export const routerCautions = (units: Units): readonly string[] => [
  'Start from the starting pin; feed against the rotation; no hand-held climb cut.',
  `Hands ${practice(units).hands} from the cutter; small parts in a holder. Never above the speed marked on the bit.`,
  dust,
  'Stop the bit before lifting the template or clearing chips.',
  manual,
];

/** Cautions at the drill press. */
export const drillCautions: readonly string[] = [
  'Clamp the board, or stop it on the left of the column; a ledge on the downhill side of a tilted table.',
  'No gloves, no loose sleeves or hair; key out of the chuck.',
  'Back up the exit; ease off before the bit breaks through.',
  dust,
  manual,
];

/** Cautions where halves are joined. */
export const joinCautions: readonly string[] = [
  'Groove with the board flat on the bench and the router’s base on a wide support; feed against the rotation.',
  'Clamp lightly across the joint and flat over it; too much pressure starves it.',
  dust,
  manual,
];

/** For the strip of the pattern sheets. */
export const shortRouterCaution = (units: Units): string => `Template routing: starting pin, feed against the rotation, hands ${practice(units).hands} away.`;
/** The drill press in one line, for a pattern sheet's strip. */
export const shortDrillCaution = 'Canted holes: clamp the board, ledge downhill, backing under the exit.';
/** Dust in one line, for a pattern sheet's strip. */
export const shortDustCaution = 'Dust of MDF, oak, beech: extraction and a respirator.';
