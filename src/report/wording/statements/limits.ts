import type { LeverKind } from '../../../records/answers/statements/ids.js';
import type { Limits } from '../../../records/answers/statements/limits.js';
import { REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import { type DisplayUnit, type Units, withUnit } from '../../text/display-units.js';
import { percent } from '../../text/figures.js';
import { OBJECTIONS } from './objections.js';
import { sayIn } from './say-in.js';
import type { Wording } from './wording.js';

const LEVERS_NAMED: Readonly<Record<LeverKind, string>> = {
  surface: 'the cover’s finish',
  line: 'the line',
  ball: 'another ball',
};

/** What holds a result back, as sentences. */
export const LIMITS: Wording<Limits> = {
  'layout-moves-little': ({ reading, low, high, spread, movedMoreBy }, units) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const unit = units[compared.quantity];
    return `The layout moves ${name} by ${withUnit(high - low, unit)} in all (${unit.show(low)} to ${withUnit(high, unit)}), less than shots, lane and core make it vary (${withUnit(spread, unit)} from the 5th to the 95th percentile).${movesMore(movedMoreBy, unit)}`;
  },
  'wish-missed': ({ missed }, units) => `The first layout misses ${missesText(missed, units)}.`,
  'wishes-do-not-join': ({ missed }, units) =>
    `No layout that was tried meets all your wishes together: the first misses ${missesText(missed, units)}.`,
  'many-set-aside': ({ count, why }, units) =>
    `${count} layouts were set aside because ${sayIn(OBJECTIONS, why, units)}.`,
  'slides-at-pins': () => 'The ball is still sliding at the pins: it does not reach its roll phase.',
};

/** Each number missed, in its unit and as a share of what layouts of the ball reach. */
const missesText = (missed: Limits['wish-missed']['missed'], units: Units): string =>
  missed
    .map(({ reading, by, shareOfRange }) => {
      const { name, compared } = REACTION_NUMBERS[reading];
      const { size, name: unit } = units[compared.quantity];
      return `the target for ${name} by ${size(by)} ${unit} (${percent(shareOfRange)} % of what the layouts of this ball reach)`;
    })
    .join(' and ');

/** What moves a number more than layout does, and by how much; nothing where nothing tried does. */
const movesMore = (by: Limits['layout-moves-little']['movedMoreBy'], unit: DisplayUnit): string =>
  by.length === 0
    ? ''
    : ` Other changes, tried with the first layout, move it more: ${by
        .map((each) => `${LEVERS_NAMED[each.kind]} by ${withUnit(each.by, unit)}`)
        .join(', ')}.`;
