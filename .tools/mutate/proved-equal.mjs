// Broken forms that were proved on paper to change nothing: they are left out of the draw. `was` is the formula's beginning.
export const provedEqual = [
  {
    file: 'src/sheets/strip-text.ts', rule: 'addend-dropped', was: 'sum + width(text)',
    why: 'mayFit only spares breaking words that cannot fit: where it says yes too often, setColumns finds the same',
  },
  { file: 'src/sheets/strip-text.ts', rule: 'limit', was: 'flowing.reduce(', why: 'as above: twice the room says yes more often' },
  {
    file: 'src/sheets/ink-map.ts', rule: 'swapped-arguments', was: 'inkIn(map, a, b, c, d)',
    why: 'two borders swapped turn the sign of the count of inked cells, and it is only asked whether it is 0',
  },
  { file: 'src/jigs/rack-top/convex.ts', rule: 'limit', was: 'i < coarse', why: 'the same samples a second time round, none of them greater than before' },
  { file: 'src/jigs/rack-top/label-field.ts', rule: 'limit', was: 'i <= Math.floor(x1 / cell)', why: 'more cells hold the same thing: more is compared, and what is compared decides' },
  { file: 'src/jigs/v-cradle/level-dimension.ts', rule: 'factor', was: '1.5 * way', why: 'way is 1 or −1: to multiply by it and to divide are the same' },
  {
    file: 'src/geometry/cubic-roots.ts', rule: 'condition', was: 'Math.abs(secant - low) > 1e-3',
    why: 'it only chooses between false position and halving; every second step halves, so the bracket closes to the same 1e-15',
  },
];
