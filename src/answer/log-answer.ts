import type { LogAnswer } from '../records/answers/log-answer.js';
import { headAlone, shotCount } from '../records/log/add-shot.js';
import { nightRemarks } from '../records/log/odd-night.js';
import type { DrilledLayout } from '../records/schemas/drilled-layout.js';
import { readingErrorsOf } from '../records/schemas/reading-errors.js';
import { VERSION } from '../records/shared/version.js';

/** A log with the id of its drilled layout. */
export interface NamedLog {
  readonly id: string;
  readonly record: DrilledLayout;
}

/**
 * The shots of drilled layouts, night by night, with remarks.
 *
 * @param patternOf  where the oil of a lane ends, ft; null for a lane without a record
 */
export const logAnswer = (
  logs: readonly NamedLog[],
  patternOf: (lane: string) => number | null,
): LogAnswer => ({
  schema: 'flarewise/log-answer/1',
  version: VERSION,
  logs: logs.map(({ id, record: { bowler, ball, layout, nights } }) => {
    let next = 1;
    return {
      id,
      bowler,
      ball,
      layout,
      shots: shotCount(nights),
      nights: nights.map((night) => {
        const first = next;
        next += night.shots.length;
        return {
          head: headAlone(night),
          errors: readingErrorsOf(night),
          shots: night.shots.map((shot, i) => ({ number: first + i, shot })),
          says: [...nightRemarks(night, first, patternOf(night.lane))],
        };
      }),
    };
  }),
});
