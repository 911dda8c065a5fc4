import { asin } from '../../math/atan.js';
import { smallCircle } from '../../math/curves.js';
import { cos, sin } from '../../math/sin-cos.js';
import type { Vec3 } from '../../math/vec3.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { type BallLines, ballLines, hasAngles } from '../picture/ball-lines.js';
import { markSign } from '../picture/mark-signs.js';
import { type Pen, penFor } from '../picture/pen.js';
import type { View } from '../picture/view.js';
import { part } from '../scene/draw.js';
import type { GroupNode, SceneNode, Stroke } from '../scene/scene.js';
import { circle, type Point, rectangle } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';
import { type PlacedLabel, placeLabels } from './label-places.js';
import { numberOf } from './steps-block.js';
import { footOfVal, pointsAlong, type WorkFrame, workLabels } from './work-labels.js';

/** All in full ink: a copy in one bit loses none. */
const LINES = {
  outline: { ink: 'ink', width: 1.4 },
  grid: { ink: 'ink', width: 0.5 },
  val: { ink: 'ink', width: 0.8, dash: [7, 2.5] },
  layout: { ink: 'ink', width: 1.3 },
  buffer: { ink: 'ink', width: 0.8, dash: [1.5, 2] },
  wedge: { ink: 'ink', width: 0.6 },
  hole: { ink: 'ink', width: 0.9 },
  bore: { ink: 'ink', width: 0.5, dash: [2, 1.5] },
} as const satisfies Record<string, Stroke>;

/**
 * The ball as the person at the drill marks it: marks with the numbers of their steps, lines with their inches, holes of a fit that was
 * given, and nothing else.
 */
export function workPicture(answer: SheetAnswer, view: View, frame: WorkFrame, units: Units): GroupNode {
  const { face, grip } = answer;
  const { width, height, radius } = frame;
  const pen = penFor(view, [width / 2, height / 2], radius);
  const lines = ballLines(face);
  const holes = grip ? face.holes : [];
  const rim = (at: Vec3, diameterIn: number) => smallCircle(at, asin(diameterIn / 2 / face.radiusIn));
  const signs = signsOf(answer).filter(({ at }) => pen.depth(at) > -0.02);
  const labels = placeLabels(
    workLabels(answer, lines, pen, frame, units),
    {
      signs: [...signs.map(({ at }) => at), ...holes.map(({ at }) => at)]
        .filter((u) => pen.depth(u) > -0.02)
        .flatMap((u) => coveredBy(pen.place(u))),
      lines: [
        ...inkOf(lines, pen),
        ...rimOf(pen),
        ...[...holes, ...face.oldHoles].flatMap(({ at, boreIn }) =>
          rim(at, boreIn)
            .filter((u) => pen.depth(u) > 0)
            .map(pen.place),
        ),
      ],
      width,
      height,
    },
    frame.widthOf,
  );
  return part(
    `ball, ${view.name} side`,
    { kind: 'path', d: circle(pen.middle, radius), fill: 'paper', stroke: LINES.outline },
    part('midline', pen.curve(lines.midline, LINES.grid)),
    part('centre line', pen.curve(lines.centreLine, LINES.grid)),
    part('VAL', pen.curve(lines.val, LINES.val)),
    ...face.oldHoles.map(({ name, at, boreIn }) =>
      part(`old ${name}`, pen.area(rim(at, boreIn), 'paper', LINES.bore)),
    ),
    ...holes.map(({ name, at, openIn, boreIn }) =>
      part(
        `${name} hole`,
        pen.area(rim(at, openIn), 'shade', LINES.hole),
        ...(boreIn > openIn ? [pen.curve(rim(at, boreIn), LINES.bore)] : []),
      ),
    ),
    part(
      'layout lines',
      pen.curve(lines.pinToPap, LINES.layout),
      pen.curve(lines.pinToMarker, LINES.layout),
      pen.curve(lines.buffer, LINES.buffer),
      ...(hasAngles(face)
        ? [pen.curve(lines.drillingAngle.arc, LINES.wedge), pen.curve(lines.valAngle.arc, LINES.wedge)]
        : []),
    ),
    ...(footOf(answer, lines, pen) ?? []),
    ...signs.map(({ kind, at }) => part(`mark ${kind}`, ...markSign(kind, pen.place(at)))),
    ...labels.flatMap((label) => plate(label, frame)),
  );
}

/** The marks of the work, the most important last, so that it is drawn on top. */
const signsOf = ({ face }: SheetAnswer) =>
  [
    { kind: 'grip centre', at: [0, 0, 1] as Vec3 },
    { kind: 'marker', at: face.marker },
    { kind: 'PAP', at: face.pap },
    { kind: 'pin', at: face.pin },
  ] as const;

/** Points of a sign that no text should lie over. */
const coveredBy = ([x, y]: Point): Point[] =>
  [-4, 0, 4].flatMap((dx) => [-4, 0, 4].map((dy): Point => [x + dx, y + dy]));

/** A dot where the VAL meets the midline, when that is a mark of its own. */
function footOf({ marking, face }: SheetAnswer, { val }: BallLines, pen: Pen): SceneNode[] | null {
  const at = footOfVal(val, face.pap);
  if (numberOf(marking, 'VAL on the midline') === null || pen.depth(at) < 0) return null;
  return [part('mark VAL on the midline', { kind: 'path', d: circle(pen.place(at), 2), fill: 'ink' })];
}

/** The edge of the ball, three times: a name across it is cut off from what it names. */
const rimOf = ({ middle: [x, y], radius }: Pen): Point[] =>
  Array.from({ length: 600 }, (_, i): Point => {
    const a = (2 * Math.PI * i) / 200;
    return [x + radius * cos(a), y + radius * sin(a)];
  });

/** Points along all lines that are seen. */
const inkOf = ({ midline, centreLine, val, pinToPap, pinToMarker, buffer }: BallLines, pen: Pen): Point[] =>
  [midline, centreLine, val, pinToPap, pinToMarker, buffer].flatMap((curve) => pointsAlong(curve, pen));

/** A text on a patch of paper, so that lines below do not cross it. */
function plate({ text, size, weight, at: [x, y] }: PlacedLabel, { widthOf }: WorkFrame): SceneNode[] {
  const half = widthOf(text, size, weight) / 2 + 1;
  return [
    { kind: 'path', d: rectangle(x - half, y - 0.52 * size, 2 * half, 1.04 * size), fill: 'paper' },
    { kind: 'text', x, y: y + 0.36 * size, text, size, anchor: 'middle', ...(weight ? { weight } : {}) },
  ];
}
