import { isDeepStrictEqual } from 'node:util';
import type { RecommendInputs } from '../recommend/setting.js';
import { demoShelf } from '../records/shelf.js';

/** Which of bowler, ball and lane are demo records, that is, invented. */
export function inventedAmong({ bowler, ball, lane }: Omit<RecommendInputs, 'want'>): readonly string[] {
  const demos = demoShelf();
  const isOn = (shelf: readonly { readonly record: unknown }[], given: unknown): boolean =>
    shelf.some(({ record }) => isDeepStrictEqual(record, given));
  return [
    ...(isOn(demos.bowlers, bowler) ? ['bowler'] : []),
    ...(isOn(demos.balls, ball) ? ['ball'] : []),
    ...(isOn(demos.lanes, lane) ? ['lane'] : []),
  ];
}
