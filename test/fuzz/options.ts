import type { Random } from './random.js';
import { wildText } from './wild-values.js';

const papers = ['letter', 'legal', 'tabloid', 'a4', 'a3', 'a2', '280x430mm', '11in x 17in', '200x900mm', '5080x5080mm'];
const wrongPapers = ['a0', '1x1', '280x430', '', 'NaNxNaN', '100x150mm', '90x5080mm'];
const wrongLengths = ['0', '0 mm', '60mm', '-1', '1e9', 'x', '1/0', '100 mm'];

const some = ({ chance }: Random, share: number, words: () => readonly string[]): readonly string[] =>
  chance(share) ? words() : [];

/** Options as a maker gives them. */
export const soundOptions = (random: Random): readonly string[] => {
  const { pick } = random;
  return [
    ...some(random, 0.35, () => ['--paper', pick(papers)]),
    ...some(random, 0.15, () => ['--margins', pick(['4mm', '6mm', '0.5 in', '12 mm', '15mm'])]),
    ...some(random, 0.15, () => ['--overlap', pick(['12mm', '16 mm', '1 in', '25mm'])]),
    ...some(random, 0.2, () => ['--turn', pick(['auto', 'portrait', 'landscape'])]),
    ...some(random, 0.08, () => [
      '--x-bar',
      pick(['176.4 mm', '6-63/64 in', '170.6 mm']),
      '--y-bar',
      pick(['228.8 mm', '8-63/64 in', '260.2 mm']),
    ]),
    ...some(random, 0.05, () => ['--sheets', pick(['1', '1-2'])]),
    ...some(random, 0.1, () => ['--quiet']),
    ...some(random, 0.1, () => ['--json']),
  ];
};

/** Options that a slip of the hand, or an ill will, may give. */
export const wildOptions = (random: Random): readonly string[] => {
  const { pick } = random;
  return [
    ...some(random, 0.25, () => ['--paper', pick([...papers, ...wrongPapers])]),
    ...some(random, 0.12, () => ['--margins', pick(wrongLengths)]),
    ...some(random, 0.12, () => ['--overlap', pick(wrongLengths)]),
    ...some(random, 0.12, () => ['--turn', pick(['auto', 'portrait', 'landscape', 'sideways'])]),
    ...some(random, 0.06, () => [
      '--x-bar',
      pick(['176 mm', '0', '1e9', '-1']),
      '--y-bar',
      pick(['228 mm', '1', '1e308']),
    ]),
    ...some(random, 0.06, () => ['--jig', pick(['joint', 'top', 'guide', 'none', '', wildText(random)])]),
    ...some(random, 0.06, () => [
      '--sheets',
      pick(['1', '2-3', '1,1,1', '0', '99999', '3-1', 'A1', ',', '1-'.repeat(300)]),
    ]),
  ];
};
