import type { RecommendAnswer } from '../../records/answers/answer.js';
import { REACTION_NUMBERS, WISHED_IDS } from '../../records/schemas/reaction-numbers.js';
import { wishedIds } from '../../records/schemas/want.js';
import { moversDrawing } from '../drawings/movers-drawing.js';
import type { Page } from '../text/page.js';
import { paragraph, section } from '../text/section.js';
import { movedWith, moverSize, movers } from './movers.js';

/** What moves each number that was asked for, and how far it hooks down the lane and how much, as bars: a section each. */
export function moversLines(answer: RecommendAnswer, page: Page): string[][] {
  const wished = wishedIds(answer.inputs.want);
  const ids = WISHED_IDS.filter((id) => wished.includes(id) || id !== 'sharpnessDegPerFt');
  const moved = movedWith(answer);
  const note = `Layouts by number: each against ${moved.from}, by physics, mean of all tries; other changes: one steady shot, practice included.`;
  return ids.map((id, i) => {
    const { name, compared } = REACTION_NUMBERS[id];
    const rows = movers(id, moved, page.units).map((mover) => ({
      mover,
      size: moverSize(mover, id, page.units),
    }));
    return section(
      `What moves ${name}, ${page.units[compared.quantity].name}`,
      [
        ...moversDrawing(rows, page),
        ...(i === ids.length - 1 ? paragraph(note, page, page.paint.quiet) : []),
      ],
      page,
    );
  });
}
