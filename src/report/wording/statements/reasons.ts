import { fromKeys } from '../../../base/from-keys.js';
import type { Cause } from '../../../records/answers/statements/ids.js';
import type { Reasons } from '../../../records/answers/statements/reasons.js';
import { REACTION_NUMBERS, type WishedId } from '../../../records/schemas/reaction-numbers.js';
import { capital } from '../../../records/text/capital.js';
import { type DisplayUnit, type Units, withUnit } from '../../text/display-units.js';
import { signed } from '../../text/figures.js';
import { sizeText } from './size-text.js';
import type { Wording } from './wording.js';

/** Why a layout does what it does, as sentences. */
export const REASONS: Wording<Reasons> = {
  'meets-wish': ({ reading, step, found, wanted, usual }, units) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const unit = units[compared.quantity];
    const wish = step === null ? 'the target' : `wish ${step} of 5`;
    return `${capital(name)} ${withUnit(found, unit)}; ${wish} is ${withUnit(wanted, unit)} here, and the usual middle layout gives ${withUnit(usual, unit)}.`;
  },
  'cause-of-difference': ({ reading, total, cause, byCause, without }, units) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const { makes, leaves } = CAUSE_WORDS[cause];
    const { size, name: unit } = units[compared.quantity];
    const [all, part] = [size(total), size(byCause)];
    const most =
      part === all
        ? 'All of that'
        : `${Number(part) > Number(all) ? 'More than all' : 'Most'} of that, ${part} ${unit},`;
    return `${capital(name)}, in one steady shot by physics: ${difference(reading, total, units)} than with the usual middle layout. ${most} comes from ${makes}; ${leaves}, it would be ${difference(reading, without, units)}.`;
  },
  'difference-by-finish': ({ reading, total, left, usualGrit, grit }, units) => {
    const { name } = REACTION_NUMBERS[reading];
    return `The cover's finish makes most of this difference in ${name}: with ${usualGrit} grit instead of ${grit}, it would be ${difference(reading, left, units)} instead of ${difference(reading, total, units)}.`;
  },
  'flare-and-differential': (
    { undrilledIn, drilledIn, flareIn, usualFlareIn, start, grips, peakIn },
    units,
  ) => {
    const { gyration, flare, fineTape, tape, lane } = units;
    const before = gyration.show(undrilledIn);
    const after = withUnit(drilledIn, gyration);
    const drills =
      before === gyration.show(drilledIn)
        ? `Drilling keeps the total differential at ${after}`
        : `Drilling takes the total differential from ${before} to ${after}`;
    const than = flareIn - usualFlareIn;
    const flares = isNothing(than, flare)
      ? 'as much as with the usual middle layout'
      : `${withUnit(Math.abs(than), flare)} ${than > 0 ? 'more' : 'less'} than with the usual middle layout`;
    const starts = start
      ? ` In the first turn the core moves the axis by ${withUnit(start.perTurnIn, fineTape)}, with the usual layout by ${withUnit(start.usualPerTurnIn, fineTape)}.`
      : '';
    const why = grips
      ? ` ${GRIP_WORDS[grips.how]} (this alone moves hook start by ${changeWithUnit(grips.hookStartFt, lane)}).`
      : '';
    const peak =
      peakIn === null
        ? ''
        : ` The pin lies near ${withUnit(peakIn, tape)} from the PAP, where flare is greatest.`;
    return `${drills}; the ball flares ${withUnit(flareIn, flare)}, ${flares}.${starts}${why}${peak}`;
  },
  'intermediate-without-mark': (params, units) =>
    `${intermediate(params, units)}. The CG lies on the pin, so there is no mark to aim at and no drilling angle to choose.`,
  'intermediate-of-many-cores': (params, units) =>
    `${intermediate(params, units)}, the median of all cores tried. How much the drilling angle changes it depends on the core's shape, which is not known: hardly on a plain core, much on a lobed one.`,
  'intermediate-of-plain-core': ({ markMatters, ...params }, units) =>
    `${intermediate(params, units)}, because of the holes alone. ${
      markMatters
        ? 'A plain core has no heavy side for the mark to show. The drilling angle turns the core, whose CG lies beside the pin, relative to the holes, and so moves the centre of mass.'
        : 'On a plain core the mark hardly matters.'
    }`,
  'intermediate-of-lobed-core': (params, units) =>
    `${intermediate(params, units)}. On a lobed core it matters whether the thumb hole meets a nose or the gap between two (the drilling angle accounts for ${byAngle(params, units)}).`,
  'intermediate-of-own-core': (params, units) =>
    `${intermediate(params, units)} with the ball's own core (the drilling angle accounts for ${byAngle(params, units)}).`,
  'intermediate-of-asymmetric-core': (params, units) =>
    `${intermediate(params, units)}. The drilling angle turns the core's mass bias relative to the holes (it accounts for ${byAngle(params, units)}).`,
  'shares-of-score': ({ total, drillingAngle, pinToPap, valAngle, byCause }) => {
    const angle = drillingAngle === null ? '' : `, drilling angle ${signed(drillingAngle, 1)}`;
    const causes = byCause
      ? ` The same points by cause: centre of mass ${signed(byCause.centre, 1)}, flare ${signed(byCause.flare, 1)}, RG and differentials ${signed(byCause.inertia, 1)}.`
      : '';
    return `In the bowler's average shot it scores ${signed(total, 1)} points against the usual middle layout: pin-to-PAP ${signed(pinToPap, 1)}, VAL angle ${signed(valAngle, 1)}${angle}.${causes}`;
  },
  'drilling-angle-moves-centre': ({ points, withCentreHeld, sideOz, fingerOz, topOz }, { ounce }) =>
    `The drilling angle works mostly through static weight: changed last, it adds ${signed(points, 1)} points; if the centre of mass stays where it was, ${signed(withCentreHeld, 1)}. It changes side weight by ${changeWithUnit(sideOz, ounce)}, finger weight by ${changeWithUnit(fingerOz, ounce)}, top weight by ${changeWithUnit(topOz, ounce)}.`,
  'next-layout': ({ layout, behind, mostOf }, units) => {
    const where = mostOf
      ? `, most of all in ${REACTION_NUMBERS[mostOf.reading].name} (${against(mostOf, units)})`
      : '';
    return `The next, ${layout}, scores ${Math.abs(behind).toFixed(1)} ${behind >= 0 ? 'lower' : 'higher'} over all simulated tries${where}.`;
  },
};

/** What a cause is called, and how it is taken away. */
const CAUSE_WORDS: Readonly<Record<Cause, { readonly makes: string; readonly leaves: string }>> = {
  centre: {
    makes: 'the place of the drilled ball’s centre of mass (static weight)',
    leaves: "with the usual layout's centre of mass",
  },
  flare: {
    makes: 'flare, which decides how much of its own oil the ball rolls over',
    leaves: 'if no oil stayed on the ball',
  },
  inertia: {
    makes: "the drilled ball's RG and differentials",
    leaves: 'with those of the usual layout',
  },
};

const GRIP_WORDS = {
  more: 'More flare brings more clean cover to the lane, so the ball grips more where the lane is dry',
  less: 'Less flare rolls more of each turn over its own oil, so the ball grips less where the lane is dry',
} as const;

const changeWithUnit = (value: number, { change, name }: DisplayUnit): string => `${change(value)} ${name}`;

/** A difference with its direction: `0.4 ft earlier`. */
const difference = (reading: WishedId, value: number, units: Units): string =>
  sizeText(
    fromKeys([reading], () => value),
    [reading],
    units,
  );

/** Whether a number is shown as zero. */
const isNothing = (value: number, { show }: DisplayUnit): boolean => Number(show(value)) === 0;

const intermediate = (
  { undrilledIn, drilledIn }: Reasons['intermediate-without-mark'],
  { gyration }: Units,
): string =>
  `Intermediate differential goes from ${gyration.show(undrilledIn)} to ${withUnit(drilledIn, gyration)}`;

const byAngle = ({ byDrillingAngleIn }: Reasons['intermediate-of-lobed-core'], { gyration }: Units): string =>
  `${gyration.change(byDrillingAngleIn)} ${gyration.name} of the difference from the middle layout`;

function against(
  { reading, next, found }: NonNullable<Reasons['next-layout']['mostOf']>,
  units: Units,
): string {
  const unit = units[REACTION_NUMBERS[reading].compared.quantity];
  return `${unit.show(next)} against ${withUnit(found, unit)}`;
}
