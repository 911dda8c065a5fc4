import { stringify } from 'csv-stringify/sync';
import { toDigits } from '../../base/decimals.js';
import type { CoachLine, CoachPair } from '../../records/answers/coach-answer.js';
import { UNCERTAIN_BALL_KEYS } from '../../records/schemas/ball-uncertainty.js';
import { COMPARED_IDS, REACTION_NUMBERS, WISHED_IDS } from '../../records/schemas/reaction-numbers.js';
import { RELEASE_KEYS } from '../../records/shared/release-guesses.js';
import { capital } from '../../records/text/capital.js';
import { guardedCell } from '../../records/text/csv-cell.js';
import { UNITS } from '../text/display-units.js';
import { coachFaultText } from '../wording/coach-lines.js';
import { say } from '../wording/say.js';

/**
 * A coach's table as comma-separated values, one row for each bowler, ball and lane: numbers to the digit to which they mean
 * something, one more than a screen shows. A column with `+/-` behind its name says how far off that number may be, one standard
 * deviation: of a reaction and a gain over the simulated tries, of a number of the release or the ball as it was given.
 */
export const coachCsv = (lines: readonly CoachLine[]): string =>
  stringify(
    lines.flatMap((line) => {
      if (line.schema === 'flarewise/coach-bag/3') return [];
      const { bowler, ball, lane } = line;
      return line.schema === 'flarewise/coach-fault/2'
        ? [{ bowler, ball, lane, says: coachFaultText(line, UNITS.trade) }]
        : [{ bowler, ball, lane, ...pairCells(line) }];
    }),
    { header: true, columns: HEADS, record_delimiter: 'windows', cast: { string: guardedCell } },
  );

const gainHead = (id: string): string => `gain${capital(id)}`;
const offHead = (head: string): string => `${head} +/-`;

const pairCells = ({ best, middle, overMiddle, overMiddleDeviations, advice, unsure, says }: CoachPair) => ({
  movesMost: advice,
  layout: best.layout,
  score: toDigits(best.score, 1),
  usualScore: toDigits(middle.score, 1),
  beatsMiddle: toDigits(best.beatsMiddle, 3),
  seen: overMiddle?.weighed.visibility ?? 'unseen',
  ...Object.fromEntries(
    WISHED_IDS.flatMap((id) => {
      const digits = REACTION_NUMBERS[id].compared.changeDigits + 1;
      return [
        [gainHead(id), toDigits(overMiddle?.weighed.size[id] ?? 0, digits)],
        [offHead(gainHead(id)), toDigits(overMiddleDeviations?.[id] ?? 0, digits)],
      ];
    }),
  ),
  ...Object.fromEntries(
    COMPARED_IDS.flatMap((id) => {
      const digits = REACTION_NUMBERS[id].compared.digits + 1;
      return [
        [id, toDigits(best.reaction[id], digits)],
        [offHead(id), toDigits(best.deviations[id], digits)],
      ];
    }),
  ),
  ...Object.fromEntries(GUESSED_IDS.map((id) => [offHead(id), toSignificant(unsure[id])])),
  says: say(says, UNITS.trade),
});

/** How far off a number is, to three digits: no more is known. */
const toSignificant = (deviation: number | undefined): number | undefined =>
  deviation === undefined ? undefined : Number(deviation.toPrecision(3));

/** Numbers of the release and the ball that may be guessed. */
const GUESSED_IDS = [...RELEASE_KEYS, ...UNCERTAIN_BALL_KEYS] as const;

const HEADS = [
  'bowler',
  'ball',
  'lane',
  'movesMost',
  'layout',
  'score',
  'usualScore',
  'beatsMiddle',
  'seen',
  ...WISHED_IDS.map(gainHead).flatMap((head) => [head, offHead(head)]),
  ...COMPARED_IDS.flatMap((id) => [id, offHead(id)]),
  ...GUESSED_IDS.map(offHead),
  'says',
];
