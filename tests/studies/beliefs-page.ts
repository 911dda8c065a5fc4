import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import type { Line } from '../../src/simulate/line.js';
import { CORNERS, type Effect, UNSEEN, type Verdict } from './effects.js';
import { findings } from './findings.js';
import type { Claim, Lever } from './levers.js';
import type { MassBiasRow } from './mass-bias.js';
import { massBiasTable } from './mass-bias-table.js';
import type { Precession } from './precession.js';
import { type Numbers, QUANTITIES, QUANTITY_NAMES, type QuantityName } from './quantities.js';
import { signed, tableOf } from './text.js';

/** Everything measured around one bowler. */
export interface BowlerStudy {
  readonly bowler: Bowler;
  readonly line: Line;
  readonly scatter: Numbers;
  readonly base: Numbers;
  readonly rows: readonly LeverRow[];
  readonly flarePeak: { readonly pinToPapIn: number; readonly flareIn: number };
  readonly precession: Precession;
  readonly massBias: readonly MassBiasRow[];
}

export interface LeverRow {
  readonly lever: Lever;
  readonly effect: Effect;
  readonly verdicts: readonly { readonly claim: Claim; readonly verdict: Verdict }[];
}

/** The page as Markdown. */
export function beliefsPage(studies: readonly BowlerStudy[], lane: Lane): string {
  const [average] = studies;
  return [
    '# The trade’s beliefs and the engine',
    [
      'Written by `npm run study`. Each row changes one thing alone, from the first value to the second, on the',
      `lane “${lane.name}”, around the usual layout. Each bowler plays one line, flarewise’s own, in every row, so a ball that`,
      'hooks more ends up left of the pocket. Beliefs are common practice, no source. Bold: the verdict over',
      `${CORNERS.length} corners of the assumed ranges of friction and carried oil, and the number of corners in which the belief holds / nothing`,
      `is visible (under ${UNSEEN} of the shot-to-shot scatter) / the opposite holds. Three quarters decide a verdict. **That oil comes`,
      'back with the ball’s own rings is an assumption of flarewise; every effect of flare on the path depends on it.**',
    ].join('\n'),
    ...studies.map(leverTable),
    '## Drilled mass bias: its size and direction',
    [
      `${average.bowler.name}, asymmetric ball; low and high RG and the low axis are kept, the high axis is turned about it. Wander: arc between`,
      'the axis at release and at roll start. Clean: contact on clean cover, 30 ft to roll start. The last columns are hook start +',
      'window, and sharpness, with no oil coming back, with the nominal share, and with the greatest assumed share.',
    ].join('\n'),
    massBiasTable(average.massBias),
    '## Findings',
    findings(studies)
      .map((line) => `- ${line}`)
      .join('\n'),
    '',
  ]
    .join('\n\n')
    .replace(/\n+$/, '\n');
}

function leverTable({ bowler, line, scatter, base, rows }: BowlerStudy): string {
  const cells = (value: (name: QuantityName) => string): string[] => QUANTITY_NAMES.map(value);
  const table = tableOf(
    ['moved alone', 'belief', ...QUANTITY_NAMES.map((name) => QUANTITIES[name].title)],
    [
      ['_as it is_', '', ...cells((name) => base[name].toFixed(QUANTITIES[name].digits))],
      ['_scatter of shots_', '', ...cells((name) => `±${scatter[name].toFixed(QUANTITIES[name].digits)}`)],
      ...rows.map(({ lever, effect, verdicts }) => [
        lever.name,
        verdicts.map(verdictText).join('<br>'),
        ...cells((name) => {
          const change = effect.nominal[name];
          const size = Math.abs(change) / scatter[name];
          return `${signed(change, QUANTITIES[name].digits)} (${size.toFixed(1)})`;
        }),
      ]),
    ],
  );
  const launch = `laid down on board ${line.laydownBoard}`;
  return `## ${bowler.name}\n\nPlain ball unless said; ${launch}. Changes at nominal, in brackets over one standard deviation of a league bowler’s shots.\n\n${table}`;
}

const verdictText = ({ claim, verdict }: LeverRow['verdicts'][number]): string =>
  `${claim.words}: **${verdict.word}** ${verdict.holds}/${verdict.unseen}/${verdict.opposite}`;
