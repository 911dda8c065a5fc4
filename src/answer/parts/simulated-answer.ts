import { fromKeys } from '../../base/from-keys.js';
import { missRoom } from '../../explain/miss-room.js';
import type { Launch } from '../../motion/shot/release.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { SimulatedLayout, TargetAnswer } from '../../records/answers/answer.js';
import { COMPARED_IDS, NUMBER_OF_WISH } from '../../records/schemas/reaction-numbers.js';
import { objections } from '../../search/candidates/constraints.js';
import { score } from '../../search/scoring/score.js';
import type { Target } from '../../search/scoring/target.js';
import { bandOf, scoresAtPins, twentiethsOf, valuesAtPins } from '../../search/scoring/world-statistics.js';
import type { LayoutOutcomes } from '../../search/simulate-layouts.js';
import { pathAnswer, reactionAnswer } from '../../simulate/reaction-answer.js';
import { reader, wishedInUnit } from '../../simulate/readings.js';
import type { Grounds } from '../../simulate/setting.js';
import { simulator } from '../../simulate/simulator.js';
import type { DrilledFacts } from './drilled-facts.js';
import { withNearestHole } from './hole-clearances.js';
import { layoutAnswer } from './layout-answer.js';
import { lineAnswer } from './line-answer.js';

/**
 * Gives simulated layouts of one setting in the units people read, with bands over worlds; the path is that
 * of the nominal world.
 */
export function answerer(targets: readonly Target[], setting: Grounds) {
  const { ball, problem } = setting;
  const engine = simulator(problem);
  return ({ layout, nominal, worlds }: LayoutOutcomes, facts: DrilledFacts): SimulatedLayout => {
    const marked = toLayout(layout, ball.published.radius);
    const roll = (launch: Launch) => engine.shot(marked, problem.worlds[0], launch).shot;
    const rolled = engine.shot(marked, problem.worlds[0], nominal.launch);
    const path = pathAnswer(rolled.full());
    const inWorlds = <T>(of: (values: readonly number[]) => T) =>
      fromKeys(COMPARED_IDS, (id) => of(valuesAtPins(worlds.outcomes, reader(id))));
    return {
      ...layoutAnswer(layout, ball),
      score: worlds.meanScore,
      nominalScore: score(nominal, targets),
      objections: withNearestHole(objections(layout, nominal, setting), rolled.shot, ball),
      drilled: facts.drilled,
      bands: {
        drilled: facts.bands,
        reaction: inWorlds(bandOf),
        score: bandOf(scoresAtPins(worlds)),
      },
      twentieths: { score: twentiethsOf(scoresAtPins(worlds)), ...inWorlds(twentiethsOf) },
      line: lineAnswer(nominal, path),
      missRoom: missRoom(nominal.launch, roll),
      gutterShare: 1 - worlds.arrives,
      pocketShare:
        worlds.outcomes.filter(({ reachesPocket }) => reachesPocket).length / worlds.outcomes.length,
      reaction: reactionAnswer(nominal),
      path,
    };
  };
}

export const targetAnswer = ({ wish, step, asked, value, low, high }: Target): TargetAnswer => ({
  wish,
  step,
  ...(asked === undefined ? {} : { asked: wishedInUnit(wish, asked) }),
  reading: NUMBER_OF_WISH[wish],
  value: wishedInUnit(wish, value),
  attainable: { low: wishedInUnit(wish, low), high: wishedInUnit(wish, high) },
});
