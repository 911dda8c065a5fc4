import { type Units, withUnit } from './display-units.js';

/** A PAP by its arcs, in: `5 in over, 1/2 in up`. */
export const papText = (
  { overIn, upIn }: { readonly overIn: number; readonly upIn: number },
  { tape }: Units,
): string =>
  `${withUnit(overIn, tape)} over${tape.show(upIn) === '0' ? '' : `, ${withUnit(Math.abs(upIn), tape)} ${upIn > 0 ? 'up' : 'down'}`}`;
