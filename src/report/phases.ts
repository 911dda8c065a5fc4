import type { ReactionAnswer } from '../records/answer.js';

/** What a ball does on its way: it skids, then hooks, then rolls. */
export const PHASES = ['skid', 'hook', 'roll'] as const;
export type Phase = (typeof PHASES)[number];

/** Where each phase begins and ends, ft; a phase that does not come about ends where it begins. */
export function phaseSpans(
  { hookStartFt, rollStartFt, rollsBeforePins }: ReactionAnswer,
  endFt: number,
): Readonly<Record<Phase, readonly [fromFt: number, toFt: number]>> {
  const hook = Math.min(hookStartFt, endFt);
  const roll = rollsBeforePins ? Math.min(rollStartFt, endFt) : endFt;
  return { skid: [0, hook], hook: [hook, Math.max(hook, roll)], roll: [Math.max(hook, roll), endFt] };
}

/** The phase at a distance. */
export const phaseAt = ({ hookStartFt, rollStartFt, rollsBeforePins }: ReactionAnswer, ft: number): Phase =>
  ft < hookStartFt ? 'skid' : ft < rollStartFt || !rollsBeforePins ? 'hook' : 'roll';
