import { grouped } from '../../base/grouped.js';
import type { CoachBag, CoachFault, CoachLine } from '../../records/answers/coach-answer.js';
import { wishedIds } from '../../records/schemas/want.js';
import {
  ballsGrid,
  type CoachedStudent,
  coachedStudents,
  coachNotes,
  gainCells,
  gainHeads,
  outOfReachTexts,
  papTexts,
  seenText,
  weightTexts,
} from '../tables/coach-table.js';
import type { Units } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { gridLines, table } from '../text/table.js';
import { columnsOf, wrap } from '../text/wrap.js';
import { askedText } from '../wording/answer-facts.js';
import { coachFaultText } from '../wording/coach-lines.js';
import { learnedOfTexts } from '../wording/learned-line.js';
import { say, sayAll } from '../wording/say.js';

/** All students in one table, a row each; every ball of each with `isFull`. */
export function coachReport(given: readonly CoachLine[], page: Page, isFull = false): string {
  const lines = withPlainText(given, page.ascii);
  const students = coachedStudents(lines);
  const faults = lines.filter((line): line is CoachFault => line.schema === 'flarewise/coach-fault/2');
  return joinSections([
    ...(students.length > 0
      ? [
          [
            ...wrap(`${coachTitle(lines)}; ${coachAskedText(students[0], page.units)}`, page.width).map(
              page.paint.heading,
            ),
            ...wrap(seenText(students), page.width).map(page.paint.strong),
            ...studentsTable(students, onlyOne(lines, 'ball') !== null, page),
            ...[
              ...outOfReachTexts(students, page.units),
              ...papTexts(students),
              ...weightTexts(lines, page.units),
            ].flatMap((text) => paragraph(text, page, page.paint.caution)),
            ...coachNotes(students).flatMap((note) => paragraph(note, page, page.paint.quiet)),
            ...learnedOfTexts(
              students.map(({ pair }) => pair),
              page.units,
            ).flatMap((text) => paragraph(text, page)),
          ],
        ]
      : []),
    ...(isFull
      ? details(lines, page)
      : [
          bullets(
            faults.map((fault) => faultText(fault, page)),
            page,
          ),
        ]),
  ]);
}

/** What the table is about: the ball and the lane too, where there is one. */
export function coachTitle(lines: readonly CoachLine[]): string {
  const [ball, lane] = [onlyOne(lines, 'ball'), onlyOne(lines, 'lane')];
  return `Best ${ball ? 'layout' : 'ball and layout'} for each student${ball ? `: ${ball}` : ''}${lane ? `, on ${lane}` : ''}`;
}

/** What was wished for, of all students alike: what the balls of each reach of it differs. */
export const coachAskedText = ({ pair }: CoachedStudent, units: Units): string =>
  `asked for: ${askedText(
    pair.targets.map(({ asked, value, ...target }) => ({ ...target, value: asked ?? value })),
    units,
  )}`;

/** The ball or the lane that all lines are about; null where there are several. */
function onlyOne(lines: readonly CoachLine[], what: 'ball' | 'lane'): string | null {
  const nameIn = (line: CoachLine): string[] =>
    what === 'lane' ? [line.lane] : 'ball' in line ? [line.ball] : [];
  const names = new Set(lines.flatMap(nameIn));
  return names.size === 1 ? [...names][0] : null;
}

/** Columns of the others beside the layout, gaps included: what is left is for the ball's name. */
const TAKEN = { indent: 2, key: 22, wish: 8, seen: 8, moves: 9, sure: 6, gap: 2 };
const LEAST_NAME = 16;

/** A row a student; the ball stands above its layout, cut where there is no room, unless all have the same. */
function studentsTable(students: readonly CoachedStudent[], isOneBall: boolean, page: Page): string[] {
  const [{ pair: first }] = students;
  const { indent, wish, seen, moves, sure, gap } = TAKEN;
  const key = indent + Math.min(TAKEN.key - indent, Math.max(...students.map(({ name }) => columnsOf(name))));
  const room = Math.max(
    LEAST_NAME,
    page.width - key - wish * wishedIds(first.want).length - seen - moves - sure - gap,
  );
  return table(
    [
      { head: 'student' },
      { head: isOneBall ? 'best layout' : 'best ball\nand layout', align: 'left' },
      ...gainHeads(first, page.units),
    ],
    students.map(({ name, pair }) => [
      name,
      isOneBall ? pair.best.layout : `${cut(pair.ball, room, page)}\n${pair.best.layout}`,
      ...gainCells(pair, page.units),
    ]),
    page,
  );
}

/** A name in this many columns. */
function cut(name: string, room: number, { ascii }: Page): string {
  if (columnsOf(name) <= room) return name;
  const mark = ascii ? '..' : '…';
  let kept = name;
  while (columnsOf(kept + mark) > room) kept = [...kept].slice(0, -1).join('');
  return kept.trimEnd() + mark;
}

/** Every bowler on every lane: all balls, what moves the reaction most with each, and the bag. */
function details(lines: readonly CoachLine[], page: Page): (readonly string[])[] {
  const groups = grouped(lines, (line) => `${line.bowler}, on ${line.lane}`);
  return [
    ...[...groups].map(([heading, group]) => section(heading, groupLines(group, page), page)),
    paragraph(
      'score: how near the reaction asked for, 100 at best, in one undisturbed shot, against what the layouts of that ball attain; ' +
        'usual: of the usual middle layout.',
      page,
      page.paint.quiet,
    ),
  ];
}

const groupLines = (group: readonly CoachLine[], page: Page): string[] => [
  ...gridLines(ballsGrid(group, page.units), page),
  ...bullets(groupTexts(group, page.units), page),
];

/** Sentences about each ball, and about the bag. */
export function groupTexts(group: readonly CoachLine[], units: Units): string[] {
  const of = <S extends CoachLine['schema']>(schema: S) =>
    group.filter((line): line is Extract<CoachLine, { schema: S }> => line.schema === schema);
  return [
    ...of('flarewise/coach-pair/4').map(({ ball, says }) => `${ball}: ${say(says, units)}`),
    ...of('flarewise/coach-bag/3').flatMap((bag: CoachBag) => sayAll(bag.says, units)),
    ...of('flarewise/coach-fault/2').map((fault) => `${fault.ball}: ${coachFaultText(fault, units)}`),
  ];
}

const faultText = (fault: CoachFault, { units }: Page): string =>
  `${fault.bowler}, ${fault.ball}, on ${fault.lane}: ${coachFaultText(fault, units)}`;
