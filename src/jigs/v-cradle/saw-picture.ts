import { pictureOf } from '../../drawing/arrange.js';
import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import { add, point, polar, scale, type Point } from '../../geometry/point.js';
import { line, polyline, rectangle } from '../../geometry/shapes.js';
import { levelDimension } from './level-dimension.js';
import type { Groove } from './held-round.js';
import type { Piece } from './saw-figures.js';
import type { Say } from './words.js';

/** Width that the block is drawn at, and from scene to scene, mm. */
const drawnWidth = 34;
const pitch = 56;
/** How far the blade is shown below the table. */
const belowTable = 10;

/** One pass: the block face down on the table, its near face to the fence on the left. */
interface Scene {
  readonly title: string;
  readonly faces: readonly [string, string];
  /** Which side of the piece stands at the fence. */
  readonly side: 'a' | 'b';
  readonly tilt: number;
  /** Fence to the blade's near side, mm of the piece. */
  readonly fence: number;
  /** Flanks sawn before: on the right, on the left. */
  readonly sawn: readonly ('left' | 'right')[];
}

const scenes = ({ sawing }: Piece): Scene[] => [
  { title: 'Pass 1', faces: ['A', 'B'], side: 'a', tilt: sawing.tilt, fence: sawing.fence.a, sawn: [] },
  { title: 'Pass 2: turned end for end', faces: ['B', 'A'], side: 'b', tilt: sawing.tilt, fence: sawing.fence.b, sawn: ['right'] },
  ...sawing.flatFences.slice(0, 1).map((fence): Scene =>
    ({ title: 'The flat: upright, both ways', faces: ['A', 'B'], side: 'a', tilt: 0, fence: fence.a, sawn: ['left', 'right'] })),
];

/** The blade in section: near side through `foot` on the table, leaning away from the fence, its tip `height` up. */
const blade = (foot: Point, tilt: number, height: number, kerf: number): Item => {
  const up = polar(tilt - Math.PI / 2);
  const thick = polar(tilt, kerf);
  const low = add(foot, scale(up, -belowTable));
  const high = add(foot, scale(up, height / Math.cos(tilt)));
  return shape('bore', polyline([low, high, add(high, thick), add(low, thick)], true));
};

const sceneItems = (scene: Scene, piece: Piece, groove: Groove, { say, font }: Sight): Item[] => {
  const { sawing } = piece;
  const k = drawnWidth / piece.width;
  const [half, mouth, flat] = [drawnWidth / 2, (k * groove.width) / 2, (k * groove.flat) / 2];
  const [high, deep] = [k * piece.height, k * groove.depth];
  // The groove's middle: nearer to one side in a carrier.
  const toMiddle = sawing.fence[scene.side] + groove.width / 2;
  const middle = -half + k * toMiddle;
  const foot = point(-half + k * scene.fence, 0);
  const flank = (side: 1 | -1): Item => shape('edge', line(point(middle + side * mouth, 0), point(middle + side * flat, -deep)));
  const faceAt = (x: number, label: string): Item => letter(point(x, -high - 1.5), label, { anchor: 'middle' });
  return [
    shape('reference', line(point(-half - 8, 0), point(half + 4, 0))),
    shape('reference', rectangle(-half - 5, -high - 6, 5, high + 6)),
    shape('edge', rectangle(-half, -high, drawnWidth, high)),
    ...scene.sawn.map((side) => flank(side === 'left' ? -1 : 1)),
    blade(foot, scene.tilt, deep, Math.max(k * sawing.kerf, 0.8)),
    faceAt(-half + 2.5, scene.faces[0]), faceAt(half - 2.5, scene.faces[1]),
    ...dimension({ from: point(-half, 0), to: foot, offset: -(belowTable + 6), label: say.length(scene.fence) }, font),
    letter(point(-half - 5, -high - 9), scene.title),
  ];
};

/** The blade's height, beside the last scene. */
const heightDimension = (piece: Piece, groove: Groove, { say }: Sight): Item[] => {
  const k = drawnWidth / piece.width;
  const last = scenes(piece).at(-1)!;
  const middle = -drawnWidth / 2 + k * (piece.sawing.fence[last.side] + groove.width / 2);
  return levelDimension({
    high: point(middle + (k * groove.flat) / 2, -k * groove.depth), low: point(drawnWidth / 2, 0), x: drawnWidth / 2 + 7,
    side: 'right', label: ['all passes', say.length(groove.depth)],
  });
};

/** What a picture is lettered with. */
interface Sight {
  readonly say: Say;
  readonly font: Font;
}

/** The passes at the table saw for one piece, seen from where the maker stands: fence on the left, face down. Not to scale. */
export const sawPicture = (piece: Piece, groove: Groove, sight: Sight): Drawing => pictureOf(`saw-picture-${piece.name}`, 'Passes at the saw', [
  ...scenes(piece).flatMap((scene, i) => moveItems(sceneItems(scene, piece, groove, sight), i * pitch, 0)),
  ...moveItems(heightDimension(piece, groove, sight), (scenes(piece).length - 1) * pitch, 0),
]);
