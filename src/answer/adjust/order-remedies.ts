import { IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import { REMEDY_KINDS, type RemedyKind } from '../../records/answers/statements/adjustments.js';

/** The part of a remedy that its place depends on. */
interface Placed {
  readonly kind: RemedyKind;
  /** What it leaves missing, in deviations of the bowler's shots. */
  readonly miss: number;
  readonly verdict: string;
}

/**
 * Remedies in the order in which they should be tried: those that help first, of these what can be undone before a drill, then by what
 * they leave missing in steps that a person could see, then by cost, then by what they leave missing.
 */
export const orderRemedies = <T extends Placed>(remedies: readonly T[]): readonly T[] =>
  [...remedies].sort((a, b) => {
    const [one, other] = [placeOf(a), placeOf(b)];
    const differs = one.findIndex((each, i) => each !== other[i]);
    return differs < 0 ? 0 : one[differs] - other[differs];
  });

const placeOf = ({ kind, miss, verdict }: Placed): readonly number[] => [
  verdict === 'helps' ? 0 : 1,
  isUndone(kind) ? 0 : 1,
  Math.floor(miss / IN_A_NIGHT),
  REMEDY_KINDS.indexOf(kind),
  miss,
];

/** Whether a remedy can be taken back. */
export const isUndone = (kind: RemedyKind): boolean => kind !== 'plug-and-redrill';

/** The remedies to recommend: the first of each kind, if it helps. */
export const recommended = <T extends Placed>(ordered: readonly T[]): readonly T[] =>
  ordered.filter(
    (each) => each.verdict === 'helps' && each === ordered.find(({ kind }) => kind === each.kind),
  );
