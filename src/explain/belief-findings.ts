import { meanSimple } from 'simple-statistics';
import { from, INCH } from '../base/units.js';
import { symmetricEigen } from '../math/eigen3.js';
import { addMat, type Mat3, outer, scaleMat } from '../math/mat3.js';
import { reactionNumbers } from '../motion/reaction/reaction.js';
import { ANSWER_STEP } from '../motion/shot/answer-step.js';
import type { RollingBody } from '../motion/shot/body.js';
import { rollLeanShot } from '../motion/shot/shot.js';
import { toLayout } from '../prepare/to-layout.js';
import type { BeliefFinding } from '../records/answers/statements/beliefs.js';
import { BELIEFS, type Belief, type BeliefQuantity } from '../records/shared/beliefs.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { goesByMark } from '../search/voices/layout-quantities.js';
import { type Readable, reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import { scatteredLaunch, simulator } from '../simulate/simulator.js';
import { beliefVerdict } from './belief-verdict.js';

/**
 * Sets beside each belief of practice what physics finds when the belief's quantity alone goes from one end of its range to the
 * other: a number of the layout; a radius of gyration of the drilled ball, its axes staying; the finish. Mean over worlds in which
 * both balls reach the pins, each shot sent along the layout's own line. Where a mark lies cannot be moved alone. Beliefs about a drilling
 * angle, or about a mass-bias mark, are left out for a ball that has none.
 */
export function beliefFindings(
  layout: LayoutNumbers,
  { problem, budget }: Pick<Setting, 'problem' | 'budget'>,
): BeliefFinding[] {
  const usual = simulator(problem);
  const { launch } = usual.ownShot(toLayout(layout, problem.ball.published.radius));
  const worlds = problem.worlds.slice(1, 1 + budget.practiceWorlds);

  const shots = (quantity: BeliefQuantity, value: number): readonly Readable[] => {
    const engine = quantity === 'finishGrit' ? simulator({ ...problem, grit: value }) : usual;
    const moved = isOfLayout(quantity) ? { ...layout, [quantity]: value } : layout;
    const marked = toLayout(moved, problem.ball.published.radius);
    return worlds.map((world) => {
      const { body, release, surface, freshSurface } = engine.inputs(marked, world);
      const ball = withNumber(body, quantity, value);
      const played = scatteredLaunch(launch, world);
      const shot = rollLeanShot(ball, release, played, surface, { step: ANSWER_STEP, freshSurface });
      return { shot: shot.outcome, reaction: reactionNumbers(shot, body.radius) };
    });
  };
  const known = new Map<string, readonly Readable[]>();
  const shotsAt = (quantity: BeliefQuantity, value: number): readonly Readable[] => {
    const key = `${quantity} ${value}`;
    const rolled = known.get(key) ?? shots(quantity, value);
    known.set(key, rolled);
    return rolled;
  };
  const byPhysics = ({ quantity, from: start, to: end, reading }: Belief): number | null => {
    if (quantity === 'markToPapIn') return null;
    const [before, after] = [shotsAt(quantity, start), shotsAt(quantity, end)];
    const read = reader(reading);
    const changes = before.flatMap((a, k) =>
      a.shot === 'pins' && after[k].shot === 'pins' ? [read(after[k]) - read(a)] : [],
    );
    return changes.length > 0 ? meanSimple(changes) : null;
  };
  const isAbout = ({ quantity }: Belief): boolean => {
    if (quantity === 'drillingAngleDeg') return problem.ball.marker !== null;
    return quantity !== 'markToPapIn' || goesByMark(problem.ball);
  };
  return BELIEFS.filter(isAbout).map((belief): BeliefFinding => {
    const { id, says, quantity, from: start, to: end, reading, least, most, standing } = belief;
    const change = byPhysics(belief);
    const params = { id, says, quantity, from: start, to: end, reading, least, most, standing };
    return {
      code: 'belief-beside-physics',
      params: { ...params, byPhysics: change, verdict: beliefVerdict(change, most), worlds: worlds.length },
    };
  });
}

const isOfLayout = (quantity: BeliefQuantity): quantity is keyof LayoutNumbers & BeliefQuantity =>
  quantity === 'drillingAngleDeg' || quantity === 'valAngleDeg' || quantity === 'pinToPapIn';

/** A ball with one of its radii of gyration, or their differences, made another, in inches; any other quantity leaves it. */
function withNumber(body: RollingBody, quantity: BeliefQuantity, value: number): RollingBody {
  const { values, axes } = symmetricEigen(body.I_Bcm_B);
  const [low, middle, high] = values.map((each) => Math.sqrt(each / body.mass));
  const wanted = from(value, INCH);
  const radii: Partial<Record<BeliefQuantity, readonly [number, number, number]>> = {
    rgIn: [wanted, wanted + middle - low, wanted + high - low],
    differentialIn: [low, Math.max(low, low + wanted - (high - middle)), low + wanted],
    intermediateDifferentialIn: [low, Math.max(low, high - wanted), high],
  };
  const made = radii[quantity];
  if (!made) return body;
  const I_Bcm_B = made.reduce<Mat3>(
    (sum, rg, i) => addMat(sum, scaleMat(body.mass * rg ** 2, outer(axes[i], axes[i]))),
    NO_INERTIA,
  );
  return { ...body, I_Bcm_B };
}

const NO_INERTIA: Mat3 = [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];
