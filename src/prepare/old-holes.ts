import { type BoreSolid, turnBore } from '../ball/drill/bore-solid.js';
import { boresOf } from '../ball/drill/excavation.js';
import { type Plug, plugsOf } from '../ball/drill/plug.js';
import { REPORT_RAYS } from '../ball/drill/ray-rule.js';
import { from, GRAM_PER_CC, INCH } from '../base/units.js';
import { type Hole, mouthRadius } from '../layout/hole.js';
import { type Layout, toAngles } from '../layout/layout.js';
import { placeLayout } from '../layout/placement.js';
import { ballPoint } from '../math/ball-point.js';
import { diagonal, type Mat3, mulMat, mulVec, transpose } from '../math/mat3.js';
import type { Vec3 } from '../math/vec3.js';
import { Refusal } from '../records/refusals/refusal.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { type EarlierDrilling, USUAL_PLUG_GCC } from '../records/schemas/earlier-drilling.js';
import { usualGrip } from '../records/schemas/grip.js';
import { parseDistances } from '../records/text/distances-text.js';
import { parseLayout } from '../records/text/layout-text.js';
import { clashInDegrees } from './clash-in-degrees.js';
import { placedGrip } from './grip-holes.js';
import { toLayout } from './to-layout.js';

/** The mouth of an old hole, in the core's frame C: it turns with the core. */
export interface OldMouth {
  readonly name: Hole['name'];
  /** Which of several earlier drillings it belongs to, from 1; null where there was only one. */
  readonly drilling: number | null;
  readonly mouth_C: Vec3;
  readonly radius: number; // m
  /** What was drilled for it and is filled now, in C. */
  readonly bores_C: readonly BoreSolid[];
}

/** What earlier drillings left in a ball. */
interface OldHoles {
  readonly mouths: readonly OldMouth[];
  readonly plugs: readonly Plug[];
}

/**
 * The old holes of a ball, filled, where its earlier layouts put them beside pin and marker.
 *
 * A left-hander's ball is computed as its mirror image. A drilling for the other hand is therefore mirrored
 * once more, in the plane through pin and marker, about which the core families are symmetric.
 *
 * @param hand         the hand the ball is drilled for now
 * @param radius       the ball's, m
 * @param pinToMarker  arc, rad
 * @throws {Refusal} `earlier-arcs-clash`, or as `placedGrip` does, when an earlier drilling is impossible
 */
export function oldHoles(
  { drilledBefore = [] }: Pick<Ball, 'drilledBefore'>,
  hand: Bowler['hand'],
  radius: number,
  pinToMarker: number,
): OldHoles {
  const drillings = drilledBefore.map((drilling, i) => {
    const field = `ball.drilledBefore[${i}]`;
    const { overIn, upIn } = drilling.pap;
    const pap_B = ballPoint(from(overIn, INCH) / radius, from(upIn, INCH) / radius);
    const { R_BC } = placeLayout(layoutThen(drilling, radius, pinToMarker, field), pap_B, pinToMarker);
    return {
      holes: placedGrip(drilling.grip ?? usualGrip(true), radius, `${field}.grip`),
      R_CB: drilling.hand === hand ? transpose(R_BC) : mulMat(MIRROR, transpose(R_BC)),
      density: from(drilling.plugDensityGcc ?? USUAL_PLUG_GCC, GRAM_PER_CC),
    };
  });
  return {
    plugs: plugsOf(drillings, radius, REPORT_RAYS),
    mouths: drillings.flatMap(({ holes, R_CB }, i) =>
      holes.map((hole) => ({
        name: hole.name,
        drilling: drillings.length > 1 ? i + 1 : null,
        mouth_C: mulVec(R_CB, hole.mouth_B),
        radius: mouthRadius(hole),
        bores_C: boresOf(hole, radius).map((bore) => turnBore(R_CB, bore)),
      })),
    ),
  };
}

/** In the plane of pin and marker, in C. */
const MIRROR: Mat3 = diagonal([1, -1, 1]);

function layoutThen(
  { layout, layoutDistances, pinSide = 'above' }: EarlierDrilling,
  radius: number,
  pinToMarker: number,
  field: string,
): Layout {
  if (layout !== undefined) return toLayout(parseLayout(layout), radius);
  const { pinToPapIn, markerToPapIn, pinBufferIn } = parseDistances(layoutDistances as string);
  const arc = (inches: number): number => from(inches, INCH) / radius;
  const converted = toAngles(
    { pinToPap: arc(pinToPapIn), markerToPap: arc(markerToPapIn), pinBuffer: arc(pinBufferIn), pinSide },
    pinToMarker,
  );
  if (converted.kind === 'found') return converted.value;
  throw new Refusal([
    {
      code: 'earlier-arcs-clash',
      params: {
        field: `${field}.layoutDistances`,
        layout: layoutDistances as string,
        clash: clashInDegrees(converted.clash),
      },
    },
  ]);
}
