import type { AdjustAnswer } from '../../records/answers/adjust-answer.js';
import { adjustTitle } from '../screens/adjust-report.js';
import { adjustGrid, adjustNote, didLines, notRecommended, redrillNote } from '../tables/adjust-table.js';
import type { Units } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import { sentences } from '../text/sentences.js';
import { learnedTexts } from '../wording/learned-line.js';
import { sayAll } from '../wording/say.js';
import { arcsGrid, legalityText } from '../wording/workshop.js';
import { restsOnSection } from './parts/common-sections.js';
import { footText, inventedText } from './parts/foot-text.js';
import { inputsHtml } from './parts/inputs-html.js';
import { pageHtml } from './parts/page-html.js';
import { remediesFigure } from './parts/remedies-figure.js';
import { noteHtml, type PageSection, paragraphHtml } from './parts/section-html.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/**
 * What to change in a drilled ball, as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 */
export function adjustHtml(given: AdjustAnswer, invented: readonly string[], units: Units): string {
  const answer = withPlainText(given, false);
  const [verdict = '', ...more] = sayAll(answer.verdict, units).flatMap(sentences);
  const recommended = answer.remedies.filter(({ rank }) => rank !== null);
  const note = [notRecommended(answer, units), redrillNote(answer), adjustNote(answer)];
  return pageHtml({
    over: adjustTitle(answer),
    title: verdict,
    opening: [...didLines(answer, units), more.join(' '), ...learnedTexts(answer.learned, [], units)],
    invented: inventedText(invented),
    below: [
      gridHtml(adjustGrid(answer, recommended, units, { left: true, nearer: true })),
      noteHtml(note.filter((text) => text !== '').join(' ')),
      remediesFigure(answer, units),
    ].join('\n'),
    cautions: sayAll(answer.cautions, units),
    sections: sections(answer, units),
    compared: [],
    foot: footText(answer),
  });
}

function sections(answer: AdjustAnswer, units: Units): PageSection[] {
  const { inputs, remedies, redrill, assumptions } = answer;
  const { bowler, ball, lane } = inputs;
  return [
    {
      id: 'tried',
      about: 'All that was simulated',
      heading: 'All that was simulated',
      parts: [gridHtml(adjustGrid(answer, remedies, units, { left: true, nearer: true }))],
    },
    {
      id: 'redrilled',
      about: 'Plugged and redrilled',
      heading: `Plugged and redrilled ${redrill?.layout.text ?? ''}: new holes beside old ones`,
      parts: redrill
        ? [
            paragraphHtml(legalityText(redrill.legality)),
            listHtml(sayAll(redrill.legality.findings, units)),
            gridHtml(arcsGrid(redrill.marks, units), 'Its marks'),
            gridHtml(arcsGrid(redrill.redrilled.oldMarks, units), 'The old holes on it'),
          ]
        : [],
    },
    restsOnSection(
      assumptions,
      { summary: 'Given', parts: inputsHtml({ bowler, ball, lane, want: {} }, units) },
      units,
    ),
  ];
}
