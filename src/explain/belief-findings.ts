import { meanSimple } from 'simple-statistics';
import { from, INCH } from '../base/units.js';
import type { Launch } from '../motion/shot/release.js';
import { toLayout } from '../prepare/to-layout.js';
import type { BeliefFinding } from '../records/answers/statements/beliefs.js';
import { BELIEFS, type Belief, type BeliefQuantity } from '../records/shared/beliefs.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { goesByMark } from '../search/voices/layout-quantities.js';
import type { AlteredTrial } from '../simulate/evaluator.js';
import { reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import type { AlteredBall } from '../simulate/unreal/altered-ball.js';
import { beliefVerdict } from './belief-verdict.js';

/**
 * Compares each belief of practice with what physics finds when only the belief's quantity goes from one end of its range to the
 * other: a number of the layout; a number of the drilled ball's inertia, with its axes unchanged; the finish. Mean over worlds in which
 * both balls reach the pins, each shot on the layout's own line. The place of a mark cannot be changed alone. Beliefs about a drilling
 * angle, or about a mass-bias mark, are left out for a ball that has none.
 *
 * @param launch  the layout's own line
 */
export async function beliefFindings(
  layout: LayoutNumbers,
  launch: Launch,
  { problem, budget, evaluator }: Pick<Setting, 'problem' | 'budget' | 'evaluator'>,
): Promise<BeliefFinding[]> {
  const { marker, published } = problem.ball;
  const worlds = Math.min(budget.practiceWorlds, problem.worlds.length - 1);
  const beliefs = BELIEFS.filter(
    ({ quantity }) =>
      (quantity !== 'drillingAngleDeg' || marker !== null) &&
      (quantity !== 'markToPapIn' || goesByMark(problem.ball)),
  );
  const ends = new Map(beliefs.flatMap(endsOf).map((end) => [nameOf(end), end]));
  const outcomes = await evaluator.evaluate(
    [...ends.values()].flatMap((end) => {
      const altered = alteredBall(layout, end, published.radius);
      return Array.from({ length: worlds }, (_, k): AlteredTrial => ({ altered, world: 1 + k, launch }));
    }),
  );
  const shots = new Map(
    [...ends.keys()].map((name, i) => [name, outcomes.slice(worlds * i, worlds * (i + 1))]),
  );
  const byPhysics = (belief: Belief): number | null => {
    const [before, after] = endsOf(belief).map((end) => shots.get(nameOf(end))!);
    const read = reader(belief.reading);
    const changes = (before ?? []).flatMap((a, k) =>
      a.shot === 'pins' && after[k].shot === 'pins' ? [read(after[k]) - read(a)] : [],
    );
    return changes.length > 0 ? meanSimple(changes) : null;
  };
  return beliefs.map((belief): BeliefFinding => {
    const { id, says, quantity, from: start, to: end, reading, least, most, standing } = belief;
    const change = byPhysics(belief);
    const params = { id, says, quantity, from: start, to: end, reading, least, most, standing };
    return {
      code: 'belief-beside-physics',
      params: { ...params, byPhysics: change, verdict: beliefVerdict(change, most), worlds },
    };
  });
}

/** One end of the range of a belief's quantity. */
interface End {
  readonly quantity: Exclude<BeliefQuantity, 'markToPapIn'>;
  readonly value: number;
}

/** Both ends of a belief's range; none where its quantity cannot be moved alone. */
const endsOf = ({ quantity, from: start, to: end }: Belief): readonly End[] =>
  quantity === 'markToPapIn' ? [] : [start, end].map((value) => ({ quantity, value }));

const nameOf = ({ quantity, value }: End): string => `${quantity} ${value}`;

/** The ball of a layout with one quantity changed. */
function alteredBall(layout: LayoutNumbers, { quantity, value }: End, radius: number): AlteredBall {
  const marked = toLayout(layout, radius);
  switch (quantity) {
    case 'drillingAngleDeg':
    case 'valAngleDeg':
    case 'pinToPapIn':
      return { layout: toLayout({ ...layout, [quantity]: value }, radius) };
    case 'finishGrit':
      return { layout: marked, grit: value };
    default:
      return { layout: marked, inertia: { number: INERTIA[quantity], value: from(value, INCH) } };
  }
}

const INERTIA = {
  rgIn: 'rg',
  differentialIn: 'differential',
  intermediateDifferentialIn: 'intermediateDifferential',
} as const;
