import { DEGREE } from '../../src/units.js';
import type { BowlerStudy, LeverRow } from './beliefs-page.js';
import { QUANTITY_NAMES, type QuantityName } from './quantities.js';
import { signed } from './text.js';

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
  const layoutMost = Math.max(
    ...average.rows.filter(isLayout).map(({ effect }) => Math.abs(effect.nominal.totalHook)),
  );
  const [free, ...biased] = average.massBias;
  const span = (values: readonly number[], digits: number): string =>
    `${Math.min(...values).toFixed(digits)}–${Math.max(...values).toFixed(digits)}`;
  const all = [free, ...biased];
  const tiltLoss = 1 - Math.cos(25 * DEGREE) / Math.cos(5 * DEGREE);
  const lostRevs = tiltLoss * average.bowler.revRateRpm;
  const hookOfLostRevs = (-lostRevs / 100) * rowOf(average, 'revs').effect.nominal.totalHook;
  const { measuredDeg, closedFormDeg } = average.precession;
  return [
    `**The hand outweighs the layout.** Of all layouts tried the greatest change of total hook is ${layoutMost.toFixed(1)} boards; two mph are worth ${ofAverage('speed', 'totalHook')}, a hundred revs ${ofAverage('revs', 'totalHook')}, thirty degrees of rotation ${ofAverage('rotation', 'totalHook')} (average bowler). The layout moves flare by up to ${greatest(average, 'flare').toFixed(0)} times its scatter, any other number by ${greatestOther(average).toFixed(1)} at most (${greatestOther(other).toFixed(1)} for the rev-dominant bowler).`,
    `**Flare peaks** at pin-to-PAP ${average.flarePeak.pinToPapIn} in for the average bowler and ${other.flarePeak.pinToPapIn} in for the rev-dominant one (scan in 1/4 in, VAL angle 35°); the belief names 3 3/8 in. It is exact for the first turn of a body of revolution; drilling moves the low axis off the pin, and the axis wanders while the ball slides.`,
    `**More flare hooks earlier rather than more.** Pin-to-PAP 1 → 3 3/8 in: hook start ${both('pin-to-PAP 1', 'hookStart')} ft, total hook ${both('pin-to-PAP 1', 'totalHook')} boards; differential 0.020 → 0.050 in: ${both('differential', 'hookStart')} ft and ${both('differential', 'totalHook')} boards. Flare acts only by clean cover, and there is less and less of it to win: its share from 30 ft to roll start goes ${clean(average, 'pin-to-PAP 1')} with the pin, ${clean(average, 'differential')} with the differential (average bowler); once two rings lie a band apart (0.15 to 0.4 in) only their crossings are left.`,
    `**Hook start is where the oil ends.** On this 40 ft pattern it stays near ${average.base.hookStart.toFixed(1)} ft (average): ${ofAverage('finish', 'hookStart')} ft for the finish, ${ofAverage('RG', 'hookStart')} ft for RG. What practice calls early shows in the roll start: ${ofAverage('finish', 'rollStart')} and ${ofAverage('RG', 'rollStart')} ft.`,
    `**Intermediate differential moves the axis, not the window.** Its size and direction change the axis’ path on the ball greatly (wander ${span(
      all.map((row) => row.wanderIn),
      1,
    )} in, flare ${span(
      all.map((row) => row.reactions.nominal.flare),
      1,
    )} in). With no oil coming back the window stays at ${span(
      all.map((row) => row.reactions.none.window),
      2,
    )} ft: slip ends at a rate μ g (1 + m R²/I), in which 0.020 in changes I by 1.6 % and the rate by about 1.2 %. Where the axis points in the ball does not enter; the angular momentum in the lane’s frame changes by friction and the offset centre’s weight alone. Oil coming back makes it ${span(
      all.map((row) => row.reactions.nominal.window),
      1,
    )} ft at nominal, ${span(
      all.map((row) => row.reactions.most.window),
      1,
    )} ft at most; without a mass bias at all it is ${free.reactions.nominal.window.toFixed(1)}. So a bias shortens the window where it adds clean cover, and does nothing or the reverse where it takes flare away; by no more than ${Math.max(...biased.map((row) => Math.abs(row.reactions.nominal.window - free.reactions.nominal.window))).toFixed(1)} ft, ${(Math.max(...biased.map((row) => Math.abs(row.reactions.nominal.window - free.reactions.nominal.window))) / average.scatter.window).toFixed(1)} of the scatter. As assumed here, the belief is not borne out; it would need something a rigid body and clean cover do not give.`,
    `**Drilling and VAL angle** reach the path by the same way only, and their sign differs between bowlers and corners (“depends”). The tool must not promise “later” or “smoother” from these angles alone.`,
    `**Tilt** hooks less, not later: ${ofAverage('tilt 5', 'totalHook')} boards. The spin about the vertical meets no friction in this model (a point contact), so 5 → 25° acts like the ${(100 * tiltLoss).toFixed(0)} % of spin it takes off the lane, which by the row of revs would be ${signed(hookOfLostRevs, 1)} boards. The longer skid of practice would need friction against spinning on the spot, which is left out.`,
    `**Side weight** is not nothing: 2 oz are worth ${both('side weight', 'totalHook')} boards. Gravity on the offset centre turns the axis like a top’s: ${measuredDeg.toFixed(1)}° more rotation kept at 38 ft; m g d/(I ω) gives ${closedFormDeg.toFixed(1)}° if the axis stayed put in the ball. The older belief (more hook) holds; the newer one (it does not matter) does not, for 2 oz; a few tenths, as between two layouts, stay far below the scatter.`,
  ];
}

function rowOf(study: BowlerStudy, name: string): LeverRow {
  const row = study.rows.find(({ lever }) => lever.name.startsWith(name));
  if (!row) throw new Error(`no lever called ${name}`);
  return row;
}

const isLayout = ({ lever }: LeverRow): boolean => /PAP|drilling|VAL|the same/.test(lever.name);

/** Greatest change over all numbers but flare. */
const greatestOther = (study: BowlerStudy): number =>
  Math.max(...QUANTITY_NAMES.filter((name) => name !== 'flare').map((name) => greatest(study, name)));

/** Greatest change of a quantity over all levers of the layout, in standard deviations of the shots. */
const greatest = ({ rows, scatter }: BowlerStudy, quantity: QuantityName): number =>
  Math.max(
    ...rows.filter(isLayout).map(({ effect }) => Math.abs(effect.nominal[quantity]) / scatter[quantity]),
  );
