import type { CoachLine } from '../../records/answers/coach-answer.js';
import { isListFile } from '../../records/read/list-text.js';
import { idFrom } from '../../records/text/record-id.js';
import type { NextStep } from '../../report/screens/next-steps.js';
import { coachedStudents } from '../../report/tables/coach-table.js';
import { wordsOf } from '../files/load-list.js';
import type { CoachCommandOptions } from '../flags/options.js';
import { nextCommands } from '../print/next-commands.js';

type Named = readonly { readonly name: string }[];

/** Commands that may follow a coach's table: the students of a list are kept first, since a sheet takes a record. */
export function afterCoach(
  options: Pick<CoachCommandOptions, 'bowlers' | 'balls' | 'lanes' | 'units'>,
  records: { readonly bowlers: Named; readonly balls: Named; readonly lanes: Named },
  lines: readonly CoachLine[],
): readonly NextStep[] {
  const { bowlers = '', balls = '', lanes = '', units } = options;
  const [first] = coachedStudents(lines);
  if (!first) return [];
  const { bowler, ball, lane, best } = first.pair;
  const isList = isListFile(bowlers);
  const wordOf = (given: string, named: Named, name: string): string | undefined =>
    wordsOf(given)[named.findIndex((each) => each.name === name)];
  return [
    ...(isList ? [{ code: 'import', words: [['shelf', 'import'], [bowlers]] } as const] : []),
    ...nextCommands(
      {
        bowler: isList ? idFrom(bowler) : wordOf(bowlers, records.bowlers, bowler),
        ball: wordOf(balls, records.balls, ball),
        lane: wordOf(lanes, records.lanes, lane),
        layout: best.layout,
        units,
      },
      ['sheets'],
    ),
  ];
}
