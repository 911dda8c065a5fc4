import { z } from 'zod';
import { fromKeys } from '../../../base/from-keys.js';
import { COMPARED_IDS, WISHED_IDS } from '../../schemas/reaction-numbers.js';
import { VISIBILITIES } from '../../schemas/visibilities.js';

const n = z.number();

/** Differences of the reaction numbers that can be wished for; names carry units. */
export const sizesSchema = z.strictObject(fromKeys(WISHED_IDS, () => n)).meta({ id: 'sizes' });

/** How well a person could see a difference between two layouts beside the scatter of the bowler's shots. */
export const visibilitySchema = z.enum(VISIBILITIES).meta({
  id: 'visibility',
  description:
    'Of the differences in what is wished for, the greatest over the standard deviation of the bowler’s shots: below a half, which a ' +
    'night of shots with each would not show; below one, which a game with each would not show; or more.',
});

const voiceDifference = z.strictObject({ size: sizesSchema, visibility: visibilitySchema });

/** How far one layout differs from another: by physics and practice weighed, by physics alone, by practice alone. */
export const differenceSchema = z
  .strictObject({
    weighed: voiceDifference,
    physics: voiceDifference,
    practice: voiceDifference.meta({
      description: 'What the beliefs of practice add, all of them in the middle of their sizes.',
    }),
  })
  .meta({
    id: 'layout-difference',
    description: 'Mean differences over the worlds in which both reach the pins.',
  });

/** Standard deviations of the bowler's shots. */
export const scatterSchema = z.strictObject(fromKeys(COMPARED_IDS, () => n)).meta({
  id: 'shot-scatter',
  description: 'Standard deviation from shot to shot, lane and ball as they are.',
});
