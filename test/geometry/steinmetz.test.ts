import { describe, it } from 'vitest';
import { integrate } from '../../src/geometry/integrate.js';
import { saddleHeight } from '../../src/geometry/saddle.js';
import { degrees, near } from './near.js';

/** Volume common to both rounds: twice the height of the saddle over every ring of the branch, the slope's part cancelling over a turn. */
const commonVolume = (main: number, branch: number, angle: number): number =>
  integrate((ring) => {
    const joint = { main, branch: ring, angle: degrees(angle), offset: 0 };
    return 4 * ring * integrate((phi) => saddleHeight(joint, phi) + saddleHeight(joint, Math.PI - phi), 0, Math.PI / 2, 1e-11);
  }, 0, branch, 1e-11);

describe('the saddle', () => {
  it('bounds the bicylinder’s 16/3 r³ (MathWorld, Steinmetz Solid, eq. 7)', () => near(commonVolume(1, 1, 90), 16 / 3, 1e-8));

  // v(k) ÷ sin θ with v(k) = (8/3)[(1 + k²)E(k) − (1 − k²)K(k)]: Hubbell, J. Res. NBS 69C (1965) 139–143; values computed.
  it.each([[0.1, 0.06275321], [0.25, 0.38960667], [0.5, 1.52003999], [0.75, 3.26414571], [0.9, 4.49991288]])(
    'bounds Hubbell’s volume for r/R %d at any angle', (ratio, volume) => {
      for (const angle of [90, 45, 20]) near(commonVolume(1, ratio, angle) * Math.sin(degrees(angle)), volume, 6e-9);
    });
});
