import type { LoggedAnswer } from '../../records/answers/log-answer.js';
import { countOf } from '../text/count-of.js';
import type { Units } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { plainText } from '../text/plain-text.js';
import { readingErrorsText } from '../text/reading-errors-text.js';
import { nightText, shotText } from '../text/shot-text.js';
import { wrap } from '../text/wrap.js';
import { sayAll } from '../wording/say.js';

/** What a command did to a log: a sentence, and what is odd. */
export const loggedReport = (answer: LoggedAnswer, page: Page): string =>
  loggedSentences(answer, page.units)
    .flatMap((text) => wrap(plainText(text, page.ascii), page.width))
    .map((line) => `${line}\n`)
    .join('');

/** The same as sentences, for a prompt. */
export function loggedSentences(answer: LoggedAnswer, units: Units): string[] {
  const { head, shots, isNewNight } = answer;
  return [
    `${doneText(answer, units)} ${placeText(answer, units)}`.trim(),
    ...(isNewNight && !answer.carried.includes('lane')
      ? [readingErrorsText({ ...head, shots: [...shots] }, units)]
      : []),
    ...sayAll(answer.says, units),
  ];
}

const DONE = { kept: 'Kept', changed: 'Changed', 'taken-back': 'Taken back:' } as const;

function doneText({ id, did, first, shots }: LoggedAnswer, units: Units): string {
  const which = shots.length === 1 ? `shot ${first}` : `shots ${first} to ${first + shots.length - 1}`;
  const seen = shots.length === 1 ? `: ${shotText(shots[0], units)}` : '';
  return `${DONE[did]} ${which} with ${id}${seen}.`;
}

/** The night, which parts of it were carried over from the line before, and how many shots it has: `As before: house-easy, target 14. 5 shots.` */
function placeText({ head, carried, nightShots, did }: LoggedAnswer, units: Units): string {
  const { on, ...rest } = head;
  const isCarried = (field: string): boolean => carried.some((each) => each === field);
  const only = (wanted: boolean): object =>
    Object.fromEntries(Object.entries(rest).filter(([field]) => isCarried(field) === wanted));
  const [before, now] = [nightText(only(true), units), nightText(only(false), units)];
  const night = [
    ...(now === '' ? [] : [`${carried.length > 0 ? 'Now' : (on ?? 'Night')}: ${now}.`]),
    ...(before === '' ? [] : [`As before: ${before}.`]),
  ].join(' ');
  return did === 'taken-back' ? '' : `${night} ${countOf(nightShots, 'shot')}.`;
}
