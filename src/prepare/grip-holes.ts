import { type Fault, InputError } from '../base/errors.js';
import { from, GRAM_PER_CC, INCH } from '../base/units.js';
import { type HoleOrder, placeGrip } from '../layout/grip.js';
import type { Hole, HoleTip } from '../layout/hole.js';
import { type PlacedVent, placeVent, type VentOrder } from '../layout/vent.js';
import type { Bowler } from '../records/schemas/bowler.js';
import {
  type GripRecord,
  type HoleRecord,
  USUAL_INSERT_GCC,
  USUAL_SLUG_GCC,
  usualGrip,
  type VentRecord,
} from '../records/schemas/grip.js';

/** The grip a bowler is drilled with: their own, or the usual one. */
export const gripOf = (bowler: Bowler): GripRecord => bowler.grip ?? usualGrip(bowler.thumbHole);

/**
 * A bowler's holes on a ball of this radius (m), in B: the gripping holes, then the vents.
 *
 * @throws {InputError} `grip-impossible` when they cannot be placed, or thumb and grip disagree
 */
export function gripHoles(bowler: Bowler, radius: number): readonly Hole[] {
  const grip = gripOf(bowler);
  if (bowler.thumbHole !== (grip.thumb !== null))
    throw new InputError('grip-impossible', {
      field: 'bowler.grip.thumb',
      rule: bowler.thumbHole
        ? 'must be a hole when thumbHole is true'
        : 'must be null when thumbHole is false',
      got: grip.thumb === null ? 'null' : 'a hole',
      hint: 'Say the same in both places.',
    });
  return placedGrip(grip, radius, 'bowler.grip');
}

/**
 * The holes of a grip on a ball of this radius (m), in B: the gripping holes, then the vents.
 *
 * @param field  where the grip stands, for the error
 * @throws {InputError} `grip-impossible` when they cannot be placed
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
    throw new InputError('grip-impossible', {
      field,
      rule: 'must have spans longer than half the bridge and the finger holes are wide',
      got: `spans ${grip.spanMiddleIn} and ${grip.spanRingIn} in, bridge ${grip.bridgeIn} in`,
      hint: 'Spans run from the thumb hole’s edge to the finger hole’s edge.',
    });
  const vents = (grip.vents ?? []).map((vent) => placeVent(ventOrder(vent), holes, radius));
  const faults = vents.flatMap((vent, i) =>
    vent.kind === 'impossible' ? [ventFault(vent.why, (grip.vents ?? [])[i], `${field}.vents[${i}]`)] : [],
  );
  if (faults.length > 0) throw new InputError('grip-impossible', faults);
  return [...holes, ...vents.flatMap((vent) => (vent.kind === 'placed' ? [vent.hole] : []))];
}

/** @param usualGcc  density of the sleeve when nobody gave one, g/cc */
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

const VENT_RULES: Record<WhyNot, { rule: string; hint: string }> = {
  'no-such-hole': {
    rule: 'must lead into a hole the grip has',
    hint: 'Without a thumb hole a vent can lead into "middle" or "ring".',
  },
  'mouth-in-hole': {
    rule: 'must open beside the gripping holes, not in one',
    hint: 'overIn and upIn are arcs from the grip centre to the vent’s mouth; the thumb lies below (upIn negative).',
  },
  'below-the-hole': {
    rule: 'must meet its hole above the bottom of its straight wall',
    hint: 'Leave meetsAtIn out for the bottom itself.',
  },
  'too-slanted': {
    rule: 'must run into the ball within 60° of straight in',
    hint: 'Bring its mouth nearer to the hole it vents.',
  },
};

const ventFault = (why: WhyNot, vent: VentRecord, field: string): Fault => ({
  field,
  ...VENT_RULES[why],
  got:
    `a vent into "${vent.into}" from ${vent.overIn} in over, ${vent.upIn} in up` +
    (vent.meetsAtIn === undefined ? '' : `, ${vent.meetsAtIn} in deep`),
});
