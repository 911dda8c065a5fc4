import { toDigits } from '../../base/decimals.js';

/*
 * The share of worlds from which one layout counts as better than another (a coin toss has 0.5). Our own choice;
 * verdicts in data and in words use the same limits, of the share that is shown: 115 of 128 worlds are "90 of 100".
 */
const CLEARLY = 0.9;
const PROBABLY = 0.7;

export const isClear = (share: number): boolean => shown(share) >= CLEARLY;
export const isProbable = (share: number): boolean => shown(share) >= PROBABLY;

const shown = (share: number): number => toDigits(share, 2);
