import { fromKeys } from '../../../base/from-keys.js';
import type { AdjustRemarks } from '../../../records/answers/statements/adjust-remarks.js';
import type { RemedyKind } from '../../../records/answers/statements/adjustments.js';
import { READINGS } from '../../../records/log/readings.js';
import {
  LANE_IDS,
  type LaneId,
  REACTION_NUMBERS,
  type WishedId,
} from '../../../records/schemas/reaction-numbers.js';
import { countOf } from '../../text/count-of.js';
import { type Units, withUnit } from '../../text/display-units.js';
import { percent } from '../../text/figures.js';
import { withQuantities } from '../../text/with-quantities.js';
import { ADJUSTMENTS } from './adjustments.js';
import { sayIn } from './say-in.js';
import { NOTHING, sizeText } from './size-text.js';
import type { Wording } from './wording.js';

type Explains = AdjustRemarks['release-explains'];
type Left = AdjustRemarks['try-first']['left'];

/** What to do where a drilled ball does not do what was wanted, as sentences. */
export const ADJUST_REMARKS: Wording<AdjustRemarks> = {
  'reads-off': ({ of, by }, units) => {
    const { name, quantity } = READINGS[of];
    return `Look at your log first: the ${withQuantities(name, units)} seems to be read ${withUnit(Math.abs(by), units[quantity])} too ${by > 0 ? 'high' : 'low'}.`;
  },
  'pattern-off': ({ by, lane }, units) =>
    `Look at the lane first: your log fits an oil pattern ${withUnit(Math.abs(by), units.lane)} ${by > 0 ? 'longer' : 'shorter'} than the record of ${lane} says.`,
  'release-explains': (explains, units) =>
    `Your release may explain most of the miss, not the ball: ${explained(explains, units)} with the release in your record.`,
  'lane-explains': (explains, units) =>
    `The lane may explain most of the miss, not the ball: ${explained(explains, units)} with the oil and friction that are usual.`,
  'does-it-already': () =>
    'It already does what you want, as far as a night of shots can show: change nothing.',
  'try-first': ({ remedy, effect, left, nearer }, units) =>
    `Try first: ${sayIn(ADJUSTMENTS, remedy, units)}${HOW[remedy.code]}. Simulated, that is ${sizeText(effect, shownOf(left), units)}, nearer to your wish in ${percent(nearer)} of 100 tries; ${leftText(left, units)}.`,
  'only-redrill': ({ remedy, left }, units) =>
    `No reversible change helps. This one does, but it costs money and cannot be undone: ${sayIn(ADJUSTMENTS, remedy, units)}; ${leftText(left, units)}.`,
  'none-helps': ({ tried }) =>
    `None of the ${tried} changes that were simulated brings it noticeably nearer to your wish.`,
  'no-line-now': () => 'As the ball is drilled, no line reaches the pocket; the nearest line is used here.',
  'not-as-simulated': ({ reading, did, simulated }, units) => {
    const { name, quantity } = entry(reading);
    return `Simulated, its ${name} is ${withUnit(simulated, units[quantity])}, not ${withUnit(did, units[quantity])}: trust the changes more than the levels.`;
  },
  'learned-used': ({ shots, reading, before, after }, units) => {
    const { name, quantity } = entry(reading);
    return `Learned from ${countOf(shots, 'logged shot')}: ${name} ${units[quantity].show(after)}, not ${withUnit(before, units[quantity])}.`;
  },
};

const entry = (
  reading: WishedId,
): { readonly name: string; readonly quantity: 'lane' | 'sharpness' | 'boards' } => {
  const { name, compared } = REACTION_NUMBERS[reading];
  return { name, quantity: compared.quantity };
};

/** `hook start is 36.2 ft, and would be 38.9 ft`. */
const explained = ({ shots, reading, stated, learned }: Explains, units: Units): string => {
  const { name, quantity } = entry(reading);
  return `by your log of ${countOf(shots, 'shot')} ${name} is ${withUnit(learned, units[quantity])}, and would be ${withUnit(stated, units[quantity])}`;
};

/** Remarks on how to carry out a remedy. */
const HOW: Readonly<Record<RemedyKind, string>> = {
  'move-on-lane': ' (boards)',
  'another-drilled-ball': '',
  refinish: ' (minutes in a shop, can be undone)',
  'speed-by': ' (hand higher or lower at the start; takes practice)',
  'plug-and-redrill': '',
};

/** What a person sees first, and what is wished for. */
const shownOf = (left: Left): readonly LaneId[] =>
  LANE_IDS.filter(
    (id) => id === 'hookStartFt' || id === 'totalHookBoards' || left.some(({ reading }) => reading === id),
  );

const leftText = (left: Left, units: Units): string => {
  const size = fromKeys(LANE_IDS, (id) => left.find(({ reading }) => reading === id)?.by ?? 0);
  const text = sizeText(size, LANE_IDS, units);
  return text === NOTHING ? 'then it does what you asked for' : `after that it still needs to be ${text}`;
};
