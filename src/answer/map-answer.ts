import { DEGREE, from, INCH, to } from '../base/units.js';
import { drillingAssumptions } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { valAngleOf } from '../layout/layout.js';
import { ballProblem } from '../prepare/ball-problem.js';
import type { Budget } from '../prepare/budget.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { MapAnswer, MapRow } from '../records/answers/answer.js';
import { Refusal } from '../records/refusals/refusal.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { loadRuleSet } from '../records/shared/rules.js';
import { VERSION } from '../records/shared/version.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { steps } from '../search/candidates/candidates.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { layoutAnswer } from './parts/layout-answer.js';

/** Which number of the layout runs over its range while the other two stay. */
export type MapOver = MapAnswer['over'];

/**
 * Drilled numbers over one number of the layout: what each drilling angle, pin-to-PAP or pin buffer does to
 * this core. The other two numbers are those of `around`.
 *
 * @throws {Refusal} `no-drilling-angle` when the ball has none to run over; as `ballProblem` does
 */
export function mapAnswer(
  { bowler, ball: record, around }: { bowler: Bowler; ball: Ball; around: LayoutNumbers },
  over: MapOver,
  fitter?: CoreFitter,
  budget?: Budget,
): MapAnswer {
  const ball = ballProblem(record, bowler, 'moment', fitter, budget);
  if (ball.marker === null && over === 'drilling-angle')
    throw new Refusal([{ code: 'no-drilling-angle', params: { ball: record.name } }]);
  const rules = loadRuleSet();
  const factsOf = drilledFacts(ball, rules);
  const rows: MapRow[] = layoutsOver(over, around, ball.published.radius).map((numbers) => {
    const { drilled, bands, psa } = factsOf(numbers);
    return { layout: layoutAnswer(numbers, ball), drilled, bands, psa };
  });
  return {
    schema: 'flarewise/map/3',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    over,
    undrilled: undrilledAnswer(record, ball),
    rows,
    reach: reachOf(rows),
    onLane: null,
    assumptions: drillingAssumptions(record, bowler, ball),
    cautions: cautionsFor(ball),
  };
}

function layoutsOver(over: MapOver, around: LayoutNumbers, radius: number): readonly LayoutNumbers[] {
  switch (over) {
    case 'drilling-angle':
      return steps({ least: 0, most: 180 }, 10).map((drillingAngleDeg) => ({ ...around, drillingAngleDeg }));
    case 'pin-to-pap':
      return steps({ least: 0, most: 6.75 }, 0.375).map((pinToPapIn) => ({ ...around, pinToPapIn }));
    case 'buffer':
      return steps({ least: 0, most: 6 }, 0.25).flatMap((bufferIn) => {
        const arc = (inches: number): number => from(inches, INCH) / radius;
        const valAngle = valAngleOf(arc(around.pinToPapIn), arc(bufferIn), 'above');
        return valAngle === null ? [] : [{ ...around, valAngleDeg: to(valAngle, DEGREE) }];
      });
  }
}

/**
 * From how much on it counts that a differential moves, in: twice the most by which made balls of a large total differential differ
 * from their design (3 % of 0.05 in, a USBC research note). A choice of this project.
 */
const MATTERS_FROM_IN = 0.003;

function reachOf(rows: readonly MapRow[]): MapAnswer['reach'] {
  const range = (pick: (row: MapRow) => number) => ({
    least: Math.min(...rows.map(pick)),
    most: Math.max(...rows.map(pick)),
  });
  const differentialIn = range((row) => row.drilled.differentialIn);
  const intermediateDifferentialIn = range((row) => row.drilled.intermediateDifferentialIn);
  const widths = rows
    .map(({ bands }) => bands.intermediateDifferentialIn.high - bands.intermediateDifferentialIn.low)
    .sort((a, b) => a - b);
  const moves = [differentialIn, intermediateDifferentialIn].map(({ least, most }) => most - least);
  return {
    differentialIn,
    intermediateDifferentialIn,
    bandIn: widths[Math.floor(widths.length / 2)],
    mattersFromIn: MATTERS_FROM_IN,
    matters: Math.max(...moves) >= MATTERS_FROM_IN,
  };
}
