import { isDeepStrictEqual } from 'node:util';
import { ballRecord } from '../../records/schemas/ball.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { Terminal } from '../terminal/terminal.js';
import type { KeptKind } from './keep-named.js';
import { wholeShelf } from './whole-shelf.js';

/** Ids of a bowler, a ball and a lane, each undefined unless it is kept or a demo. */
export function knownIds(
  { bowler, ball, lane }: Pick<RecommendInputs, KeptKind>,
  terminal: Terminal,
): { readonly [K in KeptKind]?: string | undefined } {
  const { bowlers, balls, lanes } = wholeShelf(terminal);
  return {
    bowler: bowlers.find(({ record }) => isDeepStrictEqual(record, bowler))?.id,
    ball: balls.find(({ record }) => isDeepStrictEqual(ballRecord(record), ballRecord(ball)))?.id,
    lane: lanes.find(({ record }) => isDeepStrictEqual(record, lane))?.id,
  };
}
