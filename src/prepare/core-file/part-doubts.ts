import type { DenseSolid } from '../../ball/core/own-body.js';
import { type Box, boxOf } from '../../ball/solid/solid-box.js';
import { from, MM } from '../../base/units.js';
import { IDENTITY } from '../../math/mat3.js';
import type { Caution } from '../../records/answers/statements/cautions.js';
import type { CorePart } from '../../records/schemas/core.js';
import { partName } from './part-name.js';

/** A part with less than this share of its volume left counts as hidden (our own choice). */
const LEFT = 0.01;
/** Boxes of parts that touch may seem this far apart in a file of rounded numbers, m (our own choice). */
const TOUCHING = from(0.3, MM);

/**
 * Parts whose place among the others looks like a slip: one that later parts cover, as when a file names its parts in the wrong
 * order, and one that touches no other.
 *
 * @param solids  in the order of the parts, in C
 * @param shares  of each one's volume that no later part covers
 */
export function partDoubts(
  parts: readonly CorePart[],
  solids: readonly DenseSolid[],
  shares: readonly number[],
): Caution[] {
  const boxes = solids.map((solid) => boxOf(solid, IDENTITY));
  const nameOf = (i: number): string => partName(parts[i], i);
  const isHidden = (i: number): boolean => shares[i] < LEFT;
  const isApart = (i: number): boolean =>
    boxes.length > 1 && boxes.every((box, j) => j === i || gapOf(box, boxes[i]) > TOUCHING);
  return solids.flatMap((_, i): Caution[] => {
    const cover = boxes.findIndex((box, j) => j > i && holds(box, boxes[i]));
    return [
      ...(isHidden(i)
        ? [
            {
              code: 'part-hidden',
              params: { part: nameOf(i), by: cover < 0 ? null : nameOf(cover) },
            } as const,
          ]
        : []),
      ...(isApart(i) ? [{ code: 'part-apart', params: { part: nameOf(i) } } as const] : []),
    ];
  });
}

/** Greatest distance between two boxes along an axis, m; negative where they overlap. */
const gapOf = (a: Box, b: Box): number =>
  Math.max(...a.low.map((low, i) => Math.max(low - b.high[i], b.low[i] - a.high[i])));

/** Whether one box lies in another. */
const holds = (outer: Box, inner: Box): boolean =>
  outer.low.every((low, i) => low <= inner.low[i] && outer.high[i] >= inner.high[i]);
