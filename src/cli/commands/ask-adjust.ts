import { Cancelled } from '../../base/errors.js';
import { askTyped } from '../../interview/ask/ask-typed.js';
import type { Desk } from '../../interview/ask/desk.js';
import { askChoice } from '../../interview/prompt/ask-choice.js';
import { keptIds } from '../../records/home/saved-records.js';
import { WISHES, type Wish, wishWords } from '../../records/schemas/reaction-numbers.js';
import { changeForms, wishUnit } from '../../records/schemas/wish-forms.js';

import { homeOf } from '../files/home.js';
import { loadLane } from '../files/load-record.js';
import { knownLanes, openLog } from '../files/shot-log.js';
import { changeFlag, didNumber, didOption } from '../flags/change-flags.js';
import type { AdjustOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';

/**
 * Asks for what the flags leave out: which ball, on which lane where no night of it is logged, what it should do and what it did. What is
 * typed is read as the flags are.
 *
 * @throws {Cancelled} when the person leaves
 */
export async function askAdjust(
  options: AdjustOptions,
  desk: Desk,
  terminal: Terminal,
): Promise<AdjustOptions> {
  const ball = options.ball ?? (await askBall(keptIds(homeOf(terminal), 'layout'), desk));
  if (ball === undefined) return options; // none is kept: refused, with what to do
  const { record } = openLog(ball, terminal);
  const isLogged = record.nights.some(({ shots }) => shots.length > 0);
  const lane = options.lane ?? (isLogged ? undefined : await askLane(desk, terminal));
  const isWished = WISHES.some((wish) => options[wish] !== undefined);
  const wishes = isWished ? {} : await askWishes(desk);
  const filled = { ...options, ball, ...(lane === undefined ? {} : { lane }), ...wishes };
  return isWished ? filled : { ...filled, ...(await askDid(filled, desk)) };
}

async function askBall(ids: readonly string[], { screen, keys }: Desk): Promise<string | undefined> {
  if (ids.length < 2) return ids[0];
  const question = 'Which drilled ball?';
  const pressed = await askChoice(
    {
      question,
      help: '',
      options: ids.map((label) => ({ label })),
      start: 0,
      backSign: '<',
      keysHelp: 'Arrows choose, Enter takes.',
    },
    screen,
    keys,
  );
  if (pressed.did !== 'give') throw new Cancelled();
  screen.write([{ text: `${question} ${ids[pressed.given]}` }]);
  return ids[pressed.given];
}

const askLane = (desk: Desk, terminal: Terminal): Promise<string> =>
  askTyped(
    'On which lane?',
    `The id of a lane, or a file. Known: ${knownLanes(terminal)
      .map(({ id }) => id)
      .join(', ')}.`,
    undefined,
    (text) => {
      loadLane(text, terminal);
      return text;
    },
    desk,
  );

/** Asks wish by wish until at least one is given. */
async function askWishes(desk: Desk): Promise<Partial<Record<Wish, string>>> {
  for (;;) {
    const wishes: Partial<Record<Wish, string>> = {};
    for (const wish of WISHES) {
      const text = await askTyped(
        wishWords(wish).question,
        `${changeForms(wish)}. Enter alone: as it is.`,
        undefined,
        (typed) => {
          if (typed !== '') changeFlag(wish, typed);
          return typed;
        },
        desk,
      );
      if (text !== '') wishes[wish] = text;
    }
    if (Object.keys(wishes).length > 0) return wishes;
    desk.screen.say('At least one of them should change.', 'yellow');
  }
}

/** What the ball did of what is wished for, as far as the person knows. */
async function askDid(options: AdjustOptions, desk: Desk): Promise<Partial<AdjustOptions>> {
  const did: Partial<Record<ReturnType<typeof didOption>, string>> = {};
  for (const wish of WISHES) {
    if (options[wish] === undefined || options[didOption(wish)] !== undefined) continue;
    const text = await askTyped(
      `And now: ${wishWords(wish).about}?`,
      `In ${wishUnit(wish)}. Enter alone: as logged, else as simulated.`,
      undefined,
      (typed) => {
        if (typed !== '') didNumber(wish, typed);
        return typed;
      },
      desk,
    );
    if (text !== '') did[didOption(wish)] = text;
  }
  return did;
}
