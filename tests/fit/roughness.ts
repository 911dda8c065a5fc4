import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { rootMeanSquare } from 'simple-statistics';
import { Workspace } from '../../src/motion/shot/workspace.js';
import { designShots } from '../../src/regression/design.js';
import { middlingRoll } from '../../src/regression/features.js';
import type { ShotInputs } from '../../src/regression/inputs.js';
import { observe } from '../../src/regression/observe.js';
import { TARGETS } from '../../src/regression/targets.js';
import { isPlayable } from './playable.js';

/** Seed and lanes of the shots that are shaken; far from any that is fitted on. */
const SHAKEN_SEED = 1002;
const SHAKEN_LANES = 100;

/** How far the engine's own answers move when the inputs of a shot hardly do. */
export interface Roughness {
  /** Greatest relative change of each input. */
  readonly share: number;
  /** Root mean square change by answer, in the units people read. */
  readonly rmse: number[];
}

/**
 * Rolls shots as they are, and again with every input off by up to a share of itself.
 *
 * What a change of inputs far below anybody's knowledge of them does is a measure for the errors of a fit.
 */
export function roughness(shares: readonly number[]): Roughness[] {
  const workspace = new Workspace();
  const here = new Float64Array(TARGETS.length);
  const there = new Float64Array(TARGETS.length);
  const shaken = shares.map((share) => {
    const generator = xoroshiro128plus(SHAKEN_SEED);
    const near = (): number => 1 + share * (2 * uniformFloat64(generator) - 1);
    return { share, near, moves: TARGETS.map((): number[] => []) };
  });
  for (let lane = 0; lane < SHAKEN_LANES; lane++)
    for (const shot of designShots(SHAKEN_SEED, lane)) {
      const { body, release, launch, surface, freshSurface } = shot;
      const others = shaken.map(({ near }) => shake(shot, near));
      if (!isPlayable(middlingRoll(body.radius, release, launch, surface, freshSurface), launch)) continue;
      if (!observe(here, 0, shot, workspace)) continue;
      shaken.forEach(({ moves }, k) => {
        if (!observe(there, 0, others[k], workspace)) return;
        TARGETS.forEach(({ si }, i) => {
          moves[i].push((there[i] - here[i]) / si);
        });
      });
    }
  return shaken.map(({ share, moves }) => ({ share, rmse: moves.map((each) => rootMeanSquare(each)) }));
}

function shake(shot: ShotInputs, near: () => number): ShotInputs {
  const { release, launch, surface, freshSurface } = shot;
  const grip = near();
  return {
    ...shot,
    release: {
      ...release,
      speed: release.speed * near(),
      spin: release.spin * near(),
      axisTilt: release.axisTilt * near(),
      axisRotation: release.axisRotation * near(),
    },
    launch: { x: launch.x, angle: launch.angle * near() },
    surface: {
      ...surface,
      stretches: surface.stretches.map((law) => ({ ...law, oiled: grip * law.oiled, dry: grip * law.dry })),
    },
    freshSurface: {
      bandWidth: freshSurface.bandWidth * near(),
      carriedShare: freshSurface.carriedShare * near(),
      wornPerPass: freshSurface.wornPerPass * near(),
    },
  };
}
