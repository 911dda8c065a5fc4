import { fitLog } from '../../src/learn/fit-log.js';
import { type LogMisfit, misfitOf } from '../../src/learn/misfit.js';
import { exactly } from '../../src/learn/read-aim.js';
import { uncertaintyOf } from '../../src/learn/unknowns.js';
import { lastingOf, whatIsKnown } from '../../src/learn/what-is-known.js';
import { shareBelow } from '../../src/math/normal.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import type { LastingCoordinate } from '../../src/simulate/worlds/lasting.js';
import { NOTHING_KNOWN } from '../support/without-log.js';
import { blindCase, type Compared, compared, LAYOUTS, SEED } from './blind-case.js';
import { hideAsAssumed, hideBall, readNight, type Twist, trueNights } from './blind-logs.js';
import { choiceRegrets } from './learned-choices.js';
import { proofCases } from './proof-cases.js';
import { random } from './random.js';

/** Logs by how many shots their nights hold. */
export const LOGS: readonly (readonly number[])[] = [[], [3], [10], [10, 10, 10]];

/** What a log foretells of a new night, number by number of `ASKED`: of the logged ball, and of another one. */
export interface AfterLog {
  readonly logged: readonly Compared[];
  readonly other: readonly Compared[];
  /** Whether the log is doubted, the surest cause, how many deviations it lies off, and the chance of as great a misfit. */
  readonly doubt: {
    readonly isDoubtful: boolean;
    readonly cause: string;
    readonly deviations: number;
    readonly chance: number;
  } | null;
}

/** What choices by what is foretold cost one blind bowler, boards, in the order of `CHOICES`: without a log, and after thirty shots. */
export function blindChoices(place: number, fitter?: CoreFitter): readonly (readonly number[])[] | null {
  const { truth, truthThere, fitted, logged, other, ...whose } = blindCase(place, {}, fitter);
  const log = truth && truthThere && fitted([10, 10, 10]);
  return log && choiceRegrets(SEED + place, whose, [logged, other], [NOTHING_KNOWN, whatIsKnown(log)]);
}

/**
 * One blind bowler: logs are read with errors; what they foretell of a new night is set beside what physics does there, on the logged ball
 * and on another with another layout. Null where the bowler would not play the line: more than a tenth of the shots go into the gutter.
 */
export function blindBowler(
  place: number,
  logs = LOGS,
  twist: Twist = {},
  fitter?: CoreFitter,
): readonly AfterLog[] | null {
  const { bowler, lane, logged, other, here, there, truth, truthThere, fitted } = blindCase(
    place,
    twist,
    fitter,
  );
  if (!truth || !truthThere) return null;
  const found = logs.map((counts): AfterLog | null => {
    const log = fitted(counts);
    const known = log ? whatIsKnown(log) : NOTHING_KNOWN;
    const misfit = log && misfitOf(log);
    const foretold = compared(bowler, lane, known, logged, exactly(here.aim), truth);
    const foretoldThere = compared(bowler, lane, known, other, exactly(there.aim), truthThere);
    if (!foretold || !foretoldThere) return null;
    return { logged: foretold, other: foretoldThere, doubt: misfit && doubtOf(misfit) };
  });
  return found.every((each) => each !== null) ? found : null;
}

const doubtOf = ({ isDoubtful, chance, causes: [{ code, reading, by, deviation }] }: LogMisfit) => ({
  isDoubtful,
  cause: reading ?? code,
  deviations: by / deviation,
  chance,
});

/** Shots of the night that they are learned from. */
const SHOTS_RANKED = 10;

/** Numbers whose ranks are looked at: of the others hardly anything is learned, so they are as they were drawn. */
export const RANKED = [
  'speedMean',
  'spinMean',
  'axisRotationMean',
  'frictionOiled',
  'frictionDry',
  'filmScale',
] as const satisfies readonly LastingCoordinate[];

/**
 * Where the truth lies in what ten shots say of each number, as a share of the distribution below it: even over many bowlers if bands hold
 * what they say (simulation-based calibration: Talts et al., arXiv:1804.06788, 2018). Everything is hidden just as the fit takes it to be.
 */
export function ranks(place: number, fitter?: CoreFitter): readonly number[] | null {
  const { bowler, lane, ball } = proofCases(place + 1, SEED)[place].inputs;
  const of = random(2000 * SEED + place);
  const drilled = hideBall(of, ball, bowler, LAYOUTS.logged, fitter);
  const { hidden, lasting } = hideAsAssumed(of, uncertaintyOf(bowler), drilled.problem.published.radius);
  const night = trueNights(hidden, drilled, bowler, lane, {})(of);
  const read = readNight(of, night, SHOTS_RANKED, {}, true);
  // left out by what is logged alone: left out by the truth, those that stay would not be as the fit takes them to be
  if (read.shots.filter(({ gutter }) => gutter).length > 0.1 * SHOTS_RANKED) return null;
  const nights = [{ night: read, lane }];
  const log = fitLog(bowler, [{ ball, layout: drilled.layout, nights }], {
    readyBall: () => drilled.problem,
  });
  if (!log) return null;
  const { mean, covariance } = log.fit;
  const places = lastingOf(log.unknowns);
  return RANKED.map((what) => {
    const { j } = places.find((each) => each.what === what)!;
    return shareBelow((lasting[what] - mean[j]) / Math.sqrt(covariance.get(j, j)));
  });
}
