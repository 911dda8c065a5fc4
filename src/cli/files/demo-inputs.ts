import { DEMO, demoShelf } from '../../records/read/shelf.js';
import type { RecommendInputs } from '../../simulate/setting.js';

/** An average right-hander with a plain ball on a house shot, who wants it to hook late and sharply. All invented. */
export function demoInputs(): RecommendInputs {
  const { bowlers, balls, lanes } = demoShelf();
  return {
    bowler: find(bowlers, DEMO.bowler),
    ball: find(balls, DEMO.ball),
    lane: find(lanes, DEMO.lane),
    want: { hookStart: 4, sharpness: 5 },
  };
}

function find<T>(shelf: readonly { readonly id: string; readonly record: T }[], id: string): T {
  const found = shelf.find((entry) => entry.id === id);
  if (!found) throw new Error(`demo record ${id} is missing from data/`);
  return found.record;
}
