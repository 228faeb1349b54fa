import type { Figure, Step } from '../../drawing/set-up.js';
import { leastSawBlank } from '../../shop/tools.js';
import { countOf, diameterOf, lengthOf, ratioOf, slopeOf, words, type Words } from '../../units/quantity.js';
import { soundPart } from './limits.js';
import type { BySide, Sawing } from './sawing.js';
import type { VCradleSolution } from './solve.js';

/** A piece in which the V is sawn: the block, or the carrier, whose groove stands nearer to one side. */
export interface Piece {
  readonly name: 'block' | 'carrier';
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** From the groove's middle to side A and to side B. */
  readonly sides: BySide;
  readonly sawing: Sawing;
}

/** The block as a piece to saw. */
export function blockPiece({ block, sawing }: VCradleSolution): Piece {
  return { name: 'block', length: block.length, width: block.width, height: block.height, sides: { a: block.width / 2, b: block.width / 2 }, sawing };
}

/** The carrier as a piece to saw; undefined where there is none. */
export function carrierPiece({ block, carrier, carrierSawing }: VCradleSolution): Piece | undefined {
  if (carrier === undefined || carrierSawing === undefined) return undefined;
  return {
    name: 'carrier', length: carrier.blankLength, width: carrier.width, height: block.height, sides: { a: carrier.seatSide, b: carrier.bladeSide }, sawing: carrierSawing,
  };
}

/** A figure for both passes, said once where they agree. */
const bySides = ({ a, b }: BySide): Words => (Math.abs(a - b) < 1e-9 ? [lengthOf(a)] : words`A ${lengthOf(a)}, B ${lengthOf(b)}`);

/** Fence, tilt and height for a piece's V. */
export function sawFigures({ groove }: VCradleSolution, { name, length, width, height, sawing }: Piece): readonly Figure[] {
  return [
    { code: 'number', label: ['Number to make'], value: [countOf(1)] },
    { code: 'size', label: [`${name === 'block' ? 'Block' : 'Carrier along side B, before its end is cut'}, length × width × height`], value: words`${lengthOf(length)} × ${lengthOf(width)} × ${lengthOf(height)}` },
    { code: 'blank', label: ['Blank to saw it in, to length last: at least'], value: [lengthOf(Math.max(leastSawBlank, length))] },
    { code: 'tilt', label: ['Blade from upright, passes 1 and 2'], value: [slopeOf(sawing.tilt)] },
    { code: 'height', label: ['Blade above the table, all passes'], value: [lengthOf(sawing.height)] },
    { code: 'fence', label: ['Fence to the blade’s near side, passes 1 and 2'], value: bySides(sawing.fence) },
    ...sawing.flatFences.map((fence, i): Figure => ({ code: `flat-fence-${i + 1}`, label: [`The same for the flat${i === 0 ? '' : ', then'}`], value: bySides(fence) })),
    { code: 'groove', label: ['Groove at the top; flat at the bottom'], value: words`${lengthOf(groove.width)}; ${groove.flat === 0 ? 'none' : lengthOf(groove.flat)}` },
    { code: 'kerf', label: [`Kerf${sawing.kerfAssumed ? ', assumed' : ''}`], value: [lengthOf(sawing.kerf)] },
  ];
}

/** What the flat is made with: upright passes, or a chisel where the blade is wider than the flat. */
const flatStep = ({ groove }: VCradleSolution, { sawing }: Piece): readonly Step[] => {
  if (groove.flat === 0) return [];
  return [sawing.flatFences.length > 0
    ? { code: 'flat', words: ['The flat: blade upright, same height, fence set anew; cut with A and then with B to the fence.'] }
    : { code: 'flat', words: words`The flat of ${lengthOf(groove.flat)} is narrower than the kerf: pare away the ridge that the two passes leave.` }];
};

/** How a measured round in the test cut shows what is out, and by how much. */
const testSteps = (s: VCradleSolution): readonly Step[] => {
  const [thick, thin] = [s.held[0]!, s.held.at(-1)!];
  return [
    {
      code: 'test-height',
      words: words`Test: lay ${thick.round.name} (${diameterOf(thick.round.diameter)}) in a cut of waste: its top stands ${lengthOf(thick.proud)} above the wood, ${lengthOf(s.block.height + thick.proud)} above its underside. For each 1 that it stands too high set the fence ${ratioOf(Math.tan(s.groove.halfAngle))} nearer to the blade; too low: as much away.`,
    },
    s.held.length < 2 ? { code: 'test-tilt', words: ['One flank touches and the other does not: the tilt is out; check it with a square set to the included angle.'] }
      : {
        code: 'test-tilt',
        words: words`Tilt: the tops of ${thick.round.name} and ${thin.round.name} differ by ${lengthOf(thick.proud - thin.proud)}. More: tilt further; less: tilt less. Walls unequal: the blank was not square or left the fence.`,
      },
  ];
};

/** Every allowance, in the order in which it was applied. */
const allowances = ({ groove, block, held }: VCradleSolution): Step => {
  const [thick, thin] = [held[0]!, held.at(-1)!];
  return {
    code: 'allowances',
    words: words`Allowances, in the order applied: 1. ${thick.round.name} ${diameterOf(thick.round.diameter)} as measured; 2. V ${lengthOf(thick.contactHeight / soundPart)} high, so that it touches ${ratioOf(100 * soundPart, 0)} % up the flanks; 3. less ${lengthOf(groove.flatHeight)} for the flat; 4. cut ${lengthOf(groove.depth)}; 5. air under ${thin.round.name} ${lengthOf(thin.gap)}; 6. floor ${lengthOf(block.floor)}. Nothing else is allowed for.`,
  };
};

/** What comes free, and when: where both kerfs meet the strip between them does in pass 2; decided by a solid in the tests. */
const freedWords = ({ sawing: { freesInPass2, flatFences } }: Piece): string => (freesInPass2
  ? 'Pass 2 frees the strip between the two cuts: it lies under the wood beside the blade; nothing may hold it, and nobody stands in its line.'
  : `Nothing comes free in pass 2: the strip between the cuts still stands at its root${flatFences.length > 0 ? ' until the passes for the flat' : ''}.`);

/** The passes at the table saw, in order. */
export function sawSteps(s: VCradleSolution, piece: Piece): readonly Step[] {
  return [
    {
      code: 'letter', words: ['Letter one side A, the other B; glue the end pattern on. Fence distances run from its face to the blade’s near side, at the table.'],
    },
    {
      code: 'passes', words: [`Pass 1: face down, A to the fence, blade leaning away from it. Pass 2: turn the blank end for end, B to the fence. ${freedWords(piece)}`],
    },
    {
      code: 'wide-board',
      words: words`In a wide board first: with A to the fence all stays; with B to it each distance grows by what the board is wider than ${lengthOf(piece.width)}. Rip to width when the groove is done, cut to length last.`,
    },
    ...flatStep(s, piece), ...testSteps(s), allowances(s),
  ];
}
