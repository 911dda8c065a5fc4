import type { BesideBall } from '../../answer/map/map-answer.js';
import { demoBalls } from '../../records/read/shelf.js';

/** The demo balls that stand for their kinds beside a ball that is mapped: as strong as one another but for the asymmetry. */
const BESIDE = { plain: 'plain-high', asymmetric: 'asymmetric-strong' } as const;

export function besideBalls(): readonly BesideBall[] {
  const demos = demoBalls();
  return (['plain', 'asymmetric'] as const).flatMap((kind) =>
    demos.filter(({ id }) => id === BESIDE[kind]).map(({ record }) => ({ kind, ball: record })),
  );
}
