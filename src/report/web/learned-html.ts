import { FORETOLD_IDS, type LearnedAnswer } from '../../records/answers/learned-answer.js';
import { capital } from '../../records/text/capital.js';
import { narrowedPicture } from '../charts/narrowed-picture.js';
import { HOW_FAR } from '../screens/learned-report.js';
import { foretoldGrid, nightsGrid, numbersGrid, surprisesGrid } from '../tables/learned-tables.js';
import type { Units } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import { beliefEvidenceText, byStrength, practiceTexts } from '../wording/belief-evidence-text.js';
import { FORETOLD } from '../wording/learned-numbers.js';
import {
  causeTexts,
  elsewhereTexts,
  foretoldTexts,
  learnedTitle,
  leftOutTexts,
  misfitTexts,
  nextTexts,
} from '../wording/learned-words.js';
import { figureHtml, smallPictures } from './parts/figure-html.js';
import { footText, inventedText } from './parts/foot-text.js';
import { pageHtml } from './parts/page-html.js';
import { type PageSection, paragraphHtml } from './parts/section-html.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/**
 * What logged shots teach, as one web page that fetches nothing.
 *
 * @param invented  whether the bowler is a demo record
 */
export function learnedHtml(given: LearnedAnswer, invented: readonly string[], units: Units): string {
  const answer = withPlainText(given, false);
  const [first = '', ...more] = foretoldTexts(answer, units);
  return pageHtml({
    over: learnedTitle(answer),
    title: first,
    opening: more,
    invented: inventedText(invented),
    facts: [
      { label: answer.misfit.isDoubtful ? 'Doubt' : 'Fits', texts: misfitTexts(answer, units) },
      { label: 'Read next', texts: nextTexts(answer, units) },
      { label: 'Practice', texts: practiceTexts(answer) },
      { label: 'Elsewhere', texts: elsewhereTexts(answer) },
      { label: 'Left out', texts: leftOutTexts(answer) },
    ],
    below: foretoldFigure(answer, units),
    cautions: [HOW_FAR],
    cautionsHeading: 'How far it goes',
    sections: sections(answer, units),
    compared: [],
    foot: footText(answer),
  });
}

const sections = (answer: LearnedAnswer, units: Units): PageSection[] => [
  {
    id: 'numbers',
    about: 'Numbers',
    heading: 'What was known of each number before, and is after',
    parts: [
      gridHtml(numbersGrid(answer.numbers, units)),
      paragraphHtml('± is one standard deviation; the last column is what is left of it.'),
    ],
  },
  {
    id: 'misfit',
    about: 'What does not fit',
    heading: answer.misfit.isDoubtful
      ? 'The readings do not go together'
      : 'Nothing is at odds with the rest',
    parts: [gridHtml(surprisesGrid(answer, units)), listHtml(causeTexts(answer, units))],
  },
  {
    id: 'practice',
    about: 'Practice',
    heading: 'What practice believes, and what the log says of it',
    parts: [listHtml(byStrength(answer.beliefs).map(beliefEvidenceText))],
  },
  { id: 'nights', about: 'Nights', heading: 'Nights', parts: [gridHtml(nightsGrid(answer))] },
];

/** Predictions before and after, each on one scale; empty where there are none. */
function foretoldFigure(answer: LearnedAnswer, units: Units): string {
  const { before, after } = answer.foretold;
  if (!before || !after) return '';
  const pictures = FORETOLD_IDS.map((id) => {
    const { show, name } = FORETOLD[id].unit(units);
    return narrowedPicture({
      title: `${capital(FORETOLD[id].name)}, ${name}`,
      before: before[id],
      after: after[id],
      show,
    });
  });
  return figureHtml(
    'foretold',
    smallPictures(pictures),
    'The mean of the next night like the last: the upper bar before, the lower one after the logged shots. A bar is one standard deviation to either side, the line in it the mean.',
    [gridHtml(foretoldGrid(answer, units))],
  );
}
