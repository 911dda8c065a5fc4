import { wallBetween } from '../ball/drill/bore-walls.js';
import { INCH, to } from '../base/units.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { gripOf } from '../prepare/grip-holes.js';
import type { Assumption } from '../records/answers/statements/assumptions.js';
import {
  type Ball,
  ballUncertainty,
  hasOwnCore,
  USUAL_CIRCUMFERENCE_IN,
  USUAL_GRIT,
} from '../records/schemas/ball.js';
import { type Bowler, MOST_LAYDOWN_BOARD } from '../records/schemas/bowler.js';
import { type EarlierDrilling, USUAL_PLUG_GCC } from '../records/schemas/earlier-drilling.js';
import {
  type GripRecord,
  type HoleRecord,
  USUAL_INSERT_GCC,
  USUAL_SLUG_GCC,
} from '../records/schemas/grip.js';
import type { Lane } from '../records/schemas/lane.js';
import { loadPractice } from '../records/shared/shared-data.js';
import { BEST_ENTRY_DEG } from '../search/scoring/score.js';
import { FEET_PER_ARROWS } from '../simulate/line.js';
import { POCKET_BOARD } from '../simulate/pocket.js';
import type { RecommendInputs } from '../simulate/setting.js';
import { MADE_WITHIN } from '../simulate/worlds/draw-made.js';
import { MARKING_DEG, MARKING_IN } from '../simulate/worlds/drilled-ball.js';
import { SCATTER_BY_SKILL } from '../simulate/worlds/release-scatter.js';
import { coreAssumptions } from './core-assumptions.js';
import { laneAssumptions, oilOnBall } from './lane-assumptions.js';

/** What was assumed about a ball and its holes where the records do not say. */
export function drillingAssumptions(
  ball: Ball,
  bowler: Bowler,
  problem: Pick<BallProblem, 'published' | 'bodies' | 'holes' | 'known' | 'ounce'>,
): Assumption[] {
  const { known, ounce } = problem;
  return [
    ...known,
    ...(hasOwnCore(ball) ? [] : coreAssumptions(ball, problem)),
    ...(ball.circumferenceIn ? [] : [USUAL_CIRCUMFERENCE]),
    ...(bowler.grip ? [] : [usualGripAssumption(gripOf(bowler), problem)]),
    ...sleeveAssumptions(gripOf(bowler)),
    ...redrillAssumptions(ball),
    { code: 'rg-about-drilled-centre', params: {} },
    ounce === 'moment'
      ? { code: 'ounce-is-moment', params: { leastTakenOz: 2.5, mostTakenOz: 3 } } // common practice, no source
      : { code: 'ounce-is-difference', params: {} },
  ];
}

const USUAL_CIRCUMFERENCE: Assumption = {
  code: 'usual-circumference',
  params: { circumferenceIn: USUAL_CIRCUMFERENCE_IN },
};

/** The assumed grip, with the wall between its finger bores. It is not drilled, so no warning is given. */
function usualGripAssumption(
  { thumb, middle }: GripRecord,
  { holes, published }: Pick<BallProblem, 'holes' | 'published'>,
): Assumption {
  const [one, other] = holes.filter(({ name }) => name === 'middle' || name === 'ring');
  const { atMouth, meetsAt } = wallBetween(one, other, published.radius);
  return {
    code: 'usual-grip',
    params: {
      fingerBoreIn: boreOf(middle),
      thumbBoreIn: thumb && boreOf(thumb),
      wallIn: to(atMouth, INCH),
      meetAtIn: meetsAt && to(meetsAt, INCH),
    },
  };
}

const boreOf = ({ sleeve, diameterIn }: HoleRecord): number => sleeve?.boreIn ?? diameterIn;

/** What was assumed about slug and inserts in a grip whose sizes are given. */
function sleeveAssumptions({ thumb, middle, ring }: GripRecord): Assumption[] {
  const isLeftOut = (hole: HoleRecord | null): boolean =>
    hole?.sleeve?.densityGcc === undefined && !!hole?.sleeve;
  const assumed: Assumption[] = [];
  if (isLeftOut(thumb)) assumed.push({ code: 'usual-slug', params: { densityGcc: USUAL_SLUG_GCC } });
  if (isLeftOut(middle) || isLeftOut(ring))
    assumed.push({ code: 'usual-inserts', params: { densityGcc: USUAL_INSERT_GCC } });
  return assumed;
}

/** What was assumed about a ball that was drilled before. */
function redrillAssumptions({ drilledBefore = [] }: Ball): Assumption[] {
  if (drilledBefore.length === 0) return [];
  const given = (pick: (drilling: EarlierDrilling) => unknown): boolean =>
    drilledBefore.every((drilling) => pick(drilling) !== undefined);
  const assumed: Assumption[] = [{ code: 'drilled-before', params: {} }];
  if (!given(({ plugDensityGcc }) => plugDensityGcc))
    assumed.push({ code: 'usual-plugs', params: { densityGcc: USUAL_PLUG_GCC } });
  if (!given(({ grip }) => grip)) assumed.push({ code: 'usual-old-grip', params: {} });
  return assumed;
}

/** What of a bowler and a ball was guessed, as far as marks and drilled numbers rest on it. */
export function guessedForDrilling({ uncertainty = {} }: Bowler, ball: Ball): Assumption[] {
  const { papOverIn, papUpIn } = uncertainty;
  const ofPap = { ...(papOverIn && { papOverIn }), ...(papUpIn && { papUpIn }) };
  return [
    ...(Object.keys(ofPap).length > 0 ? [{ code: 'uncertain-release', params: ofPap } as const] : []),
    ...uncertainBall(ball),
  ];
}

function uncertainBall(ball: Ball): Assumption[] {
  const params = ballUncertainty(ball);
  return Object.keys(params).length > 0 ? [{ code: 'uncertain-ball', params }] : [];
}

/** What was assumed about lane and cover for a simulated shot. */
export const shotAssumptions = (ball: Ball, lane: Lane): Assumption[] => [
  oilOnBall(),
  ...laneAssumptions(lane),
  ...(ball.surfaceGrit ? [] : [{ code: 'usual-finish', params: { grit: USUAL_GRIT } } as const]),
];

/** What was assumed about how shots and markings differ from one another. */
function worldAssumptions({ scatter, skill = 'league', uncertainty }: Bowler, ball: Ball): Assumption[] {
  const assumed: Assumption[] = [
    {
      code: 'marking-and-making',
      params: { markingIn: MARKING_IN, markingDeg: MARKING_DEG, ...MADE_WITHIN },
    },
  ];
  if (!scatter) assumed.push({ code: 'usual-scatter', params: { skill, ...SCATTER_BY_SKILL[skill] } });
  if (uncertainty) assumed.push({ code: 'uncertain-release', params: uncertainty });
  return [...assumed, ...uncertainBall(ball)];
}

/** What was assumed about how a ball leaves the hand. */
export const LAUNCH_ASSUMPTION: Assumption = { code: 'launch-of-centre', params: {} };

/** What was assumed about a single shot. */
export const NOMINAL_SHOT: Assumption = { code: 'nominal-shot', params: { pocketBoard: POCKET_BOARD } };

const lineAssumption = (): Assumption => ({
  code: 'own-lines',
  params: {
    mostLaydownBoard: MOST_LAYDOWN_BOARD,
    mostAngleDeg: loadPractice().line.launchDeg.farthest,
    feetPerArrows: FEET_PER_ARROWS,
    pocketBoard: POCKET_BOARD,
  },
});

const NO_WISH: Assumption = { code: 'no-wish', params: { entryDeg: BEST_ENTRY_DEG } };

/** Everything that a ranking of layouts assumes. */
export const allAssumptions = (
  { bowler, ball, lane, want }: RecommendInputs,
  problem: BallProblem,
): Assumption[] => [
  ...drillingAssumptions(ball, bowler, problem),
  ...shotAssumptions(ball, lane),
  ...worldAssumptions(bowler, ball),
  LAUNCH_ASSUMPTION,
  lineAssumption(),
  ...(Object.values(want).every((step) => step === undefined) ? [NO_WISH] : []),
];
