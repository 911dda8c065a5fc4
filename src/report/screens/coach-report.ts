import type { CoachBag, CoachFault, CoachLine, CoachPair } from '../../records/answers/coach-answer.js';
import { LANE_IDS } from '../../records/schemas/reaction-numbers.js';
import { reactionCells, reactionHeads } from '../tables/reaction-rows.js';
import { percent, points } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { table } from '../text/table.js';
import { coachFaultText } from '../wording/coach-lines.js';
import { say, sayAll } from '../wording/say.js';

/** Every bowler on every lane: a table of the balls, and a line on what moves the reaction most. */
export function coachReport(given: readonly CoachLine[], page: Page): string {
  const lines = withPlainText(given, page.ascii);
  const groups = new Map<string, CoachLine[]>();
  for (const line of lines) {
    const heading = `${line.bowler}, on ${line.lane}`;
    groups.set(heading, [...(groups.get(heading) ?? []), line]);
  }
  return joinSections([
    ...[...groups].map(([heading, group]) => section(heading, groupLines(group, page), page)),
    paragraph(
      'score: how near the reaction asked for, 100 at best, in one undisturbed shot; usual: of the usual middle layout; ' +
        'sure: share of plausible worlds in which the layout scores above it.',
      page,
      page.paint.quiet,
    ),
  ]);
}

function groupLines(group: readonly CoachLine[], page: Page): string[] {
  const pairs = group.filter((line): line is CoachPair => line.schema === 'flarewise/coach-pair/2');
  const bags = group.filter((line): line is CoachBag => line.schema === 'flarewise/coach-bag/2');
  const faults = group.filter((line): line is CoachFault => line.schema === 'flarewise/coach-fault/2');
  return [
    ...(pairs.length > 0 ? pairsTable(pairs, page) : []),
    ...bullets(
      [
        ...pairs.map(({ ball, advice, says }) => `${ball}: ${ADVICE[advice]}. ${say(says, page.units)}`),
        ...bags.flatMap(({ says }) => sayAll(says, page.units)),
        ...faults.map((line) => `${line.ball}: ${coachFaultText(line, page.units)}`),
      ],
      page,
    ),
  ];
}

const ADVICE: Record<CoachPair['advice'], string> = {
  layout: 'the layout does most',
  surface: 'change the cover rather than the layout',
  ball: 'another ball of the bag does most',
  none: 'leave it as it is',
};

const pairsTable = (pairs: readonly CoachPair[], page: Page): string[] =>
  table(
    [
      { head: 'ball' },
      { head: 'best layout' },
      { head: 'score' },
      { head: 'usual' },
      { head: 'sure\n%' },
      ...reactionHeads(LANE_IDS, page.units),
    ],
    pairs.map(({ ball, best, middle }) => [
      ball,
      best.layout,
      points(best.score),
      points(middle.score),
      percent(best.beatsMiddle),
      ...reactionCells(best.reaction, LANE_IDS, page.units),
    ]),
    page,
  );
