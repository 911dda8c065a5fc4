import { stringify } from 'csv-stringify/sync';
import { fromKeys } from '../../base/from-keys.js';
import type { CoachLine } from '../../records/answers/coach-answer.js';
import { COMPARED_IDS } from '../../records/schemas/reaction-numbers.js';
import { guardedCell } from '../../records/text/csv-cell.js';
import { UNITS } from '../text/display-units.js';
import { coachFaultText } from '../wording/coach-lines.js';
import { say } from '../wording/say.js';

/** A coach's table as comma-separated values, one row for each bowler, ball and lane. */
export const coachCsv = (lines: readonly CoachLine[]): string =>
  stringify(
    lines.flatMap((line) => {
      const { schema } = line;
      if (schema === 'flarewise/coach-bag/2') return [];
      const { bowler, ball, lane } = line;
      if (schema === 'flarewise/coach-fault/2')
        return [{ bowler, ball, lane, says: coachFaultText(line, UNITS.trade) }];
      const { best, middle, advice, says } = line;
      return [
        {
          bowler,
          ball,
          lane,
          advice,
          layout: best.layout,
          score: best.score,
          usualScore: middle.score,
          beatsMiddle: best.beatsMiddle,
          ...fromKeys(COMPARED_IDS, (id) => best.reaction[id]),
          says: say(says, UNITS.trade),
        },
      ];
    }),
    { header: true, columns: HEADS, record_delimiter: 'windows', cast: { string: guardedCell } },
  );

const HEADS = [
  'bowler',
  'ball',
  'lane',
  'advice',
  'layout',
  'score',
  'usualScore',
  'beatsMiddle',
  ...COMPARED_IDS,
  'says',
];
