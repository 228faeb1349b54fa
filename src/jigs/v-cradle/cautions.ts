const manual = 'The machine’s manual and local rules come first; for anything people hang from, climb or sleep under, ask a qualified person.';

/** Three to five lines a machine; the last is always the manual. Common practice. */
export const sawCautions: readonly string[] = [
  'Saw the V in a wide, long board first and rip the block from it afterwards.',
  'Blade leaning away from the fence, the off-cut free: nothing between it and the fence. Stand out of its line.',
  'Featherboard down and in; push block; let the blade stop before taking the off-cut away.',
  manual,
];

/** Cautions where a held round is drilled. */
export const drillCautions: readonly string[] = [
  'Clamp or stop the block on the left of the column; clamp the round down in it. A ledge downhill of a tilted table.',
  'No gloves, no loose sleeves or hair; key out of the chuck.',
  'Back up the exit; ease off before the bit breaks through.',
  'On a band saw, too, a round always lies in a V or is clamped: loose it rolls into the blade.',
  manual,
];

/** Cautions where a carrier holds the stock at the saw. */
export const carrierCautions: readonly string[] = [
  'Clamp the round in the carrier and the carrier to fence and table. Hands 150 mm (6 in) from the blade’s line.',
  'Cut the long blank first, to length last; support the toe, and never a short piece held by hand.',
  'No stop beyond the blade: the off-cut lies free. Let the blade stop before anything is moved.',
  'Extraction, and a respirator for MDF, oak and beech.',
  manual,
];

/** For the strip of the pattern sheets. */
export const shortCautions: readonly string[] = [
  'V on the table saw: wide board first, off-cut free, featherboard.',
  'Clamp the round in the V before drilling or sawing.',
];

/** The carrier in one line, for a pattern sheet's strip. */
export const shortCarrierCaution = 'Steep cut: clamp round and carrier; hands 150 mm (6 in) from the blade.';
