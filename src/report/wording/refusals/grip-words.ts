import type { GripRefusals } from '../../../records/refusals/grip-refusals.js';
import { amount, figure } from './amount.js';
import type { RefusalWords } from './refusal-words.js';

/** Holes that cannot be drilled, in words. */
export const GRIP_WORDS: RefusalWords<GripRefusals> = {
  'thumb-disagrees': ({ hasThumbHole }) => ({
    field: 'bowler.grip.thumb',
    rule: hasThumbHole ? 'must be a hole when thumbHole is true' : 'must be null when thumbHole is false',
    got: hasThumbHole ? 'null' : 'a hole',
    hint: 'Say the same in both places.',
  }),
  'spans-too-short': ({ field, spanMiddleIn, spanRingIn, bridgeIn }, { bore }) => ({
    field,
    rule: 'must have spans longer than half the bridge and the finger holes are wide',
    got: `spans ${figure(spanMiddleIn, bore)} and ${amount(spanRingIn, bore)}, bridge ${amount(bridgeIn, bore)}`,
    hint: 'Spans run from the thumb hole’s edge to the finger hole’s edge.',
  }),
  'bores-meet': ({ field, hole, other, overlapIn, depthIn }, { bore }) => ({
    field,
    rule: `must leave some of the ball between the bores of ${hole} and ${other}`,
    got:
      depthIn > 0
        ? `bores that meet ${amount(depthIn, bore)} down and run ${amount(overlapIn, bore)} into each other`
        : `bores that overlap by ${amount(overlapIn, bore)} at the surface`,
    hint: other.includes('vent')
      ? 'Move the mouth of the vent away, drill it narrower, or let it meet its hole at another depth (meetsAtIn).'
      : depthIn > 0
        ? 'Check depths and pitches; depths run along the hole from the surface.'
        : 'Widen the bridge or drill smaller bores; the bridge is measured between the finished holes, inserts in.',
  }),
  'no-lip': ({ field, hole }) => ({
    field,
    rule: `must leave some of the ball between the bore of ${hole} and the surface`,
    got: 'a bore that opens along its whole length or into the hole beside it',
    hint: 'Move its mouth away from the hole, drill it narrower, or let it meet the hole deeper (meetsAtIn).',
  }),
  'vent-impossible': ({ field, why, into, overIn, upIn, meetsAtIn }, { bore }) => ({
    field,
    ...VENT_RULES[why],
    got:
      `a vent into "${into}" from ${amount(overIn, bore)} over, ${amount(upIn, bore)} up` +
      (meetsAtIn === null ? '' : `, ${amount(meetsAtIn, bore)} deep`),
  }),
};

const VENT_RULES: Record<GripRefusals['vent-impossible']['why'], { rule: string; hint: string }> = {
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
