import type {
  DrilledNumbersAnswer,
  JudgeAnswer,
  LegalityAnswer,
  PsaAnswer,
  TargetAnswer,
} from '../../records/answers/answer.js';
import type { WebReportData } from '../../records/answers/web-report-data.js';
import type { Compared } from '../picture/compared.js';
import { linesGrid, linesNote } from '../tables/lines-table.js';
import type { Page } from '../text/page.js';
import { say, sayAll } from '../wording/say.js';
import { legalityText, psaText, staticsText } from '../wording/workshop.js';
import { laneFigure } from './lane-figure.js';
import { mapFigure } from './map-figure.js';
import { type PageSection, paragraphHtml } from './section-html.js';
import { gridHtml, listHtml } from './table-html.js';
import { worldsFigure } from './worlds-figure.js';

/* Sections that a recommendation and a second opinion have alike. */

export const laneSection = (
  { inputs, noLine }: Pick<JudgeAnswer, 'inputs' | 'noLine'>,
  compared: readonly Compared[],
  { units }: Page,
): PageSection => ({
  id: 'lane',
  heading: 'On the lane',
  parts: [
    ...(noLine ? [paragraphHtml(say(noLine.says, units)), listHtml(sayAll(noLine.remedies, units))] : []),
    laneFigure(inputs.bowler.hand, inputs.lane, compared, units),
  ],
});

export const worldsSection = (
  compared: readonly Compared[],
  targets: readonly TargetAnswer[],
  worlds: number,
  page: Page,
): PageSection => ({
  id: 'worlds',
  heading: 'In plausible worlds',
  parts: [worldsFigure(compared, targets, worlds, page)],
});

export const drilledSection = (
  {
    drilled,
    psa,
    legality,
  }: {
    readonly drilled: DrilledNumbersAnswer;
    readonly psa: PsaAnswer;
    readonly legality: LegalityAnswer;
  },
  { map }: WebReportData,
  compared: readonly Compared[],
  page: Page,
): PageSection => ({
  id: 'map',
  heading: 'The ball after drilling',
  parts: [
    ...(map ? [mapFigure(map, compared, page)] : []),
    paragraphHtml(staticsText(drilled.staticOz, page.units)),
    paragraphHtml(psaText(psa, page.units)),
    paragraphHtml(legalityText(legality)),
    listHtml(sayAll(legality.findings, page.units)),
  ],
});

export function linesSection(compared: readonly Compared[], { units }: Page): PageSection {
  const played = compared.map(({ sign, layout }) => ({ ...layout, text: `${sign} ${layout.text}` }));
  return {
    id: 'lines',
    heading: 'Lines, and the room to miss them',
    parts: [gridHtml(linesGrid(played, units)), paragraphHtml(linesNote(played, units))],
  };
}
