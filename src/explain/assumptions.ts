import type { BallProblem } from '../prepare/ball-problem.js';
import { gripOf } from '../prepare/grip-holes.js';
import { type Ball, hasOwnCore, USUAL_CIRCUMFERENCE_IN, USUAL_GRIT } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { type EarlierDrilling, USUAL_PLUG_GCC } from '../records/schemas/earlier-drilling.js';
import {
  type GripRecord,
  type HoleRecord,
  USUAL_INSERT_GCC,
  USUAL_SLUG_GCC,
} from '../records/schemas/grip.js';
import type { Lane } from '../records/schemas/lane.js';
import { HIGH_SURFACE, LOW_SURFACE, NOMINAL_SURFACE, USUAL_FRICTION } from '../simulate/assumed-surface.js';
import type { RecommendInputs } from '../simulate/setting.js';
import { SCATTER_BY_SKILL } from '../simulate/world.js';
import { coreAssumptions } from './core-assumptions.js';

/** What was assumed about a ball and its holes, because nobody said otherwise. */
export function drillingAssumptions(
  ball: Ball,
  bowler: Bowler,
  problem: Pick<BallProblem, 'published' | 'bodies' | 'known' | 'ounce'>,
): string[] {
  const { known, ounce } = problem;
  const lines: string[] = [...known];
  if (!hasOwnCore(ball)) lines.push(...coreAssumptions(ball, problem));
  if (!ball.circumferenceIn) lines.push(`Circumference ${USUAL_CIRCUMFERENCE_IN} in.`);
  if (!bowler.grip)
    lines.push(
      `Usual fingertip grip: inserts in 31/32 in bores${bowler.thumbHole ? ', a slug in a 1 1/4 in thumb bore' : ', no thumb hole'}, drill-point hole ends.`,
    );
  lines.push(...sleeveAssumptions(gripOf(bowler)), ...redrillAssumptions(ball));
  lines.push('RG is about the drilled ball’s centre of mass.');
  lines.push(
    ounce === 'moment'
      ? 'An ounce of static weight is moment over radius: a fingertip drilling takes 2.5 to 3 oz of top weight off, as common practice says. Comparing halves reads 8/3 as much.'
      : 'An ounce of static weight is the difference between two halves of the ball.',
  );
  return lines;
}

/** What was assumed of slug and inserts in a grip whose sizes are given. */
function sleeveAssumptions({ thumb, middle, ring }: GripRecord): string[] {
  const isLeftOut = (hole: HoleRecord | null): boolean =>
    hole?.sleeve?.densityGcc === undefined && !!hole?.sleeve;
  return [
    ...(isLeftOut(thumb) ? [`Thumb slug of ${USUAL_SLUG_GCC} g/cc.`] : []),
    ...(isLeftOut(middle) || isLeftOut(ring) ? [`Finger inserts of ${USUAL_INSERT_GCC} g/cc.`] : []),
  ];
}

/** What was assumed of a ball that was drilled before. */
function redrillAssumptions({ drilledBefore = [] }: Ball): string[] {
  if (drilledBefore.length === 0) return [];
  const given = (pick: (drilling: EarlierDrilling) => unknown): boolean =>
    drilledBefore.every((drilling) => pick(drilling) !== undefined);
  return [
    'The ball was drilled before. Its old slugs and inserts were drilled out and the old holes filled whole, down to the tips; old holes left open are not provided for.',
    ...(given(({ plugDensityGcc }) => plugDensityGcc) ? [] : [`Plugs of ${USUAL_PLUG_GCC} g/cc.`]),
    ...(given(({ grip }) => grip)
      ? []
      : ['The old grip, of which no sizes are given, had the usual fingertip sizes.']),
  ];
}

/** What was assumed about lane and cover for a simulated shot. */
export function shotAssumptions(ball: Ball, lane: Lane): string[] {
  return [
    'Oil on the ball: a ring carries 5 to 30 % of the lane’s film, 0.15 to 0.4 in wide; a turn that meets it grips less and takes up to 70 % off. An assumption, no published model is known; what flare does to the path rests on it.',
    ...laneAssumptions(lane),
    ...(ball.surfaceGrit ? [] : [`Cover finish ${USUAL_GRIT} grit.`]),
  ];
}

/** What was assumed about a lane, whatever rolls on it. */
export const laneAssumptions = (lane: Lane): string[] => [
  frictionAssumption(lane),
  ...(lane.games ? [wearAssumption(lane.games, lane.wornSide ?? 'right')] : []),
];

/** What was assumed of friction: eight in ten worlds lie within the ranges. */
function frictionAssumption({
  frictionOiled = USUAL_FRICTION.oiled,
  frictionDry = USUAL_FRICTION.dry,
}: Lane): string {
  const range = (middle: number, factor: 'frictionOiledFactor' | 'frictionDryFactor'): string =>
    `${(middle * LOW_SURFACE[factor]).toFixed(3)} to ${(middle * HIGH_SURFACE[factor]).toFixed(3)}`;
  return (
    `Friction ${range(frictionDry, 'frictionDryFactor')} dry, ${range(frictionOiled, 'frictionOiledFactor')} on heavy oil ` +
    '(8 worlds in 10, at 2000 grit), exponential in the film: not measured, but what bowlers’ lines ask for.'
  );
}

/** What was assumed of the games bowled on the oil. */
function wearAssumption(games: number, side: 'right' | 'left'): string {
  const { burnPerGame, carriedDown } = NOMINAL_SURFACE;
  const percent = (share: number): string => (100 * share).toFixed(share < 0.1 ? 1 : 0);
  const gone = 1 - (1 - burnPerGame) ** games;
  return (
    `Wear: ${games} games, most of them on the ${side}, have taken ${percent(gone)} % of the film in the middle of the track ` +
    `(${percent(burnPerGame)} % a game, ${percent(LOW_SURFACE.burnPerGame)} to ${percent(HIGH_SURFACE.burnPerGame)}), and ` +
    `${percent(carriedDown)} % of it (${percent(LOW_SURFACE.carriedDown)} to ${percent(HIGH_SURFACE.carriedDown)}) lies past the ` +
    'pattern’s end. An assumption of this project; no measured law is at hand.'
  );
}

/** What was assumed about how shots and markings differ from one another. */
export function worldAssumptions(bowler: Bowler): string[] {
  const lines = [
    'Layouts are marked to 1/16 in and 2° (one standard deviation); balls are made to 0.004 in of RG, 3 % of differential, 1/4 oz and 1/4 in of pin-to-CG.',
  ];
  if (!bowler.scatter) {
    const skill = bowler.skill ?? 'league';
    const s = SCATTER_BY_SKILL[skill];
    lines.push(
      `Shots repeat as assumed for the skill “${skill}”: ±${s.speedMph} mph, ±${s.revRateRpm} rpm, ±${s.axisTiltDeg}° tilt, ±${s.axisRotationDeg}° rotation, ±${s.launchAngleDeg}° of direction (one standard deviation).`,
    );
  }
  const { uncertainty } = bowler;
  if (uncertainty)
    lines.push(
      `These numbers were measured or guessed, and may be off by (one standard deviation): ${UNCERTAIN.filter(
        ([key]) => uncertainty[key] !== undefined,
      )
        .map(([key, name, unit]) => `${name} ${uncertainty[key]} ${unit}`)
        .join(', ')}.`,
    );
  return lines;
}

const UNCERTAIN = [
  ['speedMph', 'ball speed', 'mph'],
  ['revRateRpm', 'rev rate', 'rpm'],
  ['axisTiltDeg', 'axis tilt', 'degrees'],
  ['axisRotationDeg', 'axis rotation', 'degrees'],
  ['papOverIn', 'PAP over', 'in'],
  ['papUpIn', 'PAP up', 'in'],
] as const;

/** What was assumed of how a ball leaves the hand. */
export const LAUNCH_ASSUMPTION =
  'The bowler sends the centre of mass. How far the ball is turned about its axis at release is not repeated: worlds take every turn, a single shot is the mean of two half a turn apart.';

const LINE_ASSUMPTION =
  'Every layout is rolled on its own line: the laydown board whose line, with the usual middle layout, is most like what bowlers play on such a pattern (laydown on board 33 at most, sent at most 5.5° out; on worn oil from the fresh line, two boards with the feet for each at the arrows), and the direction in which the layout itself reaches board 17.5. In each world it is played as in the undisturbed shot.';

const NO_WISH_ASSUMPTION =
  'No wish was given: layouts are ranked by how near the entry angle comes to 4 to 6 degrees.';

/** Everything a ranking of layouts rests on. */
export const allAssumptions = (
  { bowler, ball, lane, want }: RecommendInputs,
  problem: BallProblem,
): string[] => [
  ...drillingAssumptions(ball, bowler, problem),
  ...shotAssumptions(ball, lane),
  ...worldAssumptions(bowler),
  LAUNCH_ASSUMPTION,
  LINE_ASSUMPTION,
  ...(Object.values(want).every((step) => step === undefined) ? [NO_WISH_ASSUMPTION] : []),
];
