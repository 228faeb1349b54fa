import type { SaddleEnd } from './solve.js';

/**
 * The offset as seen with the main below and the branch going up from it, from the acute side: positive to the right. At the
 * far end that view stands on the head of the convention's, which has the far end up, and turns the sign.
 */
export function offsetOverMain({ name, joint }: Pick<SaddleEnd, 'name' | 'joint'>): number {
  return name === 'near' ? joint.offset : -joint.offset;
}

/** On which side an offset lies, in a word. */
export function sideOf(offset: number): 'right' | 'left' {
  return offset > 0 ? 'right' : 'left';
}
