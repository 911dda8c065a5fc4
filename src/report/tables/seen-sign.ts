import type { Visibility } from '../../records/schemas/visibilities.js';

/** Stands behind a difference, as wide for all: whether a night of shots with each shows it, or a game. */
export const SEEN_SIGN: Readonly<Record<Visibility, string>> = {
  unseen: ' ',
  barely: '?',
  seen: '!',
};
