import { from, GRAM_PER_CC, INCH } from '../base/units.js';
import { type HoleOrder, placeGrip } from '../layout/grip.js';
import type { Hole, HoleTip } from '../layout/hole.js';
import { type PlacedVent, placeVent, type VentOrder } from '../layout/vent.js';
import { Refusal, type RefusalStatement } from '../records/refusals/refusal.js';
import type { Bowler } from '../records/schemas/bowler.js';
import {
  type GripRecord,
  type HoleRecord,
  USUAL_INSERT_GCC,
  USUAL_SLUG_GCC,
  usualGrip,
  type VentRecord,
} from '../records/schemas/grip.js';

/** The bowler's own grip, or the usual one. */
export const gripOf = (bowler: Bowler): GripRecord => bowler.grip ?? usualGrip(bowler.thumbHole);

/**
 * A bowler's holes on a ball of this radius (m), in B: the gripping holes, then the vents.
 *
 * @throws {Refusal} `thumb-disagrees`, or as `placedGrip` does
 */
export function gripHoles(bowler: Bowler, radius: number): readonly Hole[] {
  const grip = gripOf(bowler);
  if (bowler.thumbHole !== (grip.thumb !== null))
    throw new Refusal([{ code: 'thumb-disagrees', params: { hasThumbHole: bowler.thumbHole } }]);
  return placedGrip(grip, radius, 'bowler.grip');
}

/**
 * The holes of a grip on a ball of this radius (m), in B: the gripping holes, then the vents.
 *
 * @param field  path of the grip in its record, for the error
 * @throws {Refusal} `spans-too-short`, or `vent-impossible` for every impossible vent
 */
export function placedGrip(grip: GripRecord, radius: number, field: string): readonly Hole[] {
  const holes = placeGrip(
    {
      spanMiddle: from(grip.spanMiddleIn, INCH),
      spanRing: from(grip.spanRingIn, INCH),
      bridge: from(grip.bridgeIn, INCH),
      thumb: grip.thumb && holeOrder(grip.thumb, grip.tip, USUAL_SLUG_GCC),
      middle: holeOrder(grip.middle, grip.tip, USUAL_INSERT_GCC),
      ring: holeOrder(grip.ring, grip.tip, USUAL_INSERT_GCC),
    },
    radius,
  );
  if (!holes)
    throw new Refusal([
      {
        code: 'spans-too-short',
        params: {
          field,
          spanMiddleIn: grip.spanMiddleIn,
          spanRingIn: grip.spanRingIn,
          bridgeIn: grip.bridgeIn,
        },
      },
    ]);
  const vents = (grip.vents ?? []).map((vent) => placeVent(ventOrder(vent), holes, radius));
  const refusals = vents.flatMap((vent, i) =>
    vent.kind === 'impossible'
      ? [impossibleVent(vent.why, (grip.vents ?? [])[i], `${field}.vents[${i}]`)]
      : [],
  );
  if (refusals.length > 0) throw new Refusal(refusals);
  return [...holes, ...vents.flatMap((vent) => (vent.kind === 'placed' ? [vent.hole] : []))];
}

/** @param usualGcc  density of the sleeve when none was given, g/cc */
const holeOrder = (hole: HoleRecord, tip: HoleTip, usualGcc: number): HoleOrder => ({
  open: { radius: from(hole.diameterIn, INCH) / 2, depth: from(hole.depthIn, INCH) },
  sleeve: hole.sleeve && {
    bore: { radius: from(hole.sleeve.boreIn, INCH) / 2, depth: from(hole.sleeve.depthIn, INCH) },
    height: from(hole.sleeve.heightIn, INCH),
    density: from(hole.sleeve.densityGcc ?? usualGcc, GRAM_PER_CC),
  },
  tip,
  forwardPitch: from(hole.forwardPitchIn, INCH),
  lateralPitch: from(hole.lateralPitchIn, INCH),
});

const ventOrder = (vent: VentRecord): VentOrder => ({
  into: vent.into,
  radius: from(vent.diameterIn, INCH) / 2,
  over: from(vent.overIn, INCH),
  up: from(vent.upIn, INCH),
  meetsAt: vent.meetsAtIn === undefined ? null : from(vent.meetsAtIn, INCH),
});

type WhyNot = Extract<PlacedVent, { kind: 'impossible' }>['why'];

const impossibleVent = (
  why: WhyNot,
  { into, overIn, upIn, meetsAtIn }: VentRecord,
  field: string,
): RefusalStatement => ({
  code: 'vent-impossible',
  params: { field, why, into, overIn, upIn, meetsAtIn: meetsAtIn ?? null },
});
