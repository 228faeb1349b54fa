/** A piece with one saddle, as a user would write it. */
export const oneSaddle = `title: Brace on post
units: inch
paper: letter
rounds: { post: 1-3/8, brace: 1-1/8 }
jigs:
  - { kind: saddle-cope, name: brace saddle, branch: brace, main: post, angle: 64 }
`;

const top = (title: string, length: number, slots: number, more = ''): string => `title: ${title}
units: mm
paper: letter
rounds: { post: 32, stick: 26 }
jigs:
  - kind: rack-top
    name: top
    board: { length: ${length}, width: 200, thickness: 27, cornerRadius: 20 }
    slots: { count: ${slots}, pitch: 180, item: stick, widest: 90, liner: leather, depth: 60 }
${more}`;

/** A 2.4 m top with 12 slots and 4 canted leg holes. */
export const longTop = top('Long top', 2400, 12, `    holes:
      - { round: post, at: [60, 150], lean: 10, toward: 180, below: 0 }
      - { round: post, at: [2340, 150], lean: 10, toward: 0, below: 0 }
      - { round: post, at: [60, 50], lean: 10, toward: 180, below: 0 }
      - { round: post, at: [2340, 50], lean: 10, toward: 0, below: 0 }
`);

/** A top of many slots, 180 mm to a slot: what it takes must not grow faster than its slots. */
export const manySlots = (slots: number): string => top(`${slots} slots`, slots * 180 + 200, slots);

/** So many long tops in one piece, each of about sixty sheets. */
export const manyTops = (tops: number): string => {
  const [head, jig] = top(`${tops} tops`, 5700, 30).split('jigs:\n') as [string, string];
  return `${head}jigs:\n${Array.from({ length: tops }, (_, i) => jig.replace('name: top', `name: top ${i + 1}`)).join('')}`;
};
