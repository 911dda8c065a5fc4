import { allAssumptions } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { xToBoard } from '../motion/lane/boards.js';
import { USUAL_BUDGET } from '../prepare/budget.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { CompareAnswer, CompareRow, Varied } from '../records/answers/compare-answer.js';
import { movedRefusal } from '../records/refusals/moved-refusal.js';
import { type Ball, ballRecord } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { type Want, hasWish as wishes } from '../records/schemas/want.js';
import { VERSION } from '../records/shared/version.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { pairedScores, physicalTargets, type RolledInWorlds } from '../search/paired-scores.js';
import { type BeliefEffects, beliefEffects } from '../search/voices/belief-effects.js';
import { drawBeliefs } from '../search/voices/draw-beliefs.js';
import type { SettingOptions } from '../simulate/setting.js';
import { shotScatter } from '../simulate/shot-scatter.js';
import { type Learned, saysLearned } from '../simulate/worlds/learned.js';
import { compareVerdict } from './parts/compare-verdict.js';
import { drilledFacts } from './parts/drilled-facts.js';
import type { Entrant } from './parts/entrants-of.js';
import { fromFirst } from './parts/from-first.js';
import { laidDownAlike } from './parts/laid-down-alike.js';
import { type RolledOnBall, rollOnBall } from './parts/roll-on-ball.js';
import { answerer, targetAnswer } from './parts/simulated-answer.js';

/** Two to six drilled balls that differ in one thing. */
export interface CompareInputs {
  readonly bowler: Bowler;
  readonly lane: Lane;
  readonly want: Want;
  readonly varies: Varied;
  /** What logged shots say; nothing when left out. */
  readonly learned?: Learned | undefined;
  readonly entrants: readonly Entrant[];
}

/** Number of worlds in which each is rolled. They are evenly spread and paired, and no search picks the lucky ones. */
const WORLDS = 64;

/**
 * Layouts of one ball, or balls with one layout, or finishes of one ball, side by side: differences from the first in
 * the same plausible worlds, each beside the scatter of the bowler's shots, and how often each comes nearer to the wish.
 *
 * All are laid down on the board from which the first ball's usual layout reaches the pocket, except one that has no line from there.
 *
 * @throws {Refusal} when a ball's numbers fit no core or the grip cannot be placed
 */
export async function compare(inputs: CompareInputs, options: SettingOptions): Promise<CompareAnswer> {
  const { bowler, lane, want, varies, entrants, learned } = inputs;
  const hasWish = wishes(want);
  const records = [...new Set(entrants.map(({ ball }) => ball))];
  const rolled = await rollAll(inputs, records, options, hasWish);
  const [first] = rolled;
  const { seed } = options;

  const { effectsOn, targets, weighed, byPhysics } = scoresFor(want, rolled, seed);
  const scatter = shotScatter(first.grounds.problem, bowler, seed);

  const rows = rolled.flatMap((on, i) => {
    const { ball, rules, problem } = on.grounds;
    const inWords = answerer(targets, on.grounds);
    const factsOf = drilledFacts(ball, rules);
    const undrilled = undrilledAnswer(records[i], ball);
    return on.entrants.map(({ layout, outcome, outcomes }) => {
      const inWorlds: RolledInWorlds = { nominal: outcome, outcomes, effects: effectsOn(on, layout) };
      const facts = factsOf(layout);
      const simulated = inWords({ layout, nominal: outcome, worlds: weighed(inWorlds) }, facts);
      const { name: ballName } = records[i];
      const name = { layout: simulated.text, ball: ballName, finish: `${problem.grit} grit` }[varies];
      return {
        name,
        weighed: weighed(inWorlds),
        physics: byPhysics(inWorlds),
        effects: inWorlds.effects,
        answer: {
          name,
          ball: ballName,
          grit: problem.grit,
          ...simulated,
          undrilled,
          psa: facts.psa,
          flareStart: facts.flareStart,
          marks: [...facts.marks],
          legality: facts.legality,
        },
      };
    });
  });
  const [base] = rows;
  const assumed = rolled.flatMap(({ grounds }, i) =>
    allAssumptions({ bowler, ball: records[i], lane, want }, grounds.ball),
  );
  return {
    schema: 'flarewise/compare/1',
    version: VERSION,
    seed,
    inputs: { bowler, balls: records.map(ballRecord), lane, want },
    ...saysLearned(learned),
    varies,
    verdict: compareVerdict(rows, scatter, { hasWish, worlds: first.luck.length }),
    targets: targets.map(targetAnswer),
    rows: rows.map(
      (row, i): CompareRow => ({
        ...row.answer,
        fromFirst: i === 0 ? null : fromFirst(row, base, scatter, hasWish),
      }),
    ),
    worlds: first.luck.length,
    scatter,
    assumptions: withoutRepeats(assumed).filter(({ code }) => code !== 'no-wish'),
    cautions: withoutRepeats(rolled.flatMap(({ grounds }) => cautionsFor(grounds.ball))),
  };
}

/** Rolls each ball's entrants, one ball after the other. */
async function rollAll(
  { bowler, lane, want, varies, entrants, learned }: CompareInputs,
  records: readonly Ball[],
  options: SettingOptions,
  hasWish: boolean,
): Promise<readonly RolledOnBall[]> {
  const budget = options.budget ?? USUAL_BUDGET;
  const sized = { ...options, budget: { ...budget, worlds: Math.min(WORLDS, budget.worlds) } };
  const rolled: RolledOnBall[] = [];
  for (const [i, ball] of records.entries()) {
    const layouts = entrants.filter((entrant) => entrant.ball === ball).map(({ layout }) => layout);
    const [first] = rolled;
    const board = first && xToBoard(first.grounds.line.launch.x);
    rolled.push(
      await laidDownAlike(board, { bowler, ball, lane, want, learned }, sized, (setting) =>
        rollOnBall(layouts, setting, hasWish),
      ).catch((error) => {
        throw varies === 'ball' ? movedRefusal(error, 'ball.', `balls[${i}].`) : error;
      }),
    );
  }
  return rolled;
}

/** Prepares to score layouts on any of the balls, weighed with practice and by physics alone, against what all the balls attain. */
function scoresFor(want: Want, rolled: readonly RolledOnBall[], seed: number) {
  const [{ quantitiesOf, usual, luck, grounds }] = rolled;
  const reference = quantitiesOf(MIDDLE_LAYOUT);
  const effectsOn = (on: RolledOnBall, layout: LayoutNumbers): BeliefEffects =>
    beliefEffects(on.quantitiesOf(layout), reference);
  const attained = rolled.flatMap((on) =>
    on.attained.map(({ layout, outcome }) => ({ nominal: outcome, effects: effectsOn(on, layout) })),
  );
  const field = { attained, usual, luck };
  const sizes = drawBeliefs(seed, luck.length, grounds.chanceOf);
  return {
    effectsOn,
    targets: physicalTargets(want, attained),
    weighed: pairedScores(want, field, sizes),
    byPhysics: pairedScores(want, field, null),
  };
}

const withoutRepeats = <T>(all: readonly T[]): T[] => [
  ...new Map(all.map((each) => [JSON.stringify(each), each])).values(),
];
