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
  /** Rolls those that are new and not ruled out by their marks. @param onDone  called after every few shots */
  roll(layouts: readonly LayoutNumbers[], onDone?: (count: number) => void): Promise<void>;
  /** The shot of a layout that was rolled and may be drilled. */
  get(layout: LayoutNumbers): NominalShot | undefined;
  /** Whether a layout was looked at and may not be drilled. */
  isRejected(layout: LayoutNumbers): boolean;
  readonly allowed: () => readonly NominalShot[];
  readonly rejected: () => readonly Rejected[];
  /** Number of shots rolled here and in all copies made by `apart`. */
  readonly shots: () => number;
  /** A copy that goes on separately: from now on neither sees what the other looks at, but nothing is rolled twice. */
  apart(): NominalShots;
}

/** A layout's shot, or why it may not be drilled. */
type Looked = NominalShot | Objection;

const isShot = (looked: Looked | undefined): looked is NominalShot =>
  looked !== undefined && 'outcome' in looked;

export function nominalShots(setting: Setting): NominalShots {
  const { ball, evaluator, practice } = setting;
  const { radius } = ball.published;
  const all = new Map<string, Promise<Looked>>();
  let shots = 0;

  const rollNew = (layouts: readonly LayoutNumbers[], onDone?: (count: number) => void): void => {
    const marked = layouts.map((layout) => ({ layout, why: rejectByMarks(layout, ball, practice) }));
    const fresh = marked.filter(({ why }) => why === null);
    shots += fresh.length;
    const trials = fresh.map(({ layout }) => ({ layout: toLayout(layout, radius), world: 0 }));
    const rolled = evaluator.evaluate(trials, onDone);
    const places = new Map(fresh.map(({ layout }, i) => [layout, i]));
    for (const { layout, why } of marked) {
      const looked = async (): Promise<Looked> => {
        if (why) return why;
        const outcome = (await rolled)[places.get(layout)!];
        return rejectByOutcome(outcome, setting) ?? { layout, outcome };
      };
      all.set(keyOf(layout), looked());
    }
  };

  const view = (known: Map<string, Looked>): NominalShots => ({
    async roll(layouts, onDone) {
      const once = new Map(layouts.map((layout) => [keyOf(layout), layout]));
      const asked = [...once.entries()].filter(([key]) => !known.has(key));
      rollNew(
        asked.filter(([key]) => !all.has(key)).map(([, layout]) => layout),
        onDone,
      );
      const looked = await Promise.all(asked.map(([key]) => all.get(key)!));
      for (const [i, [key]] of asked.entries()) known.set(key, looked[i]);
    },
    get(layout) {
      const looked = known.get(keyOf(layout));
      return isShot(looked) ? looked : undefined;
    },
    isRejected(layout) {
      const looked = known.get(keyOf(layout));
      return looked !== undefined && !isShot(looked);
    },
    allowed: () => [...known.values()].filter(isShot),
    rejected: () => {
      const counts = new Map<Objection['code'], Rejected>();
      for (const why of known.values())
        if (!isShot(why)) counts.set(why.code, { why, count: (counts.get(why.code)?.count ?? 0) + 1 });
      return [...counts.values()];
    },
    shots: () => shots,
    apart: () => view(new Map(known)),
  });
  return view(new Map());
}
