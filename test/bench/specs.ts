/** A piece with one saddle, as a user would write it. */
export const oneSaddle = `title: Brace on post
units: inch
paper: letter
rounds: { post: 1-3/8, brace: 1-1/8 }
jigs:
  - { kind: saddle-cope, name: brace saddle, branch: brace, main: post, angle: 64 }
`;
