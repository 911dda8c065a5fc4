import { isDeepStrictEqual } from 'node:util';
import { type Entrant, entrantsOf } from '../../answer/parts/entrants-of.js';
import { InputError } from '../../base/errors.js';
import { LEAST_COMPARED, MOST_COMPARED, type Varied } from '../../records/answers/compare-answer.js';
import type { Ball } from '../../records/schemas/ball.js';
import { layoutFlag, missingFlag, wholeNumber } from '../flags/flags.js';
import type { CompareOptions } from '../flags/options.js';
import { collectAll, collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { loadBall } from './load-record.js';

/** What is compared, as read from the flags. */
interface Entrants {
  readonly varies: Varied;
  readonly entrants: readonly Entrant[];
}

const FLAG_OF: Record<Varied, string> = { layout: '--layout', ball: '--ball', finish: '--finish' };

const HOW = 'Give --layout, --ball or --finish two to six times, and the others once: one thing varies.';

/**
 * What `--layout`, `--ball` and `--finish` compare: the one that is given several times, with what the others say once.
 *
 * @throws {InputErrors} all faults at once
 */
export function entrantFlags(options: CompareOptions, terminal: Terminal): Entrants {
  const given = {
    layout: options.layout ?? [],
    ball: options.ball ?? [],
    finish: options.finish ?? [],
  };
  const { varies, ...read } = collectFaults({
    varies: () => variedFlag(given),
    layouts: () => collectAll(given.layout, (text) => layoutFlag(text)),
    balls: () =>
      given.ball.length > 0
        ? collectAll(given.ball, (text) => loadBall(text, terminal))
        : [loadBall(undefined, terminal)],
    finishes: () => collectAll(given.finish, finishFlag),
  });
  const entrants = entrantsOf(varies, { ...read, balls: read.balls as [Ball, ...Ball[]] });
  return { varies, entrants: distinct(varies, entrants, given[varies]) };
}

/** The one flag that is given several times. */
function variedFlag(given: Readonly<Record<Varied, readonly string[]>>): Varied {
  const several = (Object.keys(given) as Varied[]).filter((each) => given[each].length >= LEAST_COMPARED);
  const [varies, second] = several;
  if (varies === undefined) {
    const once = (['finish', 'layout'] as const).find((each) => given[each].length > 0);
    throw once
      ? new InputError('flag', {
          field: FLAG_OF[once],
          rule: `must be given ${LEAST_COMPARED} to ${MOST_COMPARED} times`,
          got: 'one',
          hint: HOW,
        })
      : missingFlag('--layout', HOW);
  }
  if (second !== undefined)
    throw new InputError('flag', {
      field: FLAG_OF[second],
      rule: `must be given once where ${FLAG_OF[varies]} is given several times`,
      got: `${given[second].length} of them`,
      hint: HOW,
    });
  if (varies !== 'finish' && given.finish.length > 0)
    throw new InputError('flag', {
      field: FLAG_OF.finish,
      rule: `must not stand beside several of ${FLAG_OF[varies]}`,
      got: JSON.stringify(given.finish[0]),
      hint: 'Balls are compared with the finish in their records.',
    });
  if (given[varies].length > MOST_COMPARED)
    throw new InputError('flag', {
      field: FLAG_OF[varies],
      rule: `must be given ${LEAST_COMPARED} to ${MOST_COMPARED} times`,
      got: `${given[varies].length} of them`,
      hint: HOW,
    });
  return varies;
}

/** @throws {InputError} `flag` when two are the same */
function distinct<T>(varies: Varied, values: readonly T[], texts: readonly string[]): readonly T[] {
  const again = values.findIndex((value, i) =>
    values.slice(0, i).some((before) => isDeepStrictEqual(before, value)),
  );
  if (again >= 0)
    throw new InputError('flag', {
      field: FLAG_OF[varies],
      rule: 'must name a different one each time',
      got: `${JSON.stringify(texts[again])} twice`,
    });
  return values;
}

/** Finishes that a shop gives a cover, grit: as records have them. */
const FINISHES = [220, 6000] as const;

const finishFlag = (text: string): number =>
  wholeNumber('--finish', text.trim(), FINISHES, '500 is rough, 2000 usual, 4000 smooth.');
