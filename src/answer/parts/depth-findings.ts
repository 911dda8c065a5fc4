import { boreSolid, turnBore } from '../../ball/drill/bore-solid.js';
import { wallBelow } from '../../ball/drill/bore-walls.js';
import { boresOf, excavate } from '../../ball/drill/excavation.js';
import { REPORT_RAYS } from '../../ball/drill/ray-rule.js';
import { shareInside } from '../../ball/drill/share-inside.js';
import { from, INCH, to } from '../../base/units.js';
import { type Hole, mouthRadius } from '../../layout/hole.js';
import type { Placement } from '../../layout/placement.js';
import { asin } from '../../math/atan.js';
import { arcAngle } from '../../math/sphere.js';
import { scale, type Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type {
  LegalityFinding,
  LegalityFindings,
} from '../../records/answers/statements/legality-findings.js';
import { LEAST_WEB_IN } from './plug-findings.js';

/** How far down a pin is followed, m (a cover and a little filler: common practice, no source). */
const PIN_DEPTH = from(1, INCH);

/** A smaller share of a hole than this is nothing that a drill meets. */
const LEAST_SHARE = 0.005;

/** What the bores of new holes run into or come near to below the surface: old plugs, and the pin. None of it bars a layout. */
export function depthFindings({ R_BC, pin_B }: Placement, ball: BallProblem): LegalityFinding[] {
  const { radius } = ball.published;
  const through: LegalityFindings['drilled-through-plugs']['holes'] = [];
  const webs: LegalityFindings['thin-webs-below']['webs'] = [];
  for (const hole of ball.oldMouths.length > 0 ? ball.holes : []) {
    const bores = boresOf(hole, radius);
    const { stretches } = excavate([hole], radius, REPORT_RAYS);
    const plugs = ball.oldMouths.map((old) => ({
      old,
      plug: old.bores_C.map((bore) => turnBore(R_BC, bore)),
    }));
    const isAllPlug =
      shareInside(
        stretches,
        plugs.flatMap(({ plug }) => plug),
      ) >
      1 - LEAST_SHARE;
    if (isAllPlug) continue; // drilled again where it was
    for (const { old, plug } of plugs) {
      const { least, meetsAt } = wallBelow(bores, plug);
      if (least >= from(LEAST_WEB_IN, INCH)) continue;
      const pair = { hole: hole.name, oldHole: old.name, drilling: old.drilling };
      const share = shareInside(stretches, plug);
      if (share >= LEAST_SHARE) through.push({ ...pair, share, fromIn: to(meetsAt ?? 0, INCH) });
      else if (meetsAt === null && least > 0) webs.push({ ...pair, widthIn: to(least, INCH) });
    }
  }
  return [
    ...(through.length > 0 ? [{ code: 'drilled-through-plugs', params: { holes: through } } as const] : []),
    ...(webs.length > 0
      ? [{ code: 'thin-webs-below', params: { leastIn: LEAST_WEB_IN, webs } } as const]
      : []),
    ...ball.holes.flatMap((hole) => pinMet(hole, pin_B, radius)),
  ];
}

/** A hole that leaves the pin's mark and meets the pin, taken as a line to the ball's centre. */
function pinMet(hole: Hole, pin_B: Vec3, radius: number): LegalityFinding[] {
  const isClear = arcAngle(pin_B, hole.mouth_B) >= asin(mouthRadius(hole) / radius);
  const pin = boreSolid(
    { mouth_B: pin_B, axis_B: scale(-1, pin_B), tip: 'flat' },
    { radius: 0, depth: PIN_DEPTH },
    radius,
  );
  const { meetsAt } = wallBelow(boresOf(hole, radius), [pin]);
  return isClear && meetsAt !== null
    ? [{ code: 'pin-met-below', params: { hole: hole.name, fromIn: to(meetsAt, INCH) } }]
    : [];
}
