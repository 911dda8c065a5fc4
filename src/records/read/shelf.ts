import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Ball } from '../schemas/ball.js';
import { type Bowler, bowlerSchema } from '../schemas/bowler.js';
import { type Lane, laneSchema } from '../schemas/lane.js';
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

/** The invented bowlers in `data/`, by name of file; and so with the balls and the lanes. */
export const demoBowlers = () => folder('bowlers', (path) => readRecord(bowlerSchema, path));
export const demoBalls = () => folder('balls', readBall);
export const demoLanes = () => folder('lanes', (path) => readRecord(laneSchema, path));

/** All of them. */
export const demoShelf = (): Shelf => ({
  bowlers: demoBowlers(),
  balls: demoBalls(),
  lanes: demoLanes(),
});

function folder<T>(name: string, read: (path: string) => T): readonly Shelved<T>[] {
  const path = fileURLToPath(new URL(`../../../data/${name}/`, import.meta.url));
  return readdirSync(path)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => ({ id: file.slice(0, -'.json'.length), record: read(`${path}${file}`) }));
}

/** The record that another one names, by id or by name. */
export const shelvedAs = <T extends { readonly name: string }>(
  shelf: readonly Shelved<T>[],
  name: string,
): Shelved<T> | undefined => shelf.find(({ id, record }) => id === name || record.name === name);
