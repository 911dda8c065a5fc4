import type { CoachLine } from '../../records/answers/coach-answer.js';
import { idFrom } from '../../records/text/record-id.js';
import type { NextStep } from '../../report/screens/next-steps.js';
import { coachedStudents } from '../../report/tables/coach-table.js';
import type { Listed } from '../files/load-list.js';
import type { CoachCommandOptions } from '../flags/options.js';
import { nextCommands } from '../print/next-commands.js';

type Named = readonly Listed<{ readonly name: string }>[];

/** Commands that may follow a coach's table: the students of a list are kept first, since a sheet takes a record. */
export function afterCoach(
  { bowlers = '', units }: Pick<CoachCommandOptions, 'bowlers' | 'units'>,
  listed: { readonly bowlers: Named; readonly balls: Named; readonly lanes: Named },
  lines: readonly CoachLine[],
): readonly NextStep[] {
  const [first] = coachedStudents(lines);
  if (!first) return [];
  const { bowler, ball, lane, best } = first.pair;
  const wordOf = (named: Named, name: string) => named.find(({ record }) => record.name === name)?.word;
  const word = wordOf(listed.bowlers, bowler);
  return [
    ...(word === null ? [{ code: 'import', words: [['shelf', 'import'], [bowlers]] } as const] : []),
    ...nextCommands(
      {
        bowler: word ?? idFrom(bowler),
        ball: wordOf(listed.balls, ball) ?? undefined,
        lane: wordOf(listed.lanes, lane) ?? undefined,
        layout: best.layout,
        units,
      },
      ['sheets'],
    ),
  ];
}
