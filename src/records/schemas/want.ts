import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { capital } from '../text/capital.js';
import {
  NUMBER_OF_WISH,
  WISHED_IDS,
  WISHES,
  type Wish,
  type WishedId,
  wishEnds,
  wishWords,
} from './reaction-numbers.js';

const step = (wish: Wish) =>
  z
    .int({ error: 'must be a whole number, 1 to 5' })
    .min(1, 'must be 1 to 5')
    .max(5, 'must be 1 to 5')
    .meta({ description: `${capital(wishWords(wish).about)}: ${wishEnds(wish)}` })
    .optional();

/** The wanted reaction: plain wishes of five steps; a wish left out is no wish. */
export const wantSchema = z
  .strictObject(fromKeys(WISHES, step))
  .meta({ id: 'want', title: 'Wanted reaction' });

export type Want = z.infer<typeof wantSchema>;

/** The reaction numbers that are wished for; all that can be when there is no wish. */
export function wishedIds(want: Want): readonly WishedId[] {
  const wished = WISHES.filter((wish) => want[wish] !== undefined).map((wish) => NUMBER_OF_WISH[wish]);
  return wished.length > 0 ? wished : WISHED_IDS;
}
