/*
 * From which share of worlds on one layout counts as better than another (a coin has 0.5). Our own choice;
 * verdicts in data and in words go by the same.
 */
export const CLEARLY = 0.9;
export const PROBABLY = 0.7;
export const SLIGHTLY = 0.55;
