import { signed } from '../base/decimals.js';
import type { CoreKind } from '../prepare/cores-of.js';
import type {
  DrilledNumbersAnswer,
  ReactionAnswer,
  SharesAnswer,
  TargetAnswer,
} from '../records/answers/answer.js';
import { NUMBER_OF_WISH, REACTION_NUMBERS } from '../records/schemas/reaction-numbers.js';
import { capital } from '../records/text/capital.js';
import type { CentreEffect } from './explain.js';

/** What the wording of a layout's reasons draws on; answers already in the units people read. */
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

/** Why a layout does what it does, from the wishes down to the core; each line rests on a computed number. */
export function reasons(facts: ReasonFacts): string[] {
  return [
    ...facts.targets.map((target) => wishLine(target, facts)),
    flareLine(facts),
    ...centreLines(facts.centre),
    coreLine(facts),
    shareLine(facts),
    ...(facts.next ? [nextLine(facts, facts.next)] : []),
  ];
}

function wishLine(target: TargetAnswer, { reaction, middle }: ReasonFacts): string {
  const id = NUMBER_OF_WISH[target.wish];
  const { name, compared } = REACTION_NUMBERS[id];
  const text = (value: number): string => `${value.toFixed(compared.digits)} ${target.unit}`;
  return `${capital(name)} ${text(reaction[id])}; wish ${target.step} of 5 is ${text(target.value)} here, and the usual middle layout gives ${text(middle.reaction[id])}.`;
}

function flareLine({ drilled, undrilled, reaction, middle, pinToPapIn, centre }: ReasonFacts): string {
  const kept = drilled.differentialIn - undrilled.differentialIn;
  const than = reaction.flareIn - middle.reaction.flareIn;
  const keeps =
    Math.abs(kept) < 0.0005
      ? 'Drilling keeps the total differential'
      : `Drilling ${kept > 0 ? 'adds' : 'takes'} ${Math.abs(kept).toFixed(3)} in of total differential`;
  const flares =
    Math.abs(than) < 0.05
      ? 'as much as the usual middle layout'
      : `${Math.abs(than).toFixed(1)} in ${than > 0 ? 'more' : 'less'} than the usual middle layout`;
  // flare is named as a cause only where the ball, balanced, does what flare would have it do
  const sooner = -centre.balanced.hookStartFt;
  const why =
    Math.abs(than) < 0.05 || Math.abs(sooner) < SLIGHT.hookStartFt || than * sooner < 0
      ? ''
      : than > 0
        ? ' More flare brings more clean cover to the lane, so the ball grips more where the lane is dry.'
        : ' Less flare rolls more of each turn over its own oil, so the ball grips less where the lane is dry.';
  const peak =
    Math.abs(pinToPapIn - 3.375) <= 0.5
      ? ' The pin lies near 3 3/8 in from the PAP, where flare is greatest.'
      : '';
  return `${keeps} (${undrilled.differentialIn.toFixed(3)} to ${drilled.differentialIn.toFixed(3)} in); it flares ${reaction.flareIn.toFixed(1)} in, ${flares}.${why}${peak}`;
}

/** Differences from the middle layout too small to ask for their cause. */
const SLIGHT = { hookStartFt: 0.15, totalHookBoards: 0.3 };

/** Where most of a difference goes when the centre of mass is put at the ball's centre, the offset is its cause. */
function centreLines({ asDrilled, balanced }: CentreEffect): string[] {
  const by = (key: keyof typeof SLIGHT, name: string, unit: string): string[] =>
    Math.abs(asDrilled[key]) >= SLIGHT[key] && balanced[key] / asDrilled[key] < 0.5
      ? [
          `${name} ${signed(asDrilled[key], 1)} ${unit}, and ${signed(balanced[key], 1)} with the centre of mass at the ball’s centre`,
        ]
      : [];
  const causes = [...by('hookStartFt', 'hook start', 'ft'), ...by('totalHookBoards', 'total hook', 'boards')];
  return causes.length > 0
    ? [
        `The offset of the centre of mass (static weight) makes most of the difference from the usual middle layout: ${causes.join('; ')}. Gravity on it turns the axis while the ball rolls down the lane.`,
      ]
    : [];
}

function coreLine({ families, drilled, undrilled, shares, hasMark }: ReasonFacts): string {
  const { intermediateDifferentialIn: now } = drilled;
  const before = undrilled.intermediateDifferentialIn;
  const byAngle = shares.intermediateDifferentialIn.drillingAngle;
  const change = `Intermediate differential goes from ${before.toFixed(3)} to ${now.toFixed(3)} in`;
  const angle = `${signed(byAngle, 3)} in of the difference from the middle layout`;
  if (!hasMark)
    return `${change}. The CG lies on the pin, so there is no mark to aim at and no drilling angle to choose.`;
  if (families.length > 1)
    return `${change}, in the middle of all cores tried. Whether the mark matters depends on the core's shape, which is not known: on a plain one hardly, on a lobed one much.`;
  switch (families[0]) {
    case 'plain':
      return `${change}: the holes alone make it. On a plain core the mark hardly matters (the drilling angle accounts for ${angle}).`;
    case 'lobed':
      return `${change}. On a lobed core it matters what the thumb hole meets: a nose or the gap between two (the drilling angle accounts for ${angle}).`;
    case 'own':
      return `${change} with the ball's own core (the drilling angle accounts for ${angle}).`;
    case 'asymmetric':
      return `${change}. The drilling angle turns the core's mass bias against the holes (it accounts for ${angle}).`;
  }
}

function shareLine({ shares: { score }, hasMark }: ReasonFacts): string {
  const byAngle = hasMark ? `, the drilling angle ${signed(score.drillingAngle, 1)}` : '';
  return `Of ${signed(score.total, 1)} points against the usual middle layout in the nominal world, pin-to-PAP brings ${signed(score.pinToPap, 1)}, the VAL angle ${signed(score.valAngle, 1)}${byAngle}.`;
}

function nextLine({ reaction, score, targets }: ReasonFacts, next: NonNullable<ReasonFacts['next']>): string {
  const behind = score - next.score;
  const widest = [...targets]
    .map((target) => {
      const id = NUMBER_OF_WISH[target.wish];
      const { name, compared } = REACTION_NUMBERS[id];
      const range = Math.max(target.attainable.high - target.attainable.low, Number.EPSILON);
      const off = (r: ReactionAnswer): number => Math.abs(r[id] - target.value) / range;
      return {
        name,
        text: `${next.reaction[id].toFixed(compared.digits)} against ${reaction[id].toFixed(compared.digits)} ${target.unit}`,
        worse: off(next.reaction) - off(reaction),
      };
    })
    .sort((a, b) => b.worse - a.worse)[0];
  const where = widest && widest.worse > 0 ? `, most of all in ${widest.name} (${widest.text})` : '';
  return `The next, ${next.text}, scores ${Math.abs(behind).toFixed(1)} ${behind >= 0 ? 'lower' : 'higher'} over all worlds${where}.`;
}
