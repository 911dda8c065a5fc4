import type { Band } from '../../records/answers/answer.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { type Units, withUnit } from '../text/display-units.js';
import { learnedTexts } from '../wording/learned-line.js';
import { type Block, text } from './blocks.js';

/** Where the oil rings are to be expected, and how near they come to the holes; nothing where no lane was given. */
export function ringsBlock({ rings: given }: SheetAnswer, units: Units): Block {
  const { flare } = units;
  if (!given) return { heading: 'Oil rings', parts: [] };
  const { lane, learned, worlds, ringsInOil, flareIn, clearances, bands } = given;
  const range = ({ low, high }: Band): string => `${flare.show(low)} – ${withUnit(high, flare)}`;
  const seen =
    ringsInOil > 0
      ? `Rings 1 to ${ringsInOil} are laid in oil and can be seen.`
      : 'No full turn is laid in oil, so no ring can be seen.';
  return {
    heading: 'Oil rings to expect',
    parts: [
      text(
        `On ${lane}: flare ${withUnit(flareIn, flare)} (9 of 10 of ${worlds} simulated tries: ${range(bands.flareIn)}). ${seen}`,
      ),
      text(
        `Least distance from a ring to the edge of a hole: ${clearances
          .map(({ hole, clearanceIn }) => `${hole} ${withUnit(clearanceIn, flare)}`)
          .join(', ')}. The nearest hole, in 9 of 10 tries: ${range(bands.ringClearanceIn)}.`,
      ),
      ...learnedTexts(learned, [], units).map(text),
    ],
  };
}
