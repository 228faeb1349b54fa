/** A commented spec that draws as it stands. */
export const starter = `# A V-block that holds rounds for drilling and sawing.
title: Stand for walking sticks
revision: A
units: mm            # a bare number is millimetres; 1-3/8 in, 3.5 cm are read too
paper: a4
rounds:              # measured diameters, not the ones on the label
  post: 32
  rail: 24
jigs:
  - kind: v-cradle
    name: drilling cradle
    holds: [post, rail]      # every round that it must hold
    # includedAngle: 90      # between the flanks
    # depth: 24              # how deep the saw cuts; left out: what is sound for the thickest round
    # flat: 4                # at the bottom; 0 for a sharp V
    # block: { length: 160, width: 80, height: 40 }   # what is left out is worked out
    # stop: 10               # end stop, from the block's left end
    # carrier:               # for a cut steeper than the saw turns
    #   sharpAngle: 20       # between the cut face and the round's axis
    #   sawReading: 0        # what the saw itself is set to, from square
    #   twist: 30            # other end's cut against this one
`;
