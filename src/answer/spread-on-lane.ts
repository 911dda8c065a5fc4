import { fromKeys } from '../base/from-keys.js';
import { numbersOf } from '../prepare/mark-of.js';
import type { MapAnswer, MapRow } from '../records/answers/answer.js';
import { LANE_IDS } from '../records/schemas/reaction-numbers.js';
import { visibility } from '../search/visibility.js';
import type { RecommendInputs, SettingOptions } from '../simulate/setting.js';
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
  return {
    lane: lane.name,
    ...saysLearned(learned),
    from: first.text,
    to: second.text,
    size: fromKeys(LANE_IDS, (id) => size[id]),
    scatter: fromKeys(LANE_IDS, (id) => scatter[id]),
    visibility: visibility(size, scatter, LANE_IDS),
    worlds: answer.worlds,
  };
}

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
