import { asin } from '../../math/atan.js';
import { smallCircle } from '../../math/curves.js';
import type { LayoutAnswer } from '../../records/answers/answer.js';
import type { BallFace } from '../../records/answers/parts/ball-face.js';
import { part } from '../scene/draw.js';
import type { GroupNode, SceneNode, Stroke } from '../scene/scene.js';
import { circle, type Point } from '../scene/shapes.js';
import { type BallLines, ballLines, hasAngles, type Wedge } from './ball-lines.js';
import { callouts, roomFor } from './callouts.js';
import { lineLengths } from './line-lengths.js';
import { markSign } from './mark-signs.js';
import { marksOf, namesSeen } from './names.js';
import { type Pen, penFor } from './pen.js';
import { type Letters, plate } from './plate.js';
import type { View } from './view.js';

/** What a picture of a ball shows. */
interface DrawnBall {
  readonly face: BallFace;
  readonly layout: Pick<LayoutAnswer, 'drillingAngleDeg' | 'valAngleDeg'>;
  /** How lengths are written on the layout's lines; left out where none are. */
  readonly lengthText?: (inches: number) => string;
}

/** Where a picture stands and how large it may be, pt; the ball is drawn as large as its names leave room. */
interface PictureFrame extends Letters {
  readonly width: number;
  readonly height: number;
}

const LINES = {
  outline: { ink: 'ink', width: 1.3 },
  grid: { ink: 'soft', width: 0.5 },
  val: { ink: 'ink', width: 0.9, dash: [7, 2] },
  layout: { ink: 'ink', width: 1.1 },
  buffer: { ink: 'ink', width: 0.7, dash: [1.5, 1.8] },
  wedge: { ink: 'ink', width: 0.6 },
  hole: { ink: 'ink', width: 0.9 },
  bore: { ink: 'soft', width: 0.5, dash: [2, 1.5] },
} as const satisfies Record<string, Stroke>;

/**
 * A ball as one sees it from far away: what lies on its near side, marks with their names, nothing behind.
 *
 * Places are written to 1/1000 pt, so that the layout can be measured back from the picture.
 */
export function ballPicture(ball: DrawnBall, view: View, frame: PictureFrame): GroupNode {
  const { face } = ball;
  const { width, height, textSize, widthOf } = frame;
  const lines = ballLines(face);
  const names = namesSeen(face, lines, view);
  const widest = Math.max(...names.map(({ text }) => widthOf(text, textSize)));
  const radius = Math.min(height / 2 - 2, width / 2 - roomFor(widest, textSize));
  const pen = penFor(view, [width / 2, height / 2], radius);
  return part(
    `ball, ${view.name} side`,
    { kind: 'path', d: circle(pen.middle, radius), fill: 'paper', stroke: LINES.outline },
    ...ground(ball, lines, pen),
    ...layoutLines(ball, lines, pen, frame),
    ...lineLengths(ball, lines, pen, frame),
    ...marksOf(face)
      .filter(({ at }) => pen.depth(at) > 0)
      .map(({ kind, at }) => part(`mark ${kind}`, ...markSign(kind, pen.place(at)))),
    ...callouts(
      names.map(({ text, at }) => ({ text, at: pen.place(at) })),
      { middle: pen.middle, radius, textSize },
    ),
  );
}

/** What lies below the layout: the grip's lines, holes old and new. */
function ground({ face }: DrawnBall, lines: BallLines, pen: Pen): GroupNode[] {
  const rim = (hole: { at: BallFace['pin'] }, diameterIn: number) =>
    smallCircle(hole.at, asin(diameterIn / 2 / face.radiusIn));
  return [
    part('midline', pen.curve(lines.midline, LINES.grid)),
    part('centre line', pen.curve(lines.centreLine, LINES.grid)),
    part('VAL', pen.curve(lines.val, LINES.val)),
    ...face.oldHoles.map((hole) =>
      part(`old ${hole.name}`, pen.area(rim(hole, hole.boreIn), 'shade', LINES.bore)),
    ),
    ...face.holes.map((hole) =>
      part(
        `${hole.name} hole`,
        pen.area(rim(hole, hole.openIn), 'shade', LINES.hole),
        ...(hole.boreIn > hole.openIn ? [pen.curve(rim(hole, hole.boreIn), LINES.bore)] : []),
      ),
    ),
  ];
}

/** Pin to PAP, pin to marker, the buffer, and the two angles with their numbers. */
function layoutLines(
  { face, layout }: DrawnBall,
  lines: BallLines,
  pen: Pen,
  frame: PictureFrame,
): SceneNode[] {
  const { drillingAngleDeg, valAngleDeg } = layout;
  const wedges: readonly (readonly [Wedge, number])[] =
    hasAngles(face) && drillingAngleDeg !== null
      ? [
          [lines.drillingAngle, drillingAngleDeg],
          [lines.valAngle, valAngleDeg],
        ]
      : [];
  return [
    part(
      'layout lines',
      pen.curve(lines.pinToPap, LINES.layout),
      pen.curve(lines.pinToMarker, LINES.layout),
      pen.curve(lines.buffer, LINES.buffer),
      ...wedges.map(([{ arc }]) => pen.curve(arc, LINES.wedge)),
    ),
    ...plates(
      wedges
        .filter(([{ label }]) => pen.depth(label) > 0.2)
        .map(([{ label }, deg]) => ({ text: `${Math.round(deg)}°`, at: pen.place(label) })),
      frame,
    ),
  ];
}

/** Numbers on the ball, moved apart up and down where one would cover the other. */
function plates(items: readonly { text: string; at: Point }[], frame: PictureFrame): SceneNode[] {
  const { textSize, widthOf } = frame;
  const gap = 1.2 * textSize;
  const [one, other] = items;
  const isCovered =
    one !== undefined &&
    other !== undefined &&
    Math.abs(one.at[0] - other.at[0]) < (widthOf(one.text, textSize) + widthOf(other.text, textSize)) / 2 &&
    Math.abs(one.at[1] - other.at[1]) < gap;
  const middle = isCovered ? (one.at[1] + other.at[1]) / 2 : 0;
  return items.flatMap(({ text, at: [x, y] }) =>
    plate(text, [x, isCovered ? middle + (y <= middle ? -gap : gap) / 2 : y], frame),
  );
}
