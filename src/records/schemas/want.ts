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
import { isNoWish, readWish } from './read-wish.js';
import { wishForms } from './wish-forms.js';

function wishField(wish: Wish) {
  const rule = `must be ${wishForms(wish)}`;
  const step = z.int({ error: rule }).min(1, rule).max(5, rule);
  const text = z.string().refine((typed) => !isNoWish(readWish(wish, typed)), { error: rule });
  return z
    .union([step, text], { error: rule })
    .meta({ description: `${capital(wishWords(wish).about)}: ${wishEnds(wish)}; ${wishForms(wish)}` })
    .optional();
}

/** The wanted reaction: each wish a step of five, its word, or a number with its unit; a wish left out is no wish. */
export const wantSchema = z
  .strictObject(fromKeys(WISHES, wishField))
  .meta({ id: 'want', title: 'Wanted reaction' });

export type Want = z.infer<typeof wantSchema>;

const wished = (want: Want): readonly WishedId[] =>
  WISHES.filter((wish) => want[wish] !== undefined).map((wish) => NUMBER_OF_WISH[wish]);

/** Whether any reaction is wished for. */
export const hasWish = (want: Want): boolean => wished(want).length > 0;

/** The reaction numbers that are wished for; all that can be when there is no wish. */
export const wishedIds = (want: Want): readonly WishedId[] => (hasWish(want) ? wished(want) : WISHED_IDS);
