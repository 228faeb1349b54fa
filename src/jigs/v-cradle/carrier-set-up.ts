import type { Figure, FigureTable, SetUp, Step } from '../../drawing/set-up.js';
import { faceLength, heelToToe, toeShift } from '../../geometry/steep-cut.js';
import { cautionsAt } from '../../shop/cautions.js';
import { settingError } from '../../shop/tools.js';
import { angleOf, diameterOf, lengthOf, slopeOf, words, type Words } from '../../units/quantity.js';
import type { Carrier } from './carrier.js';
import { carrierPicture } from './carrier-picture.js';
import { leastWaste } from './limits.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';

const figures = (c: Carrier): readonly Figure[] => [
  ...(c.pair === undefined ? [] : [{ code: 'pair', label: ['First cut of'], value: [`${c.pair.jig}${c.pair.end === 'far' ? ', far end' : ''}`] }]),
  { code: 'from-axis', label: ['Cut from the round’s axis'], value: [slopeOf(c.sharpAngle)] },
  { code: 'from-square', label: ['Cut from square'], value: [slopeOf(Math.PI / 2 - c.sharpAngle)] },
  { code: 'reading', label: ['On the saw’s gauge'], value: words`${angleOf(c.sawReading)}${c.sawReading === 0 ? ', square' : ', the handle swung to your left, towards the carrier'}` },
  { code: 'turn', label: ['Carrier’s turn from the fence'], value: [slopeOf(c.turn)] },
  { code: 'end-cut', label: ['Its own end from square'], value: [slopeOf(c.endCut)] },
  { code: 'length', label: ['Carrier’s length along the groove’s middle'], value: [lengthOf(c.length)] },
  { code: 'width', label: ['Carrier’s width'], value: [lengthOf(c.width)] },
  { code: 'axis-from-fence', label: ['Along the blade’s line, fence to the round’s axis'], value: [lengthOf(c.bladeToAxis)] },
  { code: 'blade-reach', label: ['Along it, fence to the heel: the saw must reach'], value: [lengthOf(c.bladeReach)] },
  { code: 'waste', label: ['Waste beyond the toe: at least, at most'], value: words`${lengthOf(leastWaste)}, ${lengthOf(c.greatestWaste)}` },
  ...(c.pair === undefined ? [] : [{ code: 'toe-beyond-horn', label: ['Toe beyond the horn, the finished tip'], value: [lengthOf(c.pair.toeBeyondHorn)] }]),
  { code: 'seat', label: ['Carrier’s end left on the fence'], value: [lengthOf(c.seat)] },
  { code: 'hands', label: ['Its far end’s near corner from the blade’s line'], value: [lengthOf(c.handDistance)] },
  ...(c.twist === undefined ? [] : [{
    code: 'twist', label: [`Other end against this, ${c.twist < 0 ? 'clockwise' : 'counter-clockwise'} seen from the other end`],
    value: words`${angleOf(Math.abs(c.twist))}; ${lengthOf(Math.abs(c.twist) * (c.round.diameter / 2))} round`,
  }]),
];

/** The finished end of every round that the groove holds, cut at the same angle. That of the round that it is made for stands in the last step. */
const ends = (c: Carrier, s: VCradleSolution): FigureTable => ({
  code: 'ends', heading: ['The finished end, by round'], ifItFits: true,
  columns: [
    { code: 'round', head: 'Round' }, { code: 'diameter', head: 'Measured' }, { code: 'face', head: 'Face' }, { code: 'heel-to-toe', head: 'Heel to toe' }, { code: 'toe-shift', head: 'Toe, half a degree out' },
  ],
  rows: s.held.map(({ round }): Words[] => {
    const cut = { diameter: round.diameter, sharpAngle: c.sharpAngle, sawReading: c.sawReading };
    return [[round.name], [diameterOf(round.diameter)], [lengthOf(faceLength(cut))], [lengthOf(heelToToe(cut))], [lengthOf(toeShift(cut, settingError))]];
  }),
});

const markStep = ({ pair, greatestWaste }: Carrier): Step => ({
  code: 'mark',
  words: pair === undefined
    ? words`Mark the toe on the round, with ${lengthOf(leastWaste)} to ${lengthOf(greatestWaste)} of waste beyond it: with more the round’s end strikes the fence. Turn the toe towards the fence.`
    : words`Mark the toe on the line of the long point, ${lengthOf(pair.toeBeyondHorn)} beyond the horn, with ${lengthOf(leastWaste)} to ${lengthOf(greatestWaste)} of waste beyond it. In the groove throat and long point lie LEVEL, the long point towards the fence, the throat towards you.`,
});

const steps = (c: Carrier): readonly Step[] => [
  {
    code: 'clamp',
    words: words`Stand the carrier’s own end against the fence, its blade line under the blade, the saw at ${angleOf(c.sawReading)}; clamp it to fence and table on BOTH sides of the blade’s line: the first cut frees the wedge between blade and fence.`,
  },
  { code: 'dry-cut', words: ['Cut once without a round, blade stopped before you touch anything: the kerf now shows where every cut falls.'] },
  markStep(c),
  { code: 'lay', words: ['Lay the toe’s mark to the kerf near the fence; clamp the kept part down in the groove. The off-cut lies free in its own piece of the groove, no stop beyond it.'] },
  ...(c.twist === undefined ? [] : [{ code: 'other-end', words: ['Other end: rule a line along the round from this toe and turn the round by the twist, as the pattern shows.'] }]),
  {
    code: 'test',
    words: words`Test: face ${lengthOf(c.faceLength)} long, heel to toe ${lengthOf(c.heelToToe)}. Too long: cut too sharp, turn the carrier a little less from the fence; half a degree moves the toe ${lengthOf(c.toeShift)}.`,
  },
];

/** The cut that is steeper than the saw goes. */
export const carrierSetUp = (c: Carrier, { solution: s, units }: SetUpSource): SetUp => ({
  code: 'carrier', operation: `Cut the end of ${c.round.name} on the carrier`,
  machine: 'Mitre saw',
  picture: carrierPicture(c), pictureIs: 'not-to-scale',
  pictureNote: ['From above; you stand below. Full: kept part; thin: off-cut; ticks: waste side; dashes: hands stay left of that line.'],
  numbers: figures(c), tables: [ends(c, s)], steps: steps(c), cautions: cautionsAt('carrier', units),
});
