import type { Reasons } from '../../../records/answers/statements/reasons.js';
import { REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import { capital } from '../../../records/text/capital.js';
import { type DisplayUnit, type Units, withUnit } from '../../text/display-units.js';
import { signed } from '../../text/figures.js';
import type { Wording } from './wording.js';

/** Why a layout does what it does, as sentences. */
export const REASONS: Wording<Reasons> = {
  'meets-wish': ({ reading, step, found, wanted, usual }, units) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const unit = units[compared.quantity];
    const wish = step === null ? 'the target' : `wish ${step} of 5`;
    return `${capital(name)} ${withUnit(found, unit)}; ${wish} is ${withUnit(wanted, unit)} here, and the usual middle layout gives ${withUnit(usual, unit)}.`;
  },
  'flare-and-differential': ({ undrilledIn, drilledIn, flareIn, usualFlareIn, grips, peakIn }, units) => {
    const { gyration, flare, tape } = units;
    const kept = drilledIn - undrilledIn;
    const keeps = isNothing(kept, gyration)
      ? 'Drilling keeps the total differential'
      : `Drilling ${kept > 0 ? 'adds' : 'takes'} ${withUnit(Math.abs(kept), gyration)} of total differential`;
    const than = flareIn - usualFlareIn;
    const flares = isNothing(than, flare)
      ? 'as much as the usual middle layout'
      : `${withUnit(Math.abs(than), flare)} ${than > 0 ? 'more' : 'less'} than the usual middle layout`;
    const why = {
      more: ' More flare brings more clean cover to the lane, so the ball grips more where the lane is dry.',
      less: ' Less flare rolls more of each turn over its own oil, so the ball grips less where the lane is dry.',
      none: '',
    }[grips ?? 'none'];
    const peak =
      peakIn === null
        ? ''
        : ` The pin lies near ${withUnit(peakIn, tape)} from the PAP, where flare is greatest.`;
    return `${keeps} (${gyration.show(undrilledIn)} to ${withUnit(drilledIn, gyration)}); it flares ${withUnit(flareIn, flare)}, ${flares}.${why}${peak}`;
  },
  'offset-of-centre': ({ hookStartFt, totalHookBoards }, { lane, boards }) => {
    const causes = (
      [
        ['hook start', hookStartFt, lane],
        ['total hook', totalHookBoards, boards],
      ] as const
    ).flatMap(([name, both, unit]) =>
      both
        ? [
            `${name} ${unit.change(both.asDrilled)} ${unit.name}, and ${unit.change(both.balanced)} with the centre of mass at the ball’s centre`,
          ]
        : [],
    );
    return `The offset of the centre of mass (static weight) makes most of the difference from the usual middle layout: ${causes.join('; ')}. Gravity on it turns the axis while the ball rolls down the lane.`;
  },
  'intermediate-without-mark': (params, units) =>
    `${intermediate(params, units)}. The CG lies on the pin, so there is no mark to aim at and no drilling angle to choose.`,
  'intermediate-of-many-cores': (params, units) =>
    `${intermediate(params, units)}, in the middle of all cores tried. Whether the mark matters depends on the core's shape, which is not known: on a plain one hardly, on a lobed one much.`,
  'intermediate-of-plain-core': (params, units) =>
    `${intermediate(params, units)}: the holes alone make it. On a plain core the mark hardly matters (the drilling angle accounts for ${byAngle(params, units)}).`,
  'intermediate-of-lobed-core': (params, units) =>
    `${intermediate(params, units)}. On a lobed core it matters what the thumb hole meets: a nose or the gap between two (the drilling angle accounts for ${byAngle(params, units)}).`,
  'intermediate-of-own-core': (params, units) =>
    `${intermediate(params, units)} with the ball's own core (the drilling angle accounts for ${byAngle(params, units)}).`,
  'intermediate-of-asymmetric-core': (params, units) =>
    `${intermediate(params, units)}. The drilling angle turns the core's mass bias against the holes (it accounts for ${byAngle(params, units)}).`,
  'shares-of-score': ({ total, drillingAngle, pinToPap, valAngle }) =>
    `Of ${signed(total, 1)} points against the usual middle layout in the nominal world, pin-to-PAP brings ${signed(pinToPap, 1)}, the VAL angle ${signed(valAngle, 1)}${drillingAngle === null ? '' : `, the drilling angle ${signed(drillingAngle, 1)}`}.`,
  'next-layout': ({ layout, behind, mostOf }, units) => {
    const where = mostOf
      ? `, most of all in ${REACTION_NUMBERS[mostOf.reading].name} (${against(mostOf, units)})`
      : '';
    return `The next, ${layout}, scores ${Math.abs(behind).toFixed(1)} ${behind >= 0 ? 'lower' : 'higher'} over all worlds${where}.`;
  },
};

/** Whether a number is shown as zero. */
const isNothing = (value: number, { show }: DisplayUnit): boolean => Number(show(value)) === 0;

const intermediate = (
  { undrilledIn, drilledIn }: Reasons['intermediate-without-mark'],
  { gyration }: Units,
): string =>
  `Intermediate differential goes from ${gyration.show(undrilledIn)} to ${withUnit(drilledIn, gyration)}`;

const byAngle = ({ byDrillingAngleIn }: Reasons['intermediate-of-plain-core'], { gyration }: Units): string =>
  `${gyration.change(byDrillingAngleIn)} ${gyration.name} of the difference from the middle layout`;

function against(
  { reading, next, found }: NonNullable<Reasons['next-layout']['mostOf']>,
  units: Units,
): string {
  const unit = units[REACTION_NUMBERS[reading].compared.quantity];
  return `${unit.show(next)} against ${withUnit(found, unit)}`;
}
