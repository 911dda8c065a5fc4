import type { LeverEffect, TargetAnswer } from '../../records/answers/answer.js';
import { IN_A_NIGHT, overScatter } from '../../records/answers/parts/over-scatter.js';
import { NUMBER_OF_WISH, REACTION_NUMBERS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { Visibility } from '../../records/schemas/visibilities.js';
import { capital } from '../../records/text/capital.js';
import type { Units } from '../text/display-units.js';
import { listed } from '../text/listed.js';
import { say } from './say.js';

/* Headings of a page's charts, each the verdict that its chart bears out. */

type Numbers = Readonly<Record<WishedId, number>>;

/** Whether a layout does what was asked for, as far as a night of shots would show. */
export function reachHeading(
  targets: readonly TargetAnswer[],
  layout: string,
  reaction: Numbers,
  scatter: Numbers,
  units: Units,
): string {
  if (targets.length === 0) return 'What each layout does';
  const missed = targets.flatMap(({ wish, value, asked = value }) => {
    const id = NUMBER_OF_WISH[wish];
    const off = Math.abs(reaction[id] - asked);
    if (off < IN_A_NIGHT * scatter[id]) return [];
    const { size, name } = units[REACTION_NUMBERS[id].compared.quantity];
    return [`${size(off)} ${name} of ${REACTION_NUMBERS[id].name}`];
  });
  return missed.length === 0
    ? `${layout} does what was asked for, as far as shots can show`
    : `${layout} misses what was asked for by ${listed(missed)}`;
}

/**
 * Whether the difference from another layout would be seen.
 *
 * @param visibility  null where it is that layout itself
 * @param of          what differs, where it is not plain: ` to the best found`
 */
export function pairedHeading(visibility: Visibility | null, from: string, to: string | null = null): string {
  const difference = to === null ? `the difference from ${from}` : `the difference between ${from} and ${to}`;
  switch (visibility) {
    case null:
      return `It is ${from}`;
    case 'unseen':
      return `In a night of shots you would not see ${difference}`;
    case 'barely':
      return `You would need a night of shots to see ${difference}`;
    case 'seen':
      return `In a game with each you would see ${difference}`;
  }
}

/** What moves the wished numbers farther than all layouts together do. */
export function leversHeading(
  levers: readonly LeverEffect[],
  { reaction, targets, scatter }: { reaction: Numbers; targets: readonly TargetAnswer[]; scatter: Numbers },
  units: Units,
): string {
  const ids = targets.map(({ wish }) => NUMBER_OF_WISH[wish]);
  if (ids.length === 0 || levers.length === 0) return 'What else would change it';
  const moves = (lever: LeverEffect, id: WishedId): number => lever.reaction[id] - reaction[id];
  const strength = (lever: LeverEffect): number =>
    overScatter({ ...scatter, ...Object.fromEntries(ids.map((id) => [id, moves(lever, id)])) }, scatter, ids);
  const [strongest] = [...levers].sort((a, b) => strength(b) - strength(a));
  const more = targets.filter(
    ({ wish, attainable }) =>
      Math.abs(moves(strongest, NUMBER_OF_WISH[wish])) > attainable.high - attainable.low,
  );
  return more.length > 0
    ? `${capital(say(strongest.change, units))}: moves ${listed(more.map(({ wish }) => REACTION_NUMBERS[NUMBER_OF_WISH[wish]].name))} more than any layout`
    : 'Nothing else that was tried moves it more than the layout can';
}
