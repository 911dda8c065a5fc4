import { from, INCH, to } from '../../base/units.js';
import { type Hole, mouthRadius } from '../../layout/hole.js';
import type { Placement } from '../../layout/placement.js';
import { asin } from '../../math/atan.js';
import { mulVec } from '../../math/mat3.js';
import { arcAngle } from '../../math/sphere.js';
import type { Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { OldMouth } from '../../prepare/old-holes.js';
import type { LegalityFinding } from '../../records/answers/statements/legality-findings.js';

/** Least ball between a new hole and an old plug that shops like to leave, in (common practice, no source). */
export const LEAST_WEB_IN = 1 / 4;
const LEAST_WEB = from(LEAST_WEB_IN, INCH);

/**
 * What a shop should know of where the new holes and marks come to lie beside old plugs.
 *
 * None of it bars a layout: a new hole well inside an old plug, or one that takes the plug away whole, is
 * usual; an edge that runs across the seam of a plug, or a thin web beside it, may chip.
 */
export function plugFindings({ R_BC, pin_B, marker_B }: Placement, ball: BallProblem): LegalityFinding[] {
  const { marker } = ball;
  const { radius } = ball.published;
  const old = ball.oldMouths
    .map(
      ({ name, drilling, mouth_C, radius: mouth }): Seam => ({
        name,
        drilling,
        mouth_B: mulVec(R_BC, mouth_C),
        edge: edgeArc(mouth, radius),
      }),
    )
    .filter((seam) => !ball.holes.some((hole) => isTakenWhole(seam, hole, radius)));
  const edges: Edge[] = [];
  const webs: (Edge & { widthIn: number })[] = [];
  for (const hole of ball.holes)
    for (const seam of old) {
      const width = webBeside(seam, hole, radius);
      if (width >= LEAST_WEB || isWithin(seam, hole, radius)) continue;
      const edge: Edge = { hole: hole.name, oldHole: seam.name, drilling: seam.drilling };
      if (width < 0) edges.push(edge);
      else webs.push({ widthIn: to(width, INCH), ...edge });
    }
  const isGone = (u_B: Vec3): boolean => old.some((seam) => arcAngle(u_B, seam.mouth_B) < seam.edge);
  const findings: LegalityFinding[] = [];
  if (edges.length > 0) findings.push({ code: 'edges-over-plugs', params: { edges } });
  if (webs.length > 0) findings.push({ code: 'thin-webs', params: { leastIn: LEAST_WEB_IN, webs } });
  if (isGone(pin_B)) findings.push({ code: 'pin-under-plug', params: {} });
  if (marker !== null && isGone(marker_B)) findings.push({ code: 'marker-under-plug', params: { marker } });
  return findings;
}

type Edge = Extract<LegalityFinding, { code: 'edges-over-plugs' }>['params']['edges'][number];

/** The edge of an old plug on the ball: where it lies (in B) and how far from its middle, rad. */
interface Seam {
  readonly name: OldMouth['name'];
  readonly drilling: OldMouth['drilling'];
  readonly mouth_B: Vec3;
  readonly edge: number;
}

/** What is left between a hole's edge and a seam, m; negative when they meet or one lies in the other. */
const webBeside = ({ mouth_B, edge }: Seam, hole: Hole, radius: number): number =>
  radius * (arcAngle(hole.mouth_B, mouth_B) - edge - edgeArc(mouthRadius(hole), radius));

const isWithin = ({ mouth_B, edge }: Seam, hole: Hole, radius: number): boolean =>
  radius * (arcAngle(hole.mouth_B, mouth_B) + edgeArc(mouthRadius(hole), radius) - edge) <= SAME_EDGE;

const isTakenWhole = ({ mouth_B, edge }: Seam, hole: Hole, radius: number): boolean =>
  radius * (arcAngle(hole.mouth_B, mouth_B) + edge - edgeArc(mouthRadius(hole), radius)) <= SAME_EDGE;

/** Edges nearer than this are one edge, m: a hole drilled again where it was. */
const SAME_EDGE = from(1 / 64, INCH);

const edgeArc = (mouth: number, radius: number): number => asin(mouth / radius);
