/** Where the pin may lie, seen from the PAP along the vertical axis line. */
export const PIN_SIDES = ['above', 'below'] as const;
export type PinSide = (typeof PIN_SIDES)[number];
