import { toLayout } from '../../prepare/to-layout.js';
import type { Objection } from '../../records/answers/statements/objections.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Setting } from '../../simulate/setting.js';
import type { Outcome } from '../../simulate/simulator.js';
import { keyOf } from './candidates.js';
import { rejectByMarks, rejectByOutcome } from './constraints.js';

/** Why layouts were set aside, and how many. */
export interface Rejected {
  readonly why: Objection;
  readonly count: number;
}

/** A layout's nominal shot on its own line, by physics. */
export interface NominalShot {
  readonly layout: LayoutNumbers;
  readonly outcome: Outcome;
}

/** Rolls layouts in the nominal world, each once, and keeps those that may be drilled. */
export interface NominalShots {
  /** Rolls those that are new and not ruled out by their marks. @param onDone told of every few */
  roll(layouts: readonly LayoutNumbers[], onDone?: (count: number) => void): Promise<void>;
  /** The shot of a layout that was rolled and may be drilled. */
  get(layout: LayoutNumbers): NominalShot | undefined;
  /** Whether a layout was looked at and may not be drilled. */
  isRejected(layout: LayoutNumbers): boolean;
  readonly allowed: () => readonly NominalShot[];
  readonly rejected: () => readonly Rejected[];
  readonly shots: () => number;
}

export function nominalShots(setting: Setting): NominalShots {
  const { ball, evaluator, practice } = setting;
  const { radius } = ball.published;
  const rejected = new Map<Objection['code'], Rejected>();
  const known = new Map<string, NominalShot | null>();
  let shots = 0;
  const reject = (why: Objection): null => {
    rejected.set(why.code, { why, count: (rejected.get(why.code)?.count ?? 0) + 1 });
    return null;
  };
  return {
    async roll(layouts, onDone) {
      const fresh: LayoutNumbers[] = [];
      for (const layout of layouts) {
        if (known.has(keyOf(layout))) continue;
        known.set(keyOf(layout), null);
        const why = rejectByMarks(layout, ball, practice);
        if (why) reject(why);
        else fresh.push(layout);
      }
      const trials = fresh.map((layout) => ({ layout: toLayout(layout, radius), world: 0 }));
      const outcomes = await evaluator.evaluate(trials, onDone);
      shots += fresh.length;
      for (const [i, layout] of fresh.entries()) {
        const why = rejectByOutcome(outcomes[i], setting);
        known.set(keyOf(layout), why ? reject(why) : { layout, outcome: outcomes[i] });
      }
    },
    get: (layout) => known.get(keyOf(layout)) ?? undefined,
    isRejected: (layout) => known.get(keyOf(layout)) === null,
    allowed: () => [...known.values()].filter((row) => row !== null),
    rejected: () => [...rejected.values()],
    shots: () => shots,
  };
}
