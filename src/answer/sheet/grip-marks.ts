import { SIXTY_FOURTH } from '../../base/tape-reading.js';
import { from, INCH, to } from '../../base/units.js';
import { type Hole, holeName, mouthRadius } from '../../layout/hole.js';
import { type HoleMark, holeMarks, pointBeside } from '../../layout/hole-marks.js';
import { asin } from '../../math/atan.js';
import { arcAngle } from '../../math/sphere.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { GripMarks } from '../../records/answers/sheet-answer.js';
import type { GripRecord } from '../../records/schemas/grip.js';

/** Where the holes of a grip are marked, and the spans and the bridge that these marks give. */
export function gripMarks(
  grip: GripRecord,
  { holes, published: { radius } }: Pick<BallProblem, 'holes' | 'published'>,
): GripMarks {
  const inches = (arc: number): number => to(arc * radius, INCH);
  const marks = holeMarks(holes, from(SIXTY_FOURTH, INCH) / radius);
  const markOf = (name: Hole['name']) => marks.find(({ hole }) => hole.name === name);
  const edge = (width: number): number => asin(width / radius);
  const between = (a: HoleMark, b: HoleMark, widthOf: (hole: Hole) => number): number =>
    inches(
      arcAngle(pointBeside(a.across, a.along), pointBeside(b.across, b.along)) -
        edge(widthOf(a.hole)) -
        edge(widthOf(b.hole)),
    );
  const finished = ({ open }: Hole): number => open.radius;
  const thumb = markOf('thumb');
  const [middle, ring] = [markOf('middle') as HoleMark, markOf('ring') as HoleMark];
  const fingers = [
    { finger: 'middle', mark: middle, orderedIn: grip.spanMiddleIn },
    { finger: 'ring', mark: ring, orderedIn: grip.spanRingIn },
  ] as const;
  return {
    holes: marks.map(({ hole, along, across }) => ({
      hole: holeName(hole),
      alongIn: inches(along),
      acrossIn: inches(across),
    })),
    spans: thumb
      ? fingers.map(({ finger, mark, orderedIn }) => ({
          finger,
          orderedIn,
          markedIn: between(thumb, mark, finished),
          boredIn: between(thumb, mark, mouthRadius),
        }))
      : [],
    bridge: {
      orderedIn: grip.bridgeIn,
      markedIn: inches(ring.across - middle.across - edge(finished(middle.hole)) - edge(finished(ring.hole))),
      wallIn: between(middle, ring, mouthRadius),
    },
  };
}
