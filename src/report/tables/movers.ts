import type { LeverEffect, RecommendAnswer, TargetAnswer } from '../../records/answers/answer.js';
import { LEVER_KINDS } from '../../records/answers/statements/ids.js';
import { NUMBER_OF_WISH, REACTION_NUMBERS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { Mover } from '../charts/movers-picture.js';
import type { Units } from '../text/display-units.js';
import { say } from '../wording/say.js';

/** What is known of what moves reaction numbers with one layout. */
export interface Moved {
  readonly scatter: Readonly<Record<WishedId, number>>;
  readonly targets: readonly TargetAnswer[];
  /** What the layout itself does, beside which levers are held. */
  readonly reaction: Readonly<Record<WishedId, number>>;
  readonly levers: readonly LeverEffect[];
  /** The layout that others are held against. */
  readonly from: string;
  /** Layouts that stand beside it, each with its difference from it. */
  readonly layouts: readonly {
    readonly sign: string;
    readonly name: string;
    readonly size: Readonly<Record<WishedId, number>>;
  }[];
}

/** What moves the reaction with the first layout of a recommendation. */
export function movedWith({ layouts, middle, targets, scatter, levers }: RecommendAnswer): Moved {
  const [{ reaction }] = layouts;
  return {
    scatter,
    targets,
    reaction,
    levers,
    from: `the usual ${middle.text}`,
    layouts: layouts.flatMap(({ rank, text, confidence: { overMiddle } }) =>
      overMiddle ? [{ sign: `${rank}`, name: text, size: overMiddle.physics.size }] : [],
    ),
  };
}

/** Standard deviations between the 5th and the 95th percentile of a normal distribution (2 × 1.645). */
const NINE_OF_TEN = 3.29;

/** The greatest of what moves one number, each kind of lever once: first the scatter of shots, then from much to little. */
export function movers(id: WishedId, given: Moved, units: Units): readonly Mover[] {
  const { scatter, targets, reaction, levers, layouts } = given;
  const attainable = targets.find(({ wish }) => NUMBER_OF_WISH[wish] === id)?.attainable;
  const change = (lever: LeverEffect): number => lever.reaction[id] - reaction[id];
  const byKind = LEVER_KINDS.flatMap((kind) => {
    const [most] = levers
      .filter((lever) => lever.kind === kind)
      .sort((a, b) => Math.abs(change(b)) - Math.abs(change(a)));
    return most
      ? [{ kind: 'lever' as const, name: say(most.change, units), sign: '', size: change(most) }]
      : [];
  });
  const reach = attainable
    ? [
        {
          kind: 'reach' as const,
          name: 'all layouts, least to most',
          sign: '',
          size: attainable.high - attainable.low,
        },
      ]
    : [];
  const named = layouts.map(({ sign, name, size }) => ({
    kind: 'layout' as const,
    name,
    sign,
    size: size[id],
  }));
  return [
    { kind: 'shots', name: 'shot to shot, 9 of 10 shots', sign: '', size: NINE_OF_TEN * scatter[id] },
    ...[...reach, ...byKind, ...named].sort((a, b) => Math.abs(b.size) - Math.abs(a.size)),
  ];
}

/** How far something moves a number, in words: `4.1 ft`, `0.2 ft later`. */
export function moverSize({ kind, size }: Mover, id: WishedId, units: Units): string {
  const { quantity, more, less } = REACTION_NUMBERS[id].compared;
  const unit = units[quantity];
  const shown = unit.size(size);
  const isSpread = kind === 'shots' || kind === 'reach';
  return Number(shown) === 0
    ? `0 ${unit.name}`
    : `${shown} ${unit.name}${isSpread ? '' : ` ${size > 0 ? more : less}`}`;
}
