import { grouped } from '../../base/grouped.js';
import type { CoachBag, CoachLine, CoachPair } from '../../records/answers/coach-answer.js';
import type { UncertainBallKey } from '../../records/schemas/ball-uncertainty.js';
import { GUESSED_PAP_IN, papUncertaintyIn } from '../../records/schemas/bowler.js';
import { LANE_IDS, REACTION_NUMBERS } from '../../records/schemas/reaction-numbers.js';
import { wishedIds } from '../../records/schemas/want.js';
import type { ReleaseKey } from '../../records/shared/release-guesses.js';
import { BALL_NUMBERS } from '../text/ball-numbers.js';
import { type Units, withUnit } from '../text/display-units.js';
import { percent, points } from '../text/figures.js';
import { listed } from '../text/listed.js';
import type { Column, Grid } from '../text/table.js';
import { say } from '../wording/say.js';
import { changeCells, reactionCells, reactionHeads } from './reaction-rows.js';

/** One student on one lane: the ball that comes nearest to the wish, with its best layout. */
export interface CoachedStudent {
  /** The bowler, and the lane where there are several. */
  readonly name: string;
  readonly pair: CoachPair;
}

/** The best pair of each student on each lane, in the order of the lines. */
export function coachedStudents(lines: readonly CoachLine[]): readonly CoachedStudent[] {
  const pairs = pairsOf(lines);
  const bags = lines.filter((line): line is CoachBag => line.schema === 'flarewise/coach-bag/3');
  const hasLanes = new Set(pairs.map(({ lane }) => lane)).size > 1;
  const groups = grouped(pairs, ({ bowler, lane }) => JSON.stringify([bowler, lane]));
  return [...groups.values()].map((group) => {
    const [first] = group;
    const { bowler, lane } = first;
    const bag = bags.find((each) => each.bowler === bowler && each.lane === lane);
    const pair = group.find(({ ball }) => ball === bag?.best) ?? first;
    return { name: hasLanes ? `${bowler}, ${lane}` : bowler, pair };
  });
}

const SEEN = { unseen: 'no', barely: 'barely', seen: 'yes' } as const;

const MOVERS: Record<CoachPair['advice'], string> = {
  layout: 'layout',
  surface: 'cover',
  line: 'feet',
  ball: 'ball',
  none: 'nothing',
};

/** Heads of what is behind a student's ball and layout. */
export const gainHeads = ({ want }: Pick<CoachPair, 'want'>, units: Units): readonly Column[] => [
  ...reactionHeads(wishedIds(want), units),
  { head: 'seen' },
  { head: 'moves\nmost' },
  { head: 'sure\n%' },
];

/** The gain over the usual layout in each wished number, whether it would be seen, what moves most, and how sure it is. */
export function gainCells({ want, overMiddle, advice, best }: CoachPair, units: Units): readonly string[] {
  const ids = wishedIds(want);
  return [
    ...(overMiddle ? changeCells(overMiddle.weighed.size, ids, units) : ids.map(() => 'usual')),
    SEEN[overMiddle?.weighed.visibility ?? 'unseen'],
    MOVERS[advice],
    overMiddle ? percent(best.beatsMiddle) : '',
  ];
}

/** For how many the layout can be seen at all. */
export function seenText(students: readonly CoachedStudent[]): string {
  const seeing = students.filter(
    ({ pair }) => (pair.overMiddle?.weighed.visibility ?? 'unseen') !== 'unseen',
  ).length;
  const who =
    students.length === 1
      ? `The student would${seeing === 0 ? ' not' : ''}`
      : `${seeing === 0 ? 'None' : seeing} of ${students.length} students would`;
  return `${who} see in a night what the layout gains over the usual.`;
}

/** Whose PAP is to be measured before anything is drilled; once for all of them. */
export function papTexts(students: readonly CoachedStudent[]): string[] {
  const guessed = students.filter(
    ({ pair }) => papUncertaintyIn({ uncertainty: pair.unsure }) >= GUESSED_PAP_IN,
  );
  const names = [...new Set(guessed.map(({ pair }) => pair.bowler))];
  if (names.length === 0) return [];
  return [`Measure the PAP before drilling, it is only a guess: ${names.join(', ')}.`];
}

/** Whose numbers asked for no layout comes near, with the nearest; once for all of them. */
export function outOfReachTexts(students: readonly CoachedStudent[], units: Units): string[] {
  const far = students.flatMap(({ name, pair }) => {
    const nearest = nearestTexts(pair, units);
    return nearest.length > 0 ? [`${name} (${listed(nearest)})`] : [];
  });
  return far.length > 0 ? [`Out of reach; the nearest that a layout comes: ${far.join(', ')}.`] : [];
}

/** The nearest to each number asked for that no layout comes near. */
const nearestTexts = ({ targets }: CoachPair, units: Units): string[] =>
  targets.flatMap(({ reading, value, asked = value }) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const unit = units[compared.quantity];
    return unit.show(asked) === unit.show(value) ? [] : [`${name} ${withUnit(value, unit)}`];
  });

/** That balls of different weights stand beside each other; once for all students. */
export function weightTexts(lines: readonly CoachLine[], units: Units): string[] {
  const weights = lines
    .flatMap((line) => (line.schema === 'flarewise/coach-bag/3' ? line.says : []))
    .flatMap(({ code, params }) => (code === 'weights-differ' ? [params] : []));
  if (weights.length === 0) return [];
  const lightestLb = Math.min(...weights.map((each) => each.lightestLb));
  const heaviestLb = Math.max(...weights.map((each) => each.heaviestLb));
  return [
    `${say({ code: 'weights-differ', params: { lightestLb, heaviestLb } }, units)} In a list, a column balls names each student's own.`,
  ];
}

/** How the table is read, and whose release is not known exactly. */
export const coachNotes = (students: readonly CoachedStudent[]): readonly string[] => {
  const unsure = students.filter(({ pair }) => Object.keys(pair.unsure).length > 0);
  return [
    'Gain over the usual layout, physics and practice combined. moves most: toward the wish or away. ' +
      'sure: share of simulated tries ahead of the usual.',
    ...(unsure.length > 0
      ? [
          `Guessed or roughly measured: ${unsure
            .map(({ name, pair }) => `${name} (${unsureText(pair)})`)
            .join('; ')}.`,
        ]
      : []),
  ];
};

const UNSURE: Record<ReleaseKey, string> = {
  speedMph: 'speed',
  revRateRpm: 'rev rate',
  axisTiltDeg: 'axis tilt',
  axisRotationDeg: 'axis rotation',
  papOverIn: 'PAP',
  papUpIn: 'PAP',
};

const unsureText = ({ unsure }: CoachPair): string =>
  [
    ...new Set(
      Object.keys(unsure).map((key) =>
        key in BALL_NUMBERS ? BALL_NUMBERS[key as UncertainBallKey].name : UNSURE[key as ReleaseKey],
      ),
    ),
  ].join(', ');

/** Every ball of a student with its best layout. */
export const ballsGrid = (group: readonly CoachLine[], units: Units): Grid => ({
  columns: [
    { head: 'ball' },
    { head: 'best layout' },
    { head: 'score' },
    { head: 'usual' },
    { head: 'sure\n%' },
    ...reactionHeads(LANE_IDS, units),
  ],
  rows: pairsOf(group).map(({ ball, best, middle }) => [
    ball,
    best.layout,
    points(best.score),
    points(middle.score),
    percent(best.beatsMiddle),
    ...reactionCells(best.reaction, LANE_IDS, units),
  ]),
});

const pairsOf = (lines: readonly CoachLine[]): readonly CoachPair[] =>
  lines.filter((line): line is CoachPair => line.schema === 'flarewise/coach-pair/4');
