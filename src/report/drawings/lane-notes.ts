import { boardAt } from '../lane/board-at.js';
import { withUnit } from '../text/display-units.js';
import { boards, degrees } from '../text/figures.js';
import { glyphs, type Page } from '../text/page.js';
import { wrap } from '../text/wrap.js';
import { phaseSpans } from '../wording/phases.js';
import type { DrawnShot } from './drawn-shot.js';

/** A remark that belongs to a distance down the lane. */
interface LaneNote {
  readonly ft: number;
  readonly text: string;
}

/** Where bowlers look when they aim, ft: about the arrows (common practice, no source). */
const AIM_FT = 15;

/** What happens along a path, in words, by distance. */
export function pathNotes({ line, reaction, path }: DrawnShot, page: Page): LaneNote[] {
  const { degree } = glyphs(page);
  const { lane } = page.units;
  const notes: LaneNote[] = [{ ft: 0, text: `laid down on board ${boards(line.laydownBoard)}` }];
  const aim = boardAt(path, AIM_FT);
  if (aim !== null)
    notes.push({ ft: AIM_FT, text: `over board ${boards(aim)} at ${withUnit(AIM_FT, page.units.laneMark)}` });
  const end = path.at(-1)?.distanceFt ?? 0;
  const [hooks, hooked] = phaseSpans(reaction, end).hook;
  if (hooked > hooks) notes.push({ ft: hooks, text: `hook starts at ${withUnit(hooks, lane)}` });
  notes.push({
    ft: reaction.breakpointFt,
    text: `widest: board ${boards(reaction.breakpointBoard)} at ${withUnit(reaction.breakpointFt, lane)}`,
  });
  if (reaction.rollsBeforePins)
    notes.push({ ft: reaction.rollStartFt, text: `rolls from ${withUnit(reaction.rollStartFt, lane)}` });
  notes.push({ ft: Math.min(60, end), text: ending() });
  return notes;

  function ending(): string {
    switch (reaction.outcome) {
      case 'pins':
        return `board ${boards(reaction.pinsBoard)}, coming in at ${degrees(reaction.entryAngleDeg)}${degree}`;
      case 'gutter':
        return `in the gutter at ${withUnit(end, lane)}`;
      case 'stopped':
        return `stopped at ${withUnit(end, lane)}`;
    }
  }
}

/**
 * Notes by the row they stand beside, each moved to the next free rows when its own is taken.
 *
 * @param room   columns a note may take; a longer one takes several rows
 * @param rowOf  the row of a distance, 0 at the pins
 */
export function spreadNotes(
  notes: readonly LaneNote[],
  room: number,
  rowOf: (ft: number) => number,
): Map<number, string> {
  const placed = new Map<number, string>();
  const lines = [...notes]
    .sort((a, b) => b.ft - a.ft)
    .flatMap(({ ft, text }) => wrap(text, room).map((line) => ({ row: rowOf(ft), line })));
  let free = 0;
  lines.forEach(({ row, line }, i) => {
    const lastThatLeavesRoom = rowOf(0) + 1 - (lines.length - i);
    free = Math.min(Math.max(free, row), lastThatLeavesRoom);
    placed.set(free, line);
    free += 1;
  });
  return placed;
}
