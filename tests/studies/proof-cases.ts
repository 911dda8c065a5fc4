import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { demoShelf } from '../../src/records/read/shelf.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Want } from '../../src/records/schemas/want.js';
import type { RecommendInputs } from '../../src/simulate/setting.js';

/** One bowler, ball, lane and want, with the ids of the demo records it was drawn from. */
export interface ProofCase {
  readonly from: { readonly bowler: string; readonly ball: string; readonly lane: string };
  readonly inputs: RecommendInputs;
}

/** How far a bowler's numbers are drawn from those of a demo bowler, to either side. */
const SPREAD = { speed: 0.06, revs: 0.12, tiltDeg: 3, rotationDeg: 8, papIn: 3 / 8 };

/** Share of wishes that are made. */
const WISHED = 2 / 3;

/**
 * Random cases: a bowler near one of the demo bowlers, a ball and a lane of the demo shelf, and a want.
 *
 * @param seed  the same cases for the same seed, and the first of many are the few
 */
export function proofCases(count: number, seed: number): readonly ProofCase[] {
  const { bowlers, balls, lanes } = demoShelf();
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) generator.next(); // the first draws of near seeds resemble each other
  const uniform = (): number => uniformFloat64(generator);
  const oneOf = <T>(list: readonly T[]): T => list[Math.floor(uniform() * list.length)];
  const around = (value: number, spread: number, step: number): number =>
    step * Math.round((value + spread * (2 * uniform() - 1)) / step);
  const near = (bowler: Bowler): Bowler => ({
    ...bowler,
    speedMph: around(bowler.speedMph, SPREAD.speed * bowler.speedMph, 0.1),
    revRateRpm: around(bowler.revRateRpm, SPREAD.revs * bowler.revRateRpm, 1),
    axisTiltDeg: Math.max(0, around(bowler.axisTiltDeg, SPREAD.tiltDeg, 1)),
    axisRotationDeg: Math.max(0, around(bowler.axisRotationDeg, SPREAD.rotationDeg, 1)),
    pap: {
      overIn: around(bowler.pap.overIn, SPREAD.papIn, 1 / 8),
      upIn: around(bowler.pap.upIn, SPREAD.papIn, 1 / 8),
    },
  });
  const wish = (): number | undefined => {
    const step = 1 + Math.floor(5 * uniform());
    return uniform() < WISHED ? step : undefined;
  };
  return Array.from({ length: count }, (): ProofCase => {
    const [bowler, ball, lane] = [oneOf(bowlers), oneOf(balls), oneOf(lanes)];
    const wishes = { hookStart: wish(), sharpness: wish(), totalHook: wish() };
    const made = Object.entries(wishes).filter(([, step]) => step !== undefined);
    const want: Want = made.length > 0 ? Object.fromEntries(made) : { totalHook: 3 };
    const inputs = { bowler: near(bowler.record), ball: ball.record, lane: lane.record, want };
    return { from: { bowler: bowler.id, ball: ball.id, lane: lane.id }, inputs };
  });
}
