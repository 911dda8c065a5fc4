import { standardDeviation } from 'simple-statistics';
import type { Launch } from '../../src/motion/shot/release.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import {
  type AssumedSurface,
  HIGH_SURFACE,
  LOW_SURFACE,
  NOMINAL_SURFACE,
} from '../../src/simulate/worlds/assumed-surface.js';
import { type Deviations, drawDeviations, NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { SCATTER_BY_SKILL } from '../../src/simulate/worlds/release-scatter.js';
import { type Case, rigOf } from './case.js';
import { cleanShare } from './clean-share.js';
import type { Claim, Lever } from './levers.js';
import { mapQuantities, type Numbers, numbersOf } from './quantities.js';

/** What is varied: not wear, which does nothing on the fresh lane of the study. */
const VARIED = [
  'frictionOiledFactor',
  'frictionDryFactor',
  'filmScale',
  'bandWidth',
  'carriedShare',
] as const satisfies readonly (keyof AssumedSurface)[];

/** Every corner of the assumed ranges of lane and cover, all else nominal. */
export const CORNERS: readonly Deviations[] = Array.from({ length: 2 ** VARIED.length }, (_, corner) => {
  const atCorner = Object.fromEntries(
    VARIED.map((name, bit) => [name, (corner >> bit) & 1 ? HIGH_SURFACE[name] : LOW_SURFACE[name]]),
  );
  return { ...NO_DEVIATIONS, surface: { ...NOMINAL_SURFACE, ...atCorner } };
});

/** What a lever does: high less low, in the nominal world and at each corner. */
export interface Effect {
  readonly nominal: Numbers;
  readonly corners: readonly Numbers[];
  /** Share of clean cover (see `cleanShare`) at the low and the high end, nominal world. */
  readonly clean: readonly [number, number];
}

export function effectOf({ low, high }: Lever, lane: Lane, launch: Launch): Effect {
  const [from, to] = [low, high].map((end) => rigOf(end, lane, launch));
  const inWorld = (deviations: Deviations): Numbers => {
    const [a, b] = [numbersOf(from.react(deviations)), numbersOf(to.react(deviations))];
    return mapQuantities((name) => b[name] - a[name]);
  };
  return {
    nominal: inWorld(NO_DEVIATIONS),
    corners: CORNERS.map(inWorld),
    clean: [cleanShare(from.shot(NO_DEVIATIONS)), cleanShare(to.shot(NO_DEVIATIONS))],
  };
}

const SCATTER_SHOTS = 200;
const SEED = 1;

/** Standard deviation of each quantity over a league bowler's shots with one ball on one lane. */
export function shotScatter(base: Case, lane: Lane, launch: Launch): Numbers {
  const rig = rigOf(base, lane, launch);
  const bowler = { ...base.bowler, scatter: SCATTER_BY_SKILL.league };
  const shots = drawDeviations({
    seed: SEED,
    count: SCATTER_SHOTS,
    bowler,
    published: rig.problem.ball.published,
    bodyCount: 1,
    surface: 'nominal',
  }).map((deviations) => numbersOf(rig.react(deviations)));
  return mapQuantities((name) => standardDeviation(shots.map((shot) => shot[name])));
}

/**
 * Share of the shot-to-shot scatter below which an effect counts as none: two means so far apart differ by
 * two standard errors only from 200 shots a side on.
 */
export const UNSEEN = 0.2;

/** Share of the worlds that makes a verdict. */
const MOST = 0.75;

/** In how many worlds a claim holds, nothing shows, or the opposite holds, and what follows. */
export interface Verdict {
  readonly holds: number;
  readonly unseen: number;
  readonly opposite: number;
  readonly word: 'agrees' | 'no effect' | 'disagrees' | 'depends';
}

export function judge(
  { quantity, expects }: Claim,
  { corners }: Pick<Effect, 'corners'>,
  scatter: Numbers,
): Verdict {
  const sizes = corners.map((world) => (expects * world[quantity]) / scatter[quantity]);
  const holds = sizes.filter((size) => size >= UNSEEN).length;
  const opposite = sizes.filter((size) => size <= -UNSEEN).length;
  const unseen = sizes.length - holds - opposite;
  const enough = MOST * sizes.length;
  const word =
    holds >= enough
      ? 'agrees'
      : opposite >= enough
        ? 'disagrees'
        : unseen >= enough
          ? 'no effect'
          : 'depends';
  return { holds, unseen, opposite, word };
}
