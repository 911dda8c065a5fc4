import { DEGREE, from, MPH, RPM, to } from '../../src/base/units.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { RADIUS } from './alterations.js';
import type { BowlerStudy, LeverRow } from './beliefs-page.js';
import { CORNERS } from './effects.js';
import { QUANTITY_NAMES, type QuantityName } from './quantities.js';
import { signed } from './text.js';

const CENTRED_PIN = 'pin-to-PAP 3 3/8 → 5 3/4 in, centre';
const DRILLING_BIASED = 'drilling angle 20 → 80°, asymmetric';
const CENTRED_VAL = 'VAL angle 20 → 70°, centre';
const BIAS = 'intermediate differential 0 →';

/** What the tables say, in words; every number is taken from them. Reasons that are no measurement say so. */
export function findings([average, other]: readonly BowlerStudy[]): readonly string[] {
  const change = (study: BowlerStudy, name: string, quantity: QuantityName, digits: number): string =>
    signed(rowOf(study, name).effect.nominal[quantity], digits);
  const ofAverage = (name: string, quantity: QuantityName, digits = 1): string =>
    change(average, name, quantity, digits);
  const both = (name: string, quantity: QuantityName, digits = 1): string =>
    `${ofAverage(name, quantity, digits)} and ${change(other, name, quantity, digits)}`;
  const clean = (study: BowlerStudy, name: string): string =>
    rowOf(study, name)
      .effect.clean.map((share) => `${(100 * share).toFixed(0)} %`)
      .join(' → ');
  const layoutMost = (quantity: QuantityName): number =>
    Math.max(...average.rows.filter(isLayout).map(({ effect }) => Math.abs(effect.nominal[quantity])));
  const sizes = (name: string, quantity: QuantityName): string =>
    [average, other].map((study) => size(study, rowOf(study, name), quantity).toFixed(1)).join(' and ');
  const corners = (name: string, kind: 'holds' | 'opposite'): string =>
    [average, other].map((study) => rowOf(study, name).verdicts[0].verdict[kind]).join(' and ');
  const [free, ...biased] = average.massBias;
  const span = (values: readonly number[], digits: number): string =>
    `${Math.min(...values).toFixed(digits)}–${Math.max(...values).toFixed(digits)}`;
  const all = [free, ...biased];
  const windowMost = Math.max(
    ...biased.map(({ reactions }) => Math.abs(reactions.nominal.window - free.reactions.nominal.window)),
  );
  const tiltLoss = 1 - Math.cos(25 * DEGREE) / Math.cos(5 * DEGREE);
  const lostRevs = tiltLoss * average.bowler.revRateRpm;
  const hookOfLostRevs = (-lostRevs / 100) * rowOf(average, 'revs').effect.nominal.totalHook;
  const { measuredDeg, closedFormDeg } = average.precession;
  return [
    `**The hand outweighs the layout.** Of all layouts tried the greatest change is ${layoutMost('totalHook').toFixed(1)} boards of total hook and ${layoutMost('hookStart').toFixed(1)} ft of hook start; two mph are worth ${ofAverage('speed', 'totalHook')} boards and ${ofAverage('speed', 'hookStart')} ft, a hundred revs ${ofAverage('revs', 'totalHook')} and ${ofAverage('revs', 'hookStart')}, thirty degrees of rotation ${ofAverage('rotation', 'totalHook')} and ${ofAverage('rotation', 'hookStart')} (average bowler). Flare and the window are the layout’s: it moves them by up to ${greatest(average, 'flare').toFixed(0)} and ${greatest(average, 'window').toFixed(1)} times their scatter, any other number by ${greatestOther(average).toFixed(1)} at most (${greatestOther(other).toFixed(1)} for the rev-dominant bowler).`,
    `**Flare peaks** at pin-to-PAP ${average.flarePeak.pinToPapIn} in for the average bowler and ${other.flarePeak.pinToPapIn} in for the rev-dominant one (scan in 1/4 in, VAL angle 35°); the belief names 3 3/8 in. That value is exact for the first turn of a body of revolution; drilling moves the low axis off the pin, and the axis migrates while the ball slides.`,
    `**More flare hooks earlier, and a little more.** Pin-to-PAP 1 → 3 3/8 in: hook start ${both('pin-to-PAP 1', 'hookStart')} ft, roll start ${both('pin-to-PAP 1', 'rollStart')} ft, total hook ${both('pin-to-PAP 1', 'totalHook')} boards; differential 0.020 → 0.050 in: ${both('differential', 'hookStart')} ft, ${both('differential', 'rollStart')} ft and ${both('differential', 'totalHook')} boards. Flare acts only through clean cover, with diminishing returns: its share from 30 ft to roll start goes ${clean(average, 'pin-to-PAP 1')} with the pin, ${clean(average, 'differential')} with the differential (average bowler); once two rings are a band apart (0.15 to 0.4 in) only their crossings remain.`,
    `**Hook start is the corner of the path, the mean place of all bending.** On this 40 ft pattern that is at ${average.base.hookStart.toFixed(1)} and ${other.base.hookStart.toFixed(1)} ft. What practice calls early and late shows in it, and in the roll start more: a finish from 500 to 4000 grit is worth ${both('finish', 'hookStart')} ft (roll start ${both('finish', 'rollStart')}), RG from 2.48 to 2.60 in ${both('RG', 'hookStart')} ft (${both('RG', 'rollStart')}).`,
    `**How sharp a finish makes the hook is not known.** 500 → 4000 grit changes sharpness by ${both('finish', 'sharpness', 3)} °/ft (${sizes('finish', 'sharpness')} of the scatter): smoother, where practice says sharper. A finish is taken to count on dry boards ${NOMINAL_SURFACE.finishOnDry} times as much as on oil, which is not measured. If it counted on oil alone, sharpness would stay as it is; if as much on dry boards, it would fall by three times as much (\`finish-on-dry.test.ts\`).`,
    `**More revs hook earlier up to a point, and later beyond it.** A hundred revs: hook start ${both('revs', 'hookStart')} ft, roll start ${both('revs', 'rollStart')} ft; practice says earlier of both bowlers. At the release the ball slips least at ω R cos(tilt) = v cos(rotation), ${leastSlipRpm(average.bowler).toFixed(0)} and ${leastSlipRpm(other.bowler).toFixed(0)} rpm here, and more slip takes longer to end. At the ${average.bowler.revRateRpm} rpm of the first bowler, below that speed, more revs reduce the slip; at the ${other.bowler.revRateRpm} of the other they add to it. The only assumption here is that friction opposes slip.`,
    `**The offset of the centre of mass moves the start of the hook, but hardly the total hook.** VAL angle 20 → 70°: hook start ${both('VAL', 'hookStart')} ft, with the centre of mass put at the ball’s centre ${both(CENTRED_VAL, 'hookStart')}; total hook ${both('VAL', 'totalHook')} boards and ${both(CENTRED_VAL, 'totalHook')}. Pin-to-PAP 3 3/8 → 5 3/4 in: ${both('pin-to-PAP 3', 'hookStart')} ft and ${both(CENTRED_PIN, 'hookStart')}, ${both('pin-to-PAP 3', 'totalHook')} boards and ${both(CENTRED_PIN, 'totalHook')}. Gravity on the offset centre turns the axis along the whole lane. (If the bowler sent the ball’s geometric centre instead of its centre of mass, the offset alone would be worth 2 boards.)`,
    `**Intermediate differential moves the axis, but the window only little.** Its size and direction change the axis’ path on the ball greatly (wander ${span(
      all.map((row) => row.wanderIn),
      1,
    )} in, flare ${span(
      all.map((row) => row.reactions.nominal.flare),
      1,
    )} in). With no oil coming back the window is ${span(
      all.map((row) => row.reactions.none.window),
      2,
    )} ft: slip ends at a rate μ g (1 + m R²/I), in which 0.020 in changes I by 1.6 % and the rate by about 1.2 %. The axis’ direction in the ball does not matter here: only friction and the weight of the offset centre change the angular momentum in the lane’s frame. Oil coming back makes it ${span(
      all.map((row) => row.reactions.nominal.window),
      1,
    )} ft at nominal, ${span(
      all.map((row) => row.reactions.most.window),
      1,
    )} ft at most; without a mass bias at all it is ${free.reactions.nominal.window.toFixed(1)}. It moves hook start more: ${span(
      all.map((row) => row.reactions.nominal.hookStart),
      1,
    )} ft, in general later with less clean cover. In any direction, a bias changes the window by no more than ${windowMost.toFixed(1)} ft, ${(windowMost / average.scatter.window).toFixed(1)} of the scatter. With nothing else moved, 0 → 0.020 in changes it by ${both(BIAS, 'window', 2)} ft (${sizes(BIAS, 'window')} of the scatter), which shows in ${corners(BIAS, 'holds')} of ${CORNERS.length} corners, the opposite in ${corners(BIAS, 'opposite')}: the belief has the right sign for the bias as drilled, but one shot scatters about as much. A larger effect would need something beyond a rigid body and clean cover.`,
    `**Drilling angle** 20 → 80° moves hook start by ${both('drilling', 'hookStart')} ft and roll start by ${both('drilling', 'rollStart')} ft, on the asymmetric ball by ${both(DRILLING_BIASED, 'hookStart')} and ${both(DRILLING_BIASED, 'rollStart')} ft: no later, as practice has it, in any of ${CORNERS.length} corners (${corners(DRILLING_BIASED, 'holds')}), but earlier by less than the scatter of one shot. **VAL angle** 20 → 70° makes the ball hook later, by ${both('VAL', 'hookStart')} ft, roll start by ${both('VAL', 'rollStart')} ft; the window between them changes by ${both('VAL', 'window')} ft, longer, as practice says, in ${corners('VAL', 'holds')} of ${CORNERS.length} corners. It is not smoother (${both('VAL', 'sharpness', 3)} °/ft). flarewise must not promise “later” or “smoother” from these angles alone.`,
    `**More tilt** hooks less, not later: total hook ${both('tilt 5', 'totalHook')} boards, hook start ${both('tilt 5', 'hookStart')} ft, roll start ${both('tilt 5', 'rollStart')} ft. The spin about the vertical meets no friction in this model (a point contact), so 5 → 25° acts like the ${(100 * tiltLoss).toFixed(0)} % of spin it takes off the lane, which by the row of revs would be ${signed(hookOfLostRevs, 1)} boards; where more revs hook later, it makes the ball hook earlier. Friction against spinning on the spot does not change this: a contact patch of 2 to 10 mm gave the same.`,
    `**Side weight** has an effect: 2 oz are worth ${both('side weight', 'totalHook')} boards and ${both('side weight', 'hookStart')} ft of hook start. Gravity on the offset centre makes the axis precess like a top’s: ${measuredDeg.toFixed(1)}° more rotation kept at 38 ft; m g d/(I ω) gives ${closedFormDeg.toFixed(1)}° if the axis stayed put in the ball. The older belief (later, and more hook) holds; the newer one (it does not matter) does not, for 2 oz. A few tenths stay far below the scatter, but layouts that are far apart differ by more; see above.`,
  ];
}

function rowOf(study: BowlerStudy, name: string): LeverRow {
  const row = study.rows.find(({ lever }) => lever.name.startsWith(name));
  if (!row) throw new Error(`no lever called ${name}`);
  return row;
}

/** Of what a driller can do. */
const isLayout = ({ lever }: LeverRow): boolean =>
  /PAP|drilling|VAL/.test(lever.name) && !lever.name.includes('centre of mass');

/** Greatest change over all numbers but flare and window. */
const greatestOther = (study: BowlerStudy): number =>
  Math.max(
    ...QUANTITY_NAMES.filter((name) => name !== 'flare' && name !== 'window').map((name) =>
      greatest(study, name),
    ),
  );

/** Revs at which a ball of this speed, rotation and tilt slips least at the release, rpm. */
const leastSlipRpm = ({ speedMph, axisRotationDeg, axisTiltDeg }: Bowler): number =>
  to(
    (from(speedMph, MPH) * Math.cos(axisRotationDeg * DEGREE)) / (RADIUS * Math.cos(axisTiltDeg * DEGREE)),
    RPM,
  );

/** A change of a quantity, in standard deviations of the shots. */
const size = ({ scatter }: BowlerStudy, { effect }: LeverRow, quantity: QuantityName): number =>
  Math.abs(effect.nominal[quantity]) / scatter[quantity];

/** Greatest change of a quantity over all levers of the layout, in standard deviations of the shots. */
const greatest = (study: BowlerStudy, quantity: QuantityName): number =>
  Math.max(...study.rows.filter(isLayout).map((row) => size(study, row, quantity)));
