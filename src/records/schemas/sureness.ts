/*
 * The share of worlds from which one layout counts as better than another (a coin toss has 0.5). Our own choice;
 * verdicts in data and in words use the same limits.
 */
export const CLEARLY = 0.9;
export const PROBABLY = 0.7;
export const SLIGHTLY = 0.55;
