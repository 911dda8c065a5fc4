import type { BowTieAnswer } from '../records/answer.js';
import { decimals, eighths } from './figures.js';
import type { Page } from './page.js';
import { paragraph } from './section.js';

/** Where the rings cross, in words; that they do not when they hardly part. */
export function bowTieText(bowTie: BowTieAnswer, page: Page): string[] {
  if (!bowTie) return paragraph('The rings hardly part, so there is no bow tie.', page);
  const [upper, lower] = bowTie.map(
    ({ fromGripCentreIn, fromPapIn, spreadIn }) =>
      `${eighths(fromGripCentreIn)} in from the grip centre and ${eighths(fromPapIn)} in from the PAP (to ${decimals(spreadIn, 2)} in)`,
  );
  return paragraph(
    `Bow tie: the rings cross near two places, one toward the fingers, ${upper}, and one toward the thumb, ${lower}. ` +
      'There the ball runs over its own oil again.',
    page,
  );
}
