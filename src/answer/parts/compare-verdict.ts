import type { CompareRow } from '../../records/answers/compare-answer.js';
import type { CompareRemark } from '../../records/answers/statements/compare-remarks.js';
import { LANE_IDS } from '../../records/schemas/reaction-numbers.js';
import { VISIBILITIES, type Visibility } from '../../records/schemas/visibilities.js';
import { meanDifferences, shareAbove } from '../../search/scoring/world-statistics.js';
import { visibility } from '../../search/visibility.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';
import type { Scored } from './from-first.js';

/** One that is compared, with what is needed to say whether it may be drilled. */
type Judged = Scored & { readonly answer: Pick<CompareRow, 'objections' | 'legality'> };

/**
 * How those that are compared stand to one another: what may not be drilled, what looks different, and what of the rest comes nearest
 * to the wish.
 */
export function compareVerdict(
  rows: readonly Judged[],
  scatter: ShotScatter,
  { hasWish, worlds }: { readonly hasWish: boolean; readonly worlds: number },
): CompareRemark[] {
  const whyNot = ({ answer: { objections, legality } }: Judged) =>
    [...objections, ...(legality.legal ? [] : legality.findings)][0];
  const barred = rows.flatMap((row) => {
    const why = whyNot(row);
    return why ? [{ name: row.name, why }] : [];
  });
  const allowed = rows.filter((row) => whyNot(row) === undefined);
  return [
    ...(barred.length > 0 ? [{ code: 'not-to-be-drilled', params: { barred } } as const] : []),
    looks(rows, scatter),
    ...(hasWish && allowed.length > 1 ? [nearest(allowed, worlds)] : []),
  ];
}

/** How well a person could tell one from another on the lane, by physics or by both voices weighed. */
function apart(a: Scored, b: Scored, scatter: ShotScatter) {
  const [weighed, physics] = (['weighed', 'physics'] as const).map((voice) =>
    meanDifferences(LANE_IDS, a[voice], b[voice]),
  );
  const [byBoth, byPhysics] = [weighed, physics].map((size) => visibility(size, scatter, LANE_IDS));
  const onlyByPractice = byPhysics === 'unseen' && byBoth !== 'unseen';
  // where weighing hides what physics finds, its sizes are given
  const size = byBoth === 'unseen' ? physics : weighed;
  return {
    visibility: greater(byBoth, byPhysics),
    onlyByPractice,
    seen: LANE_IDS.filter((id) => visibility(size, scatter, [id]) !== 'unseen').map((reading) => ({
      reading,
      size: size[reading],
    })),
  };
}

const greater = (a: Visibility, b: Visibility): Visibility =>
  VISIBILITIES[Math.max(VISIBILITIES.indexOf(a), VISIBILITIES.indexOf(b))];

function looks(rows: readonly Scored[], scatter: ShotScatter): CompareRemark {
  const pairs = rows.flatMap((one, i) => rows.slice(i + 1).map((other) => apart(other, one, scatter)));
  if (pairs.every((pair) => pair.visibility === 'unseen'))
    return { code: 'all-look-alike', params: { names: rows.map(({ name }) => name) } };
  const [first, ...others] = rows;
  return {
    code: 'looks-beside-first',
    params: {
      first: first.name,
      others: others.map((other) => ({ name: other.name, ...apart(other, first, scatter) })),
    },
  };
}

/** Normal score that luck exceeds in one of twenty cases. */
const ONE_OF_TWENTY = 1.645;

/**
 * Whether one is ahead of another in more of so many worlds than luck alone makes one of an even pair: the sign test, one-sided, in its normal
 * approximation (Conover, Practical Nonparametric Statistics, 3rd ed., 1999, sect. 3.4; from memory). Evenly spread worlds scatter less than
 * it assumes.
 */
const isBeyondLuck = (share: number, worlds: number): boolean =>
  share - 0.5 > (ONE_OF_TWENTY * 0.5) / Math.sqrt(worlds);

/** The one that is ahead of each of the others most often, and the one that is hardest for it. */
function nearest(rows: readonly Scored[], worlds: number): CompareRemark {
  const hardest = rows.map((own) =>
    rows
      .filter((other) => other !== own)
      .map((other) => ({ name: own.name, over: other.name, ahead: shareAbove(own.weighed, other.weighed) }))
      .reduce((least, each) => (each.ahead < least.ahead ? each : least)),
  );
  const best = hardest.reduce((most, each) => (each.ahead > most.ahead ? each : most));
  return {
    code: isBeyondLuck(best.ahead, worlds) ? 'comes-nearest' : 'none-comes-nearer',
    params: { ...best, worlds },
  };
}
