import { decimals } from '../../base/decimals.js';
import type {
  DrilledNumbersAnswer,
  FlareStartAnswer,
  LegalityAnswer,
  MarkAnswer,
  PsaAnswer,
} from '../../records/answers/answer.js';
import { type Units, withUnit } from '../text/display-units.js';
import { listed } from '../text/listed.js';
import type { Page } from '../text/page.js';
import { bullets, paragraph } from '../text/section.js';
import { type Grid, gridLines } from '../text/table.js';
import { sayAll } from './say.js';

/*
 * What the person at the drill reads: where marks go, how heavy the sides come out, where the strong axis
 * ends up, and whether the rules allow it.
 */

/** Static weights in a sentence, by which side is the heavier. */
export const staticsText = (statics: DrilledNumbersAnswer['staticOz'], units: Units): string =>
  `Static weights: ${staticsWords(statics, units)}.`;

/** The same as words within a sentence. */
export function staticsWords(
  { top, side, finger }: DrilledNumbersAnswer['staticOz'],
  { ounce }: Units,
): string {
  const parts = [
    heavier(top, 'top (grip side)', 'bottom (away from the grip)'),
    heavier(side, 'PAP side', 'side away from the PAP'),
    heavier(finger, 'finger side', 'thumb side'),
  ];
  return parts.join('; ');

  function heavier(ounces: number, plus: string, minus: string): string {
    const isEven = Number(ounce.show(ounces)) === 0;
    return isEven
      ? `${plus} even`
      : `${withUnit(Math.abs(ounces), ounce)} to the ${ounces > 0 ? plus : minus}`;
  }
}

/** How the ball balances once drilled, where its strong axis lies, and what the rules say. */
export const afterDrilling = (
  layout: {
    readonly drilled: DrilledNumbersAnswer;
    readonly psa: PsaAnswer;
    readonly legality: LegalityAnswer;
  },
  page: Page,
): string[] => [
  ...paragraph(staticsText(layout.drilled.staticOz, page.units), page),
  ...paragraph(psaText(layout.psa, page.units), page),
  ...legalityLines(layout.legality, page),
];

/** Where the high-RG axis comes out, and whether that can be trusted. */
export function psaText(psa: PsaAnswer, { tape }: Units): string {
  const places = [
    `${withUnit(psa.fromPapIn, tape)} from the PAP`,
    `${withUnit(psa.fromPinIn, tape)} from the pin`,
    ...(psa.fromMarkIn === null ? [] : [`${withUnit(psa.fromMarkIn, tape)} from the mass-bias mark`]),
    `${withUnit(psa.fromGripCentreIn, tape)} from the grip centre`,
  ];
  const where = `The high-RG axis (PSA) comes out ${listed(places)}.`;
  return psa.certain
    ? where
    : `${where} This place is uncertain: the intermediate differential is so small that little moves it.`;
}

/** How flare starts, and what of it the layout decides beside the differential. */
export const flareStartText = ({ perTurnIn, share }: FlareStartAnswer, { fineTape }: Units): string =>
  `Flare starts at ${withUnit(perTurnIn, fineTape)} a turn, ${decimals(100 * share, 0)} % of the most that the drilled total differential can ` +
  'give: it gives all with the PAP halfway between low-RG and high-RG axis.';

/** Tape arcs to each mark, to a sixteenth of an inch or to a millimetre. */
export function arcsGrid(marks: readonly MarkAnswer[], { tape: { name, show } }: Units): Grid {
  /** Blank for a mark's distance from itself. */
  const arc = (inches: number | null): string =>
    inches === null || show(inches) === '0' ? '' : show(inches);
  return {
    columns: [
      { head: 'mark' },
      ...['grip centre', 'PAP', 'pin'].map((from) => ({ head: `from ${from}\n${name}` })),
    ],
    rows: marks.map(({ mark, fromGripCentreIn, fromPapIn, fromPinIn }) => [
      mark,
      arc(fromGripCentreIn),
      arc(fromPapIn),
      arc(fromPinIn),
    ]),
  };
}

/** The same with a word on how they are measured. */
export const marksTable = (marks: readonly MarkAnswer[], page: Page): string[] => [
  ...gridLines(arcsGrid(marks, page.units), page),
  ...paragraph(
    `Arcs along the surface with a tape, to ${page.units.tapeStep}; two arcs from known marks find the next.`,
    page,
    page.paint.quiet,
  ),
];

/** Which rules were checked, and what was found. */
export const legalityLines = (legality: LegalityAnswer, page: Page): string[] => [
  ...paragraph(legalityText(legality), page, legality.legal ? (line) => line : page.paint.caution),
  ...bullets(sayAll(legality.findings, page.units), page),
];

export const legalityText = ({ ruleSet, edition, legal }: LegalityAnswer): string =>
  `${legal ? 'Within' : 'NOT within'} ${ruleSet} (${edition}), as far as this program checks.`;

const BESIDE_PLUGS: ReadonlySet<string> = new Set([
  'edges-over-plugs',
  'thin-webs',
  'thin-webs-below',
  'pin-under-plug',
  'marker-under-plug',
]);

/** Whether holes or marks of a drilled ball meet old holes, or leave little beside them. */
export const meetsOldHoles = ({ findings }: LegalityAnswer): boolean =>
  findings.some(({ code }) => BESIDE_PLUGS.has(code));

/**
 * What has to be weighed first where a ball was drilled before; nothing where all keeps clear of the old holes.
 *
 * @param where  where each is named
 */
export const oldHolesTexts = (legality: LegalityAnswer, where: string): string[] =>
  meetsOldHoles(legality) ? [`New holes meet old ones, whose plugs may chip or crack: see ${where}.`] : [];
