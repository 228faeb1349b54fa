/** A repeatable stream of numbers in 0…1 (Park & Miller's minimal standard). */
export const stream = (seed: number): (() => number) => {
  let state = seed;
  const next = (): number => (state = (state * 48271) % 2147483647) / 2147483647;
  for (let i = 0; i < 5; i += 1) next();
  return next;
};

type Entry = Readonly<Record<string, unknown>>;

/** What a spec is put together from; lengths in mm, a tenth the finest, angles in degrees. */
interface Draw {
  readonly between: (a: number, b: number) => number;
  readonly length: (a: number, b: number) => string;
  readonly angle: (a: number, b: number) => string;
  readonly pick: <T>(...of: readonly T[]) => T;
  /** The entry's fields in `share` of all cases, else none. */
  readonly some: (share: number, fields: () => Entry) => Entry;
}

const drawFrom = (next: () => number): Draw => {
  const between = (a: number, b: number): number => a + (b - a) * next();
  return {
    between,
    length: (a, b) => `${between(a, b).toFixed(1)} mm`,
    angle: (a, b) => `${between(a, b).toFixed(1)}°`,
    pick: (...of) => of[Math.floor(next() * of.length)]!,
    some: (share, fields) => { const given = fields(); return next() < share ? given : {}; },
  };
};

const cope = ({ length, angle, pick, some }: Draw, name: string): Entry => ({
  kind: 'saddle-cope', name, branch: pick('slim', 'brace', 'brace'), main: pick('post', 'foot', 'brace'), angle: pick('90°', angle(10, 89), angle(20, 85)),
  ...some(0.5, () => ({ offset: pick(length(-8, 8), length(-25, 25)) })), ...some(0.2, () => ({ abrasive: length(0, 2), paperThickness: '0.2 mm' })), ...some(0.3, () => ({ wingAllowance: length(0, 4) })),
  ...some(0.5, () => ({ pin: pick<Entry>({ diameter: 0 }, { diameter: length(6, 16) }, { diameter: length(8, 14), intoBranch: length(15, 60), intoMain: length(10, 60) }) })),
  ...some(0.5, () => ({ centres: length(60, 700), farEnd: { main: pick('post', 'foot'), angle: pick('90°', angle(12, 89)), ...some(0.5, () => ({ offset: length(-9, 9) })), ...some(0.7, () => ({ twist: angle(-180, 180) })) } })),
});

const copes = (draw: Draw): readonly Entry[] => [cope(draw, 'joint')];

const cradles = (draw: Draw): readonly Entry[] => {
  const { length, angle, pick, some } = draw;
  const paired = pick(true, false, false);
  const carrier = {
    ...(paired ? { from: 'joint', ...some(0.3, () => ({ end: 'far' })) } : { sharpAngle: angle(8, 60), ...some(0.5, () => ({ round: pick('slim', 'brace', 'post') })), ...some(0.3, () => ({ twist: angle(-90, 90) })) }),
    ...some(0.7, () => ({ sawReading: angle(0, 60) })), ...some(0.2, () => ({ length: length(200, 700) })), ...some(0.2, () => ({ width: length(50, 160) })),
  };
  return [
    ...(paired ? [cope(draw, 'joint')] : []),
    {
      kind: 'v-cradle', name: 'cradle', holds: pick(['brace'], ['slim', 'post'], ['foot', 'post', 'brace', 'slim']),
      ...some(0.4, () => ({ includedAngle: angle(60, 130) })), ...some(0.4, () => ({ flat: length(0, 9) })), ...some(0.3, () => ({ depth: length(8, 40) })),
      ...some(0.3, () => ({ block: { ...some(0.6, () => ({ length: length(80, 300) })), ...some(0.6, () => ({ width: length(30, 120) })), ...some(0.6, () => ({ height: length(20, 80) })) } })),
      ...some(0.2, () => ({ stop: length(2, 12) })), ...some(0.75, () => ({ carrier, ...some(0.25, () => ({ make: pick(['carrier'], ['block'], ['block', 'carrier']) })) })),
    },
  ];
};

const guides = (draw: Draw): readonly Entry[] => {
  const { length, angle, pick, some } = draw;
  const block = some(0.3, () => ({ block: { ...some(0.5, () => ({ length: length(30, 120) })), ...some(0.5, () => ({ width: length(20, 90) })), ...some(0.5, () => ({ height: length(30, 160) })) } }));
  const free = {
    drill: length(3, 26), ...pick<Entry>({ angle: pick('90°', angle(10, 89)) }, { angle: angle(25, 85) }, { rake: angle(-25, 25), splay: angle(-25, 25) }),
    ...pick<Entry>({ onto: 'flat', ...some(0.8, () => ({ thickness: length(10, 60) })) }, { onto: pick('post', 'foot'), ...some(0.6, () => ({ offset: length(-16, 16) })), ...some(0.5, () => ({ sole: pick('v', 'cove', 'flat') })) }),
    ...some(0.6, () => ({ depth: length(5, 60) })), ...some(0.2, () => ({ bit: { point: length(0, 6) } })),
  };
  return pick(true, false, false) ? [cope(draw, 'joint'), { kind: 'drill-guide', name: 'guide', from: 'joint', ...some(0.3, () => ({ end: 'far' })), ...block }]
    : [{ kind: 'drill-guide', name: 'guide', ...free, ...block }];
};

const racks = ({ between, length, angle, pick, some }: Draw): readonly Entry[] => {
  const [long, wide] = [between(300, 1500), between(100, 320)];
  const at = (): readonly string[] => [`${(between(0.05, 0.95) * long).toFixed(1)} mm`, `${(between(0.15, 0.85) * wide).toFixed(1)} mm`];
  const shape = (): Entry => pick<Entry>({ circle: length(15, 60) }, { box: { width: length(20, 120), height: length(15, 50), ...some(0.5, () => ({ radius: length(0, 12) })) }, turn: angle(-90, 90) },
    { path: 'M0 0 C30 -20 60 -20 90 0 L70 50 Q45 60 20 50 Z', size: length(30, 90), turn: angle(-90, 90) });
  return [{
    kind: 'rack-top', name: 'top',
    board: { length: `${long.toFixed(1)} mm`, width: `${wide.toFixed(1)} mm`, thickness: length(10, 40), ...pick<Entry>({}, { cornerRadius: length(0, 60) }, { endRadius: `${(between(0.5, 0.9) * wide).toFixed(1)} mm` }) },
    ...some(0.9, () => ({
      slots: {
        count: Math.ceil(between(0.1, 6)), item: pick('slim', 'brace', 'post', length(8, 40)), edge: pick('front', 'rear', 'alternate'), liner: pick('none', 'leather', 'felt', 'thick-cork', length(0.5, 4)),
        ...some(0.6, () => ({ pitch: length(30, 200) })), ...some(0.5, () => ({ widest: length(30, 150) })), ...some(0.5, () => ({ clearance: length(0, 2) })), ...some(0.6, () => ({ depth: length(15, 90) })),
        ...some(0.3, () => ({ at: length(40, 200) })), ...some(0.2, () => ({ width: length(14, 60) })),
        ...some(0.6, () => ({ mouth: pick<Entry>({ flare: angle(3, 12) }, { ease: length(0, 9) }, { ease: length(0, 9), flare: angle(3, 12), run: length(10, 30) }) })),
      },
    })),
    ...some(0.6, () => ({ holes: Array.from({ length: Math.ceil(between(0, 3)) }, () => ({ round: pick('post', 'brace'), at: at(), ...some(0.8, () => ({ lean: angle(0, 30), toward: angle(-360, 360) })), ...some(0.3, () => ({ clearance: length(0, 1), above: length(0, 200) })) })) })),
    ...some(0.6, () => ({ recesses: Array.from({ length: Math.ceil(between(0, 2)) }, () => ({ ...shape(), at: at(), depth: length(2, 14), face: pick('top', 'under') })) })),
    ...some(0.7, () => ({ cutter: { diameter: pick('8 mm', '12 mm', '1/2 in'), ...some(0.5, () => ({ bushing: pick('11 mm', '16 mm', '5/8 in') })), ...some(0.4, () => ({ length: length(8, 40), templateThickness: length(6, 18) })) } })),
    ...some(0.2, () => ({ split: [`${(between(0.3, 0.7) * long).toFixed(1)} mm`], ...some(0.4, () => ({ spline: { groove: length(8, 20) } })) })), ...some(0.2, () => ({ indexPins: { diameter: length(4, 10), spacing: length(40, 140) } })),
  }];
};

const entriesOf = { 'saddle-cope': copes, 'v-cradle': cradles, 'drill-guide': guides, 'rack-top': racks };
export type AnyKind = keyof typeof entriesOf;

/** The text of a spec of one jig, and what it is paired with: sound, careless or refused; the same for the same kind and number. */
export const anySpec = (kind: AnyKind, number: number): string => {
  const draw = drawFrom(stream(7919 + 104729 * number));
  const { length, angle, pick, some } = draw;
  return JSON.stringify({
    title: 'Any', units: pick('mm', 'inch'), paper: pick('a4', 'letter'),
    rounds: { slim: length(12, 24), brace: { diameter: length(22, 32), ...some(0.4, () => ({ length: length(100, 900) })) }, post: length(30, 45), foot: length(46, 70) },
    ...some(0.6, () => ({
      shop: {
        ...some(0.8, () => ({ saw: { maxReading: angle(30, 60), maxTilt: angle(30, 50), maxDepth: length(40, 90), kerf: length(1.5, 3.5) } })),
        ...some(0.8, () => ({ drillPress: { stroke: length(50, 130), maxTableTilt: angle(20, 50) } })), ...some(0.4, () => ({ router: { maxBitDiameter: length(10, 50) } })),
        ...some(0.6, () => ({ bits: [10, 11, 12, 20, 30].map((diameter) => ({ diameter: `${diameter} mm`, usableLength: length(50, 160), point: length(1, 5) })) })),
      },
    })),
    jigs: entriesOf[kind](draw),
  });
};
