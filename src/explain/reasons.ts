import type { CoreKind } from '../prepare/cores-of.js';
import type {
  DrilledNumbersAnswer,
  ReactionAnswer,
  SharesAnswer,
  TargetAnswer,
} from '../records/answers/answer.js';
import type { Reason } from '../records/answers/statements/reasons.js';
import type { CentreEffect } from './explain.js';

/** What a layout's reasons draw on; answers already in the units people read. */
export interface ReasonFacts {
  readonly families: readonly CoreKind[];
  /** Whether a drilling angle has a mark to be measured to. */
  readonly hasMark: boolean;
  readonly undrilled: { readonly differentialIn: number; readonly intermediateDifferentialIn: number };
  readonly drilled: DrilledNumbersAnswer;
  readonly reaction: ReactionAnswer;
  readonly middle: { readonly drilled: DrilledNumbersAnswer; readonly reaction: ReactionAnswer };
  readonly shares: SharesAnswer;
  readonly centre: CentreEffect;
  readonly targets: readonly TargetAnswer[];
  readonly pinToPapIn: number;
  readonly next: { readonly text: string; readonly score: number; readonly reaction: ReactionAnswer } | null;
  readonly score: number;
}

/** Why a layout does what it does, from the wishes down to the core; each reason rests on a computed number. */
export const reasons = (facts: ReasonFacts): Reason[] => [
  ...facts.targets.map((target) => meetsWish(target, facts)),
  flareAndDifferential(facts),
  ...offsetOfCentre(facts.centre),
  intermediate(facts),
  sharesOfScore(facts),
  ...(facts.next ? [nextLayout(facts, facts.next)] : []),
];

const meetsWish = ({ reading, step, value }: TargetAnswer, { reaction, middle }: ReasonFacts): Reason => ({
  code: 'meets-wish',
  params: { reading, step, found: reaction[reading], wanted: value, usual: middle.reaction[reading] },
});

/** Where flare is greatest, and how near to it counts, in. */
const PEAK_IN = 3.375;
const NEAR_PEAK_IN = 0.5;

/** A difference of flare from the usual layout's too small to have a cause, in. */
const SLIGHT_FLARE_IN = 0.05;

function flareAndDifferential({
  drilled,
  undrilled,
  reaction,
  middle,
  pinToPapIn,
  centre,
}: ReasonFacts): Reason {
  const than = reaction.flareIn - middle.reaction.flareIn;
  // flare is named as a cause only where the ball, balanced, does what flare would have it do
  const sooner = -centre.balanced.hookStartFt;
  const isCause =
    Math.abs(than) >= SLIGHT_FLARE_IN && Math.abs(sooner) >= SLIGHT.hookStartFt && than * sooner >= 0;
  return {
    code: 'flare-and-differential',
    params: {
      undrilledIn: undrilled.differentialIn,
      drilledIn: drilled.differentialIn,
      flareIn: reaction.flareIn,
      usualFlareIn: middle.reaction.flareIn,
      grips: isCause ? (than > 0 ? 'more' : 'less') : null,
      peakIn: Math.abs(pinToPapIn - PEAK_IN) <= NEAR_PEAK_IN ? PEAK_IN : null,
    },
  };
}

/** Differences from the middle layout too small to ask for their cause. */
const SLIGHT = { hookStartFt: 0.15, totalHookBoards: 0.3 };

/** Where most of a difference goes when the centre of mass is put at the ball's centre, the offset is its cause. */
function offsetOfCentre({ asDrilled, balanced }: CentreEffect): Reason[] {
  const both = (key: keyof typeof SLIGHT): { asDrilled: number; balanced: number } | null =>
    Math.abs(asDrilled[key]) >= SLIGHT[key] && balanced[key] / asDrilled[key] < 0.5
      ? { asDrilled: asDrilled[key], balanced: balanced[key] }
      : null;
  const params = { hookStartFt: both('hookStartFt'), totalHookBoards: both('totalHookBoards') };
  return params.hookStartFt || params.totalHookBoards ? [{ code: 'offset-of-centre', params }] : [];
}

function intermediate({ families, drilled, undrilled, shares, hasMark }: ReasonFacts): Reason {
  const differentials = {
    undrilledIn: undrilled.intermediateDifferentialIn,
    drilledIn: drilled.intermediateDifferentialIn,
  };
  if (!hasMark) return { code: 'intermediate-without-mark', params: differentials };
  if (families.length > 1) return { code: 'intermediate-of-many-cores', params: differentials };
  return {
    code: `intermediate-of-${families[0]}-core`,
    params: { ...differentials, byDrillingAngleIn: shares.intermediateDifferentialIn.drillingAngle },
  };
}

const sharesOfScore = ({ shares: { score }, hasMark }: ReasonFacts): Reason => ({
  code: 'shares-of-score',
  params: { ...score, drillingAngle: hasMark ? score.drillingAngle : null },
});

/** How far behind the next layout is, and in which wish most of all. */
function nextLayout(
  { reaction, score, targets }: ReasonFacts,
  next: NonNullable<ReasonFacts['next']>,
): Reason {
  const [widest] = targets
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
