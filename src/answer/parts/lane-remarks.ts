import type { LaneAnswer } from '../../records/answers/lane-answer.js';
import type { LaneRemark } from '../../records/answers/statements/lane-remarks.js';
import { usualBreakpoint } from '../../simulate/usual-breakpoint.js';

type Facts = Pick<LaneAnswer, 'lane' | 'hand' | 'oil' | 'wear'>;

/** Lengths up to which a pattern is short, and from which it is long, ft (common practice, no source). */
const SHORT_FT = 36;
const LONG_FT = 42;

/** Ratios of middle to outside that separate steep, medium and flat patterns (common practice, no source). */
const STEEP = 4;
const FLAT = 2;

/** Middle-to-outside ratios of the two sides that count as the same. */
const ALIKE = 1.15;

/** What a bowler would say of a lane. */
export const laneRemarks = (facts: Facts): LaneRemark[] => [
  lengthOf(facts),
  ratioOf(facts),
  ...sidesOf(facts),
  amountOf(facts),
  ...(facts.wear ? [wearOf(facts.wear)] : []),
];

function lengthOf({ lane: { patternFt } }: Facts): LaneRemark {
  const { board, patternFtLess } = usualBreakpoint(patternFt);
  return {
    code: 'oil-length',
    params: {
      patternFt,
      length: patternFt < SHORT_FT ? 'short' : patternFt <= LONG_FT ? 'medium' : 'long',
      widestBoard: board,
      lessFt: patternFtLess,
    },
  };
}

function ratioOf({ oil: { middleToOwn: times, meanUnits } }: Facts): LaneRemark {
  const films = { middleUnits: meanUnits.middle, outsideUnits: meanUnits.own };
  if (times === null) return { code: 'oil-bare-outside', params: films };
  const params = { times, ...films };
  if (times >= STEEP) return { code: 'oil-much-thicker-inside', params };
  if (times > FLAT) return { code: 'oil-thicker-inside', params };
  return { code: times >= 1 / ALIKE ? 'oil-even' : 'oil-thicker-outside', params };
}

function sidesOf({ hand, oil: { middleToOwn, middleToFar, meanUnits } }: Facts): LaneRemark[] {
  if (middleToOwn === null || middleToFar === null) return [];
  const unlike = Math.max(middleToOwn / middleToFar, middleToFar / middleToOwn);
  return unlike < ALIKE
    ? [{ code: 'sides-alike', params: {} }]
    : [{ code: 'sides-differ', params: { hand, ownUnits: meanUnits.own, otherUnits: meanUnits.far } }];
}

const amountOf = ({ oil: { total, endsByFoot } }: Facts): LaneRemark => ({
  code: 'oil-in-all',
  params: { unitSquareFeet: total, before: endsByFoot.slice(0, -1) },
});

const wearOf = ({
  games,
  wornSide,
  takenFromTrack,
  takenOfAll,
  carriedOff,
  carriedDown,
}: NonNullable<Facts['wear']>): LaneRemark => ({
  code: 'oil-after-games',
  params: { games, side: wornSide, goneFromTrack: takenFromTrack, takenOfAll, carriedOff, carriedDown },
});
