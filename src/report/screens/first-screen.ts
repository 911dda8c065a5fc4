import { fromKeys } from '../../base/from-keys.js';
import { grouped } from '../../base/grouped.js';
import type { LeverEffect, RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import { IN_A_GAME, overScatter } from '../../records/answers/parts/over-scatter.js';
import { REACTION_NUMBERS, WISHED_IDS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import { wishedIds } from '../../records/schemas/want.js';
import { capital } from '../../records/text/capital.js';
import { givenWithUnit, type Units, withUnit } from '../text/display-units.js';
import { fittedLines, type Labelled, SCREEN_LINES } from '../text/labelled.js';
import { listed } from '../text/listed.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { sentences } from '../text/sentences.js';
import { wrap } from '../text/wrap.js';
import { apartTexts, askedText } from '../wording/answer-facts.js';
import { CAUSE_NAMES } from '../wording/cause-names.js';
import { guessedTexts } from '../wording/guessed-texts.js';
import { gutterWarning } from '../wording/gutter-text.js';
import { layoutWords } from '../wording/layout-headline.js';
import { learnedTexts } from '../wording/learned-line.js';
import { regressionNote } from '../wording/regression-text.js';
import { say } from '../wording/say.js';
import { FARTHER, sizeText } from '../wording/statements/size-text.js';
import { surerShortly } from '../wording/surer-text.js';
import { oldHolesTexts } from '../wording/workshop.js';
import { commandsOf, type NextStep } from './next-steps.js';

/** How to see what is behind it. */
const MORE = 'More: --full, or --show why,compare,path,marks (see --help)';

/**
 * The recommendation on one screen: what to drill, what must be known first, how sure it is and how much it matters, why, and what to
 * do next.
 *
 * @param next     commands that may follow
 * @param beneath  lines below it that must fit on the same screen, and say how to see more
 */
export function firstScreen(
  given: RecommendAnswer,
  next: readonly NextStep[],
  page: Page,
  beneath = 0,
): string[] {
  const answer = withPlainText(given, page.ascii);
  const { bowler, ball, lane } = answer.inputs;
  const title = wrap(
    `Layout for ${bowler.name}: ${ball.name}, ${givenWithUnit(ball.weightLb, page.units.weight)}, on ${lane.name}`,
    page.width,
  );
  const asked = [
    `Asked for: ${askedText(answer.targets, page.units)}`,
    ...apartTexts(answer, page.units),
  ].flatMap((text) => wrap(text, page.width));
  const below = [...commandsOf(next, page.width), ...(beneath > 0 ? [] : wrap(MORE, page.width))];
  const foot = below.length > 0 ? ['', ...below.map(page.paint.quiet)] : [];
  const withFoot = (below: readonly string[]): string[] => {
    const room = SCREEN_LINES - title.length - asked.length - below.length - 1 - beneath;
    const fitted = fittedLines(blocks(answer, page), room, page);
    return [...title.map(page.paint.heading), ...asked, '', ...fitted, ...below];
  };
  const screen = withFoot(foot);
  // where it is too long for that, a key does what the command would
  return beneath > 0 && screen.length > SCREEN_LINES - beneath ? withFoot([]) : screen;
}

function blocks(answer: RecommendAnswer, page: Page): Labelled[] {
  const { units, paint } = page;
  const [best, ...others] = answer.layouts;
  const [words, ...moreWords] = sentences(layoutWords(best, page));
  const vital = [
    ...vitalTexts(answer, '--show line', units),
    ...gutterWarning(answer),
    ...oldHolesTexts(best.legality, '--show marks'),
  ];
  const fit = answer.inputs.bowler.grip
    ? []
    : ['Span, pitches and hole sizes are assumed: the shop fits them.'];
  return [
    { label: 'DRILL', texts: [best.text], keep: 1, yields: 0, paint: paint.title },
    { label: '', texts: [words, legalText(best), ...moreWords], keep: 2, yields: 4 },
    { label: 'FIRST', texts: [...vital, ...fit], keep: vital.length, yields: 9, paint: paint.caution },
    { label: 'LOG', texts: learnedTexts(answer.learned, answer.targets, units), keep: 1, yields: 2 },
    { label: 'NOTE', texts: regressionNote(answer.search.regression, units), keep: 1, yields: 0 },
    { label: 'HOW SURE', texts: sentences(say(answer.headline, units)), keep: 2, yields: 3 },
    {
      label: 'WHY',
      texts: [...entryTexts(answer, units), ...whyTexts(answer, best, units)],
      keep: 1,
      yields: 6,
    },
    { label: 'PRACTICE', texts: practiceTexts(answer, units), keep: 1, yields: 7 },
    {
      label: 'MOVES MORE',
      texts: strongerTexts(answer, best, units),
      keep: 1,
      yields: 8,
      between: '; ',
    },
    { label: 'SURER', texts: surerTexts(answer, units), keep: 0, yields: 10 },
    {
      label: 'ALSO GOOD',
      texts: others.slice(0, MOST_OTHERS).map(({ text }) => text),
      keep: 1,
      yields: 5,
      between: ', ',
    },
  ];
}

/** Other layouts named on the first screen. */
const MOST_OTHERS = 3;

const legalText = ({ legality }: RankedLayout): string =>
  legality.legal ? 'Legal, as far as checked.' : 'NOT LEGAL: see --show marks.';

/**
 * What has to be known or mended before drilling.
 *
 * @param line  where more is said about the line
 */
export const vitalTexts = ({ inputs, noLine }: RecommendAnswer, line: string, units: Units): string[] => [
  ...guessedTexts(inputs, units),
  ...(noLine ? [`No line brings this ball to the pocket on this lane: see ${line}.`] : []),
];

/** Without a wish: the entry angle that layouts are ranked by, the best ones, and that of the usual layout. */
export const entryTexts = (
  { assumptions, layouts: [best], middle }: Pick<RecommendAnswer, 'assumptions' | 'layouts' | 'middle'>,
  { angle }: Units,
): string[] =>
  assumptions.flatMap((each) => {
    if (each.code !== 'no-wish') return [];
    const { least, most } = each.params.entryDeg;
    const usual =
      best.text === middle.text ? '' : `; the usual layout’s is ${angle.show(middle.reaction.entryAngleDeg)}`;
    return [
      `Entry angle ${withUnit(best.reaction.entryAngleDeg, angle)}, where ${least} to ${most} are best${usual}.`,
    ];
  });

/** What the layout does beside what was wished for, and the true cause where one makes most of a difference. */
export function whyTexts(
  { targets }: Pick<RecommendAnswer, 'targets'>,
  best: RankedLayout,
  units: Units,
): string[] {
  const met = targets.map(({ reading, value, asked = value }) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const unit = units[compared.quantity];
    return `${name} ${withUnit(best.reaction[reading], unit)} (wanted ${unit.show(asked)})`;
  });
  const found = best.reasons.flatMap((reason) => {
    if (reason.code !== 'cause-of-difference') return [];
    const { reading, total, cause, byCause } = reason.params;
    const { name, compared } = REACTION_NUMBERS[reading];
    const { size, name: unit } = units[compared.quantity];
    const [all, part] = [size(total), size(byCause)];
    const subject = targets.length > 1 ? `${name} ` : '';
    const what = `${subject}${all} ${unit} ${total > 0 ? compared.more : compared.less}`;
    return [{ what, cause: CAUSE_NAMES[cause], all, part, unit }];
  });
  const causes = [...grouped(found, ({ cause }) => cause)].map(
    ([cause, each]) => `${each.map(({ what }) => what).join(', ')}${causeText(cause, each)}`,
  );
  return [
    ...(met.length > 0 ? [`${capital(met.join(', '))}.`] : []),
    ...(causes.length > 0 ? [`By physics, one steady shot against the usual: ${causes.join('; ')}.`] : []),
  ];
}

/** How much of the differences with one cause it makes: a main cause may make more than all, which others then undo. */
function causeText(
  cause: string,
  differences: readonly { readonly all: string; readonly part: string; readonly unit: string }[],
): string {
  const [{ all, part }, ...others] = differences;
  const isMore = differences.some((each) => Number(each.part) > Number(each.all));
  if (others.length > 0) {
    const parts = listed(differences.map((each) => `${each.part} ${each.unit}`));
    return isMore ? ` (by ${cause} alone ${parts})` : `, ${parts} of it from ${cause}`;
  }
  return `, ${isMore ? 'more than all' : part === all ? 'all' : part} of it from ${cause}`;
}

/** What physics and practice each would choose, where they differ. */
function practiceTexts({ voices, inputs }: RecommendAnswer, units: Units): string[] {
  if (!voices) return [];
  if (!voices.apart) return ['Physics and practice choose the same layout.'];
  const ids = wishedIds(inputs.want);
  const { difference, belief } = voices.apart;
  return [
    `Physics alone: ${voices.physics.text}. Practice alone: ${voices.practice.text}.`,
    `By physics, practice’s choice is ${sizeText(difference.physics.size, ids, units)} than physics’; by practice, ${sizeText(difference.practice.size, ids, units)}.`,
    ...(belief ? [`What counts most: “${belief.says}”`] : []),
  ];
}

/** From this share of tries on what would make the answer surer stands on the first screen. */
const SURER_FROM = 0.1;

/** What a person can tell or measure and would change the layout most often. */
function surerTexts({ surer }: RecommendAnswer, units: Units): string[] {
  const best = surer.find(({ field }) => field !== null);
  return best && best.chance >= SURER_FROM ? [surerShortly(best, units)] : [];
}

/** Levers named on the first screen. */
const MOST_LEVERS = 2;

/** Other changes that move what is wished for most, with the numbers that they move by more than the bowler's shots vary. */
function strongerTexts(
  { levers, scatter, inputs, targets }: RecommendAnswer,
  best: RankedLayout,
  units: Units,
): string[] {
  const ids = wishedIds(inputs.want);
  const sizeOf = (reaction: LeverEffect['reaction']): Record<WishedId, number> =>
    fromKeys(WISHED_IDS, (id) => reaction[id] - best.reaction[id]);
  return levers
    .map(({ change, reaction, score }) => {
      const size = sizeOf(reaction);
      const strengthIn = (some: readonly WishedId[]): number => overScatter(size, scatter, some);
      const seen = ids.filter((id) => strengthIn([id]) >= IN_A_GAME);
      const isFarther = targets.length > 0 && score < best.score;
      return { change, size, seen, isFarther, strength: strengthIn(ids) };
    })
    .filter(({ seen }) => seen.length > 0)
    .sort((a, b) => b.strength - a.strength)
    .slice(0, MOST_LEVERS)
    .map(
      ({ change, size, seen, isFarther }) =>
        `${say(change, units)}: ${sizeText(size, seen, units)}${isFarther ? `, ${FARTHER}` : ''}`,
    );
}
