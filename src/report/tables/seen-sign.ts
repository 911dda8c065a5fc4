import type { FromFirst } from '../../records/answers/compare-answer.js';
import type { ComparedId } from '../../records/schemas/reaction-numbers.js';

/** Stands behind a difference, as wide for all: whether a night of shots with each shows it, or a game. */
export const SEEN_SIGN: Record<FromFirst['physics']['visibility'][ComparedId], string> = {
  unseen: ' ',
  barely: '?',
  seen: '!',
};
