import { fromKeys } from '../../base/from-keys.js';
import { DEGREE, from, INCH, to } from '../../base/units.js';
import { drillingAssumptions } from '../../explain/assumptions.js';
import { cautionsFor } from '../../explain/cautions.js';
import { valAngleOf } from '../../layout/layout.js';
import { type BallProblem, ballProblem } from '../../prepare/ball-problem.js';
import { type Budget, USUAL_BUDGET } from '../../prepare/budget.js';
import { undrilledAnswer } from '../../prepare/undrilled.js';
import type { MapAnswer, MapRow } from '../../records/answers/answer.js';
import { Refusal } from '../../records/refusals/refusal.js';
import type { Ball } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import { MAP_NUMBERS } from '../../records/schemas/map-numbers.js';
import { loadRuleSet, type RuleSet } from '../../records/shared/rules.js';
import { VERSION } from '../../records/shared/version.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { steps } from '../../search/candidates/candidates.js';
import { drilledFacts } from '../parts/drilled-facts.js';
import { layoutAnswer } from '../parts/layout-answer.js';
import { mapScales, reachOf } from './map-reach.js';

/** Which number of the layout runs over its range while the other two stay. */
type MapOver = MapAnswer['over'];

/** A ball that stands for its kind beside the one that is mapped. */
export interface BesideBall {
  readonly kind: MapAnswer['beside'][number]['kind'];
  readonly ball: Ball;
}

/**
 * Drilled numbers over one number of the layout: what each drilling angle, pin-to-PAP or pin buffer does to
 * this core. The other two numbers are those of `around`.
 *
 * @param beside  balls that show what the same rows do to other kinds of core
 * @throws {Refusal} `no-drilling-angle` when the ball has none to run over; as `ballProblem` does
 */
export function mapAnswer(
  { bowler, ball: record, around }: { bowler: Bowler; ball: Ball; around: LayoutNumbers },
  over: MapOver,
  budget: Budget = USUAL_BUDGET,
  beside: readonly BesideBall[] = [],
): MapAnswer {
  const ball = ballProblem(record, bowler, 'moment', undefined, budget);
  if (ball.marker === null && over === 'drilling-angle')
    throw new Refusal([{ code: 'no-drilling-angle', params: { ball: record.name } }]);
  const rules = loadRuleSet();
  const rows = rowsOver(over, around, ball, rules);
  const few = { ...budget, cores: Math.min(budget.cores, CORES_BESIDE) };
  return {
    schema: 'flarewise/map/4',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    over,
    undrilled: undrilledAnswer(record, ball),
    rows,
    reach: reachOf(rows),
    scales: mapScales(rules),
    beside: beside.map(({ kind, ball: other }) => {
      const problem = ballProblem(other, bowler, 'moment', undefined, few);
      const { numbers } = reachOf(rowsOver(over, around, problem, rules));
      return { kind, ball: other.name, numbers: fromKeys(MAP_NUMBERS, (key) => spanOf(numbers[key])) };
    }),
    onLane: null,
    assumptions: drillingAssumptions(record, bowler, ball),
    cautions: cautionsFor(ball),
  };
}

/** Medians of this many cores suffice for a ball that is only compared with. */
const CORES_BESIDE = 8;

const spanOf = ({ least, most }: { readonly least: number; readonly most: number }) => ({ least, most });

function rowsOver(over: MapOver, around: LayoutNumbers, ball: BallProblem, rules: RuleSet): MapRow[] {
  const factsOf = drilledFacts(ball, rules);
  return layoutsOver(over, around, ball.published.radius).map((numbers) => {
    const { drilled, bands, asymmetry, psa, flareStart } = factsOf(numbers);
    return { layout: layoutAnswer(numbers, ball), drilled, bands, asymmetry, psa, flareStart };
  });
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
