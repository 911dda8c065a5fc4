import type { RollingBody } from '../../src/motion/shot/body.js';
import type { Launch, Release } from '../../src/motion/shot/release.js';
import { drilledBall, seeded } from '../support/bodies.js';
import { type Classes, loadClasses } from './compiled-classes.js';

/** The ball of the benchmarks. */
export const DRILLED: RollingBody = drilledBall;

/** How a ball is thrown. */
export interface Thrown {
  readonly release: Release;
  readonly launch: Launch;
}

/** Throws that differ a little, the same ones every run. */
export function throws(release: Release, count: number): readonly Thrown[] {
  const random = seeded(2026);
  return Array.from({ length: count }, () => ({
    release: { ...release, speed: release.speed + random() - 0.5, spin: release.spin + 4 * random() },
    launch: { x: 0.1 * (random() - 0.5), angle: 0.035 + 0.01 * random() },
  }));
}

type Motion = typeof import('../../src/motion/shot/shot.js') &
  typeof import('../../src/motion/lane/oil.js') &
  typeof import('../../src/motion/reaction/reaction.js') &
  typeof import('../../src/motion/shot/workspace.js') &
  typeof import('../../src/motion/shot/answer-step.js') &
  typeof import('../../src/motion/shot/principal-body.js') &
  typeof import('../../src/motion/shot/launch-state.js') &
  typeof import('../../src/motion/shot/begin-shot.js') &
  typeof import('../../src/motion/kernel/memory.js');

/** What the benchmarks time. */
export interface Engines extends Motion {
  readonly classes: Classes;
}

const FILES = [
  'shot/shot',
  'lane/oil',
  'reaction/reaction',
  'shot/workspace',
  'shot/answer-step',
  'shot/principal-body',
  'shot/launch-state',
  'shot/begin-shot',
  'kernel/memory',
];

/** Motion as people run it, built: tsx marks every inner function with its name, which doubles the time of small ones. */
export async function loadBuilt(): Promise<Engines> {
  const modules = await Promise.all(
    FILES.map((file) => import(new URL(`../../dist/motion/${file}.js`, import.meta.url).href)),
  );
  return Object.assign({ classes: await loadClasses() }, ...modules) as Engines;
}
