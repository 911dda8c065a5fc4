import { InputError } from '../errors.js';
import { type HoleOrder, placeGrip } from '../layout/grip.js';
import type { Hole, HoleTip } from '../layout/hole.js';
import type { Bowler } from '../records/bowler.js';
import { type GripRecord, type HoleRecord, usualGrip } from '../records/grip.js';
import { from, GRAM_PER_CC, INCH } from '../units.js';

/** The grip a bowler is drilled with: their own, or the usual one. */
export const gripOf = (bowler: Bowler): GripRecord => bowler.grip ?? usualGrip(bowler.thumbHole);

/**
 * A bowler's holes on a ball of this radius (m), in B.
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
  const holes = placeGrip(
    {
      spanMiddle: from(grip.spanMiddleIn, INCH),
      spanRing: from(grip.spanRingIn, INCH),
      bridge: from(grip.bridgeIn, INCH),
      thumb: grip.thumb && holeOrder(grip.thumb, grip.tip),
      middle: holeOrder(grip.middle, grip.tip),
      ring: holeOrder(grip.ring, grip.tip),
    },
    radius,
  );
  if (!holes)
    throw new InputError('grip-impossible', {
      field: 'bowler.grip',
      rule: 'must have spans longer than half the bridge and the finger holes are wide',
      got: `spans ${grip.spanMiddleIn} and ${grip.spanRingIn} in, bridge ${grip.bridgeIn} in`,
      hint: 'Spans run from the thumb hole’s edge to the finger hole’s edge.',
    });
  return holes;
}

const holeOrder = (hole: HoleRecord, tip: HoleTip): HoleOrder => ({
  open: { radius: from(hole.diameterIn, INCH) / 2, depth: from(hole.depthIn, INCH) },
  sleeve: hole.sleeve && {
    bore: { radius: from(hole.sleeve.boreIn, INCH) / 2, depth: from(hole.sleeve.depthIn, INCH) },
    height: from(hole.sleeve.heightIn, INCH),
    density: from(hole.sleeve.densityGcc, GRAM_PER_CC),
  },
  tip,
  forwardPitch: from(hole.forwardPitchIn, INCH),
  lateralPitch: from(hole.lateralPitchIn, INCH),
});
