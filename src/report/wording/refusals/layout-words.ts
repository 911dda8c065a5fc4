import { decimals } from '../../../base/decimals.js';
import type { ClashInDegrees, LayoutRefusals } from '../../../records/refusals/layout-refusals.js';
import { changeWords, wishUnit } from '../../../records/schemas/wish-forms.js';
import { MARK_NAMES } from '../../../records/text/written-layout.js';
import type { Units } from '../../text/display-units.js';
import { OBJECTIONS } from '../statements/objections.js';
import { sayIn } from '../statements/say-in.js';
import type { RefusalWords } from './refusal-words.js';

/** Layouts that cannot be on a ball, in words. A layout stands as it is written, in inches, whatever the units. */
export const LAYOUT_WORDS: RefusalWords<LayoutRefusals> = {
  'arcs-clash': ({ ball, pinToPapIn, markerToPapIn, pinBufferIn, clash }) => ({
    field: 'layout',
    rule: `must be arcs that go together on ${ball}`,
    got: `${[pinToPapIn, ...(markerToPapIn === null ? [] : [markerToPapIn]), pinBufferIn].join(' x ')} in, where ${formatClash(clash)}`,
    hint: 'Measure again, or give angles; angles below 7° need their signs: 5° x 4 1/2 x 5°.',
  }),
  'earlier-arcs-clash': ({ field, layout, clash }) => ({
    field,
    rule: 'must be arcs that go together on this ball',
    got: `"${layout}", where ${formatClash(clash)}`,
    hint: 'Measure again, or give the layout in angles.',
  }),
  'other-mark': ({ ball, given, wanted }) => ({
    field: 'layout: drilling angle',
    rule: `must be measured to the ${MARK_NAMES[wanted]}`,
    got: `an angle to the ${MARK_NAMES[given]}`,
    hint:
      wanted === 'cg'
        ? `${ball} is symmetric and has no mass-bias mark.`
        : `Where the CG of ${ball} lies around the pin is not published, so an angle to it says nothing of the core.`,
  }),
  'no-drilling-angle': ({ ball }) => ({
    field: 'over',
    rule: `must be pin-to-pap or buffer for ${ball}`,
    got: 'drilling-angle',
    hint: 'Its CG lies on the pin, so there is no mark to aim at and no drilling angle.',
  }),
  'no-step': ({ wish, asked }) => ({
    field: wish,
    rule: `must be "${changeWords(wish).more}", "${changeWords(wish).less}" or a number in ${wishUnit(wish)}`,
    got: `"${asked}", a step of what layouts attain, while no shot with any of them stays on the lane`,
    hint: 'Check speed, rev rate and lane: or is the ball far too strong for them?',
  }),
  'no-layout': ({ rejected }, units) => ({
    field: 'layouts',
    rule: 'must include one that may be drilled',
    got: rejected.length > 0 ? 'none' : 'none in the angles the trade drills',
    hint: [
      ...(rejected.length > 0 ? [`Set aside: ${rejectedWords(rejected, units)}.`] : []),
      'Check the PAP, the spans and the hole sizes; let the pin lie on the other side too (--pin-side both); a laydown board of the bowler’s own changes the line.',
    ].join(' '),
  }),
};

const rejectedWords = (rejected: LayoutRefusals['no-layout']['rejected'], units: Units): string =>
  rejected.map(({ why, count }) => `${count} where ${sayIn(OBJECTIONS, why, units)}`).join('; ');

function formatClash(clash: ClashInDegrees): string {
  switch (clash.why) {
    case 'pin-on-pap':
      return 'the pin lies on the PAP axis, where distances fix no angle';
    case 'buffer-too-long':
      return `the pin buffer (${angle(clash.pinBufferDeg)}) exceeds pin-to-PAP (${angle(clash.pinToPapDeg)})`;
    case 'marker-out-of-reach':
      return `no marker ${angle(clash.pinToMarkerDeg)} from the pin lies ${angle(clash.markerToPapDeg)} from the PAP`;
  }
}

const angle = (degrees: number): string => `${decimals(degrees, 1)}°`;
