// Broken forms that were proved on paper to change nothing: they are left out of the draw. `was` is the formula's beginning, `is` the whole of it.
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
  { file: 'src/geometry/integrate.ts', rule: 'swapped-arguments', was: 'gauss(f, a, b)', why: 'only what the first two halves are held against: told apart, they are halved once more' },
  { file: 'src/geometry/cubic-roots.ts', rule: 'limit', was: 'i < 60', why: 'sixty halvings of 0…1 leave two doubles side by side: more halve nothing' },
  {
    file: 'src/geometry/minimum-radius.ts', rule: 'condition', was: 'd.x === 0 && d.y === 0',
    why: 'the heading a millionth further on differs from the one at the end by a millionth of the bend there, which is tighter',
  },
  { file: 'src/geometry/minimum-radius.ts', rule: 'figure-doubled', was: '64', why: 'more samples between which the same bend is narrowed in' },
  { file: 'src/geometry/point-in-path.ts', rule: 'condition', was: 'xAtLevel(placed, a, b, p.y) > p.x', why: 'a ray to the left passes the outline as often' },
  { file: 'src/geometry/point-in-path.ts', rule: 'condition', is: 'below', why: 'the count turns its sign, and it is only asked whether it is 0' },
  { file: 'src/sheets/assembly-map.ts', rule: 'rounding', was: 'Math.ceil((3 * Math.max(boxWidth(box)', why: 'three times the box is more than any line in it is long: the points stand nearer than asked either way' },
  { file: 'src/geometry/minimise-round.ts', rule: 'limit', was: 'i < 60', why: 'sixty golden sections of a step leave two doubles side by side: more narrow nothing' },
  { file: 'src/sheets/tile-ink.ts', rule: 'swapped-arguments', was: 'cut.phases.set(ink, known)', why: 'what is only remembered: found again where it is not' },
  { file: 'src/geometry/vector3.ts', rule: 'swapped-arguments', was: 'subtract3(a, b)', why: 'a distance is the same both ways' },
  { file: 'src/jigs/rack-top/check-slots.ts', rule: 'swapped-arguments', was: 'axesApart(board, a, b)', why: 'the axes enter by the squares of their differences' },
  { file: 'src/jigs/rack-top/check-recesses.ts', rule: 'swapped-arguments', was: 'between(h.top, h.under, 0.5)', why: 'a middle is the same both ways' },
  { file: 'src/geometry/saddle.ts', rule: 'rounding', was: 'Math.round(angle / TURN)', why: 'a turn more or less: the sines and cosines of half of it are squared, or change their signs together' },
  { file: 'src/sheets/pack.ts', rule: 'condition', was: 'k < i', why: 'of two free places that are the same, one stays' },
  { file: 'src/sheets/print-scale.ts', rule: 'swapped-arguments', was: 'skewOf(measured.diagonals, a, b)', why: 'the sides enter by their product' },
  { file: 'src/sheets/strip-text.ts', rule: 'swapped-arguments', was: 'wrapped.set(key, lines)', why: 'what is only remembered: found again where it is not' },
];
