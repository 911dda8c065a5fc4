import type { ReactionAnswer } from '../../records/answers/answer.js';
import { type ComparedId, REACTION_NUMBERS } from '../../records/schemas/reaction-numbers.js';
import type { DisplayUnit, Units } from '../text/display-units.js';
import type { Column } from '../text/table.js';

/** A column for each of some reaction numbers. */
export const reactionHeads = (ids: readonly ComparedId[], units: Units): Column[] =>
  ids.map((id) => {
    const { short, quantity } = REACTION_NUMBERS[id].compared;
    return { head: `${short}\n${units[quantity].name}` };
  });

export const reactionCells = <K extends ComparedId>(
  reaction: Pick<ReactionAnswer, K>,
  ids: readonly K[],
  units: Units,
): string[] => ids.map((id) => unitOf(id, units).show(reaction[id]));

/** The same of differences, with signs. */
export const changeCells = <K extends ComparedId>(
  change: Pick<ReactionAnswer, K>,
  ids: readonly K[],
  units: Units,
): string[] => ids.map((id) => unitOf(id, units).change(change[id]));

/** In which unit a person reads a reaction number. */
export const unitOf = (id: ComparedId, units: Units): DisplayUnit =>
  units[REACTION_NUMBERS[id].compared.quantity];
