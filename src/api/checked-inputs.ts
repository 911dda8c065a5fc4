import { InputError } from '../base/errors.js';
import { layoutOnBall } from '../prepare/layout-on-ball.js';
import { parseRecord } from '../records/read/read-record.js';
import { type Ball, ballSchemaFor } from '../records/schemas/ball.js';
import { type Bowler, bowlerSchema } from '../records/schemas/bowler.js';
import { type Lane, laneSchema } from '../records/schemas/lane.js';
import { type Want, wantSchema } from '../records/schemas/want.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { readLayout } from '../records/text/written-layout.js';

/* Records from other programs, checked as files are: types do not hold where a program is not typed. */

/** @throws {InputError} `bad-record` with all faults at once */
export const checkedBowler = (bowler: Bowler): Bowler => parseRecord(bowlerSchema, bowler, 'bowler');

/** @throws {InputError} `bad-record` with all faults at once */
export const checkedLane = (lane: Lane): Lane => parseRecord(laneSchema, lane, 'lane');

/** @throws {InputError} `bad-record` with all faults at once */
export const checkedWant = (want: Want): Want => parseRecord(wantSchema, want, 'want');

/** @throws {InputError} `bad-record` with all faults at once; `no-core` for a core that was named and not read */
export function checkedBall(ball: Ball): Ball {
  if (typeof ball !== 'object' || ball === null || !('core' in ball))
    return parseRecord(ballSchemaFor, ball, 'ball') as Ball;
  const { coreFile, ...record } = ball;
  const checked = parseRecord(ballSchemaFor, record, 'ball');
  if (coreFile === undefined || !('core' in checked))
    throw new InputError(
      'no-core',
      {
        field: 'core',
        rule: 'must come with what its file holds',
        got: 'its name alone',
        hint: 'Read the ball from its file: readBall(path).',
      },
      'ball',
    );
  return { ...checked, coreFile };
}

/** @throws {InputError} `layout-text` or another, as the command line says of `--layout` */
export const checkedLayout = (layout: string, ball: Ball): LayoutNumbers =>
  layoutOnBall(readLayout(String(layout)), ball);
