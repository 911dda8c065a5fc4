import { InputError } from '../../base/errors.js';
import { askTyped } from '../../interview/ask/ask-typed.js';
import type { Desk } from '../../interview/ask/desk.js';
import type { NightHead } from '../../records/log/add-shot.js';
import { readReading } from '../../records/log/read-reading.js';
import { nightSchema } from '../../records/schemas/shot-log.js';
import type { ShotLog } from '../files/shot-log.js';

const { shape } = nightSchema;

/**
 * Asks for a night when not even its lane is known: lane, games, target.
 *
 * @param head  what is known of it
 * @throws {Cancelled} when the person leaves
 */
export async function askNight(
  head: Partial<NightHead>,
  { lanes, record }: ShotLog,
  desk: Desk,
): Promise<Partial<NightHead>> {
  if (head.lane !== undefined) return {};
  const lane = await askTyped(
    'Which lane?',
    `The id of a lane, or a name. Known: ${lanes.map(({ id }) => id).join(', ')}.`,
    record.nights.at(-1)?.lane,
    (text) => checkedLane(text),
    desk,
  );
  const games = await askTyped(
    'How many games were bowled on this oil, by all together?',
    'Enter alone: not known.',
    undefined,
    (text) => (text === '' ? undefined : readReading(text, 'games', shape.games.unwrap())),
    desk,
  );
  const targetBoard = await askTyped(
    'Which board at the arrows do you aim at?',
    'Enter alone: none. The arrows are best read against one.',
    undefined,
    (text) => (text === '' ? undefined : readReading(text, 'the target', shape.targetBoard.unwrap())),
    desk,
  );
  return {
    lane,
    ...(games === undefined ? {} : { games }),
    ...(targetBoard === undefined ? {} : { targetBoard }),
  };
}

/** @throws {InputError} `reading` */
function checkedLane(text: string): string {
  const { data, error } = shape.lane.safeParse(text);
  if (data !== undefined) return data;
  throw new InputError('reading', {
    field: 'the lane',
    rule: error.issues[0].message,
    got: JSON.stringify(text),
  });
}
