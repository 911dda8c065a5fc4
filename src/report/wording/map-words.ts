import { decimals } from '../../base/decimals.js';
import type { MapAnswer, MapRow } from '../../records/answers/answer.js';
import { MAP_NUMBERS, type MapNumber } from '../../records/schemas/map-numbers.js';
import { LANE_IDS, REACTION_NUMBERS } from '../../records/schemas/reaction-numbers.js';
import { type Units, withUnit } from '../text/display-units.js';
import { angle } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import { bufferDoubts } from './layout-headline.js';
import { scatterText, sizeText } from './statements/size-text.js';

/** What each number of a map is called, and how it is shown. */
export const MAP_WORDS: Readonly<
  Record<
    MapNumber,
    {
      readonly name: string;
      readonly show: (value: number, units: Units) => string;
      readonly unit: (units: Units) => string;
    }
  >
> = {
  intermediateDifferentialIn: { name: 'intermediate differential', show: inGyration, unit: gyrationName },
  differentialIn: { name: 'total differential', show: inGyration, unit: gyrationName },
  asymmetry: { name: 'asymmetry', show: (share) => decimals(100 * share, 0), unit: () => '%' },
  rgIn: { name: 'RG', show: inGyration, unit: gyrationName },
};

/** The order in which the numbers are shown: what layouts move most comes first. */
export const MAP_ORDER = Object.keys(MAP_WORDS) as readonly MapNumber[];

function inGyration(value: number, { gyration }: Units): string {
  return gyration.show(value);
}

function gyrationName({ gyration }: Units): string {
  return gyration.name;
}

/** The number of the layout that runs over its range, and how a row shows it. */
export const OVER_WORDS: Readonly<
  Record<MapAnswer['over'], { readonly name: string; readonly of: (row: MapRow, page: Spelling) => string }>
> = {
  'drilling-angle': {
    name: 'drilling angle',
    of: ({ layout }, page) => (layout.drillingAngleDeg === null ? '' : angle(layout.drillingAngleDeg, page)),
  },
  'pin-to-pap': {
    name: 'pin-to-PAP',
    of: ({ layout }, page) => page.units.roughTape.show(layout.pinToPapIn),
  },
  buffer: { name: 'pin buffer', of: ({ layout }, page) => page.units.roughTape.show(layout.pinBufferIn) },
};

/** The two numbers of the layout that stay. */
export function mapFixed({ over, rows }: MapAnswer, page: Spelling): string {
  const { drillingAngleDeg, pinToPapIn, valAngleDeg } = rows[0].layout;
  const parts = {
    'drilling-angle':
      drillingAngleDeg === null ? 'no drilling angle' : `drilling angle ${angle(drillingAngleDeg, page)}`,
    'pin-to-pap': `pin ${withUnit(pinToPapIn, page.units.roughTape)} from the PAP`,
    buffer: `VAL angle ${angle(valAngleDeg, page)}`,
  };
  return Object.entries(parts)
    .filter(([number]) => number !== over)
    .map(([, text]) => text)
    .join(', ');
}

/** Whether a pin buffer may have been meant by the VAL angle that stays; over pin buffers none does. */
export const mapDoubts = ({ over, rows }: MapAnswer, units: Units): string[] =>
  over === 'buffer'
    ? []
    : (rows
        .map(({ layout }) => bufferDoubts({ ...layout, drillingAngleDeg: null }, units))
        .find((doubts) => doubts.length > 0) ?? []);

/** Whether the number of the layout matters: on the lane where one was named, else by the drilled numbers alone. */
export function mapVerdict(answer: MapAnswer, { units }: Spelling): string {
  const { over, reach, onLane } = answer;
  const { gyration, flare, lane } = units;
  const { name } = OVER_WORDS[over];
  const key = mostMoved(reach);
  const { least, most } = reach.numbers[key];
  const moved = `${MAP_WORDS[key].name} most, by ${withUnit(most - least, gyration)} (${gyration.show(least)} to ${gyration.show(most)})`;
  if (onLane)
    return `The ${name} ${ON_LANE[onLane.visibility]} on ${onLane.lane}. Of the drilled numbers it moves the ${moved}.`;
  const threshold = withUnit(reach.mattersFrom.in, gyration);
  const tie =
    'That is twice the difference between two balls of the same model. A change of that size in total differential makes about ' +
    `${withUnit(reach.mattersFrom.flareIn, flare)} of flare, but less than ${lane.size(reach.mattersFrom.hookStartFt)} ${lane.name} of hook ` +
    'start; in intermediate differential or RG, mostly less. --lane shows what it does on a lane.';
  return reach.matters
    ? `The ${name} matters for the numbers of this ball: it moves the ${moved}; ${threshold} is enough to matter. ${tie}`
    : `The ${name} hardly matters for the numbers of this ball: it moves none of them by ${threshold}, which would be enough to matter. ${tie}`;
}

const ON_LANE = { unseen: 'hardly matters', barely: 'matters a little', seen: 'matters' } as const;

/** Of the numbers in inches the one that moves most. */
const mostMoved = (reach: MapAnswer['reach']): MapNumber =>
  MAP_NUMBERS.filter((key) => key !== 'asymmetry').reduce((best, key) =>
    moveOf(reach, key) > moveOf(reach, best) ? key : best,
  );

/** How far a number moves over the rows, in. */
export const moveOf = ({ numbers }: MapAnswer['reach'], key: MapNumber): number =>
  numbers[key].most - numbers[key].least;

/** A number of the ball before drilling. */
export const undrilledOf = (undrilled: MapAnswer['undrilled'], key: MapNumber): number =>
  key === 'asymmetry' ? undrilled.intermediateDifferentialIn / undrilled.differentialIn : undrilled[key];

const SEEN = {
  unseen: 'You would not see that in a night of shots with each',
  barely: 'You would need a night of shots with each to see that',
  seen: 'You would see that in a game with each',
} as const;

/** What the ends of the spread do on the lane, in feet and boards, and to the flare, beside the scatter of shots. */
export function mapOnLane({ onLane }: MapAnswer, { units }: Spelling): string {
  if (onLane === null) return '';
  const { from, to, size, scatter, visibility, centreHeld, worlds } = onLane;
  const cause = visibility === 'unseen' || centreHeld === null ? '' : ` ${causeText(centreHeld, units)}`;
  const flare = `Flare is ${sizeText(size, ['flareIn'], units)}; from shot to shot it varies by ${scatterText(scatter, ['flareIn'], units)}.`;
  return `Compared with ${from}, ${to} is ${sizeText(size, LANE_IDS, units)} (mean of ${worlds} simulated tries). ${SEEN[visibility]}: the shots vary by ${scatterText(scatter, LANE_IDS, units)}.${cause} ${flare}`;
}

/** Whether the centre of mass makes the difference, by the same two layouts with one centre of mass. */
function causeText(
  { reading, total, left }: NonNullable<NonNullable<MapAnswer['onLane']>['centreHeld']>,
  units: Units,
): string {
  const { name, compared } = REACTION_NUMBERS[reading];
  const unit = units[compared.quantity];
  const change = `${name} would change by ${unit.change(left)} ${unit.name} instead of ${unit.change(total)} ${unit.name} (one steady shot)`;
  return Math.abs(left) <= Math.abs(total) / 2
    ? `Most of that comes from the drilled ball’s centre of mass (static weight): with one centre of mass for both, ${change}.`
    : `Most of that comes from RG, differentials and flare: with one centre of mass (static weight) for both, ${change}.`;
}

/** How the bars of a map are read. */
export const mapScaleNote = ({ scales, beside }: MapAnswer, { gyration }: Units): string => {
  const others = beside.map(({ kind, ball }) => `${kind}: ${ball}`).join('; ');
  return (
    `Scales are the same for all balls: RG ${gyration.show(scales.rgIn.least)} to ${withUnit(scales.rgIn.most, gyration)}, what the rules ` +
    `allow in new balls; differentials 0 to ${withUnit(scales.differentialIn.most, gyration)}, what the rules allow and drilling adds; ` +
    'asymmetry, the intermediate as a share of the total differential, 0 to 100 %.' +
    (others === '' ? '' : ` Beside it, invented balls drilled alike: ${others}.`)
  );
};
