import type { ReactionAnswer } from '../records/answer.js';
import { boards, degrees, feet, flare, sharpness } from './figures.js';

/** The reaction numbers a person compares, in the order they happen down the lane. */
export const REACTION_ROWS = [
  { key: 'hookStartFt', name: 'hook starts', unit: 'ft', show: feet, digits: 1 },
  { key: 'hookSharpnessDegPerFt', name: 'hook shape', unit: 'deg/ft', show: sharpness, digits: 2 },
  { key: 'totalHookBoards', name: 'total hook', unit: 'boards', show: boards, digits: 1 },
  { key: 'entryAngleDeg', name: 'entry angle', unit: 'deg', show: degrees, digits: 1 },
  { key: 'flareIn', name: 'flare', unit: 'in', show: flare, digits: 1 },
] as const satisfies readonly {
  key: keyof ReactionAnswer;
  name: string;
  unit: string;
  show: (value: number) => string;
  digits: number;
}[];
