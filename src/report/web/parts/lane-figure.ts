import type { Lane } from '../../../records/schemas/lane.js';
import { apartText } from '../../drawings/lane-apart.js';
import { boardAt } from '../../lane/board-at.js';
import { LENGTH_FT } from '../../lane/lane-marks.js';
import type { Compared } from '../../picture/compared.js';
import { laneKey } from '../../picture/lane-key.js';
import { lanePicture } from '../../picture/lane-picture.js';
import { linesGrid, linesNote } from '../../tables/lines-table.js';
import type { Units } from '../../text/display-units.js';
import { boards, degrees } from '../../text/figures.js';
import type { Grid } from '../../text/table.js';
import { choiceHtml } from './choice-html.js';
import { figureHtml, svgHtml } from './figure-html.js';
import { noteHtml } from './section-html.js';
import { gridHtml } from './table-html.js';

const FEET_APART = 5;

/** The first path over the lane, the others to be added; beside it what happens on each, and the room to miss the line. */
export function laneFigure(
  hand: 'right' | 'left',
  lane: Lane,
  compared: readonly Compared[],
  units: Units,
): string {
  const worn = lane.games ? ` The oil is drawn as laid, before ${lane.games} games.` : '';
  const played = compared.map(({ sign, layout }) => ({ ...layout, text: `${sign} ${layout.text}` }));
  return figureHtml(
    'lane',
    `<div class="lane">
<div>
${svgHtml(lanePicture({ hand, lane, compared }, units))}
</div>
<div>
<div class="key">
${svgHtml(laneKey())}
</div>
${choiceHtml(compared)}
${gridHtml(linesGrid(played, units), 'The line to play, and the margin for error')}
${noteHtml(linesNote(played, units))}
</div>
</div>`,
    `One undisturbed shot on its own line, seen from above; the lane is stretched across twelve times. ${apartText(signedPaths(compared), units)} ` +
      `Bars with ends at the foul line and the arrows: how far the shot may miss and still reach the pocket.${worn}`,
    [
      gridHtml(eventsGrid(compared, units)),
      gridHtml(boardsGrid(compared, units), `Board crossed, counted from the ${hand}`),
    ],
  );
}

export const signedPaths = (compared: readonly Compared[]) =>
  compared.map(({ sign, layout: { path } }) => ({ sign, path }));

/** What happens on each path. */
const eventsGrid = (compared: readonly Compared[], { lane, boards: board, angle }: Units): Grid => ({
  columns: [
    { head: 'layout' },
    { head: `hook starts, ${lane.name}` },
    { head: 'widest board' },
    { head: `there, ${lane.name}` },
    { head: `rolls from, ${lane.name}` },
    { head: 'board at the pins' },
    { head: `entry angle, ${angle.name}` },
  ],
  rows: compared.map(({ sign, layout: { text, reaction } }) => [
    `${sign} ${text}`,
    lane.show(reaction.hookStartFt),
    board.show(reaction.breakpointBoard),
    lane.show(reaction.breakpointFt),
    reaction.rollsBeforePins ? lane.show(reaction.rollStartFt) : 'not before the pins',
    reaction.outcome === 'pins' ? board.show(reaction.pinsBoard) : `none: ${reaction.outcome}`,
    reaction.outcome === 'pins' ? degrees(reaction.entryAngleDeg) : '',
  ]),
});

/** The board of each path every few feet; nothing where it does not get there. */
const boardsGrid = (compared: readonly Compared[], { laneMark }: Units): Grid => ({
  columns: [{ head: `at ${laneMark.name}` }, ...compared.map(({ sign }) => ({ head: `layout ${sign}` }))],
  rows: Array.from({ length: LENGTH_FT / FEET_APART + 1 }, (_, i) => i * FEET_APART).map((ft) => [
    laneMark.show(ft),
    ...compared.map(({ layout: { path } }) =>
      ft <= (path.at(-1)?.distanceFt ?? 0) ? boards(boardAt(path, ft) as number) : '',
    ),
  ]),
});
