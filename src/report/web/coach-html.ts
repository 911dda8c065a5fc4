import { grouped } from '../../base/grouped.js';
import type { CoachLine, CoachPair } from '../../records/answers/coach-answer.js';
import { wishedIds } from '../../records/schemas/want.js';
import { loadCautions } from '../../records/shared/shared-data.js';
import { VERSION } from '../../records/shared/version.js';
import { capital } from '../../records/text/capital.js';
import { coachAskedText, coachTitle, groupTexts } from '../screens/coach-report.js';
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
import { withPlainText } from '../text/plain-text.js';
import type { Grid } from '../text/table.js';
import { learnedOfTexts } from '../wording/learned-line.js';
import { say } from '../wording/say.js';
import { chartedIds, moversFigure } from './parts/movers-figure.js';
import { pageHtml } from './parts/page-html.js';
import { noteHtml } from './parts/section-html.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/** Every student on one web page that fetches nothing: first the table, then each with every ball and what moves its reaction. */
export function coachHtml(given: readonly CoachLine[], units: Units): string {
  const lines = withPlainText(given, false);
  const students = coachedStudents(lines);
  const groups = grouped(lines, (line) => `${line.bowler}, on ${line.lane}`);
  const pairOf = (group: readonly CoachLine[]): CoachPair | undefined =>
    students.find(({ pair }) => group.includes(pair))?.pair;
  return pageHtml({
    over: 'For a coach',
    title: students.length > 0 ? coachTitle(lines) : 'No layout for any student',
    opening: [
      ...(students[0] ? [`${capital(coachAskedText(students[0], units))}.`, seenText(students)] : []),
      ...outOfReachTexts(students, units),
      ...papTexts(students),
      ...weightTexts(lines, units),
      ...learnedOfTexts(
        students.map(({ pair }) => pair),
        units,
      ),
    ],
    invented: null,
    below: `${gridHtml(studentsGrid(students, units))}\n${students.length > 0 ? coachNotes(students).map(noteHtml).join('\n') : ''}`,
    cautions: loadCautions().map((code) => say({ code, params: {} }, units)),
    sections: [...groups].map(([heading, group], i) => {
      const pair = pairOf(group);
      return {
        id: `student-${i + 1}`,
        heading: pair ? `${heading}: ${MOVES[pair.advice]}` : heading,
        about: heading,
        parts: [
          listHtml(groupTexts(group, units)),
          pair ? moversOf(pair, `movers-${i + 1}`, units) : '',
          gridHtml(ballsGrid(group, units)),
        ],
      };
    }),
    compared: [],
    foot: `flarewise ${VERSION}. It is one file that fetches nothing.`,
  });
}

const MOVES: Record<CoachPair['advice'], string> = {
  layout: 'the layout moves it most',
  surface: 'the cover moves it most',
  line: 'the line moves it most',
  ball: 'another ball moves it most',
  none: 'nothing that was tried moves it so that it shows',
};

/** What moves the reaction of a student's best ball. */
const moversOf = (
  { want, scatter, targets, best, levers, overMiddle, middle }: CoachPair,
  id: string,
  units: Units,
): string =>
  moversFigure(
    id,
    chartedIds(wishedIds(want)).first,
    {
      scatter,
      targets,
      reaction: best.reaction,
      levers,
      from: `the usual ${middle.layout}`,
      layouts: overMiddle
        ? [
            {
              sign: '',
              name: best.layout,
              size: overMiddle.physics.size,
            },
          ]
        : [],
    },
    units,
  );

const studentsGrid = (students: readonly CoachedStudent[], units: Units): Grid => ({
  columns: [
    { head: 'student' },
    { head: 'best ball' },
    { head: 'best layout' },
    ...(students[0] ? gainHeads(students[0].pair, units) : []),
  ],
  rows: students.map(({ name, pair }) => [name, pair.ball, pair.best.layout, ...gainCells(pair, units)]),
});
