import { isDeepStrictEqual } from 'node:util';
import { demoShelf } from '../../records/read/shelf.js';
import type { Lane } from '../../records/schemas/lane.js';
import type { RecommendInputs } from '../../simulate/setting.js';

/** Which of bowler, ball and lane are demo records, that is, invented. */
export function inventedAmong({
  bowler,
  ball,
  lane,
}: Partial<Pick<RecommendInputs, 'bowler' | 'ball'>> & {
  readonly lane?: Lane | null;
}): readonly string[] {
  const demos = demoShelf();
  const isOn = (shelf: readonly { readonly record: unknown }[], given: unknown): boolean =>
    shelf.some(({ record }) => isDeepStrictEqual(record, given));
  return [
    ...(isOn(demos.bowlers, bowler) ? ['bowler'] : []),
    ...(isOn(demos.balls, ball) ? ['ball'] : []),
    ...(isOn(demos.lanes, lane) ? ['lane'] : []),
  ];
}
