import type { ReactionAnswer } from '../../records/answers/answer.js';

/** What a ball does on its way: it skids, then hooks, then rolls. */
export const PHASES = ['skid', 'hook', 'roll'] as const;
export type Phase = (typeof PHASES)[number];

/**
 * Where each phase begins and ends, ft; a phase that does not come about ends where it begins.
 *
 * A path bends till the ball rolls, so its corner lies before that. A ball that hardly hooks, or bends back, may roll first;
 * it skids until then, and does not hook.
 */
export function phaseSpans(
  { hookStartFt, rollStartFt, rollsBeforePins }: ReactionAnswer,
  endFt: number,
): Readonly<Record<Phase, readonly [fromFt: number, toFt: number]>> {
  const roll = rollsBeforePins ? Math.min(rollStartFt, endFt) : endFt;
  const hook = Math.min(hookStartFt, roll);
  return { skid: [0, hook], hook: [hook, roll], roll: [roll, endFt] };
}

/** The phase at a distance. */
export const phaseAt = ({ hookStartFt, rollStartFt, rollsBeforePins }: ReactionAnswer, ft: number): Phase =>
  rollsBeforePins && ft >= rollStartFt ? 'roll' : ft < hookStartFt ? 'skid' : 'hook';
