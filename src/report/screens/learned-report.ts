import type { LearnedAnswer } from '../../records/answers/learned-answer.js';
import { capital } from '../../records/text/capital.js';
import { foretoldGrid, nightsGrid, numbersGrid, surprisesGrid } from '../tables/learned-tables.js';
import { fittedLines, type Labelled, SCREEN_LINES } from '../text/labelled.js';
import { listed } from '../text/listed.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { sentences } from '../text/sentences.js';
import { gridLines } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import { beliefEvidenceText, byStrength, practiceTexts } from '../wording/belief-evidence-text.js';
import { numberName } from '../wording/learned-numbers.js';
import {
  causeTexts,
  elsewhereTexts,
  foretoldTexts,
  learnedTitle,
  leftOutTexts,
  misfitTexts,
  nextTexts,
} from '../wording/learned-words.js';
import { moreLines } from './more-lines.js';

/** Numbers on the first screen. */
const MOST_NUMBERS = 5;
const MOST_IN_DOUBT = 3;

/** What logged shots teach, on one screen: the next night before and after, what does not fit, the numbers; all else with `isFull`. */
export function learnedReport(given: LearnedAnswer, page: Page, isFull = false): string {
  const answer = withPlainText(given, page.ascii);
  const title = wrap(learnedTitle(answer), page.width).map(page.paint.heading);
  const table = gridLines(
    numbersGrid(answer.numbers.slice(0, answer.misfit.isDoubtful ? MOST_IN_DOUBT : MOST_NUMBERS), page.units),
    page,
  );
  const foot = isFull ? [] : ['', ...moreLines(page)];
  const room = SCREEN_LINES - title.length - table.length - foot.length;
  const first = [...title, ...fittedLines(blocks(answer, page), room, page), ...table, ...foot];
  return joinSections([first, ...(isFull ? sections(answer, page) : [])]);
}

function blocks(answer: LearnedAnswer, page: Page): Labelled[] {
  const { units, paint } = page;
  const { isDoubtful } = answer.misfit;
  return [
    { label: 'NEXT NIGHT', texts: foretoldTexts(answer, units), keep: 2, yields: 0, paint: paint.strong },
    {
      label: isDoubtful ? 'DOUBT' : 'FITS',
      texts: misfitTexts(answer, units),
      keep: isDoubtful ? 2 : 1,
      yields: 2,
      ...(isDoubtful ? { paint: paint.caution } : {}),
    },
    { label: 'READ NEXT', texts: nextTexts(answer, units), keep: 0, yields: 3 },
    { label: 'ELSEWHERE', texts: elsewhereTexts(answer), keep: 0, yields: 4 },
    { label: 'PRACTICE', texts: practiceTexts(answer), keep: isDoubtful ? 0 : 1, yields: 5 },
    { label: 'LEFT OUT', texts: leftOutTexts(answer), keep: 1, yields: 6 },
    { label: 'LEARNED', texts: numbersTexts(answer).flatMap(sentences), keep: isDoubtful ? 0 : 1, yields: 7 },
  ];
}

/** Which numbers the shots say more of than was known, and how far to trust them. */
function numbersTexts({ numbers }: LearnedAnswer): string[] {
  const learned = numbers.filter(({ isLearned }) => isLearned).map(({ id }) => numberName(id));
  const rest = numbers.length - learned.length;
  const others = rest === 0 ? '' : `; hardly the other ${rest}`;
  return [
    learned.length === 0
      ? 'No number by itself, only the path that they make together.'
      : `${capital(listed(learned))}${others}. One by one they are less sure than the path that they make together.`,
  ];
}

/** Everything behind the first screen. */
const sections = (answer: LearnedAnswer, page: Page): readonly (readonly string[])[] => [
  section(
    'All numbers, ± one standard deviation',
    gridLines(numbersGrid(answer.numbers, page.units), page),
    page,
  ),
  section(
    'The mean of the next night like the last',
    gridLines(foretoldGrid(answer, page.units), page),
    page,
  ),
  section(
    'What does not fit',
    [...gridLines(surprisesGrid(answer, page.units), page), ...bullets(causeTexts(answer, page.units), page)],
    page,
  ),
  section('What practice believes', bullets(byStrength(answer.beliefs).map(beliefEvidenceText), page), page),
  section('Nights', gridLines(nightsGrid(answer), page), page),
  section('How far it goes', paragraph(HOW_FAR, page), page),
];

export const HOW_FAR =
  'All this holds only within this model of ball and lane. On made-up bowlers the ± held. Boards alone do not show where a hook starts: on thick oil its ± stays wide, whatever is logged. Errors in reading laydown and arrows count where both were read; otherwise the aim counts as known. A quarter of a board at the arrows makes one at the pins. Display speed and rings over a hole are kept, not learned from. Whatever acts like friction is learned as friction.';
