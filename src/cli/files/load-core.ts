import { InputError, quotedTyped } from '../../base/errors.js';
import { fromKeys } from '../../base/from-keys.js';
import { readCore } from '../../records/read/read-core.js';
import { JSON_FILE } from '../../records/read/read-file.js';
import { kindInTag, readJson } from '../../records/read/read-record.js';
import { type Ball, hasOwnCore, type OwnCoreBall } from '../../records/schemas/ball.js';
import { UNCERTAIN_BALL_KEYS } from '../../records/schemas/ball-uncertainty.js';
import { missingFlag } from '../flags/flags.js';
import type { Terminal } from '../terminal/terminal.js';
import { loadBall } from './load-record.js';

/** Weight of the ball around a core that is looked at without one, lb. */
const USUAL_WEIGHT_LB = 15;

const FIELD = 'the core';

/** A core to look at, in a ball, and the record whose numbers it is compared with; null where none was named. */
interface CoreToCheck {
  readonly ball: OwnCoreBall;
  readonly record: Ball | null;
}

/**
 * The core that a word names: a core file, or a ball with a core of its own, by file or id.
 *
 * @param named  by `--ball`: its weight and its published numbers go with the core
 * @throws {InputError} `no-own-core` for a ball with published numbers only; as `readCore` and `loadBall` do
 */
export function loadCore(
  word: string | undefined,
  named: string | undefined,
  terminal: Terminal,
): CoreToCheck {
  if (word === undefined)
    throw missingFlag(FIELD, 'Give a core file, or a ball with a core of its own, by its file or its id.');
  const record = named === undefined ? null : loadBall(named, terminal);
  if (isCoreFile(word)) {
    const coreFile = readCore(word);
    const { weightLb = USUAL_WEIGHT_LB, ...told } = record ?? {};
    const ball = {
      ...comparable(told),
      schema: 'flarewise/ball/1' as const,
      name: record?.name ?? coreFile.core.name,
      weightLb,
      core: word,
      coreFile,
    };
    return { ball, record };
  }
  const ball = loadBall(word, terminal, FIELD);
  if (hasOwnCore(ball))
    return {
      ball: record ? { ...ball, ...comparable(record), weightLb: record.weightLb } : ball,
      record: record ?? ball,
    };
  throw new InputError('no-own-core', {
    field: FIELD,
    rule: 'must be a core file, or a ball with a core of its own',
    got: `${quotedTyped(word)}, of which only published numbers are known`,
    hint: 'Many cores have those numbers and their shapes differ, so no picture is drawn. `flarewise drilled` and `flarewise map` work with such a ball.',
  });
}

/** Whether a word names a file that says it is a core; whatever else is wrong with it, reading it says. */
function isCoreFile(word: string): boolean {
  if (!word.toLowerCase().endsWith('.json')) return false;
  return kindInTag(readJson(word, JSON_FILE)) === 'core';
}

/** What of a ball's record a core is compared with. */
const COMPARED = ['circumferenceIn', ...UNCERTAIN_BALL_KEYS] as const;

const comparable = (record: Partial<Ball>): Partial<OwnCoreBall> => fromKeys(COMPARED, (key) => record[key]);
