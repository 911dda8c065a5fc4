import { decimals, signed } from '../../base/decimals.js';
import type { Band, DrilledAnswer } from '../../records/answers/answer.js';
import { glyphs, type Spelling } from './page.js';

/*
 * How many digits each quantity is shown with. Made balls differ from their published numbers by a few per
 * cent and no lane is known to a tenth of a foot, so more digits would be false.
 */

export { decimals, signed };

export const boards = (value: number): string => decimals(value, 1);
export const degrees = (value: number): string => decimals(value, 1);
export const points = (value: number): string => decimals(value, 0);
export const percent = (share: number): string => decimals(100 * share, 0);
/** The same with a tenth where the share is small. */
export const finePercent = (share: number): string => decimals(100 * share, share < 0.1 ? 1 : 0);

export const band = ({ low, high }: Band, show: (value: number) => string, page: Spelling): string =>
  low === high ? show(low) : `${show(low)} ${glyphs(page).dash} ${show(high)}`;

/** Whether drilled numbers come from a single core: the ball's own, which is fully known. */
export const isOneCore = (bands: DrilledAnswer['bands']): boolean =>
  Object.values(bands).every(({ low, high }) => low === high);

/** An angle in words: `70°`, or `70 deg` where only ASCII may be used. */
export const angle = (degreesValue: number, page: Spelling): string =>
  `${decimals(degreesValue, 0)}${glyphs(page).degree}`;
