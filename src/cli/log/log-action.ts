import { InputError } from '../../base/errors.js';
import { missingFlag } from '../flags/flags.js';
import { oneFormat } from '../flags/one-format.js';
import type { LogOptions } from '../flags/options.js';

/** What `flarewise log` is to do. */
export type LogAction = 'list' | 'keep' | 'edit' | 'undo' | 'import' | 'ask';

/** Flags that each ask for something else to be done. */
const ACTIONS = {
  edit: 'edit',
  undo: 'undo',
  import: 'import',
  list: 'list',
  csv: 'list',
} as const satisfies {
  readonly [K in keyof LogOptions]?: LogAction;
};

/** Flags that say something of a shot; with one a line needs no boards. */
const SHOT_FLAGS = ['at50', 'breakpointFt', 'displaySpeed', 'flare', 'ringOver'] as const;

/** Flags that say something of the night alone. */
const NIGHT_FLAGS = ['lane', 'night', 'games', 'target', 'pattern', 'error', 'note'] as const;

/**
 * What is to be done, by the words and the flags.
 *
 * @throws {InputError} `flag` for two things at once, `missing-flag` for a shot without any reading
 */
export function logAction(
  options: LogOptions,
  id: string | undefined,
  boards: readonly string[],
  mayAsk: boolean,
): LogAction {
  oneFormat(options);
  const given = (Object.keys(ACTIONS) as (keyof typeof ACTIONS)[]).filter(
    (flag) => options[flag] !== undefined,
  );
  const [first, second] = given;
  const words = boards.length > 0 ? 'a shot' : undefined;
  const clash = second ? `--${second}` : first === 'edit' ? undefined : words;
  if (first !== undefined && clash !== undefined)
    throw new InputError('flag', {
      field: `--${first}`,
      rule: `must not stand beside ${clash}`,
      got: boards.length > 0 ? boards.join(' ') : given.map((flag) => `--${flag}`).join(' '),
      hint: 'Do one after the other.',
    });
  if (first !== undefined) return ACTIONS[first];
  if (boards.length > 0 || SHOT_FLAGS.some((flag) => options[flag] !== undefined)) return 'keep';
  const isNightGiven = NIGHT_FLAGS.some((flag) => options[flag] !== undefined);
  if (id !== undefined && mayAsk) return 'ask';
  if (isNightGiven && !mayAsk)
    throw missingFlag('the shot', 'Such as: flarewise log first 20 14 8 17 --lane house-easy.');
  return 'list';
}
