import type { LeverKind } from '../../../records/answers/statements/ids.js';
import type { Limits } from '../../../records/answers/statements/limits.js';
import { REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import { type DisplayUnit, withUnit } from '../../text/display-units.js';
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
  'wishes-do-not-join': ({ missed }) =>
    `No layout of this ball meets all your preferences: the best found misses ${missed
      .map(({ reading, shareOfRange }) => `${REACTION_NUMBERS[reading].name} by ${percent(shareOfRange)} %`)
      .join(' and ')} of the attainable range.`,
  'many-set-aside': ({ count, why }, units) =>
    `${count} layouts were set aside because ${sayIn(OBJECTIONS, why, units)}.`,
  'slides-at-pins': () => 'The ball is still sliding at the pins: it does not reach its roll phase.',
};

/** What moves a number more than layout does, and by how much; nothing where nothing tried does. */
const movesMore = (by: Limits['layout-moves-little']['movedMoreBy'], unit: DisplayUnit): string =>
  by.length === 0
    ? ''
    : ` Other changes, tried with the first layout, move it more: ${by
        .map((each) => `${LEVERS_NAMED[each.kind]} by ${withUnit(each.by, unit)}`)
        .join(', ')}.`;
