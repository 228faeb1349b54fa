import { stream } from '../support/any-spec.js';

/** Draws from one repeatable stream. */
export interface Random {
  /** 0 … 1 */
  readonly next: () => number;
  /** A whole number from 0 to `count` − 1. */
  readonly below: (count: number) => number;
  readonly pick: <T>(of: readonly T[]) => T;
  /** True in `share` of all cases. */
  readonly chance: (share: number) => boolean;
}

/** The same draws for the same seed and number, whatever was drawn before. */
export function randomFrom(seed: number, number: number): Random {
  const next = stream(1 + ((seed * 48_271 + number * 69_621) % 2_147_483_646));
  const below = (count: number): number => Math.min(count - 1, Math.floor(next() * count));
  return { next, below, pick: (of) => of[below(of.length)]!, chance: (share) => next() < share };
}
