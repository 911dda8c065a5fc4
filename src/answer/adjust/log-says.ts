import type { BallProblem } from '../../prepare/ball-problem.js';
import type { LearnedAnswer } from '../../records/answers/learned-answer.js';
import { IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import type { AdjustRemark } from '../../records/answers/statements/adjust-remarks.js';
import type { WishedId } from '../../records/schemas/reaction-numbers.js';
import { type AimedShot, aimedShot, type ShotRecords } from '../../simulate/aimed-shot.js';
import { reader } from '../../simulate/readings.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';
import { RELEASE_COORDINATES } from '../../simulate/worlds/lasting.js';
import type { Learned } from '../../simulate/worlds/learned.js';
import type { WantedChange } from './weigh-remedy.js';

type Cause = LearnedAnswer['misfit']['causes'][number];

/** What logged shots teach: whether they fit the model, and the posterior that worlds are drawn from. */
export interface LogTold {
  readonly answer: {
    readonly misfit: Pick<LearnedAnswer['misfit'], 'isDoubtful'> & { readonly causes: readonly Cause[] };
  };
  readonly learned: Learned;
}

/** The learned numbers that belong to the release; all others belong to lane and cover. */
const RELEASE: readonly string[] = RELEASE_COORDINATES;

/** Something other than the ball explains a miss if it accounts for at least this share of the wanted change. */
const MOST = 0.5;

/**
 * What the log says about causes other than the ball: that it does not fit the model, or that what it teaches about the release or the
 * lane explains the miss. Such a cause is confirmed by a shot in which it alone is as stated: the shot must come nearer to the wish by
 * at least half of what is missing, and by a difference that a person could see.
 *
 * @param records  the ball as it is drilled and played, without what was learned
 */
export function logSays(
  { answer: { misfit }, learned }: LogTold,
  records: ShotRecords,
  ball: BallProblem,
  wanted: WantedChange,
  scatter: ShotScatter,
): { readonly first: readonly AdjustRemark[]; readonly last: readonly AdjustRemark[] } {
  const shots = learned.from?.shots ?? 0;
  const shotWith = (known: Learned): AimedShot => aimedShot({ ...records, learned: known }, ball);
  const [stated, both] = [shotWith(only(learned, () => false)), shotWith(learned)];
  const without = {
    'release-explains': shotWith(only(learned, (what) => !RELEASE.includes(what))),
    'lane-explains': shotWith(only(learned, (what) => RELEASE.includes(what))),
  };
  const changes = Object.entries(wanted) as [WishedId, number][];
  const causes = (Object.keys(without) as (keyof typeof without)[]).flatMap((code): AdjustRemark[] =>
    changes.flatMap(([reading, change]): AdjustRemark[] => {
      const of = ({ outcome }: AimedShot): number => reader(reading)(outcome);
      const back = of(without[code]) - of(both);
      const share = change === 0 ? 0 : back / change;
      const isSeen = Math.abs(back) >= IN_A_NIGHT * scatter[reading];
      return isSeen && share >= MOST
        ? [{ code, params: { shots, reading, stated: of(without[code]), learned: of(both), share } }]
        : [];
    }),
  );
  const [cause] = misfit.causes;
  const doubt = misfit.isDoubtful && cause ? doubtOf(cause) : [];
  const moved = (reading: WishedId): number =>
    Math.abs(reader(reading)(both.outcome) - reader(reading)(stated.outcome)) / scatter[reading];
  const [most] = changes.map(([reading]) => reading).sort((a, b) => moved(b) - moved(a));
  const used: AdjustRemark = {
    code: 'learned-used',
    params: {
      shots,
      reading: most,
      before: reader(most)(stated.outcome),
      after: reader(most)(both.outcome),
    },
  };
  return { first: [...doubt, ...causes], last: causes.length > 0 ? [] : [used] };
}

const doubtOf = ({ reading, lane, by }: Cause): readonly AdjustRemark[] => [
  ...(lane === null ? [] : [{ code: 'pattern-off' as const, params: { by, lane } }]),
  ...(reading === null ? [] : [{ code: 'reads-off' as const, params: { of: reading, by } }]),
];

/** The posterior of some coordinates, with the others at the middle of the prior. */
const only = (learned: Learned, is: (what: string) => boolean): Learned => ({
  ...learned,
  mean: learned.mean.map((mean, i) => (is(learned.coordinates[i]) ? mean : 0)),
});
