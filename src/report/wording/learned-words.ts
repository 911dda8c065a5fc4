import type { LearnedAnswer } from '../../records/answers/learned-answer.js';
import { READINGS } from '../../records/log/readings.js';
import type { ReadingId } from '../../records/schemas/shot-log.js';
import { capital } from '../../records/text/capital.js';
import { countOf } from '../text/count-of.js';
import { type Units, withUnit } from '../text/display-units.js';
import { decimals, percent } from '../text/figures.js';
import { listed } from '../text/listed.js';
import { withQuantities } from '../text/with-quantities.js';
import { FORETOLD, narrowed } from './learned-numbers.js';

/** Whose log it is, how much there is in it, and how much of that is from other lanes. */
export const learnedTitle = ({ bowler, nights, lane, elsewhere }: LearnedAnswer): string => {
  const balls = [...new Set(nights.map(({ ball }) => ball))];
  const shots = nights.reduce((sum, each) => sum + each.shots, 0);
  const here = elsewhere === 0 ? '' : ` (${nights.length - elsewhere || 'none'} on ${lane})`;
  return `Learned for ${bowler}: ${countOf(shots, 'shot')} on ${countOf(nights.length, 'night')}${here} with ${balls.length > 2 ? `${balls.length} balls` : listed(balls)}`;
};

/** Predictions for a night like the last, before and after, and their limits. */
export function foretoldTexts({ foretold, elsewhere, nights }: LearnedAnswer, units: Units): string[] {
  const { ball, lane, laydownBoard } = foretold;
  const isElsewhere = elsewhere === nights.length;
  const parts = (['pinsBoard', 'breakpointBoard', 'hookStartFt'] as const).flatMap((id) => {
    const text = narrowed(id, foretold, units);
    return text === null ? [] : [`${FORETOLD[id].name} ${text}`];
  });
  const where = `${ball} from board ${decimals(laydownBoard, 1)} on ${lane}`;
  if (parts.length === 0)
    return [`Too few simulated shots with ${where} reach the pins to predict the next night.`];
  return [
    `${capital(parts.join(', '))}.`,
    `± is how far off a night’s predicted mean may be, before → after these shots, within this model: ${where}, ${isElsewhere ? 'on the usual line' : 'aimed as on the last night'}.`,
    ...(isStartNoSurer(foretold)
      ? ['Boards do not show where a hook starts: on thick oil that stays uncertain.']
      : []),
  ];
}

/** What nights on other lanes are good for. */
export const elsewhereTexts = ({ elsewhere }: LearnedAnswer): string[] =>
  elsewhere === 0
    ? []
    : [
        `${countOf(elsewhere, 'night')} on other lanes ${elsewhere === 1 ? 'counts' : 'count'} in full for your release, in part for oil and boards here.`,
      ];

/** Whether hook start is predicted no better than before: where the log says that thick oil grips, it depends more on how much it does. */
const isStartNoSurer = ({ before, after }: LearnedAnswer['foretold']): boolean =>
  before !== null && after !== null && after.hookStartFt.deviation >= before.hookStartFt.deviation;

/** Whether the log can be as it is taken to be, and what may be otherwise. */
export function misfitTexts({ misfit, nights }: LearnedAnswer, units: Units): string[] {
  const { isDoubtful, luck, causes, surprises, arrowsReadOff } = misfit;
  const readOff =
    arrowsReadOff === 0
      ? []
      : [
          `On ${arrowsReadOff} of ${countOf(nights.length, 'night')} the arrows were read without a target; one board off there is three or four at the pins. Use log --target.`,
        ];
  if (!isDoubtful) return ['The nights’ mean readings agree; shots that stand out count less.', ...readOff];
  const sure = causes.filter(({ by, deviation }) => Math.abs(by) > SURE * deviation).slice(0, MOST_CAUSES);
  const would = sure.map((cause) => causeText(cause, nights, units));
  const [farthest] = surprises;
  return [
    `The readings contradict one another (by luck in ${luck < 0.001 ? 'fewer than 1 of 1000' : `${decimals(100 * luck, 1)} of 100`} logs).`,
    ...(would.length > 0 ? [`They would agree if ${listed(would, 'or')}. Check that first.`] : []),
    ...(farthest ? [`Least like the rest: ${surpriseName(farthest.of, nights, units)}.`] : []),
    ...readOff,
  ];
}

const SURE = 2;
const MOST_CAUSES = 2;

type Cause = LearnedAnswer['misfit']['causes'][number];

/** What may be otherwise, each taken alone: those that lie farther off than luck usually puts them. */
export function causeTexts({ misfit, nights }: LearnedAnswer, units: Units): string[] {
  const likely = misfit.causes.filter(({ by, deviation }) => Math.abs(by) > deviation);
  if (likely.length === 0) return ['No reading looks off on the whole, nor does the length of the pattern.'];
  return likely.map((cause) => `If one thing alone is off: ${causeText(cause, nights, units)}.`);
}

/** What may be otherwise, as a clause. */
function causeText(
  { reading, lane, by, deviation }: Cause,
  nights: LearnedAnswer['nights'],
  units: Units,
): string {
  const isOneLane = nights.every((night) => night.lane === lane);
  if (reading === null)
    return `the oil${isOneLane ? '' : ` on ${lane}`} ended ${withUnit(Math.abs(by), units.lane)} (± ${units.lane.show(deviation)}) ${by > 0 ? 'farther down' : 'nearer'} than the record says`;
  const { quantity } = READINGS[reading];
  const { show, name } = units[quantity];
  return `the ${readingName(reading, units)} was read ${show(Math.abs(by))} ${name} (± ${show(deviation)}) too ${by > 0 ? 'high' : 'low'}`;
}

type Of = LearnedAnswer['misfit']['surprises'][number]['of'];

/** A reading, or a night, by name. */
export const surpriseName = (of: Of, nights: LearnedAnswer['nights'], units: Units): string =>
  'reading' in of ? `the ${readingName(of.reading, units)}` : nightName(nights[of.night], of.night);

const nightName = (night: LearnedAnswer['nights'][number] | undefined, place: number): string =>
  night
    ? `${night.on ? `the night of ${night.on}` : `night ${place + 1}`} with ${night.ball} on ${night.lane}`
    : `night ${place + 1}`;

const readingName = (reading: ReadingId, units: Units): string =>
  withQuantities(READINGS[reading].name, units);

/** What to read next, and what that is worth. */
export function nextTexts({ next }: LearnedAnswer, units: Units): string[] {
  const [best] = next;
  if (!best || best.surer < WORTH_READING) return [];
  const narrower = percent(1 - Math.sqrt(1 - best.surer));
  return [
    `The ${readingName(best.reading, units)}: after ten more shots with it read, the prediction of the next night’s board at the pins is ${narrower} % narrower.`,
  ];
}

/** From this share of its variance on a reading is worth being asked for (a choice of this project). */
const WORTH_READING = 0.02;

/** What is kept and was not learned from, and why. */
export const leftOutTexts = ({ leftOut, nightsInGutter, notLearned }: LearnedAnswer): string[] => [
  ...leftOut.map(
    ({ id, why, named, nights }) =>
      `${countOf(nights, 'night')} of ${id}, because ${WHY_LEFT_OUT[why](named)}.`,
  ),
  ...(nightsInGutter === 0
    ? []
    : [`${countOf(nightsInGutter, 'night')}, because more than a third of the shots fell into the gutter.`]),
  ...notLearnedTexts(notLearned),
];

/** Readings that are kept with a shot and not learned from, and why. */
function notLearnedTexts({ displaySpeed, ringOverHole }: LearnedAnswer['notLearned']): string[] {
  const kept = [
    ...(displaySpeed > 0 ? [`the display speed of ${countOf(displaySpeed, 'shot')}`] : []),
    ...(ringOverHole > 0 ? [`the ring over a hole of ${countOf(ringOverHole, 'shot')}`] : []),
  ];
  return kept.length === 0
    ? []
    : [
        `${capital(listed(kept))}: in tests on simulated bowlers, such readings added next to nothing to the boards.`,
      ];
}

const WHY_LEFT_OUT: Readonly<Record<LearnedAnswer['leftOut'][number]['why'], (named: string) => string>> = {
  'ball-not-kept': (named) => `no ball is kept as ${named}`,
  'layout-not-of-ball': (named) => `${named} cannot have its layout`,
  'lane-not-kept': (named) => `no lane is kept as ${named}`,
};
