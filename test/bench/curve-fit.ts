import { saddlePath } from '../../src/geometry/saddle-curve.js';
import type { SaddleJoint } from '../../src/geometry/saddle.js';

/** A small generator with a fixed start (mulberry32, public domain), so that every run fits the same saddles. */
const generator = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Joints over all that may be asked for: r/R from 0.05 to 1, the angle from 8° to 90°, half of them with any legal offset. */
const joints = (count: number): readonly SaddleJoint[] => {
  const random = generator(1);
  return Array.from({ length: count }, (_, index) => {
    const main = 10 + 40 * random();
    const branch = main * (0.05 + 0.95 * random());
    const angle = (8 + 82 * random()) * (Math.PI / 180);
    return { main, branch, angle, offset: index % 2 === 0 ? 0 : (main - branch) * (2 * random() - 1) };
  });
};

/** Saddles fitted in a second, after a second of warming up. */
export const saddlesPerSecond = (): number => {
  const sample = joints(2000);
  const fitFor = (ms: number): number => {
    const from = performance.now();
    let fitted = 0;
    while (performance.now() - from < ms) {
      for (let k = 0; k < 50; k++) saddlePath(sample[(fitted + k) % sample.length]!, { paperThickness: 0.1 });
      fitted += 50;
    }
    return (fitted / (performance.now() - from)) * 1000;
  };
  fitFor(1000);
  return fitFor(2000);
};
