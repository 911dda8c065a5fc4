import type { RollAnswer } from '../../records/answers/answer.js';
import type { Lane } from '../../records/schemas/lane.js';
import { COMPARED_IDS, REACTION_NUMBERS } from '../../records/schemas/reaction-numbers.js';
import { ballDrawing } from '../drawings/ball-drawing.js';
import { laneDrawing } from '../drawings/lane-drawing.js';
import { DRILLED_ROWS } from '../tables/drilled-rows.js';
import { learnedLines } from '../tables/learned-lines.js';
import { linesTable } from '../tables/lines-table.js';
import { FEET_APART, pathTable } from '../tables/path-table.js';
import { unitOf } from '../tables/reaction-rows.js';
import { ringsTable } from '../tables/rings-table.js';
import { withUnit } from '../text/display-units.js';
import { boards, decimals } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section, sentence } from '../text/section.js';
import { table } from '../text/table.js';
import { bowTieText } from '../wording/bow-tie-text.js';
import { layoutHeadline } from '../wording/layout-headline.js';
import { noLineText } from '../wording/no-line-text.js';
import { sayAll } from '../wording/say.js';
import { cautionSection } from './caution-section.js';

/**
 * One simulated shot as a screen of text.
 *
 * @param hand  the bowler's, from whose side the answer's boards count
 * @param lane  the lane rolled on, for the drawing's oil
 */
export function rollReport(given: RollAnswer, hand: 'right' | 'left', lane: Lane, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  return joinSections([
    [
      page.paint.heading('One shot'),
      ...paragraph(`${answer.bowler}, ${answer.ball}, on ${answer.lane}`, page),
      ...learnedLines(answer, page),
    ],
    layoutHeadline(answer.layout, page),
    section(
      'Path',
      laneDrawing({ hand, lane, shots: [{ ...answer, sign: '1', text: answer.layout.text }] }, page),
      page,
    ),
    section('No line to the pocket', noLineText(answer.noLine, page), page),
    section(
      'Line, and the margin for error',
      linesTable([{ ...answer, text: answer.layout.text }], page),
      page,
    ),
    section('Reaction', reactionTable(answer, page), page),
    section('Problems', bullets(sayAll(answer.objections, page.units).map(sentence), page), page),
    section(`Every ${withUnit(FEET_APART, page.units.laneMark)}`, pathTable(answer.path, page), page),
    section(
      'The ball from the grip side',
      ballDrawing(answer.face, answer.rings.slice(0, answer.ringsInOil), page),
      page,
    ),
    section(
      'Turn by turn on the ball',
      [...ringsTable(answer.rings, page), ...bowTieText(answer.bowTie, page)],
      page,
    ),
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
    cautionSection(answer.cautions, page),
  ]);
}

function reactionTable({ reaction, drilled }: RollAnswer, page: Page): string[] {
  const { lane, speed, flare, gyration } = page.units;
  const rows: string[][] = COMPARED_IDS.map((id) => {
    const { name, show } = unitOf(id, page.units);
    return [REACTION_NUMBERS[id].compared.row, show(reaction[id]), name];
  });
  rows.splice(1, 0, [
    'rolls from',
    reaction.rollsBeforePins ? lane.show(reaction.rollStartFt) : 'not before the pins',
    reaction.rollsBeforePins ? lane.name : '',
  ]);
  rows.push(
    [REACTION_NUMBERS.pinsBoard.name, boards(reaction.pinsBoard), ''],
    [REACTION_NUMBERS.speedAtPinsMph.name, speed.show(reaction.speedAtPinsMph), speed.name],
    [REACTION_NUMBERS.revRateAtPinsRpm.name, decimals(reaction.revRateAtPinsRpm, 0), 'rpm'],
    [REACTION_NUMBERS.turns.name, decimals(reaction.turns, 1), ''],
    [REACTION_NUMBERS.ringClearanceIn.name, flare.show(reaction.ringClearanceIn), flare.name],
    ...DRILLED_ROWS.map(({ key, name }) => [name, gyration.show(drilled[key]), gyration.name]),
  );
  return table([{ head: '' }, { head: '' }, { head: '', align: 'left' }], rows, page);
}
