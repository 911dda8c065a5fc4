import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { capital } from '../text/capital.js';
import { WISHES, type Wish, wishEnds, wishWords } from './reaction-numbers.js';

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
