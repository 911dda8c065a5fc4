import { BOARD } from '../constants.js';
import type { SimulatedLayout, TargetAnswer } from '../records/answer.js';
import { DEGREE, FOOT, to } from '../units.js';
import { objections } from './constraints.js';
import type { DrilledFacts } from './drilled-facts.js';
import type { InAllWorlds } from './in-all-worlds.js';
import { bandAtPins, bandOf } from './in-worlds.js';
import { layoutAnswer } from './layout-answer.js';
import { pathAnswer, reactionAnswer } from './reaction-answer.js';
import { READINGS } from './readings.js';
import { score } from './score.js';
import type { Setting } from './setting.js';
import { simulator } from './simulator.js';
import type { Target, Wish } from './target.js';
import { toLayout } from './to-layout.js';
import { NOMINAL_WORLD } from './world.js';

/**
 * Words simulated layouts of one setting in the units people read, with bands over worlds; the path is that
 * of the nominal world.
 */
export function answerer(targets: readonly Target[], setting: Setting) {
  const { ball, problem } = setting;
  const engine = simulator(problem);
  return ({ layout, nominal, worlds }: InAllWorlds, facts: DrilledFacts): SimulatedLayout => {
    const { shot } = engine.shot(toLayout(layout, ball.published.radius), NOMINAL_WORLD);
    return {
      ...layoutAnswer(layout, ball),
      score: worlds.meanScore,
      nominalScore: score(nominal, targets),
      objections: objections(layout, nominal, setting),
      drilled: facts.drilled,
      bands: {
        drilled: facts.bands,
        reaction: {
          hookStartFt: bandAtPins(worlds.outcomes, READINGS.hookStartFt),
          hookSharpnessDegPerFt: bandAtPins(worlds.outcomes, READINGS.hookSharpnessDegPerFt),
          totalHookBoards: bandAtPins(worlds.outcomes, READINGS.totalHookBoards),
          entryAngleDeg: bandAtPins(worlds.outcomes, READINGS.entryAngleDeg),
          flareIn: bandAtPins(worlds.outcomes, READINGS.flareIn),
        },
        score: bandOf(worlds.scores),
      },
      reaction: reactionAnswer(nominal),
      path: pathAnswer(shot),
    };
  };
}

const UNITS: Record<Wish, { quantity: string; unit: string; si: number }> = {
  hookStart: { quantity: 'hook start', unit: 'ft', si: FOOT },
  hookShape: { quantity: 'hook sharpness', unit: '°/ft', si: DEGREE / FOOT },
  hookTotal: { quantity: 'total hook', unit: 'boards', si: BOARD },
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
