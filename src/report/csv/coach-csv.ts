import { stringify } from 'csv-stringify/sync';
import { toDigits } from '../../base/decimals.js';
import type { CoachLine, CoachPair } from '../../records/answers/coach-answer.js';
import { COMPARED_IDS, REACTION_NUMBERS, WISHED_IDS } from '../../records/schemas/reaction-numbers.js';
import { capital } from '../../records/text/capital.js';
import { guardedCell } from '../../records/text/csv-cell.js';
import { UNITS } from '../text/display-units.js';
import { coachFaultText } from '../wording/coach-lines.js';
import { say } from '../wording/say.js';

/**
 * A coach's table as comma-separated values, one row for each bowler, ball and lane: numbers to the digit to which they mean
 * something, one more than a screen shows.
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

const pairCells = ({ best, middle, overMiddle, advice, unsure, says }: CoachPair) => ({
  movesMost: advice,
  layout: best.layout,
  score: toDigits(best.score, 1),
  usualScore: toDigits(middle.score, 1),
  beatsMiddle: toDigits(best.beatsMiddle, 3),
  seen: overMiddle?.weighed.visibility ?? 'unseen',
  ...Object.fromEntries(
    WISHED_IDS.map((id) => [
      gainHead(id),
      toDigits(overMiddle?.weighed.size[id] ?? 0, REACTION_NUMBERS[id].compared.changeDigits + 1),
    ]),
  ),
  ...Object.fromEntries(
    COMPARED_IDS.map((id) => [id, toDigits(best.reaction[id], REACTION_NUMBERS[id].compared.digits + 1)]),
  ),
  unsure: unsure.join(' '),
  says: say(says, UNITS.trade),
});

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
  ...WISHED_IDS.map(gainHead),
  ...COMPARED_IDS,
  'unsure',
  'says',
];
