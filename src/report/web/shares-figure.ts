import type { Band, SharesAnswer, SimulatedLayout } from '../../records/answers/answer.js';
import { capital } from '../../records/text/capital.js';
import { SHARE_NAMES, type SharedChange, sharesPicture } from '../picture/shares-picture.js';
import { SHARE_ROWS } from '../tables/shares-table.js';
import type { Units } from '../text/display-units.js';
import { points, signed } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** The two layouts between which a change is shared out, and what they are called in few letters. */
export interface Between {
  readonly from: { readonly name: string; readonly layout: SimulatedLayout };
  readonly to: { readonly name: string; readonly layout: SimulatedLayout };
  readonly shares: SharesAnswer;
}

/** What each number of the layout has to do with the change from one layout to another. */
export function sharesFigure(between: Between, units: Units): string {
  const changes = changesOf(between, units);
  return figureHtml(
    'shares',
    smallPictures(changes.map(sharesPicture)),
    'How one undisturbed shot changes, and which number of the layout brings how much of it: each arrow begins where the ' +
      'last one ended. The thin lines span nine worlds in ten, or nine cores in ten. Shares are exact Shapley shares, the mean over all orders of changing one number after another.',
    [gridHtml(changesGrid(changes))],
  );
}

function changesOf({ from, to, shares }: Between, units: Units): SharedChange[] {
  const { layout } = from;
  const ends = (
    value: number,
    bandOf: (layout: SimulatedLayout) => Band,
  ): Pick<SharedChange, 'from' | 'to'> => ({
    from: { name: from.name, value, band: bandOf(layout) },
    to: { name: to.name, band: bandOf(to.layout) },
  });
  return [
    {
      title: 'Score, points',
      shares: shares.score,
      ...ends(layout.nominalScore, ({ bands }) => bands.score),
      show: points,
      change: (value) => signed(value, 0),
    },
    ...SHARE_ROWS.map(({ key, name, quantity }): SharedChange => {
      const { show, change, name: unit } = units[quantity];
      const isDrilled = key === 'differentialIn' || key === 'intermediateDifferentialIn';
      return {
        title: `${capital(name)}, ${unit}`,
        shares: shares[key],
        ...(isDrilled
          ? ends(layout.drilled[key], ({ bands }) => bands.drilled[key])
          : ends(layout.reaction[key], ({ bands }) => bands.reaction[key])),
        show,
        change,
      };
    }),
  ];
}

const changesGrid = (changes: readonly SharedChange[]): Grid => ({
  columns: [
    { head: 'number' },
    { head: changes[0]?.from.name ?? '' },
    ...SHARE_NAMES.map(([, name]) => ({ head: name })),
    { head: changes[0]?.to.name ?? '' },
  ],
  rows: changes.map(({ title, from, shares, show, change }) => [
    title,
    show(from.value),
    ...SHARE_NAMES.map(([key]) => change(shares[key])),
    show(from.value + shares.total),
  ]),
});
