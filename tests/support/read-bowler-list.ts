import { readCoachList } from '../../src/records/read/bowler-list.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';

/** The bowlers of a coach's list, without the balls that it names. */
export const readBowlerList = (text: string, source: string): readonly Bowler[] =>
  readCoachList(text, source).map(({ bowler }) => bowler);
