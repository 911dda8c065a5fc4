import type { CompareAnswer } from '../../records/answers/compare-answer.js';
import { VISIBILITIES } from '../../records/schemas/visibilities.js';
import { wishedIds } from '../../records/schemas/want.js';
import type { Compared } from '../picture/compared.js';
import { SERIES } from '../scene/scene.js';
import { comparedDoubts, comparedFindings, compareTitle } from '../screens/compare-report.js';
import { FLARE_START_NOTE } from '../tables/axis-tables.js';
import { compareGrid, compareNote } from '../tables/compare-table.js';
import {
  comparedAxisGrid,
  comparedDrilledGrid,
  comparedFlareGrid,
} from '../tables/compared-drilled-table.js';
import type { Units } from '../text/display-units.js';
import { inUnicode } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { sentences } from '../text/sentences.js';
import { learnedTexts } from '../wording/learned-line.js';
import { pairedHeading } from '../wording/page-headings.js';
import { sayAll } from '../wording/say.js';
import { laneSection, restsOnSection } from './parts/common-sections.js';
import { footText, inventedText } from './parts/foot-text.js';
import { inputsHtml } from './parts/inputs-html.js';
import { chartedIds, moversFigure } from './parts/movers-figure.js';
import { pageHtml } from './parts/page-html.js';
import { pairedFigure } from './parts/paired-figure.js';
import { reachFigure } from './parts/reach-figure.js';
import { noteHtml, type PageSection } from './parts/section-html.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/**
 * A comparison as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 */
export function compareHtml(given: CompareAnswer, invented: readonly string[], units: Units): string {
  const answer = withPlainText(given, false);
  const compared = comparedRows(answer);
  const [verdict = '', ...more] = sayAll(answer.verdict, units).flatMap(sentences);
  const { rows, targets, scatter, inputs } = answer;
  return pageHtml({
    over: compareTitle(answer, units),
    title: verdict,
    opening: [
      more.join(' '),
      ...comparedDoubts(answer, units),
      ...learnedTexts(answer.learned, targets, units),
    ],
    invented: inventedText(invented),
    below: `${gridHtml(compareGrid(answer, units))}\n${noteHtml(compareNote(answer))}\n${moversFigure(
      'movers',
      chartedIds(wishedIds(inputs.want)).first,
      {
        scatter,
        targets,
        reaction: rows[0].reaction,
        levers: [],
        from: rows[0].name,
        layouts: rows.flatMap(({ name, fromFirst }, i) =>
          fromFirst ? [{ sign: `${i + 1}`, name, size: fromFirst.physics.size }] : [],
        ),
      },
      units,
    )}`,
    cautions: sayAll(answer.cautions, units),
    sections: sections(answer, compared, units),
    compared,
    foot: footText(answer),
  });
}

/** What is seen of the row that differs most from the first. */
function mostSeen({ rows, inputs }: CompareAnswer): string {
  const ids = wishedIds(inputs.want);
  const [most] = rows
    .flatMap(({ name, fromFirst }) => {
      if (!fromFirst) return [];
      const { visibility } = fromFirst.weighed;
      const seen = ids.map((id) => VISIBILITIES.indexOf(visibility[id]));
      return [{ name, seen: Math.max(...seen) }];
    })
    .sort((a, b) => b.seen - a.seen);
  return most ? pairedHeading(VISIBILITIES[most.seen] ?? 'unseen', rows[0].name, most.name) : '';
}

const comparedRows = ({ rows }: CompareAnswer): readonly Compared[] =>
  rows.map((row, i) => ({
    sign: `${i + 1}`,
    ink: i === 0 ? ('soft' as const) : SERIES[(i - 1) % SERIES.length],
    name: row.name,
    layout: { ...row, text: row.name },
  }));

function sections(answer: CompareAnswer, compared: readonly Compared[], units: Units): PageSection[] {
  const { inputs, rows, targets, worlds, scatter } = answer;
  const { bowler, balls, lane, want } = inputs;
  const wished = wishedIds(want);
  const [first] = rows;
  return [
    {
      id: 'paired',
      about: 'Beside the first',
      heading: mostSeen(answer),
      parts: [
        pairedFigure(
          wished,
          {
            from: first.name,
            worlds,
            scatter,
            rows: rows.flatMap(({ fromFirst }, i) =>
              fromFirst ? [{ compared: compared[i], twentieths: fromFirst.paired }] : [],
            ),
          },
          units,
        ),
        reachFigure(targets, compared, { reaction: first.reaction, whose: first.name }, units),
      ],
    },
    laneSection({ inputs: { bowler, lane }, noLine: null }, compared, units),
    {
      id: 'drilled',
      about: 'Drilled balls',
      heading: rows.every(({ legality }) => legality.legal)
        ? 'After drilling: legal, as far as checked'
        : 'After drilling: NOT all legal',
      parts: [
        gridHtml(comparedDrilledGrid(rows, inUnicode(units))),
        gridHtml(comparedAxisGrid(rows, inUnicode(units)), 'Where the high-RG axis (PSA) comes out'),
        gridHtml(comparedFlareGrid(rows, inUnicode(units)), 'How flare starts'),
        noteHtml(FLARE_START_NOTE),
        listHtml(comparedFindings(answer, units)),
      ],
    },
    restsOnSection(
      answer.assumptions,
      { summary: 'Given', parts: balls.flatMap((ball) => inputsHtml({ bowler, ball, lane, want }, units)) },
      units,
    ),
  ];
}
