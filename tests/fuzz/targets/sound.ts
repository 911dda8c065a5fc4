import { readdirSync, readFileSync } from 'node:fs';

/* Sound records to be spoiled: the demos, as their files hold them. */

const folder = (name: string): readonly string[] => {
  const at = new URL(`../../../data/${name}/`, import.meta.url);
  return readdirSync(at)
    .filter((file) => file.endsWith('.json'))
    .map((file) => readFileSync(new URL(file, at), 'utf8'));
};

const texts = {
  bowlers: folder('bowlers'),
  balls: folder('balls'),
  lanes: folder('lanes'),
  cores: folder('cores'),
};

const values = (list: readonly string[]): readonly Record<string, unknown>[] =>
  list.map((text) => JSON.parse(text));

export const BOWLERS = values(texts.bowlers);
export const BALLS = values(texts.balls);
export const LANES = values(texts.lanes);
export const CORES = values(texts.cores);
export const RECORD_TEXTS = Object.values(texts).flat();

/** A drilled layout with two nights, invented. */
export const LOG = {
  schema: 'flarewise/layout/2',
  name: 'First',
  bowler: 'average-right',
  ball: 'plain-medium',
  layout: '70 x 4 1/2 x 30',
  drilledOn: '2026-03-01',
  nights: [
    {
      on: '2026-03-31',
      lane: 'house-easy',
      games: 4,
      targetBoard: 14,
      readingErrors: { pinsBoards: 1 },
      shots: [
        { laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, breakpointFt: 41, pinsBoard: 17 },
        {
          laydownBoard: 20.5,
          arrowsBoard: 14.5,
          breakpointBoard: 9,
          pinsBoard: 18,
          displaySpeedMph: 16,
          flareIn: 4,
        },
        { laydownBoard: 20, arrowsBoard: 12, gutter: true, confirmed: true, note: 'pulled' },
      ],
    },
    {
      on: '2026-04-07',
      lane: 'house-easy',
      shots: [
        { laydownBoard: 22, arrowsBoard: 13, breakpointBoard: 7, boardAt50Ft: 12, pinsBoard: 17.5 },
        { laydownBoard: 22, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 18, ringOverHole: 'thumb' },
      ],
    },
  ],
} as const;
