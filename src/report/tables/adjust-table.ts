import type { AdjustAnswer, RemedyAnswer } from '../../records/answers/adjust-answer.js';
import { LANE_IDS, type LaneId, REACTION_NUMBERS } from '../../records/schemas/reaction-numbers.js';
import { capital } from '../../records/text/capital.js';
import { type Units, withUnit } from '../text/display-units.js';
import { percent } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { say } from '../wording/say.js';
import { meetsOldHoles } from '../wording/workshop.js';
import { reactionHeads, unitOf } from './reaction-rows.js';
import { SEEN_SIGN } from './seen-sign.js';

const COST: Readonly<Record<RemedyAnswer['cost'], string>> = {
  free: 'free',
  minutes: 'minutes',
  practice: 'practice',
  plugging: 'costly',
};

/** What it is about: the numbers that are wished for, and those that a person sees first. */
const shownIds = ({ wished }: AdjustAnswer): readonly LaneId[] =>
  LANE_IDS.filter(
    (id) => id === 'hookStartFt' || id === 'totalHookBoards' || wished.some(({ reading }) => reading === id),
  );

/** Some remedies, a row each: what each changes and what is then still missing. */
export function adjustGrid(
  answer: AdjustAnswer,
  remedies: readonly RemedyAnswer[],
  units: Units,
  shows: { readonly left: boolean; readonly nearer: boolean },
): Grid {
  const { wished, scatter } = answer;
  const ids = shownIds(answer);
  const missing = shows.left ? wished.map(({ reading }) => reading) : [];
  const inFull = <T>(cell: T): readonly T[] => (shows.nearer ? [cell] : []);
  if (remedies.length === 0) return { columns: [{ head: '' }], rows: [] };
  return {
    columns: [
      { head: '' },
      ...reactionHeads(ids, units),
      ...missing.map((id) => ({ head: `to go\n${unitOf(id, units).name}` })),
      ...inFull({ head: 'nearer\n%' }),
      { head: 'cost' },
    ],
    rows: [
      ...remedies.map((each) => [
        `${each.rank ?? '-'} ${say(each.remedy, units)}`,
        ...ids.map((id) => `${unitOf(id, units).change(each.effect[id])}${SEEN_SIGN[each.visibility[id]]}`),
        ...missing.map((id) => unitOf(id, units).change(each.left[id] as number)),
        ...inFull(percent(each.nearer)),
        COST[each.cost],
      ]),
      [
        'shots vary by',
        ...ids.map((id) => `±${unitOf(id, units).size(scatter[id])} `),
        ...missing.map(() => ''),
        ...inFull(''),
        '',
      ],
    ],
  };
}

/** What the ball did and what is wanted, a sentence for each wish. */
export const didLines = ({ wished }: AdjustAnswer, units: Units): string[] =>
  wished.map(({ reading, did, from, deviation, wanted }) => {
    const { name } = REACTION_NUMBERS[reading];
    const unit = unitOf(reading, units);
    const about = deviation === null ? '' : ` ±${unit.size(deviation)}`;
    const sources = { told: 'you say', log: 'your log', simulated: 'simulated' };
    return `${capital(name)}: ${unit.show(did)}${about} ${unit.name} (${sources[from]}), wanted ${withUnit(wanted, unit)}.`;
  });

/** The kinds of which nothing is recommended, each with its nearest remedy, and with its size where that cannot be seen. */
export function notRecommended({ remedies, wished }: AdjustAnswer, units: Units): string {
  const kinds = new Set(remedies.filter(({ rank }) => rank !== null).map(({ remedy }) => remedy.code));
  const isFirst = ({ remedy }: RemedyAnswer, i: number): boolean =>
    !kinds.has(remedy.code) && remedies.findIndex((each) => each.remedy.code === remedy.code) === i;
  const others = remedies.filter(isFirst);
  const saying = (head: string, verdict: RemedyAnswer['verdict'], sized: boolean): string[] => {
    const meant = others.filter((each) => each.verdict === verdict);
    const sizeOf = ({ effect }: RemedyAnswer): string => (sized ? ` (${sizes(effect, wished, units)})` : '');
    const texts = meant.map((each) => `${say(each.remedy, units)}${sizeOf(each)}`);
    return texts.length > 0 ? [`${head}: ${texts.join('; ')}.`] : [];
  };
  return [
    ...saying('Too small to tell from your scatter', 'unseen', true),
    ...saying('No nearer', 'no-help', false),
    ...saying('No line to the pocket', 'no-line', false),
  ].join(' ');
}

const sizes = (effect: RemedyAnswer['effect'], wished: AdjustAnswer['wished'], units: Units): string =>
  wished
    .map(({ reading }) => `${unitOf(reading, units).change(effect[reading])} ${unitOf(reading, units).name}`)
    .join(', ');

/** Whether the holes of the redrilled ball keep clear of the old ones; nothing where it is not recommended. */
export function redrillNote({ redrill, remedies }: AdjustAnswer): string {
  const isRecommended = remedies.some(
    ({ remedy, rank }) => remedy.code === 'plug-and-redrill' && rank !== null,
  );
  if (!isRecommended || !redrill) return '';
  return meetsOldHoles(redrill.legality)
    ? 'Redrilled, it meets old holes.'
    : 'Redrilled, it keeps clear of old holes.';
}

/** How the table is read. */
export const adjustNote = ({ worlds }: AdjustAnswer): string =>
  `Means of ${worlds} tries; ? shows in a night, ! in a game.`;
