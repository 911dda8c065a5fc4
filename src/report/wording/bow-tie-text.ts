import type { BowTieAnswer } from '../../records/answers/answer.js';
import { withUnit } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';

/** Where the rings cross, in words; that they do not when they hardly part. */
export function bowTieText(bowTie: BowTieAnswer, page: Page): string[] {
  if (!bowTie) return paragraph('The rings hardly separate, so there is no bow tie.', page);
  const { roughTape, fineTape } = page.units;
  const [upper, lower] = bowTie.map(
    ({ fromGripCentreIn, fromPapIn, spreadIn }) =>
      `${withUnit(fromGripCentreIn, roughTape)} from the grip centre and ${withUnit(fromPapIn, roughTape)} from the PAP (to ${withUnit(spreadIn, fineTape)})`,
  );
  return paragraph(
    `Bow tie: the rings cross near two places, one toward the fingers, ${upper}, and one toward the thumb, ${lower}. ` +
      'There the ball runs over its own oil again.',
    page,
  );
}
