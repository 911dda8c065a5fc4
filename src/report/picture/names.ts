import type { Vec3 } from '../../math/vec3.js';
import type { BallFace } from '../../records/answers/parts/ball-face.js';
import type { BallLines } from './ball-lines.js';
import type { MarkKind } from './mark-signs.js';
import { project, type View } from './view.js';

/** A name and the point of the ball it stands for. */
interface NamedPoint {
  readonly text: string;
  readonly at: Vec3;
}

/** All marks of a ball, the most important last, so that it is drawn on top. */
export const marksOf = (face: BallFace): readonly { kind: MarkKind; text: string; at: Vec3 }[] => [
  { kind: 'grip centre', text: 'grip centre', at: [0, 0, 1] },
  ...(face.psa ? [{ kind: 'PSA' as const, text: 'PSA', at: face.psa }] : []),
  { kind: 'marker', text: face.markerName.replace(/ mark$/, ''), at: face.marker },
  { kind: 'PAP', text: 'PAP', at: face.pap },
  { kind: 'pin', text: 'pin', at: face.pin },
];

/** What a picture names: marks, holes and lines that are seen from there. */
export const namesSeen = (face: BallFace, lines: BallLines, view: View): NamedPoint[] =>
  [
    ...marksOf(face),
    ...face.holes.map(({ name, at }) => ({ text: name, at })),
    ...face.oldHoles.map(({ name, at }) => ({ text: `old ${name}`, at })),
    ...lineNames(lines, view),
  ].filter(({ at }) => project(view, at).depth > 0);

/** Names for the lines, each at a point of the near side where little else lies. */
const lineNames = (lines: BallLines, view: View): NamedPoint[] => [
  { text: 'VAL', at: nearest(lines.val, view, { y: -0.72 }) },
  { text: 'midline', at: nearest(lines.midline, view, { x: -0.62 }) },
  { text: 'centre line', at: nearest(lines.centreLine, view, { y: -0.9 }) },
  ...(lines.buffer.length > 2
    ? [{ text: 'buffer', at: lines.buffer[Math.floor(lines.buffer.length / 2)] }]
    : []),
];

/** The point of a curve on the near side that is seen nearest to a height, or to a place across. */
function nearest(curve: readonly Vec3[], view: View, wanted: { x?: number; y?: number }): Vec3 {
  const off = (u: Vec3): number => {
    const { x, y, depth } = project(view, u);
    if (depth < 0) return 10 - depth;
    return wanted.x === undefined ? Math.abs(y - (wanted.y ?? 0)) : Math.abs(x - wanted.x);
  };
  return curve.reduce((best, u) => (off(u) < off(best) ? u : best));
}
