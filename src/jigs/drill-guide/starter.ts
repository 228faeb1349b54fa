/** A commented spec that draws as it stands. */
export const starter = `# A guide block for drilling at an angle: bored square, then its sole is sawn to the angle.
title: Guide block
units: inch                # a bare number is in inches; write mm or cm where you mean them
paper: letter
rounds:
  post: 1-3/8              # measured diameter
jigs:
  - kind: drill-guide
    name: post guide
    drill: 1/2             # diameter of the bit
    angle: 60              # between the bit and the round's axis; 90 is square
    # angle: { rake: 10, splay: 15 }   # flat work: two leans from upright in place of one angle
    onto: post             # a round, or flat
    # offset: 1/8          # the bit passes beside the round's axis
    # thickness: 3/4       # of flat work
    depth: 3/4             # along the bit, from where its axis enters; left out: right through
    sole: v                # flat, v or cove
    # block: { length: 3, width: 2, height: 3 }
    bit:
      usableLength: 5      # from the chuck's jaws to the corners of the lips
      point: 1/8           # beyond the lips
    # In place of drill, angle, onto and offset, so that the hole meets the pin of a saddle cope:
    # from: brace saddle
`;
