import type { Lane } from '../../records/schemas/lane.js';
import { boardAt } from '../lane/board-at.js';
import { LENGTH_FT } from '../lane/lane-marks.js';
import type { Compared } from '../picture/compared.js';
import { differencePicture } from '../picture/difference-picture.js';
import { laneKey } from '../picture/lane-key.js';
import { lanePicture } from '../picture/lane-picture.js';
import type { Units } from '../text/display-units.js';
import { boards, degrees, signed } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { figureHtml, svgHtml } from './figure-html.js';
import { gridHtml, htmlText } from './table-html.js';

const FEET_APART = 5;

/** The paths over the lane, with what happens on them beside it and the boards they cross behind it. */
export function laneFigure(
  hand: 'right' | 'left',
  lane: Lane,
  compared: readonly Compared[],
  units: Units,
): string {
  const picture = svgHtml(lanePicture({ hand, lane, compared }, units));
  const difference = differencePicture(compared, units);
  const worn = lane.games ? ` The oil is drawn as laid, before ${lane.games} games.` : '';
  return figureHtml(
    'lane',
    `<div class="lane">
<div>
${picture}
</div>
<div>
<div class="key">
${svgHtml(laneKey())}
<h3>${htmlText(difference.title)}</h3>
${svgHtml(difference)}
</div>
${gridHtml(eventsGrid(compared, units))}
</div>
</div>`,
    'One undisturbed shot of each layout on its own line, seen from above. The lane is stretched across nine times. ' +
      `The arrows are the aiming arrows, the thick mark at the end is the pocket.${worn}`,
    [
      gridHtml(boardsGrid(compared, units), `Board crossed, counted from the ${hand}`),
      gridHtml(differencesGrid(compared, units), difference.title),
    ],
  );
}

/** What happens on each path. */
const eventsGrid = (compared: readonly Compared[], { lane, boards: board, angle }: Units): Grid => ({
  columns: [
    { head: 'layout' },
    { head: 'laid down on board' },
    { head: `hook starts, ${lane.name}` },
    { head: 'widest board' },
    { head: `there, ${lane.name}` },
    { head: `rolls from, ${lane.name}` },
    { head: 'board at the pins' },
    { head: `entry angle, ${angle.name}` },
  ],
  rows: compared.map(({ sign, layout: { text, line, reaction } }) => [
    `${sign} ${text}`,
    board.show(line.laydownBoard),
    lane.show(reaction.hookStartFt),
    board.show(reaction.breakpointBoard),
    lane.show(reaction.breakpointFt),
    reaction.rollsBeforePins ? lane.show(reaction.rollStartFt) : 'not before the pins',
    reaction.outcome === 'pins' ? board.show(reaction.pinsBoard) : `none: ${reaction.outcome}`,
    reaction.outcome === 'pins' ? degrees(reaction.entryAngleDeg) : '',
  ]),
});

/** The board of each path every few feet; nothing where it does not get there. */
const boardsGrid = (compared: readonly Compared[], units: Units): Grid =>
  everyFewFeet(compared, units, (board) => boards(board));

/** How far each path lies from the last one's. */
function differencesGrid(compared: readonly Compared[], units: Units): Grid {
  const base = compared.at(-1)?.layout.path ?? [];
  return everyFewFeet(compared, units, (board, ft) => {
    const other = boardAt(base, ft);
    return other === null ? '' : signed(board - other, 2);
  });
}

const everyFewFeet = (
  compared: readonly Compared[],
  { laneMark }: Units,
  show: (board: number, ft: number) => string,
): Grid => ({
  columns: [{ head: `at ${laneMark.name}` }, ...compared.map(({ sign }) => ({ head: `layout ${sign}` }))],
  rows: Array.from({ length: LENGTH_FT / FEET_APART + 1 }, (_, i) => i * FEET_APART).map((ft) => [
    laneMark.show(ft),
    ...compared.map(({ layout: { path } }) => {
      const isThere = ft <= (path.at(-1)?.distanceFt ?? 0);
      return isThere ? show(boardAt(path, ft) as number, ft) : '';
    }),
  ]),
});
