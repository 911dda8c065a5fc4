import {
  BELIEVED_COMPARED_IDS,
  type CompareAnswer,
  type CompareRow,
  type FromFirst,
} from '../../records/answers/compare-answer.js';
import { COMPARED_IDS, type ComparedId } from '../../records/schemas/reaction-numbers.js';
import type { Visibility } from '../../records/schemas/visibilities.js';
import type { Units } from '../text/display-units.js';
import { percent } from '../text/figures.js';
import type { Column, Grid } from '../text/table.js';
import { reactionCells, reactionHeads, unitOf } from './reaction-rows.js';
import { SEEN_SIGN } from './seen-sign.js';

/** What is compared, a row each: the first with its numbers, each other with its differences by physics, and by practice below. */
export function compareGrid({ rows, varies, scatter }: CompareAnswer, units: Units): Grid {
  const hasWish = rows.some(({ fromFirst }) => fromFirst?.ahead !== null && fromFirst !== null);
  const aheadHead: Column[] = hasWish ? [{ head: 'ahead\n%' }] : [];
  const [first, ...others] = rows;
  const without = (text: string): string[] => (hasWish ? [text] : []);
  return {
    columns: [
      { head: varies },
      ...reactionHeads(COMPARED_IDS, units),
      ...aheadHead,
      { head: `ring\n${units.flare.name}` },
      { head: 'legal' },
    ],
    rows: [
      [
        signed(0, first),
        ...reactionCells(first.reaction, COMPARED_IDS, units).map((cell) => `${cell} `),
        ...without(''),
        ...drilledCells(first, units),
      ],
      ...others.flatMap((row, i) => {
        const { physics, practice, ahead } = row.fromFirst as FromFirst;
        return [
          [
            signed(i + 1, row),
            ...COMPARED_IDS.map((id) => change(physics, id, units)),
            ...without(ahead === null ? '' : percent(ahead)),
            ...drilledCells(row, units),
          ],
          [
            '  by practice',
            ...COMPARED_IDS.map((id) => (isBelieved(id) ? change(practice, id, units) : '')),
            ...without(''),
            '',
            '',
          ],
        ];
      }),
      [
        'shots vary by',
        ...COMPARED_IDS.map((id) => `±${unitOf(id, units).size(scatter[id])} `),
        ...without(''),
        '',
        '',
      ],
    ],
  };
}

const isBelieved = (id: ComparedId): id is (typeof BELIEVED_COMPARED_IDS)[number] =>
  BELIEVED_COMPARED_IDS.some((believed) => believed === id);

const signed = (i: number, { name }: CompareRow): string => `${i + 1} ${name}`;

const change = <K extends ComparedId>(
  { size, visibility }: { readonly size: Record<K, number>; readonly visibility: Record<K, Visibility> },
  id: K,
  units: Units,
): string => `${unitOf(id, units).change(size[id])}${SEEN_SIGN[visibility[id]]}`;

const drilledCells = ({ reaction, legality }: CompareRow, { flare }: Units): string[] => [
  flare.show(reaction.ringClearanceIn),
  legality.legal ? 'yes' : 'NO',
];

/** How the table is read. */
export const compareNote = ({ rows, worlds }: CompareAnswer): string =>
  `1 with its own numbers, the others with their differences from it, by physics and below by practice; means of ${worlds} simulated tries. The sentences above combine both. ` +
  'No sign: you would not see it in a night of shots with each; ?: barely; !: a game with each shows it. ' +
  (rows[1]?.fromFirst?.ahead === null
    ? ''
    : 'ahead: share of tries in which it comes nearer to your wish than 1. ') +
  'ring: from the nearest oil ring to a hole.';
