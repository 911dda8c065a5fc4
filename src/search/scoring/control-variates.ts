import { meanSimple } from 'simple-statistics';
import { clamp } from '../../math/clamp.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { KnownValue } from './krige.js';
import type { ScoredOutcomes } from './world-statistics.js';

interface Met {
  readonly layout: LayoutNumbers;
  readonly worlds: ScoredOutcomes;
}

/** Scores of a layout by a cheaper engine in the first worlds, in order, the same number for every layout; undefined where it has none. */
export type ControlScores = (layout: LayoutNumbers) => readonly number[] | undefined;

/** Difference from the leader for a layout that never reached the pins in a world where the leader did: the whole score. */
const NEVER_BOTH = -100;

/** To lead, a layout must reach the pins at least this often, relative to the layout that does so most often. */
const LEADS_FROM = 0.9;

/** Number of worlds for which the variance usual among layouts counts beside a layout's own. */
const USUAL_COUNTS_FOR = 4;

/**
 * Expected difference of each layout's score from the leader's over all worlds, where layouts have met different numbers of worlds.
 *
 * It is the mean over the worlds that both have met and in which both balls reach the pins, so that luck common to all drops out. The
 * scores of a cheaper engine in all worlds remove more of the luck: they are a control variate, with the
 * factor that leaves least variance (Glasserman, Monte Carlo Methods in Financial Engineering, §4.1).
 *
 * @param met  at least one
 * @returns the leader, which is the best of those that met most worlds and reach the pins nearly as often as any, and each layout's
 *   difference from it
 */
export function controlVariates(
  met: readonly Met[],
  controlScores: ControlScores = () => undefined,
): { leader: Met; rows: readonly KnownValue[] } {
  const most = Math.max(...met.map(({ worlds }) => worlds.scores.length));
  const longest = met.filter(({ worlds }) => worlds.scores.length === most);
  const arrives = Math.max(...longest.map(({ worlds }) => worlds.arrives));
  const leader = longest
    .filter(({ worlds }) => worlds.arrives >= LEADS_FROM * arrives)
    .reduce((a, b) => (b.worlds.meanScore > a.worlds.meanScore ? b : a));
  const leaderControl = controlScores(leader.layout);
  const pairs = met.map(({ layout, worlds: { scores } }): Pair => {
    // a layout that met more worlds than the cheaper engine knows needs no control variate
    const control =
      leaderControl && scores.length <= leaderControl.length ? controlScores(layout) : undefined;
    const ahead = control && leaderControl ? control.map((score, i) => score - leaderControl[i]) : null;
    const both = scores.flatMap((score, i) => {
      const leading = leader.worlds.scores[i];
      return score === null || leading === null ? [] : [{ difference: score - leading, world: i }];
    });
    return { layout, both, control: ahead };
  });
  const factor = controlFactor(pairs);
  const rows = pairs.map(({ layout, both, control }) => {
    if (both.length === 0) return { layout, value: NEVER_BOTH, squares: 0, free: 0 };
    const left = both.map(({ difference, world }) => difference - (control ? factor * control[world] : 0));
    const rest = meanSimple(left);
    return {
      layout,
      value: rest + (control ? factor * meanSimple(control) : 0),
      squares: left.reduce((sum, d) => sum + (d - rest) ** 2, 0),
      free: left.length - 1,
    };
  });
  const total = (of: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((sum, row) => sum + of(row), 0);
  const usual =
    total(({ squares }) => squares) /
    Math.max(
      1,
      total(({ free }) => free),
    );
  return {
    leader,
    rows: rows.map(({ layout, value, squares, free }) => {
      const variance = (USUAL_COUNTS_FOR * usual + squares) / (USUAL_COUNTS_FOR + free);
      return { layout, value, variance: variance / (free + 1) };
    }),
  };
}

/** Differences from the leader: by physics in the worlds in which both reach the pins, by the cheaper engine in all its worlds. */
interface Pair {
  readonly layout: LayoutNumbers;
  readonly both: readonly { readonly difference: number; readonly world: number }[];
  readonly control: readonly number[] | null;
}

/** The factor of the control variate, 0 to 1: the slope of physics' differences on the cheaper engine's, within layouts. */
function controlFactor(pairs: readonly Pair[]): number {
  let together = 0;
  let alone = 0;
  for (const { both, control } of pairs) {
    if (!control || both.length === 0) continue;
    const a = meanSimple(both.map(({ difference }) => difference));
    const b = meanSimple(both.map(({ world }) => control[world]));
    for (const { difference, world } of both) {
      together += (difference - a) * (control[world] - b);
      alone += (control[world] - b) ** 2;
    }
  }
  return alone > 0 ? clamp(together / alone, 0, 1) : 0;
}
