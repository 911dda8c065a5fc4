import { grouped } from '../../base/grouped.js';
import type { CoachLine } from '../../records/answers/coach-answer.js';
import { loadCautions } from '../../records/shared/shared-data.js';
import { VERSION } from '../../records/shared/version.js';
import { coachTitle, groupTexts } from '../screens/coach-report.js';
import {
  ballsGrid,
  type CoachedStudent,
  coachedStudents,
  coachNotes,
  gainCells,
  gainHeads,
} from '../tables/coach-table.js';
import type { Units } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import type { Grid } from '../text/table.js';
import { say } from '../wording/say.js';
import { pageHtml } from './page-html.js';
import { paragraphHtml } from './section-html.js';
import { gridHtml, listHtml } from './table-html.js';

/**
 * Every student on one web page that fetches nothing: first the table, then each with every ball.
 *
 * @param page  of which only the units matter
 */
export function coachHtml(
  given: readonly CoachLine[],
  { units, paint }: Pick<Page, 'units' | 'paint'>,
): string {
  const page: Page = { width: 80, ascii: false, paint, units };
  const lines = withPlainText(given, page.ascii);
  const students = coachedStudents(lines);
  const groups = grouped(lines, (line) => `${line.bowler}, on ${line.lane}`);
  return pageHtml({
    over: 'For a coach',
    title: students.length > 0 ? coachTitle(lines) : 'No layout for any student',
    opening: [],
    invented: null,
    cautions: loadCautions().map((code) => say({ code, params: {} }, units)),
    compared: [],
    sections: [
      {
        id: 'students',
        heading: 'All students',
        parts: [
          gridHtml(studentsGrid(students, units)),
          ...(students.length > 0 ? coachNotes(students).map(paragraphHtml) : []),
        ],
      },
      ...[...groups].map(([heading, group], i) => ({
        id: `student-${i + 1}`,
        heading,
        parts: [gridHtml(ballsGrid(group, units)), listHtml(groupTexts(group, page))],
      })),
    ],
    foot: `flarewise ${VERSION}. It is one file that fetches nothing.`,
  });
}

const studentsGrid = (students: readonly CoachedStudent[], units: Units): Grid => ({
  columns: [
    { head: 'student' },
    { head: 'best ball' },
    { head: 'best layout' },
    ...(students[0] ? gainHeads(students[0].pair, units) : []),
  ],
  rows: students.map(({ name, pair }) => [name, pair.ball, pair.best.layout, ...gainCells(pair, units)]),
});
