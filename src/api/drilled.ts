import { drilledAnswer } from '../answer/drilled-answer.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { DrilledAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLayout } from './checked-inputs.js';
import { worded } from './worded.js';

/** Whose grip, which ball, and how it is drilled. */
export interface DrilledInputs {
  readonly bowler: Bowler;
  readonly ball: Ball;
  /** As written, in angles, `70 x 4 1/2 x 30`, or in distances, `4 1/2 x 3 3/8 x 2`. */
  readonly layout: string;
}

/** Which rules decide, and what an ounce means; both may be left out. */
export interface DrilledOptions {
  /** Id of the rule set that decides what is legal: `federation-2020` when left out. */
  readonly rules?: string | undefined;
  /** What an ounce of static weight is: weight times distance over the radius (`moment`, when left out), or the difference of two halves. */
  readonly ounce?: 'moment' | 'halves' | undefined;
}

/**
 * What one layout makes of a ball: RG and differentials with their bands, static weights, marks, and whether it is legal.
 * Less than a second.
 *
 * @throws {InputError} when a record, the layout or the rule set cannot be used, or the ball's numbers fit no core
 *
 * @example
 * import { drilled, InputError, readBall } from 'flarewise';
 *
 * const bowler = {
 *   schema: 'flarewise/bowler/1',
 *   name: 'Kim',
 *   hand: 'left',
 *   thumbHole: true,
 *   speedMph: 16,
 *   revRateRpm: 300,
 *   axisTiltDeg: 13,
 *   axisRotationDeg: 48,
 *   pap: { overIn: 5, upIn: 0.5 },
 * } as const;
 * const ball = readBall('data/balls/asymmetric-mild.json');
 * const { undrilled, drilled: after, legality } = drilled({ bowler, ball, layout: '50 x 4 1/2 x 35' });
 * console.log(undrilled.differentialIn.toFixed(3), after.differentialIn.toFixed(3), legality.legal);
 * // → 0.044 0.041 true
 *
 * try {
 *   drilled({ bowler: { ...bowler, revRateRpm: 3000 }, ball, layout: '50 x 4 1/2 x 35' });
 * } catch (error) {
 *   if (!(error instanceof InputError)) throw error;
 *   for (const { field, rule, got } of error.faults) console.log(`${field} ${rule}; got ${got}`);
 *   // → revRateRpm must be 30 to 700 rpm; got 3000
 * }
 */
export function drilled(
  { bowler, ball: given, layout }: DrilledInputs,
  { rules, ounce = 'moment' }: DrilledOptions = {},
): DrilledAnswer {
  return worded(() => {
    const ball = checkedBall(given);
    const inputs = { bowler: checkedBowler(bowler), ball, layout: checkedLayout(layout, ball) };
    return drilledAnswer(inputs, { ruleSet: rules, ounce });
  });
}
