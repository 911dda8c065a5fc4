import { visible } from '../../base/visible.js';
import { back, change, type Interview } from '../interview.js';
import { askChoice } from '../prompt/ask-choice.js';
import { BACK_KEY } from '../questions/question.js';
import { lineFor, type ReviewLine, type ReviewPage, reviewLines } from '../review-lines.js';
import type { WrongAnswer } from '../wrong-answer.js';
import type { Desk } from './desk.js';

/** Where a review stands: the page and the line that is marked. */
interface ReviewPlace {
  readonly page: ReviewPage;
  readonly line: number;
}

/** The review's first line. */
export const REVIEW_TOP: ReviewPlace = { page: 'main', line: 0 };

/** What was done at a review, and where it stands then. */
type Reviewed =
  | { readonly did: 'change'; readonly interview: Interview; readonly place: ReviewPlace }
  | { readonly did: 'go-on' | 'leave' };

/**
 * Shows what was answered and guessed, and lets a line be chosen.
 *
 * @param misfit  shown below, with the review opened at its line; it must be corrected first
 */
export async function putReview(
  interview: Interview,
  misfit: WrongAnswer | null,
  from: ReviewPlace,
  { screen, keys, units }: Desk,
): Promise<Reviewed> {
  let place = misfit ? lineFor(interview, misfit.at, units) : from;
  for (;;) {
    const lines = reviewLines(interview, place.page, units);
    const texts = formatLines(lines, screen);
    const pressed = await askChoice(
      {
        question: TITLES[place.page],
        help: '',
        options: texts.map((label) => ({ label })),
        start: Math.min(place.line, lines.length - 1),
        backSign: BACK_KEY,
        fault: misfit ? visible(misfit.message) : undefined,
        keysHelp: HELPS[place.page],
      },
      screen,
      keys,
    );
    if (pressed.did === 'leave') {
      screen.write([{ text: TITLES[place.page], style: 'dim' }]);
      return { did: 'leave' };
    }
    if (pressed.did === 'go-back' && place.page === 'main') {
      return { did: 'change', interview: back(interview), place: REVIEW_TOP };
    }
    const to = pressed.did === 'give' ? lines[pressed.given]?.to : { page: 'main' as const };
    if (pressed.did === 'not-know' || !to) {
      screen.say(HELP, 'dim', '  ');
    } else if (to === 'on') {
      if (misfit) place = lineFor(interview, misfit.at, units);
      else {
        screen.write(texts.slice(1).map((text) => ({ text: `  ${text}` })));
        return { did: 'go-on' };
      }
    } else if ('ask' in to) {
      const line = pressed.did === 'give' ? pressed.given + 1 : 0; // the next one is marked then
      return { did: 'change', interview: change(interview, to.ask), place: { page: place.page, line } };
    } else place = { page: to.page, line: placeOf(interview, place.page, to.page, units) };
  }
}

/** The line that is marked on a page that is come to: from another page, the one that leads to it. */
function placeOf(interview: Interview, from: ReviewPage, to: ReviewPage, units: Desk['units']): number {
  const lines = reviewLines(interview, to, units);
  return Math.max(
    0,
    lines.findIndex(({ to: leads }) => typeof leads === 'object' && 'page' in leads && leads.page === from),
  );
}

const TITLES: Readonly<Record<ReviewPage, string>> = {
  main: 'All answers and guesses. Enter changes the marked line.',
  bowler: 'More about the bowler. Enter changes the marked line.',
  ball: 'More about the ball. Enter changes the marked line.',
};

const KEYS = 'Arrows mark a line; Escape goes back.';

const GUESSES = 'Guesses make the answer less certain.';

const HELPS: Readonly<Record<ReviewPage, string>> = {
  main: `${GUESSES} ${KEYS}`,
  bowler: `Common hole sizes are taken for the grip; a bowler file can give yours. ${KEYS}`,
  ball: `A ball file can give more, such as a core of its own. ${KEYS}`,
};

const HELP =
  'Each line is an answer, or a guess with how far off it may be. Enter changes the marked line or offers to measure it; on the first line it goes on.';

/** Columns of the labels where all are short. */
const LABEL_WIDTH = 15;

/** The lines of one page, what they say below one another; where there is little room, a guess is called one without its range. */
export function formatLines(
  lines: readonly Pick<ReviewLine, 'label' | 'value' | 'status'>[],
  { plain, width }: Pick<Desk['screen'], 'plain' | 'width'>,
): string[] {
  const labels = Math.max(LABEL_WIDTH, ...lines.map(({ label }) => label.length + 1));
  return lines.map(({ label, value, status }) => {
    const shown = plain(value);
    const beside = width - MARK - labels;
    const [whole, word] = [status, status.split(',')[0]].map((each) =>
      each === '' ? '' : plain(`  (${each})`),
    );
    const told = shown.length + whole.length <= beside ? whole : word;
    const room = beside - told.length;
    const cut = shown.length > room ? `${shown.slice(0, Math.max(0, room - 3))}...` : shown;
    return `${label.padEnd(labels)}${cut}${told}`;
  });
}

/** Columns that the mark of a line takes. */
const MARK = 2;
