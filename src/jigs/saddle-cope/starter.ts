/** A commented spec that draws as it stands. */
export const starter = `# A brace that sits on a post. Measure both rounds with a calliper: stock is never nominal.
title: Brace on post
revision: A
units: inch          # what a bare number means; or mm
paper: letter        # letter, legal, tabloid, a4, a3, a2, or { width: …, height: … }

rounds:
  post: 1-3/8        # measured diameter
  brace: 1-1/8

jigs:
  - kind: saddle-cope
    name: brace saddle
    branch: brace    # the round that is cut hollow
    main: post       # the round that it sits on
    angle: 64        # between the two axes; 90 is square
    # offset: 1/8    # the branch's axis beside the main's, right of it seen from the throat
    # paperThickness: 0.1 mm
    # abrasive: 0.5 mm        # on the sanding form
    # ordinates: true         # print them, for laying out without a printer, even on a sheet of their own
    # pin: { diameter: 7/16, intoBranch: 1-5/16, intoMain: 7/8 }   # diameter 0: no pin
    # centres: 16             # with farEnd: from crossing to crossing
    # twist 0: both throats on one side, posts that lean together; 180: on opposite sides, parallel posts
    # farEnd: { main: post, angle: 64, offset: 0, twist: 180° }
`;
