import { arcAngle } from '../../math/sphere.js';
import type { RollAnswer } from '../../records/answers/answer.js';
import { tapePoint } from '../../records/answers/parts/tape-point.js';
import { USUAL_CIRCUMFERENCE_IN } from '../../records/schemas/ball.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { table } from '../text/table.js';

type Ring = RollAnswer['rings'][number];

const RADIUS_IN = USUAL_CIRCUMFERENCE_IN / (2 * Math.PI);

/** Each turn's oil ring: where on the lane it begins, and how far it has wandered. */
export function ringsTable(rings: readonly Ring[], page: Page): string[] {
  const { lane, flare } = page.units;
  return rings.length === 0
    ? []
    : [
        ...table(
          [
            { head: 'turn', align: 'right' },
            { head: `begins at\n${lane.name}` },
            { head: `widest from last\n${flare.name}` },
            { head: `widest from first\n${flare.name}` },
          ],
          rings.map((ring, i) => [
            `${ring.turn}`,
            lane.show(ring.fromFt),
            i === 0 ? '' : flare.show(widestGapIn(rings[i - 1], ring)),
            i === 0 ? '' : flare.show(widestGapIn(rings[0], ring)),
          ]),
          page,
        ),
        ...paragraph(
          'Flare counts the rings laid in oil, which can be seen on the ball; later turns leave none.',
          page,
          page.paint.quiet,
        ),
      ];
}

/** The greatest distance, in, from a point of one ring to the nearest point of another. */
export function widestGapIn(from: Ring, to: Ring): number {
  const others = from.points.map((point) => tapePoint(point, RADIUS_IN));
  const gaps = to.points.map((point) => {
    const u_B = tapePoint(point, RADIUS_IN);
    return Math.min(...others.map((other_B) => arcAngle(u_B, other_B)));
  });
  return RADIUS_IN * Math.max(0, ...gaps.filter(Number.isFinite));
}
