import { readFileSync, writeFileSync } from 'node:fs';
import type { Launch } from '../../src/motion/shot/release.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { type PublishedBall, publishedBallSchema } from '../../src/records/schemas/ball.js';
import { type Bowler, bowlerSchema } from '../../src/records/schemas/bowler.js';
import { type Lane, laneSchema } from '../../src/records/schemas/lane.js';
import { findLine, type Line } from '../../src/simulate/line.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { type BowlerStudy, beliefsPage } from './beliefs-page.js';
import { type Case, rigOf } from './case.js';
import { effectOf, judge, shotScatter } from './effects.js';
import { levers } from './levers.js';
import { massBiasStudy } from './mass-bias.js';
import { precessionStudy } from './precession.js';
import { numbersOf } from './quantities.js';

/*
 * The trade's beliefs beside the engine: rewrites BELIEFS.md next to this file. No seed but a fixed one, no
 * clock: the page changes only when the engine does.
 */

const ROOT = new URL('../../', import.meta.url);

const record = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`data/${path}.json`, ROOT), 'utf8'));

const lane: Lane = laneSchema.parse(record('lanes/house-easy'));
const balls: { plain: PublishedBall; asymmetric: PublishedBall } = {
  plain: publishedBallSchema.parse(record('balls/plain-medium')),
  asymmetric: publishedBallSchema.parse(record('balls/asymmetric-strong')),
};

/** The line the tool would have this bowler play with the plain ball and the usual middle layout. */
function lineOf(base: Case): Line {
  const { problem } = rigOf(base, lane);
  const middle = toLayout(base.layout, problem.ball.published.radius);
  return findLine(problem, middle);
}

/** Flare over pin-to-PAP in steps of 1/4 in: where it is greatest. */
function flarePeak(base: Case, launch: Launch): { pinToPapIn: number; flareIn: number } {
  const tried = Array.from({ length: 25 }, (_, i) => {
    const pinToPapIn = 0.25 * (i + 1);
    const rig = rigOf({ ...base, layout: { ...base.layout, pinToPapIn } }, lane, launch);
    return { pinToPapIn, flareIn: numbersOf(rig.react(NO_DEVIATIONS)).flare };
  });
  return tried.reduce((best, next) => (next.flareIn > best.flareIn ? next : best));
}

function study(bowler: Bowler): BowlerStudy {
  const base: Case = { bowler, ball: balls.plain, layout: MIDDLE_LAYOUT };
  const line = lineOf(base);
  const { launch } = line;
  const scatter = shotScatter(base, lane, launch);
  return {
    bowler,
    line,
    scatter,
    base: numbersOf(rigOf(base, lane, launch).react(NO_DEVIATIONS)),
    rows: levers(bowler, MIDDLE_LAYOUT, balls).map((lever) => {
      const effect = effectOf(lever, lane, launch);
      const verdicts = lever.claims.map((claim) => ({ claim, verdict: judge(claim, effect, scatter) }));
      return { lever, effect, verdicts };
    }),
    flarePeak: flarePeak(base, launch),
    precession: precessionStudy(base, lane, launch),
    massBias: massBiasStudy({ ...base, ball: balls.asymmetric }, lane, launch),
  };
}

const studies = ['average-right', 'rev-dominant'].map((name) =>
  study(bowlerSchema.parse(record(`bowlers/${name}`))),
);
writeFileSync(new URL('BELIEFS.md', import.meta.url), beliefsPage(studies, lane));
