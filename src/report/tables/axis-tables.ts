import { decimals } from '../../base/decimals.js';
import type { DrilledNumbersAnswer, FlareStartAnswer, PsaAnswer } from '../../records/answers/answer.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';

/** The first column of a table: its head, and what stands there in each row. */
type Named<Row> = readonly [head: string, of: (row: Row, i: number) => string];

/** Where the high-RG axis of each drilled ball comes out. */
export function axisGrid<Row extends { readonly psa: PsaAnswer }>(
  rows: readonly Row[],
  [head, of]: Named<Row>,
  { units }: Spelling,
): Grid {
  const { name, show } = units.roughTape;
  const hasMark = rows.some(({ psa }) => psa.fromMarkIn !== null);
  return {
    columns: [
      { head },
      ...['PAP', 'pin', ...(hasMark ? ['mark'] : []), 'grip centre'].map((from) => ({
        head: `from ${from}\n${name}`,
      })),
      { head: 'certain' },
    ],
    rows: rows.map((row, i) => {
      const { fromPapIn, fromPinIn, fromMarkIn, fromGripCentreIn, certain } = row.psa;
      return [
        of(row, i),
        show(fromPapIn),
        show(fromPinIn),
        ...(hasMark ? [fromMarkIn === null ? '' : show(fromMarkIn)] : []),
        show(fromGripCentreIn),
        certain ? 'yes' : 'no',
      ];
    }),
  };
}

/** How the flare of each drilled ball starts, beside the total differential that sets the most. */
export function flareGrid<
  Row extends {
    readonly flareStart: FlareStartAnswer;
    readonly drilled: Pick<DrilledNumbersAnswer, 'differentialIn'>;
  },
>(rows: readonly Row[], [head, of]: Named<Row>, { units: { fineTape, gyration } }: Spelling): Grid {
  return {
    columns: [
      { head },
      { head: `in a turn\n${fineTape.name}` },
      { head: 'of the most\n%' },
      { head: `total differential\n${gyration.name}` },
    ],
    rows: rows.map((row, i) => [
      of(row, i),
      fineTape.show(row.flareStart.perTurnIn),
      decimals(100 * row.flareStart.share, 0),
      gyration.show(row.drilled.differentialIn),
    ]),
  };
}

/** What the columns of `flareGrid` mean. */
export const FLARE_START_NOTE =
  'How far the core moves the axis, and with it the oil rings, in the first turn. The total differential sets the most; how much of it is ' +
  'reached depends on where the PAP lies: all of it halfway between low-RG and high-RG axis.';
