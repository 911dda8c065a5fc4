/** How well a person could see a difference between two layouts beside the scatter of the bowler's shots. */
export const VISIBILITIES = ['unseen', 'barely', 'seen'] as const;
export type Visibility = (typeof VISIBILITIES)[number];
