import type { RollingBody } from '../../src/motion/body.js';
import type { Launch, Release } from '../../src/motion/release.js';
import { drilledBall, seeded } from '../motion/bodies.js';

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

type Motion = typeof import('../../src/motion/shot.js') &
  typeof import('../../src/motion/oil.js') &
  typeof import('../../src/motion/reaction.js') &
  typeof import('../../src/motion/workspace.js') &
  typeof import('../../src/motion/answer-step.js') &
  typeof import('../../src/motion/sliding.js') &
  typeof import('../../src/motion/surface.js') &
  typeof import('../../src/motion/principal-body.js') &
  typeof import('../../src/motion/launch-state.js') &
  typeof import('../../src/motion/bearing.js') &
  typeof import('../../src/motion/places.js');

/** What the benchmarks time. */
export type Engines = Motion;

const FILES = [
  'shot',
  'oil',
  'reaction',
  'workspace',
  'answer-step',
  'sliding',
  'surface',
  'principal-body',
  'launch-state',
  'bearing',
  'places',
];

/** Motion as people run it, built: tsx marks every inner function with its name, which doubles the time of small ones. */
export async function loadBuilt(): Promise<Engines> {
  const modules = await Promise.all(
    FILES.map((file) => import(new URL(`../../dist/motion/${file}.js`, import.meta.url).href)),
  );
  return Object.assign({}, ...modules) as Engines;
}
