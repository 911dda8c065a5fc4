import type { CoreKind } from '../prepare/cores-of.js';
import type {
  CausesAnswer,
  DrilledNumbersAnswer,
  FlareStartAnswer,
  ReactionAnswer,
  SharesAnswer,
  TargetAnswer,
} from '../records/answers/answer.js';
import type { Reason } from '../records/answers/statements/reasons.js';
import { SHARED_IDS } from '../records/schemas/reaction-numbers.js';
import { causesOfDifference } from './cause-reasons.js';
import { NOTICEABLE, NOTICEABLE_POINTS, type Noticeable } from './noticeable.js';

/** The facts that a layout's reasons are made from, in the units of answers. */
export interface ReasonFacts {
  readonly families: readonly CoreKind[];
  /** Whether a drilling angle has a mark to be measured to. */
  readonly hasMark: boolean;
  readonly undrilled: { readonly differentialIn: number; readonly intermediateDifferentialIn: number };
  readonly drilled: DrilledNumbersAnswer;
  readonly reaction: ReactionAnswer;
  readonly flareStart: FlareStartAnswer;
  /** The usual middle layout. */
  readonly middle: Pick<ReasonFacts, 'drilled' | 'reaction' | 'flareStart'>;
  readonly shares: SharesAnswer;
  readonly causes: CausesAnswer | null;
  readonly targets: readonly TargetAnswer[];
  readonly pinToPapIn: number;
  readonly next: { readonly text: string; readonly score: number; readonly reaction: ReactionAnswer } | null;
  readonly score: number;
}

/** Why a layout does what it does, from the wishes down to the core; each reason rests on a computed number. */
export const reasons = (facts: ReasonFacts, noticeable: Noticeable = NOTICEABLE): Reason[] => [
  ...facts.targets.map((target) => meetsWish(target, facts)),
  ...(facts.causes ? causesOfDifference(facts.causes, facts.targets, noticeable) : []),
  flareAndDifferential(facts, noticeable),
  intermediate(facts, noticeable),
  ...sharesOfScore(facts),
  ...drillingAngle(facts.causes),
  ...(facts.next ? [nextLayout(facts, facts.next, noticeable)] : []),
];

const meetsWish = ({ reading, step, value }: TargetAnswer, { reaction, middle }: ReasonFacts): Reason => ({
  code: 'meets-wish',
  params: { reading, step, found: reaction[reading], wanted: value, usual: middle.reaction[reading] },
});

/** Pin-to-PAP distance of the greatest flare (common practice, no source), and how near to it counts, in. */
const PEAK_IN = 3.375;
const NEAR_PEAK_IN = 0.5;

function flareAndDifferential(
  { drilled, undrilled, reaction, flareStart, middle, pinToPapIn, causes }: ReasonFacts,
  noticeable: Noticeable,
): Reason {
  const than = reaction.flareIn - middle.reaction.flareIn;
  const { perTurnIn } = flareStart;
  const { perTurnIn: usualPerTurnIn } = middle.flareStart;
  const goesAlong = (perTurnIn - usualPerTurnIn) * than > 0;
  const isNearPeak = Math.abs(pinToPapIn - PEAK_IN) <= NEAR_PEAK_IN;
  return {
    code: 'flare-and-differential',
    params: {
      undrilledIn: undrilled.differentialIn,
      drilledIn: drilled.differentialIn,
      flareIn: reaction.flareIn,
      usualFlareIn: middle.reaction.flareIn,
      start: Math.abs(than) >= noticeable.flareIn && goesAlong ? { perTurnIn, usualPerTurnIn } : null,
      grips: Math.abs(than) < noticeable.flareIn ? null : gripByFlare(causes, than > 0, noticeable),
      peakIn: isNearPeak && than >= 0 ? PEAK_IN : null,
    },
  };
}

/** The effect of flare on hook start. Reported only if it is noticeable and has the expected sign: earlier with more flare. */
function gripByFlare(
  causes: CausesAnswer | null,
  isMore: boolean,
  noticeable: Noticeable,
): Extract<Reason, { code: 'flare-and-differential' }>['params']['grips'] {
  const byFlare = causes?.hookStartFt.flare ?? 0;
  const isAsExpected = isMore ? byFlare < 0 : byFlare > 0;
  return isAsExpected && Math.abs(byFlare) >= noticeable.hookStartFt
    ? { how: isMore ? 'more' : 'less', hookStartFt: byFlare }
    : null;
}

function intermediate(
  { families, drilled, undrilled, shares, causes, hasMark }: ReasonFacts,
  noticeable: Noticeable,
): Reason {
  const differentials = {
    undrilledIn: undrilled.intermediateDifferentialIn,
    drilledIn: drilled.intermediateDifferentialIn,
  };
  const [family] = families;
  if (!hasMark) return { code: 'intermediate-without-mark', params: differentials };
  if (families.length > 1) return { code: 'intermediate-of-many-cores', params: differentials };
  if (family === 'plain') {
    const points = [shares.score.drillingAngle, causes?.byDrillingAngle?.score ?? 0];
    const markMatters =
      points.some((each) => Math.abs(each) >= NOTICEABLE_POINTS) ||
      SHARED_IDS.some((id) => Math.abs(shares[id].drillingAngle) >= noticeable[id]);
    return { code: 'intermediate-of-plain-core', params: { ...differentials, markMatters } };
  }
  return {
    code: `intermediate-of-${family}-core`,
    params: { ...differentials, byDrillingAngleIn: shares.intermediateDifferentialIn.drillingAngle },
  };
}

/** What each number of the layout and each cause adds to the usual layout's score; nothing of that layout itself. */
function sharesOfScore({ shares: { score }, causes, hasMark }: ReasonFacts): Reason[] {
  if (Object.values(score).every((points) => points === 0)) return [];
  const byCause = causes && {
    centre: causes.score.centre,
    flare: causes.score.flare,
    inertia: causes.score.inertia,
  };
  return [
    {
      code: 'shares-of-score',
      params: { ...score, drillingAngle: hasMark ? score.drillingAngle : null, byCause },
    },
  ];
}

/** The effect of the drilling angle through the centre of mass: reported if at least half of it disappears when that is held. */
function drillingAngle(causes: CausesAnswer | null): Reason[] {
  if (!causes?.byDrillingAngle) return [];
  const { score: points, withCentreHeld, movesOz } = causes.byDrillingAngle;
  if (Math.abs(points) < NOTICEABLE_POINTS || withCentreHeld / points > 0.5) return [];
  const { side: sideOz, finger: fingerOz, top: topOz } = movesOz;
  return [
    { code: 'drilling-angle-moves-centre', params: { points, withCentreHeld, sideOz, fingerOz, topOz } },
  ];
}

/** How far behind the next layout is, and in which wish most, among those in which the two differ noticeably. */
function nextLayout(
  { reaction, score, targets }: ReasonFacts,
  next: NonNullable<ReasonFacts['next']>,
  noticeable: Noticeable,
): Reason {
  const [widest] = targets
    .filter(({ reading }) => Math.abs(next.reaction[reading] - reaction[reading]) >= noticeable[reading])
    .map(({ reading, value, attainable }) => {
      const range = Math.max(attainable.high - attainable.low, Number.EPSILON);
      const off = (r: ReactionAnswer): number => Math.abs(r[reading] - value) / range;
      return { reading, worse: off(next.reaction) - off(reaction) };
    })
    .sort((a, b) => b.worse - a.worse);
  return {
    code: 'next-layout',
    params: {
      layout: next.text,
      behind: score - next.score,
      mostOf:
        widest && widest.worse > 0
          ? { reading: widest.reading, next: next.reaction[widest.reading], found: reaction[widest.reading] }
          : null,
    },
  };
}
