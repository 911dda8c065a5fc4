import { fromKeys } from '../base/from-keys.js';
import { causes } from '../explain/causes.js';
import { numbersOf } from '../prepare/mark-of.js';
import type { CausesAnswer, MapAnswer, MapRow } from '../records/answers/answer.js';
import type { CompareAnswer } from '../records/answers/compare-answer.js';
import { COMPARED_IDS, LANE_IDS } from '../records/schemas/reaction-numbers.js';
import { visibility } from '../search/visibility.js';
import { type RecommendInputs, type SettingOptions, withSetting } from '../simulate/setting.js';
import { saysLearned } from '../simulate/worlds/learned.js';
import { compare } from './compare.js';

/**
 * What the spread of a map's drilled numbers does on a lane: the two rows at its ends, rolled in the same worlds, by physics.
 *
 * The ends are those of the differential that moves more, total or intermediate.
 *
 * @throws {Refusal} as `compare` does
 */
export async function spreadOnLane(
  { bowler, ball, lane, learned }: Omit<RecommendInputs, 'want'>,
  map: MapAnswer,
  options: SettingOptions,
): Promise<NonNullable<MapAnswer['onLane']>> {
  const [least, most] = endsOf(map);
  const entrants = [least, most].map(({ layout }) => ({ ball, layout: numbersOf(layout) }));
  const answer = await compare({ bowler, lane, learned, want: {}, varies: 'layout', entrants }, options);
  const [first, second] = answer.rows;
  const { size } = second.fromFirst!.physics;
  const { scatter } = answer;
  const [parts] = await withSetting({ bowler, ball, lane, learned, want: {} }, options, (setting) =>
    causes([numbersOf(most.layout)], numbersOf(least.layout), [], setting),
  );
  return {
    lane: lane.name,
    ...saysLearned(learned),
    from: first.text,
    to: second.text,
    size: fromKeys(COMPARED_IDS, (id) => size[id]),
    scatter: fromKeys(COMPARED_IDS, (id) => scatter[id]),
    visibility: visibility(size, scatter, LANE_IDS),
    centreHeld: parts && centreHeld(parts, scatter),
    worlds: answer.worlds,
  };
}

/** What is left of the difference where both layouts have one centre of mass: of the number that stands out most from the scatter. */
function centreHeld(parts: CausesAnswer, scatter: CompareAnswer['scatter']): CentreHeld {
  const [reading] = [...BY_CAUSE].sort(
    (a, b) => Math.abs(parts[b].total) / scatter[b] - Math.abs(parts[a].total) / scatter[a],
  );
  const { total, without } = parts[reading];
  return { reading, total, left: without.centre };
}

/** Numbers of which the causes are told, in feet and boards. */
const BY_CAUSE = ['hookStartFt', 'totalHookBoards'] as const;

type CentreHeld = NonNullable<NonNullable<MapAnswer['onLane']>['centreHeld']>;

/** The rows with the least and the greatest value of the differential that moves more. */
function endsOf({ rows, reach }: MapAnswer): readonly [MapRow, MapRow] {
  const moved = (key: 'differentialIn' | 'intermediateDifferentialIn'): number =>
    reach.numbers[key].most - reach.numbers[key].least;
  const key =
    moved('differentialIn') > moved('intermediateDifferentialIn')
      ? 'differentialIn'
      : 'intermediateDifferentialIn';
  const ends = [...rows].sort((a, b) => a.drilled[key] - b.drilled[key]);
  return [ends[0], ends[ends.length - 1]];
}
