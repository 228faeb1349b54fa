import type { Units } from '../units/units.js';
import { handsFromBlade, handsFromCutter } from './tools.js';

/** The machines that a set-up sheet may be for; what is done there decides the cautions, and no other list is printed. */
export type Machine = 'saw-a-round' | 'carrier' | 'saw-a-v' | 'saw-a-block' | 'drill-press' | 'drill-a-round' | 'hand-drill' | 'hand-router' | 'plunge-router' | 'join';

const manual = 'The machine’s manual and local rules come first; for anything people hang from, climb or sleep under, ask a qualified person.';
const dust = 'Eye protection; extraction, and a respirator for dust of MDF, oak and beech.';
const chuck = 'No gloves, no loose sleeves or hair; chuck key out before the motor starts.';

const distance = (mm: number, units: Units): string => {
  const inches = Math.round(mm / 25.4);
  return units === 'inch' ? `${inches}″ (${mm} mm)` : `${mm} mm (${inches}″)`;
};

const byMachine = (units: Units): Readonly<Record<Machine, readonly string[]>> => ({
  'saw-a-round': [
    'Clamp the round in a V or a carrier; never hold it free at a saw: it rolls.',
    `Cut from the long blank, support its far end; hands ${distance(handsFromBlade, units)} from the blade; let it stop before you reach in.`,
    dust,
  ],
  carrier: [
    `Clamp the round in the carrier and the carrier to fence and table, both sides of the cut. Hands ${distance(handsFromBlade, units)} from the blade’s line.`,
    'Never a short piece held by hand: leave the round long, support its far end, cut it to length last.',
    'No stop beyond the blade: the off-cut lies free. Let the blade stop before anything is moved.',
    dust,
  ],
  'saw-a-v': [
    'Guard and riving knife as the machine’s manual has them for a cut that does not go through; where it forbids the cut, make it at the band saw or by hand.',
    'Blade leaning away from the fence, what comes free lying free: nothing between it and the fence. Stand out of its line.',
    'Featherboard down and in; push block; let the blade stop before taking anything away.',
    dust,
  ],
  'saw-a-block': [
    `Cut V and sole in the long blank, clamped, to length last; hands ${distance(handsFromBlade, units)} from the blade. Never a short wedge over a tilted blade.`,
    'At a band saw the blank lies flat on the table, guide down to the work; let the blade stop before anything is moved.',
    `At the drill press clamp the blank, or stop it on the left of the column; back up the exit. ${chuck}`,
    dust,
  ],
  'drill-press': [
    'Clamp the work, or stop it on the left of the column; a ledge on the downhill side of a tilted table.',
    chuck,
    'Back up the exit; ease off before the bit breaks through.',
    dust,
  ],
  'drill-a-round': [
    'Clamp the cradle, or stop it on the left of the column, and clamp the round down in it; a ledge on the downhill side of a tilted table.',
    chuck,
    'Back up the exit; ease off before the bit breaks through.',
    dust,
  ],
  'hand-drill': [
    'Clamp block and work; never hold either by hand under the bit. A side handle on a strong drill: it kicks when the bit catches.',
    'Brace for breakthrough: ease off the pressure before the bit comes out.',
    'Eye protection; no gloves, no loose sleeves near the chuck; key out.',
  ],
  'hand-router': [
    'Board, template and pitch stick clamped; both hands on the router’s handles, the cutter clear of the wood at the start.',
    'Feed against the rotation; no hand-held climb cut. Never above the speed marked on the bit.',
    'Stop the bit before lifting the template or clearing chips.',
    dust,
  ],
  'plunge-router': [
    'Board and template clamped; both hands on the router’s handles. Plunge with the motor at speed, lift out before you stop it.',
    'Feed against the rotation, in passes; no climb cut. Never above the speed marked on the bit.',
    'Stop the bit before lifting the template or clearing chips.',
    dust,
  ],
  join: [
    'Groove with the board flat on the bench and the router’s base on a wide support; feed against the rotation.',
    `Hands ${distance(handsFromCutter, units)} from the cutter. Clamp lightly across the joint and flat over it; too much pressure starves it.`,
    dust,
  ],
});

/** The cautions of a machine, three to five lines, the manual last. Common practice. */
export function cautionsAt(machine: Machine, units: Units): readonly string[] {
  return [...byMachine(units)[machine], manual];
}

/** One line a machine for the strip of the pattern sheets. */
const short = (units: Units): Readonly<Record<Machine, string>> => ({
  'saw-a-round': `Clamp the round in a V or carrier at the saw: it rolls; hands ${distance(handsFromBlade, units)} away.`,
  carrier: `Steep cut: clamp round and carrier; hands ${distance(handsFromBlade, units)} from the blade.`,
  'saw-a-v': 'V on the table saw: long board first, guard and riving knife as the manual has them.',
  'saw-a-block': 'Sole and V: in the long blank, clamped, to length last.',
  'drill-press': 'Drill press: clamp the work, ledge downhill, backing under the exit.',
  'drill-a-round': 'Clamp the round in the V before drilling.',
  'hand-drill': 'Clamp block and work; brace for breakthrough.',
  'hand-router': 'Template routing by hand: all clamped, feed against the rotation, start clear of the wood.',
  'plunge-router': 'Recess: board and template clamped, in passes, lift out before you stop.',
  join: 'Dust of MDF, oak, beech: extraction and a respirator.',
});

/** The cautions of these machines in their short form, each once. */
export function shortCautionsAt(machines: readonly Machine[], units: Units): readonly string[] {
  return [...new Set(machines)].map((machine) => short(units)[machine]);
}
