import { decimals } from '../../../base/decimals.js';
import type { CoreRefusals } from '../../../records/refusals/core-refusals.js';
import type { LengthUnit } from '../../../records/schemas/core.js';
import type { Units } from '../../text/display-units.js';
import { amount } from './amount.js';
import type { RefusalWords } from './refusal-words.js';

/** Core files that make no ball, in words. Lengths are in the file's own unit, where the person looks them up. */
export const CORE_WORDS: RefusalWords<CoreRefusals> = {
  'core-unit': ({ field, unit, radius, coverThickness, reach, usualWith }) => {
    const what = [
      ...(coverThickness === null ? [] : [`the cover is ${length(coverThickness, unit)} thick`]),
      ...(reach === null ? [] : [`the core reaches ${length(reach, unit)} from the centre`]),
    ].join(' and ');
    return {
      field,
      rule: `must be the unit its lengths are in, for a ball of ${length(radius, unit)} radius`,
      got: `"${unit}", with which ${what}`,
      hint: `With ${usualWith.map((each) => `"${each}"`).join(' or ')} it would be a usual core: is that the unit?`,
    };
  },
  'cover-thickness': ({ unit, thickness, least, most, usualLeast, usualMost }) => ({
    field: 'cover.thickness',
    rule: `must be ${length(least, unit)} to ${length(most, unit)}`,
    got: length(thickness, unit),
    hint: `${length(usualLeast, unit)} to ${length(usualMost, unit)} is usual.`,
  }),
  'part-outside': ({ part, unit, reach, room }) => ({
    field: part,
    rule: `must lie within ${length(room, unit)} of the ball's centre, inside the cover`,
    got: `a point ${length(reach, unit)} from it`,
    hint: 'Make it smaller, move it, or make the cover thinner.',
  }),
  'part-density': ({ part, densityGcc, bound, boundGcc, ...masses }, units) => ({
    field: `${part}.densityGcc`,
    rule: `must be at ${bound} ${density(boundGcc)} for the weight to come out`,
    got: `${density(densityGcc)}: ${formatMasses(masses, units)}`,
    hint: `Or a size is off; ${formatBalls(masses, units)}.`,
  }),
  'no-filler': ({ heaviestPart, ...masses }, units) => ({
    field: 'parts',
    rule: `must leave a filler of ${formatFillers(masses)}`,
    got: formatMasses(masses, units),
    hint: `Sizes or the weight are off: ${heaviestPart} is the heaviest, and ${formatBalls(masses, units)}.`,
  }),
};

type Masses = Omit<CoreRefusals['no-filler'], 'heaviestPart'>;

const formatMasses = ({ coverLb, coreLb, fillerLb, fillerGcc }: Masses, units: Units): string =>
  `cover ${pounds(coverLb, units)} and core ${pounds(coreLb, units)}, which leave ${pounds(fillerLb, units)} ` +
  `for the filler: ${density(fillerGcc)}`;

const formatFillers = ({ leastFillerGcc, mostFillerGcc }: Masses): string =>
  `${density(leastFillerGcc)} to ${density(mostFillerGcc)}`;

const formatBalls = (masses: Masses, units: Units): string =>
  `with a filler of ${formatFillers(masses)} this core makes a ball of ` +
  `${pounds(masses.leastBallLb, units)} to ${pounds(masses.mostBallLb, units)}`;

const pounds = (value: number, { weight }: Units): string => amount(value, weight, 1);
const density = (gcc: number): string => `${decimals(gcc, 2)} g/cc`;
const length = (value: number, unit: LengthUnit): string => `${Number(value.toPrecision(3))} ${unit}`;
