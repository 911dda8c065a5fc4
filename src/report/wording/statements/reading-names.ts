import type { Quantity } from '../../text/display-units.js';

/** What each reaction number is called in a sentence, and how it is shown. */
export const READING_NAMES = {
  hookStartFt: { name: 'hook start', quantity: 'lane', more: 'later', less: 'earlier' },
  sharpnessDegPerFt: { name: 'sharpness', quantity: 'sharpness', more: 'sharper', less: 'smoother' },
  totalHookBoards: { name: 'total hook', quantity: 'boards', more: 'more', less: 'less' },
  entryAngleDeg: { name: 'entry angle', quantity: 'angle', more: 'more', less: 'less' },
  flareIn: { name: 'flare', quantity: 'flare', more: 'more', less: 'less' },
} as const satisfies Readonly<
  Record<string, { name: string; quantity: Quantity; more: string; less: string }>
>;
