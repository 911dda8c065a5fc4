import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Ball } from './ball.js';
import { type Bowler, bowlerSchema } from './bowler.js';
import { type Lane, laneSchema } from './lane.js';
import { readBall } from './read-ball.js';
import { readRecord } from './read-record.js';

/** A record with the id it is called by: its file's name without ending. */
export interface Shelved<T> {
  readonly id: string;
  readonly record: T;
}

export interface Shelf {
  readonly bowlers: readonly Shelved<Bowler>[];
  readonly balls: readonly Shelved<Ball>[];
  readonly lanes: readonly Shelved<Lane>[];
}

/** The records the demo runs with. */
export const DEMO = { bowler: 'average-right', ball: 'plain-medium', lane: 'house-easy' } as const;

/** The invented bowlers, balls and lanes in `data/`, by name of file. */
export const demoShelf = (): Shelf => ({
  bowlers: folder('bowlers', (path) => readRecord(bowlerSchema, path)),
  balls: folder('balls', readBall),
  lanes: folder('lanes', (path) => readRecord(laneSchema, path)),
});

function folder<T>(name: string, read: (path: string) => T): readonly Shelved<T>[] {
  const path = fileURLToPath(new URL(`../../data/${name}/`, import.meta.url));
  return readdirSync(path)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => ({ id: file.slice(0, -'.json'.length), record: read(`${path}${file}`) }));
}
