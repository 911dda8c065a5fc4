import { allAssumptions } from '../../explain/assumptions.js';
import { cautionsFor } from '../../explain/cautions.js';
import { laneOfNight } from '../../learn/lane-of-night.js';
import { xToBoard } from '../../motion/lane/boards.js';
import { USUAL_BUDGET } from '../../prepare/budget.js';
import { sharedBalls } from '../../prepare/shared-balls.js';
import type { AdjustAnswer } from '../../records/answers/adjust-answer.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { Lane } from '../../records/schemas/lane.js';
import { WISHED_IDS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { Night } from '../../records/schemas/shot-log.js';
import { VERSION } from '../../records/shared/version.js';
import { reactionAnswer } from '../../simulate/reaction-answer.js';
import type { SettingOptions } from '../../simulate/setting.js';
import { shotScatter } from '../../simulate/shot-scatter.js';
import { saysLearned } from '../../simulate/worlds/learned.js';
import { formatOn } from '../parts/layout-answer.js';
import { adjustVerdict } from './adjust-verdict.js';
import { type LogTold, logSays } from './log-says.js';
import { type NightDid, nightDid } from './night-did.js';
import { rollRedrilled } from './redrill.js';
import { remedyAnswers } from './remedy-answers.js';
import { type KeptBall, rollBase, rollUndone } from './rolled-remedies.js';
import { missOf } from './weigh-remedy.js';
import { type AskedChanges, type Did, wantedChange, wishedChanges } from './wished-changes.js';

/** A drilled ball, what it did and what it should do instead. */
export interface AdjustInputs {
  readonly bowler: Bowler;
  readonly kept: KeptBall;
  readonly lane: Lane;
  /** At least one. */
  readonly asked: AskedChanges;
  /** What the ball did according to the person, which takes precedence over the log. */
  readonly told: Readonly<Partial<Record<WishedId, number>>>;
  /** The night that is meant, of this ball on this lane; null for none. */
  readonly night: Night | null;
  /** The bowler's other drilled balls. */
  readonly others: readonly KeptBall[];
  /** What the bowler's logged shots teach for this lane; null for nothing. */
  readonly lesson: LogTold | null;
}

/** Worlds in which each remedy is rolled, as in `compare`. */
const WORLDS = 64;

/**
 * What to change where a drilled ball does not do what was wanted: moves, finishes, speed, other drilled balls, and plugging and
 * redrilling, each rolled in the same worlds as the ball as it is.
 *
 * @throws {Refusal} when a ball's numbers fit no core or the grip cannot be placed
 */
export async function adjust(inputs: AdjustInputs, options: SettingOptions): Promise<AdjustAnswer> {
  const { kept, asked, night, lesson } = inputs;
  const { ball, layout } = kept;
  const read = night && nightDid(night);
  const bowler = playedFrom(inputs.bowler, read?.laydownBoard ?? null);
  const lane = night ? laneOfNight({ lane: inputs.lane, night }) : inputs.lane;
  const thrown = { bowler, ball, lane, want: {}, learned: lesson?.learned };
  const budget = options.budget ?? USUAL_BUDGET;
  const sized: SettingOptions = {
    ...options,
    readyBall: options.readyBall ?? sharedBalls(),
    budget: { ...budget, worlds: Math.min(WORLDS, budget.worlds) },
  };

  const hasSteps = Object.values(asked).some((each) => each.asked.is === 'step');
  const base = await rollBase(thrown, layout, sized, hasSteps);
  const { grounds, attained, luck } = base.on;
  const scatter = shotScatter(grounds.problem, bowler, options.seed);
  const wished = wishedChanges(
    asked,
    didBy(inputs.told, read?.did ?? {}),
    base.nominal,
    attained.map(({ outcome }) => outcome),
    scatter,
  );
  const wanted = wantedChange(wished);
  const undone = await rollUndone(thrown, kept, inputs.others, base.roll);
  const redrilled = await rollRedrilled(thrown, layout, base, wanted, scatter);
  const remedies = remedyAnswers(
    [...base.moves, ...undone, ...(redrilled ? [redrilled.rolled] : [])],
    base.outcomes,
    wanted,
    scatter,
  );
  const miss = missOf(wanted, scatter);
  const board = xToBoard(base.nominal.launch.x);
  const { reachesPocket } = base.nominal;
  const said = lesson
    ? logSays(
        lesson,
        { bowler: { ...bowler, laydownBoard: board }, ball, lane, layout },
        grounds.ball,
        wanted,
        scatter,
      )
    : { first: [], last: [] };
  return {
    schema: 'flarewise/adjust/1',
    version: VERSION,
    seed: options.seed,
    id: kept.id,
    inputs: { bowler, ball, lane, layout: formatOn(grounds.ball, layout) },
    ...saysLearned(lesson?.learned),
    night: night?.on ?? null,
    wished: [...wished],
    verdict: [
      ...said.first,
      ...adjustVerdict({ wished, remedies, miss, scatter, reachesPocket, worlds: luck.length }),
      ...said.last,
    ],
    reaction: reactionAnswer(base.nominal),
    line: { laydownBoard: board, reachesPocket },
    miss,
    remedies: [...remedies],
    redrill: redrilled?.answer ?? null,
    worlds: luck.length,
    scatter,
    assumptions: allAssumptions({ bowler, ball, lane, want: {} }, grounds.ball).filter(
      ({ code }) => code !== 'no-wish',
    ),
    cautions: [
      { code: 'sanding-by-trained-people', params: {} },
      { code: 'finish-in-competition', params: {} },
      ...cautionsFor(grounds.ball),
    ],
  };
}

/** A bowler who is known to have laid the ball down on a board. */
const playedFrom = (bowler: Bowler, laydownBoard: number | null): Bowler =>
  laydownBoard === null ? bowler : { ...bowler, laydownBoard };

/** What the ball did: according to the person, and for all other numbers according to the log. */
const didBy = (told: AdjustInputs['told'], logged: NightDid['did']): Partial<Record<WishedId, Did>> =>
  Object.fromEntries(
    WISHED_IDS.flatMap((id): [WishedId, Did][] => {
      const value = told[id];
      if (value !== undefined) return [[id, { value, from: 'told', deviation: null }]];
      const read = logged[id];
      return read ? [[id, { ...read, from: 'log' }]] : [];
    }),
  );
