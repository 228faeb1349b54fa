/** A commented spec that draws as it stands. */
export const starter = `# A top with a row of slots that paddles, sticks or tools hang in. Measure every round with a calliper: stock is never nominal.
title: Stick rack
revision: A
units: inch          # what a bare number means; or mm
paper: letter        # letter, legal, tabloid, a4, a3, a2, or { width: …, height: … }

rounds:
  post: 1-3/8        # measured diameters
  stick: 1

jigs:
  - kind: rack-top
    name: top
    board:
      length: 30
      width: 6
      thickness: 1-1/16
      endRadius: 3         # half the width: half round ends; or cornerRadius: 3/4
    slots:                 # one row, or a list of rows and single slots, each with its at
      count: 4
      item: stick
      widest: 3-1/2        # widest part of what hangs: the pitch comes from it
      gap: 1/2             # room between the widest parts
      # pitch: 4           # axis to axis, instead of widest + gap
      # at: 6              # station of the first slot from the left end; left out: the row in the middle
      clearance: 1/32      # air on each side
      liner: leather       # none, leather, cork, thick-cork, felt, or a thickness
      depth: 2             # edge to the axis of the stick in its seat
      mouth: { ease: 1/4 } # or { flare: 7, run: 1 }
      edge: front          # front, rear or alternate
    holes:                 # at: [along, across] from the left front corner, seen from above
      - { round: post, at: [4-1/2, 3-3/4], lean: 8, toward: left, below: 12 }   # the leg goes up to the left
      - { round: post, at: [25-1/2, 3-3/4], lean: 8, toward: right, below: 12 }  # and here to the right
    # recesses:
    #   - { circle: 2, at: [15, 4-1/2], depth: 3/8 }
    #   - { box: { width: 4, height: 1-1/2 }, at: [15, 4-1/2], depth: 3/8 }
    #   - { path: "M10 0 H70 A10 10 0 0 1 80 10 V30 A10 10 0 0 1 70 40 H10 A10 10 0 0 1 0 30 V10 A10 10 0 0 1 10 0 Z", size: 4, at: [15, 4-1/2], depth: 3/8 }
    # cutter: { diameter: 1/2, bushing: 5/8 }   # without a bushing: flush trim, no offset
    # indexPins: { diameter: 1/4 }
    # split: [15]                               # stations at which the board is joined
`;
