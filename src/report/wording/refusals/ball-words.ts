import type {
  BallRefusals,
  PublishedField,
  PublishedNumber,
} from '../../../records/refusals/ball-refusals.js';
import { CORE_FAMILIES, type CoreFamily } from '../../../records/schemas/core-families.js';
import type { Quantity, Units } from '../../text/display-units.js';
import { amount } from './amount.js';
import type { RefusalWords } from './refusal-words.js';

const FIELDS: Readonly<Record<PublishedField, { name: string; quantity: Quantity; digits: number }>> = {
  rgIn: { name: 'RG', quantity: 'gyration', digits: 2 },
  differentialIn: { name: 'differential', quantity: 'gyration', digits: 3 },
  intermediateDifferentialIn: { name: 'intermediate differential', quantity: 'gyration', digits: 3 },
  weightLb: { name: 'weight', quantity: 'weight', digits: 1 },
  topWeightOz: { name: 'top weight', quantity: 'ounce', digits: 2 },
  pinToCgIn: { name: 'pin to CG', quantity: 'fineTape', digits: 2 },
};

/** Said last: numbers of a real ball may be beyond the builds that are tried. */
const IF_RIGHT = 'If all numbers are as published, this ball is built in a way that flarewise does not try.';

/** Balls that cannot be, or cannot be thrown as they are, in words. */
export const BALL_WORDS: RefusalWords<BallRefusals> = {
  'no-such-core': ({ field, given, families, why, densestGcc, remedies }, units) => ({
    field,
    rule: `must go with the ball's other numbers in ${nameFamilies(families)} core`,
    got: `${amount(given.value, units[FIELDS[given.field].quantity])}, with which ${formatMisfit(why, densestGcc)}`,
    hint: `${formatRemedies(remedies, units)} ${IF_RIGHT}`,
  }),
  'ball-would-hop': () => ({
    field: 'bowler.revRateRpm',
    rule: 'must be low enough for the ball to stay on the lane, with its centre of mass as far off its centre as it is',
    got: 'a shot in which the ball would hop at every turn',
    hint: 'Check the rev rate, and the top weight and pin-to-CG of the ball.',
  }),
};

function formatMisfit(why: BallRefusals['no-such-core']['why'], densestGcc: number): string {
  switch (why) {
    case 'filler-too-light':
      return 'the filler around the core would have to be lighter than any that is tried';
    case 'core-too-big':
      return 'the core would stick out into the cover';
    case 'core-too-dense':
      return `the core would have to be denser than ${densestGcc} g/cc`;
    case 'low-axis-off-pin':
      return 'the low-RG axis would leave the pin';
  }
}

function formatRemedies(remedies: readonly PublishedNumber[], units: Units): string {
  const [first] = remedies;
  if (!first) return 'Changing any one number does not help: check them all for a slip.';
  const formatRemedy = ({ field, value }: PublishedNumber): string => {
    const { name, quantity, digits } = FIELDS[field];
    return `${name} ${amount(value, units[quantity], digits)}`;
  };
  const nearest = `Nearest that works, the others kept: ${remedies.map(formatRemedy).join('; or ')}.`;
  return remedies.length > 1
    ? `${nearest} The ${FIELDS[first.field].name} has the least to change: look there for a slip first.`
    : nearest;
}

/** `a plain or lobed`: stands before `core`. */
const nameFamilies = ([first, ...others]: readonly CoreFamily[]): string =>
  [CORE_FAMILIES[first].name, ...others].join(' or ');
