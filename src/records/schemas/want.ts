import { z } from 'zod';

const step = (what: string) =>
  z
    .int({ error: 'must be a whole number, 1 to 5' })
    .min(1, 'must be 1 to 5')
    .max(5, 'must be 1 to 5')
    .meta({ description: what })
    .optional();

/** The wanted reaction: three plain wishes of five steps; a wish left out is no wish. */
export const wantSchema = z
  .strictObject({
    hookStart: step('When the hook starts: 1 earliest, 5 latest'),
    sharpness: step('How the hook looks: 1 smoothest, 5 sharpest'),
    totalHook: step('How much it hooks: 1 least, 5 most'),
  })
  .meta({ id: 'want', title: 'Wanted reaction' });

export type Want = z.infer<typeof wantSchema>;
