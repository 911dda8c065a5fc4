import { sampleStandardDeviation } from 'simple-statistics';
import { fromKeys } from '../base/from-keys.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { COMPARED_IDS, type ComparedId } from '../records/schemas/reaction-numbers.js';
import { reader } from './readings.js';
import type { ShotProblem } from './shot-problem.js';
import { simulator } from './simulator.js';
import { drawDeviations, withShot } from './worlds/deviations.js';

/** Scatter of a bowler's shots: standard deviations of reaction numbers, in the units of answers. */
export type ShotScatter = Readonly<Record<ComparedId, number>>;

const SHOTS = 32;

/**
 * Scatter of reaction numbers from shot to shot: only the release varies, as much as the bowler's does, with the usual middle layout on
 * its line, on the nominal lane and ball. Over the shots that reach the pins, if at least two do.
 */
export function shotScatter(problem: ShotProblem, bowler: Bowler, seed: number): ShotScatter {
  const engine = simulator(problem);
  const [nominal] = problem.worlds;
  const { published } = problem.ball;
  const layout = toLayout(MIDDLE_LAYOUT, published.radius);
  const { uncertainty: _, ...repeatable } = bowler;
  const draws = drawDeviations({ seed, count: SHOTS, bowler: repeatable, published, bodyCount: 1 });
  const shots = draws.map(({ speed, spin, axisTilt, axisRotation, launchAngle, spinPhase }) => {
    const release = { speed, spin, axisTilt, axisRotation, launchAngle };
    return engine.outcome(layout, { ...withShot(nominal, release), spinPhase }, problem.launch);
  });
  const reached = shots.filter(({ shot }) => shot === 'pins');
  const counted = reached.length > 1 ? reached : shots;
  return fromKeys(COMPARED_IDS, (id) => sampleStandardDeviation(counted.map(reader(id))));
}
