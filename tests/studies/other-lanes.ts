import { fitLog } from '../../src/learn/fit-log.js';
import { exactly } from '../../src/learn/read-aim.js';
import { whatIsKnown } from '../../src/learn/what-is-known.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { NOTHING_KNOWN } from '../support/without-log.js';
import { type Compared, compared, LAYOUTS, meanOfShots, SEED } from './blind-case.js';
import { hideBall, hideOnLanes, readNight, trueNights } from './blind-logs.js';
import { proofCases } from './proof-cases.js';
import { random } from './random.js';

/** Nights of ten shots on the lane that is asked about, and on another. */
export const LANE_LOGS = [
  { here: 0, there: 0 },
  { here: 0, there: 2 },
  { here: 1, there: 0 },
  { here: 1, there: 2 },
  { here: 2, there: 0 },
] as const;

const SHOTS = 10;

/**
 * One blind bowler with logs on two lanes of other patterns, whose oil and boards are as alike as two lanes are taken to be: what each log
 * foretells of a night on one of them, number by number of `ASKED`. Null where most shots do not stay on a lane.
 */
export function blindOtherLane(place: number, fitter?: CoreFitter): readonly (readonly Compared[])[] | null {
  const { bowler, lane, ball } = proofCases(place + 1, SEED)[place].inputs;
  const of = random(4000 * SEED + place);
  const others = demoShelf().lanes.filter(({ record }) => record.name !== lane.name);
  const other = others[Math.floor(of.uniform(0, others.length))].record;
  const hidden = hideOnLanes(of, 2);
  const drilled = hideBall(of, ball, bowler, LAYOUTS.logged, fitter);
  const [here, there] = [lane, other].map((on, i) => trueNights(hidden[i], drilled, bowler, on, {}));
  const asked = here(of);
  const truth = meanOfShots(of, asked);
  if (!truth || !meanOfShots(of, there(of))) return null;
  const nightsOf = (nights: typeof here, on: typeof lane) =>
    [0, 1].map(() => ({ night: readNight(of, nights(of), SHOTS, {}), lane: on }));
  const [hereLogged, thereLogged] = [nightsOf(here, lane), nightsOf(there, other)];
  const found = LANE_LOGS.map((count) => {
    const nights = [...hereLogged.slice(0, count.here), ...thereLogged.slice(0, count.there)];
    const readyBall = () => drilled.problem;
    const log = fitLog(bowler, [{ ball, layout: drilled.layout, nights }], { readyBall, lane });
    return compared(bowler, lane, log ? whatIsKnown(log) : NOTHING_KNOWN, drilled, exactly(asked.aim), truth);
  });
  return found.every((each) => each !== null) ? found : null;
}
