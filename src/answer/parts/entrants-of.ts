import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import type { Varied } from '../../records/answers/compare-answer.js';
import type { Ball } from '../../records/schemas/ball.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { WrittenLayout } from '../../records/text/written-layout.js';

/** A ball as it would be drilled. It stands once for each layout, or for each finish, that it is compared with. */
export interface Entrant {
  readonly ball: Ball;
  readonly layout: LayoutNumbers;
}

/** What is compared: several of one kind, one at most of the others. */
interface ComparedParts {
  readonly balls: readonly [Ball, ...Ball[]];
  /** None for the usual one. */
  readonly layouts: readonly WrittenLayout[];
  /** Grit; none for the balls' own. */
  readonly finishes: readonly number[];
}

/**
 * The balls as they would be drilled that differ in one thing.
 *
 * @throws {Refusal} or an {InputError} for a layout that a ball cannot have
 */
export function entrantsOf(varies: Varied, { balls, layouts, finishes }: ComparedParts): readonly Entrant[] {
  const all = varies === 'finish' ? finishes.map((surfaceGrit) => ({ ...balls[0], surfaceGrit })) : balls;
  return all.flatMap((ball) =>
    layouts.length > 0
      ? layouts.map((written) => ({ ball, layout: layoutOnBall(written, ball) }))
      : [{ ball, layout: MIDDLE_LAYOUT }],
  );
}
