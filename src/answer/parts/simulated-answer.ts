import { BOARD } from '../../base/constants.js';
import { DEGREE, FOOT, to } from '../../base/units.js';
import { missRoom } from '../../explain/miss-room.js';
import type { Launch } from '../../motion/shot/release.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { SimulatedLayout, TargetAnswer } from '../../records/answers/answer.js';
import { objections } from '../../search/candidates/constraints.js';
import type { InAllWorlds } from '../../search/in-all-worlds.js';
import { bandOf, twentiethsOf, valuesAtPins } from '../../search/scoring/in-worlds.js';
import { score } from '../../search/scoring/score.js';
import type { Target, Wish } from '../../search/scoring/target.js';
import { isAtPocket } from '../../simulate/pocket.js';
import { pathAnswer, reactionAnswer } from '../../simulate/reaction-answer.js';
import { READINGS } from '../../simulate/readings.js';
import type { Setting } from '../../simulate/setting.js';
import { type Outcome, simulator } from '../../simulate/simulator.js';
import { NOMINAL_WORLD } from '../../simulate/world.js';
import type { DrilledFacts } from './drilled-facts.js';
import { layoutAnswer } from './layout-answer.js';
import { lineAnswer } from './line-answer.js';

/**
 * Words simulated layouts of one setting in the units people read, with bands over worlds; the path is that
 * of the nominal world.
 */
export function answerer(targets: readonly Target[], setting: Setting) {
  const { ball, problem } = setting;
  const engine = simulator(problem);
  return ({ layout, nominal, worlds }: InAllWorlds, facts: DrilledFacts): SimulatedLayout => {
    const marked = toLayout(layout, ball.published.radius);
    const roll = (launch: Launch) => engine.shot(marked, NOMINAL_WORLD, launch).shot;
    const path = pathAnswer(engine.shot(marked, NOMINAL_WORLD, nominal.launch).full());
    const inWorlds = <T>(of: (values: readonly number[]) => T) =>
      Object.fromEntries(
        READING_KEYS.map((key) => [key, of(valuesAtPins(worlds.outcomes, READINGS[key]))]),
      ) as Record<ReadingKey, T>;
    return {
      ...layoutAnswer(layout, ball),
      score: worlds.meanScore,
      nominalScore: score(nominal, targets),
      objections: objections(layout, nominal, setting),
      drilled: facts.drilled,
      bands: {
        drilled: facts.bands,
        reaction: inWorlds(bandOf),
        score: bandOf(worlds.scores),
      },
      twentieths: { score: twentiethsOf(worlds.scores), ...inWorlds(twentiethsOf) },
      line: lineAnswer(nominal, path),
      missRoom: missRoom(nominal.launch, roll),
      pocketShare: worlds.outcomes.filter(hitsPocket).length / worlds.outcomes.length,
      reaction: reactionAnswer(nominal),
      path,
    };
  };
}

type ReadingKey = keyof typeof READINGS;
const READING_KEYS = Object.keys(READINGS) as readonly ReadingKey[];

const hitsPocket = ({ shot, reaction }: Outcome): boolean => isAtPocket(shot, reaction.pinsX);

const UNITS: Record<Wish, { quantity: string; unit: string; si: number }> = {
  hookStart: { quantity: 'hook start', unit: 'ft', si: FOOT },
  sharpness: { quantity: 'sharpness', unit: 'deg/ft', si: DEGREE / FOOT },
  totalHook: { quantity: 'total hook', unit: 'boards', si: BOARD },
};

export function targetAnswer({ wish, step, value, low, high }: Target): TargetAnswer {
  const { quantity, unit, si } = UNITS[wish];
  return {
    wish,
    step,
    quantity,
    unit,
    value: to(value, si),
    attainable: { low: to(low, si), high: to(high, si) },
  };
}
