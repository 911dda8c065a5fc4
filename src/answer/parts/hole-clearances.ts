import { INCH, to } from '../../base/units.js';
import { holeName } from '../../layout/hole.js';
import { asin } from '../../math/atan.js';
import { leastClearance } from '../../motion/reaction/rings.js';
import type { LeanShot } from '../../motion/shot/shot.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { Objection } from '../../records/answers/statements/objections.js';
import { loadPractice } from '../../records/shared/shared-data.js';

/** How near the oil rings of a shot come to the edge of each hole, in; negative where one runs over it. */
export const holeClearances = (
  shot: LeanShot,
  { holes, published: { radius } }: BallProblem,
): { readonly hole: string; readonly clearanceIn: number }[] =>
  holes.map((hole) => ({
    hole: holeName(hole),
    clearanceIn: to(radius * leastClearance(shot, hole.mouth_B, asin(hole.open.radius / radius)), INCH),
  }));

/** Objections to the layout of one shot; a ring too near to a hole names the hole and how near it comes. */
export const withNearestHole = (
  objections: readonly Objection[],
  shot: LeanShot,
  ball: BallProblem,
): Objection[] =>
  objections.map((objection) => {
    if (objection.code !== 'ring-near-hole') return objection;
    const [nearest] = holeClearances(shot, ball).sort((a, b) => a.clearanceIn - b.clearanceIn);
    return nearest
      ? { code: 'ring-at-hole', params: { ...nearest, leastIn: loadPractice().leastRingToHoleIn } }
      : objection;
  });
