import { INCH, to } from '../base/units.js';
import { power } from '../math/power.js';
import type { Assumption } from '../records/answers/statements/assumptions.js';
import type { Lane } from '../records/schemas/lane.js';
import {
  HIGH_SURFACE,
  LOW_SURFACE,
  NOMINAL_SURFACE,
  USUAL_FRICTION,
} from '../simulate/worlds/assumed-surface.js';
import { REFERENCE_GRIT } from '../simulate/worlds/friction-of.js';

/** What was assumed about the oil that a ball carries on its own rings. */
export const oilOnBall = (): Assumption => ({
  code: 'oil-on-ball',
  params: {
    carriedShare: { least: LOW_SURFACE.carriedShare, most: HIGH_SURFACE.carriedShare },
    bandWidthIn: { least: to(LOW_SURFACE.bandWidth, INCH), most: to(HIGH_SURFACE.bandWidth, INCH) },
    mostWornPerPass: HIGH_SURFACE.wornPerPass,
  },
});

/** What was assumed about a lane, whatever rolls on it. */
export const laneAssumptions = (lane: Lane): Assumption[] => [
  frictionAssumption(lane),
  ...(lane.games ? [wearAssumption(lane.games, lane.wornSide ?? 'right')] : []),
];

/** What was assumed about friction: eight in ten worlds lie within the ranges. */
function frictionAssumption({
  frictionOiled = USUAL_FRICTION.oiled,
  frictionDry = USUAL_FRICTION.dry,
}: Lane): Assumption {
  const range = (middle: number, factor: 'frictionOiledFactor' | 'frictionDryFactor') => ({
    least: middle * LOW_SURFACE[factor],
    most: middle * HIGH_SURFACE[factor],
  });
  return {
    code: 'friction',
    params: {
      dry: range(frictionDry, 'frictionDryFactor'),
      oiled: range(frictionOiled, 'frictionOiledFactor'),
      grit: REFERENCE_GRIT,
      finishOnDry: { least: LOW_SURFACE.finishOnDry, most: HIGH_SURFACE.finishOnDry },
    },
  };
}

/** What was assumed about the games bowled on the oil. */
function wearAssumption(games: number, side: 'right' | 'left'): Assumption {
  const { burnPerGame, carriedDown } = NOMINAL_SURFACE;
  return {
    code: 'wear-of-oil',
    params: {
      games,
      side,
      goneShare: 1 - power(1 - burnPerGame, games),
      burnPerGame,
      burnRange: { least: LOW_SURFACE.burnPerGame, most: HIGH_SURFACE.burnPerGame },
      carriedDown,
      carriedRange: { least: LOW_SURFACE.carriedDown, most: HIGH_SURFACE.carriedDown },
    },
  };
}
