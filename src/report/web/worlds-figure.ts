import type { TargetAnswer } from '../../records/answers/answer.js';
import {
  COMPARED_IDS,
  type ComparedId,
  NUMBER_OF_WISH,
  REACTION_NUMBERS,
} from '../../records/schemas/reaction-numbers.js';
import { capital } from '../../records/text/capital.js';
import type { Compared } from '../picture/compared.js';
import { type WorldsNumber, worldsPicture } from '../picture/worlds-picture.js';
import { unitOf } from '../tables/reaction-rows.js';
import { band, points } from '../text/figures.js';
import type { Page } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** How score and reaction numbers are spread over the plausible worlds. */
export function worldsFigure(
  compared: readonly Compared[],
  targets: readonly TargetAnswer[],
  worlds: number,
  page: Page,
): string {
  const numbers = worldsNumbers(targets, page);
  return figureHtml(
    'worlds',
    smallPictures(numbers.map((number) => worldsPicture(compared, number))),
    `Each dot stands for one in twenty of ${worlds} plausible worlds. The line below the dots spans nine worlds in ten; the ` +
      'diamond is the undisturbed shot. A dashed line is what was asked for.',
    numbers.map((number) => gridHtml(spreadGrid(compared, number, page), number.title)),
  );
}

function worldsNumbers(targets: readonly TargetAnswer[], { units }: Page): WorldsNumber[] {
  const targetOf = (id: ComparedId): number | null =>
    targets.find(({ wish }) => NUMBER_OF_WISH[wish] === id)?.value ?? null;
  return [
    {
      key: 'score',
      title: 'Score, of 100',
      nominalOf: ({ nominalScore }) => nominalScore,
      bandOf: ({ bands }) => bands.score,
      show: points,
      target: null,
    },
    ...COMPARED_IDS.map((id): WorldsNumber => {
      const { name, show } = unitOf(id, units);
      return {
        key: id,
        title: `${capital(REACTION_NUMBERS[id].compared.row)}, ${name}`,
        nominalOf: ({ reaction }) => reaction[id],
        bandOf: ({ bands }) => bands.reaction[id],
        show,
        target: targetOf(id),
      };
    }),
  ];
}

const spreadGrid = (
  compared: readonly Compared[],
  { key, nominalOf, bandOf, show }: WorldsNumber,
  page: Page,
): Grid => ({
  columns: [
    { head: 'layout' },
    { head: 'undisturbed shot' },
    { head: '9 of 10 worlds' },
    { head: 'one world in twenty each' },
  ],
  rows: compared.map(({ sign, layout }) => [
    `${sign} ${layout.text}`,
    show(nominalOf(layout)),
    band(bandOf(layout), show, page),
    layout.twentieths[key].map(show).join(', '),
  ]),
});
