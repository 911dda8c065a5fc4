import type { Night } from '../schemas/shot-log.js';
import { headAlone, type NightHead } from './add-shot.js';

/**
 * What the line before said of the night: the last night of this ball, or where that was another evening, of another ball of this
 * bowler on the same one; there the oil has seen the most games. A target is a ball's own.
 *
 * @param others  the logs of this bowler's other balls
 * @param on      the evening of the next shot
 */
export function lastHead(
  own: readonly Night[],
  others: readonly (readonly Night[])[],
  on: string | undefined,
): NightHead | null {
  const tonight = lastOn(own, on);
  if (tonight) return headAlone(tonight);
  const [elsewhere] = others.flatMap((nights) => lastOn(nights, on) ?? []).sort(byGames);
  if (elsewhere) {
    const { targetBoard: _, ...head } = headAlone(elsewhere);
    return head;
  }
  const latest = own.at(-1) ?? others.flatMap((nights) => nights.slice(-1)).sort(byDay)[0];
  return latest ? headAlone(latest) : null;
}

/** The last night of an evening; nights of other evenings may have been logged since. */
const lastOn = (nights: readonly Night[], on: string | undefined): Night | undefined =>
  nights.findLast((night) => night.on === on);

const byGames = (a: Night, b: Night): number => (b.games ?? 0) - (a.games ?? 0);
const byDay = (a: Night, b: Night): number => (b.on ?? '').localeCompare(a.on ?? '');
