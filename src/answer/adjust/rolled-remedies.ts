import { ln } from '../../math/ln.js';
import { xToBoard } from '../../motion/lane/boards.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import type { Adjustment } from '../../records/answers/statements/adjustments.js';
import { Refusal } from '../../records/refusals/refusal.js';
import type { Ball } from '../../records/schemas/ball.js';
import { USUAL_GRIT } from '../../records/schemas/ball.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { beliefEffects } from '../../search/voices/belief-effects.js';
import { drawBeliefs } from '../../search/voices/draw-beliefs.js';
import { believedOutcome } from '../../search/voices/weighed-voice.js';
import type { RecommendInputs, Setting, SettingOptions } from '../../simulate/setting.js';
import type { Outcome } from '../../simulate/simulator.js';
import { laidDownAlike } from '../parts/laid-down-alike.js';
import { formatOn } from '../parts/layout-answer.js';
import { type RolledOnBall, rollOnBall } from '../parts/roll-on-ball.js';
import { laneMoves } from './lane-moves.js';

/** A drilled ball that is kept. */
export interface KeptBall {
  readonly id: string;
  readonly ball: Ball;
  readonly layout: LayoutNumbers;
}

/** A remedy as it rolled in all worlds, physics and practice weighed. */
export interface RolledRemedy {
  readonly remedy: Adjustment;
  readonly outcomes: readonly Outcome[];
  readonly reachesPocket: boolean;
}

/** The ball as it is drilled and played, with what is needed to roll others in the same worlds. */
export interface RolledBase {
  readonly on: RolledOnBall;
  readonly nominal: Outcome;
  readonly outcomes: readonly Outcome[];
  readonly moves: readonly RolledRemedy[];
  readonly roll: RollAlike;
}

/** Rolls layouts of a ball, laid down where the ball as drilled is, in the same worlds. */
type RollAlike = (inputs: RecommendInputs, choose: ChooseLayouts) => Promise<RolledAlike>;

/** Which layouts are rolled, once the ball is made ready. */
type ChooseLayouts = (setting: Setting) => Promise<readonly LayoutNumbers[]>;

interface RolledAlike {
  readonly on: RolledOnBall;
  readonly rows: readonly {
    readonly layout: LayoutNumbers;
    readonly outcomes: readonly Outcome[];
    readonly reachesPocket: boolean;
  }[];
}

/** Effects of the beliefs on a layout on some ball, relative to the usual layout of the ball as drilled. */
type Weigh = (on: RolledOnBall, layout: LayoutNumbers, outcomes: readonly Outcome[]) => readonly Outcome[];

/**
 * Rolls the ball as it is drilled on its own line, and the moves on the lane from there.
 *
 * @param hasSteps  whether a wish is a step of what layouts attain, for which a grid of them is rolled
 */
export async function rollBase(
  inputs: RecommendInputs,
  layout: LayoutNumbers,
  options: SettingOptions,
  hasSteps: boolean,
): Promise<RolledBase> {
  const { bowler } = inputs;
  const { laydownBoard, ...free } = bowler;
  const [on, moved] = await laidDownAlike(
    laydownBoard,
    { ...inputs, bowler: free },
    options,
    async (setting) => {
      const rolled = await rollOnBall([layout], setting, hasSteps);
      const [{ outcome }] = rolled.entrants;
      return [rolled, outcome.reachesPocket ? await laneMoves(setting, layout, outcome.launch) : []];
    },
  );
  const [{ outcome: nominal, outcomes }] = on.entrants;
  const reference = on.quantitiesOf(MIDDLE_LAYOUT);
  const sizes = drawBeliefs(options.seed, on.luck.length, on.grounds.chanceOf);
  const weigh: Weigh = ({ quantitiesOf }, numbers, byPhysics) => {
    const effects = beliefEffects(quantitiesOf(numbers), reference);
    return byPhysics.map((outcome, world) => believedOutcome(outcome, effects, sizes[world]));
  };
  const board = xToBoard(on.grounds.line.launch.x);
  return {
    on,
    nominal,
    outcomes: weigh(on, layout, outcomes),
    moves: moved.map(({ outcomes: there, ...move }) => ({
      remedy: { code: 'move-on-lane', params: { hand: bowler.hand, ...move } },
      outcomes: weigh(on, layout, there),
      reachesPocket: true,
    })),
    roll: async (other, choose) => {
      const there = await laidDownAlike(board, other, options, async (setting) =>
        rollOnBall(await choose(setting), setting, false),
      );
      return {
        on: there,
        rows: there.entrants.map((each) => ({
          layout: each.layout,
          outcomes: weigh(there, each.layout, each.outcomes),
          reachesPocket: each.outcome.reachesPocket,
        })),
      };
    },
  };
}

/** Finishes that are tried, grit; 5500 stands for polish. A shop has these abrasives (common practice, no source). */
const GRITS = [500, 1000, 2000, 3000, 4000, 5500] as const;

/** Finishes nearer than this are the one that the ball has, as a ratio. */
const SAME_FINISH = 1.2;

/** Changes of ball speed that are tried, mph: as small as those from holding the ball higher or lower (common practice, no source). */
const SPEEDS_MPH = [-1, 1] as const;

/** Remedies without drilling or moving: finishes, other drilled balls, a little speed. Impossible balls are left out. */
export async function rollUndone(
  inputs: RecommendInputs,
  { layout }: KeptBall,
  others: readonly KeptBall[],
  roll: RollAlike,
): Promise<readonly RolledRemedy[]> {
  const { bowler, ball } = inputs;
  const insteadOf = ball.surfaceGrit ?? USUAL_GRIT;
  const rolled: RolledRemedy[] = [];
  const attempt = async (
    changed: Partial<RecommendInputs>,
    numbers: LayoutNumbers,
    remedyOf: (there: RolledAlike) => Adjustment,
  ): Promise<void> => {
    const there = await roll({ ...inputs, ...changed }, async () => [numbers]);
    const [{ outcomes, reachesPocket }] = there.rows;
    rolled.push({ remedy: remedyOf(there), outcomes, reachesPocket });
  };
  for (const grit of GRITS.filter((each) => Math.abs(ln(each / insteadOf)) > ln(SAME_FINISH)))
    await attempt({ ball: { ...ball, surfaceGrit: grit } }, layout, () => ({
      code: 'refinish',
      params: { grit, insteadOf },
    }));
  for (const mph of SPEEDS_MPH)
    await attempt({ bowler: { ...bowler, speedMph: bowler.speedMph + mph } }, layout, () => ({
      code: 'speed-by',
      params: { mph },
    }));
  for (const other of others)
    try {
      await attempt({ ball: other.ball }, other.layout, ({ on }) => ({
        code: 'another-drilled-ball',
        params: { id: other.id, ball: other.ball.name, layout: formatOn(on.grounds.ball, other.layout) },
      }));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error; // a ball that cannot be is refused when it is asked about
    }
  return rolled;
}
