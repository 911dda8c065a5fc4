import { constants } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { usualGrip } from '../../src/records/schemas/grip.js';
import { demo, scratchFolder } from '../support/demo-files.js';
import { CTRL_C, ENTER, ESCAPE, openSession, turnsOf } from '../support/pty-session.js';
import { MAIN, runCli, smallMain } from '../support/run-cli.js';

/* The built program in a real pseudo-terminal, with keys as a person presses them. */

const STTY_AROUND = fileURLToPath(new URL('../support/stty-around.mjs', import.meta.url));

/** Of answers that are waited for only their form is looked at. */
const main = smallMain();

let session: ReturnType<typeof openSession> | undefined;
afterEach(() => {
  if (session && !session.isOver()) session.kill();
});

/** Answers all questions up to the review. @returns how many there were */
async function toReview(
  turn: ReturnType<typeof turnsOf>,
  keysFor: (text: string) => string = () => ENTER,
  from = 1,
) {
  let of = from;
  for (let place = from; place <= of; place += 1) {
    const shown = await turn(new RegExp(`\\b${place}/(\\d+) ([^\\n]*)\\r?\\n`));
    of = Number(shown[1]);
    session?.type(keysFor(shown[2] as string));
  }
  await turn(/> Go on/);
  return of;
}

/** Saves the bowler under a name, from the review, and goes on. */
async function saveAndGoOn(turn: ReturnType<typeof turnsOf>, name: string): Promise<void> {
  session?.type(`more on bo${ENTER}`);
  await turn(/More about the bowler/, `sa${ENTER}`);
  await turn(/Save this bowler\?/, `${name}${ENTER}`);
  await turn(/More about the bowler/, ESCAPE);
  await turn(/> More on bowler/, `go${ENTER}`);
}

test('from the first question to the answer at a keyboard, in metric units; exit 0', async () => {
  session = openSession(['--units', 'metric'], { main });
  const turn = turnsOf(session);
  const of = await toReview(turn, (text) => (/km\/h/.test(text) ? `30${ENTER}` : ENTER));
  expect(of).toBe(11);
  session.type(ENTER);
  await turn(/Layout for You[\s\S]*DRILL[\s\S]*Legal[\s\S]*HOW SURE[\s\S]*w: why[\s\S]*Enter: done/, 'd');
  await turn(/Before drilling[\s\S]*legal[\s\S]*Enter: done/, ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
  expect(session.raw()).toContain('\u001b[1m'); // a terminal gets colours
  expect(session.text()).not.toMatch(/undefined|NaN|\[object/);
  const [, answer] = session.text().split('Layout for You');
  expect(answer).not.toMatch(/\b(mph|ft|lb|oz|inches)\b/);
});

test('on a terminal what is longer than it goes through the person’s pager, and what is not does not', async () => {
  const flags = ['--bowler', 'average-right', '--ball', 'plain-low', '--lane', 'dry', '--hook-start', 'late'];
  const env = { PAGER: 'sed s/^/paged:/' };
  session = openSession(['recommend', ...flags, '--full'], { env, main });
  await session.waitFor(/paged:Layout for[\s\S]*paged:Before drilling[\s\S]*Enter: done/);
  session.type('q');
  expect(await session.exit).toMatchObject({ exitCode: 0 });

  session = openSession(['recommend', ...flags], { env, main });
  await session.waitFor(/Layout for[\s\S]*Enter: done/);
  session.type(ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
  expect(session.text()).not.toContain('paged:');
});

test('NO_COLOR is heeded on a terminal: styles nowhere, not in questions either', async () => {
  session = openSession([], { env: { NO_COLOR: '1' } });
  await session.waitFor(/1\/\d+ /);
  session.type(ENTER);
  await session.waitFor(/2\/\d+ /);
  session.type(CTRL_C);
  await session.exit;
  // biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes are what is looked for
  expect(session.raw()).not.toMatch(/\u001b\[(?:[1-9]|[1-9]\d)(?:;\d+)*m/);
});

test.each([1, 3])('ctrl-C at question %i leaves quietly with 130', async (question) => {
  session = openSession([]);
  for (let place = 1; place < question; place += 1) {
    await session.waitFor(new RegExp(`\\b${place}/\\d+ `));
    session.type(ENTER);
  }
  await session.waitFor(new RegExp(`\\b${question}/\\d+ `));
  session.type(CTRL_C);
  expect(await session.exit).toMatchObject({ exitCode: 130 });
  expect(session.text()).not.toMatch(/Error|Cancelled|\n {4}at /);
});

test('what was answered before ctrl-C is offered the next time, and kept names work as records', async () => {
  const folder = scratchFolder();
  const env = { FLAREWISE_HOME: folder.path };
  session = openSession([], { env, main });
  await session.waitFor(/1\/\d+ /);
  session.type(ENTER);
  await session.waitFor(/2\/\d+ Which hand/);
  session.type(CTRL_C);
  await session.exit;

  session = openSession([], { env, main });
  const turn = turnsOf(session);
  await turn(/stopped after 1 answer\.[\s\S]*Continue from there/, ENTER);
  await toReview(turn, () => ENTER, 2);
  await saveAndGoOn(turn, 'Kim');
  await turn(/Kept as bowler\/kim[\s\S]*Layout for Kim/);
  await turn(/g: change[\s\S]*Enter: done/, 'g');
  await turn(/What next\?/, ESCAPE); // back to the keys below the answer
  await turn(/g: change[\s\S]*Enter: done/, 'g');
  await turn(/What next\?/, `pa${ENTER}`); // what was guessed can be given or measured on the spot
  await turn(/give your PAP/, ENTER);
  await turn(/far over/, `5${ENTER}`);
  await turn(/far up/, ENTER);
  await turn(/All answers/, `go${ENTER}`);
  await turn(/Layout for Kim[\s\S]*g: change[\s\S]*Enter: done/, ENTER);
  await session.exit;
  expect((await runCli(['shelf', 'show', 'kim'], { env })).out).toContain('"speedMph": 17.5');

  session = openSession([], { env, main });
  await session.waitFor(/1\/\d+ Who bowls/); // the answer stood, so nothing is left to go on with
  session.type(CTRL_C);
  await session.exit;
  folder.remove();
});

test('leaving before the answer stands loses no answer, and keeps nothing twice', async () => {
  const folder = scratchFolder();
  const env = { FLAREWISE_HOME: folder.path };
  session = openSession([], { env, main });
  let turn = turnsOf(session);
  const of = await toReview(turn);
  await saveAndGoOn(turn, 'Kim');
  await turn(/Kept as bowler\/kim/, CTRL_C);
  expect(await session.exit).toMatchObject({ signal: constants.signals.SIGINT }); // which a shell counts as 130

  session = openSession([], { env, main });
  turn = turnsOf(session);
  await turn(new RegExp(`stopped after ${of + 1} answers\\.[\\s\\S]*Continue from there`), ENTER);
  await turn(/> Go on/, ENTER);
  await turn(/Kept as bowler\/kim\./);
  session.type(CTRL_C);
  await session.exit;
  folder.remove();
});

test('where nothing can be kept the answer is shown all the same, and then what went wrong', async () => {
  const folder = scratchFolder();
  const home = join(folder.write('file', 'no folder'), 'home');
  session = openSession([], { env: { FLAREWISE_HOME: home }, main });
  const turn = turnsOf(session);
  await toReview(turn);
  await saveAndGoOn(turn, 'Kim');
  await turn(/Layout for Kim[\s\S]*HOW SURE[\s\S]*Enter: done/, ENTER);
  expect((await session.exit).exitCode).not.toBe(0);
  expect(session.text()).not.toContain('Kept as');
  folder.remove();
});

test('an answer that is found while the review is read counts what was logged', async () => {
  const folder = scratchFolder();
  const env = { FLAREWISE_HOME: join(folder.path, 'home') };
  const records = ['--bowler', 'average-right', '--ball', 'plain-medium'];
  const night = ['--night', '2026-03-31', '--lane', 'house-easy', '--target', '14'];
  await runCli(['shelf', 'add', 'first', ...records, '--layout', '45 x 4 x 35'], { env });
  await runCli(['log', 'first', '20', '14', '8', '17', ...night], { env });
  session = openSession(['--workers', '2', 'recommend', ...records, '--lane', 'house-easy'], { env, main });
  const turn = turnsOf(session);
  await toReview(turn);
  session.type(ENTER);
  await turn(/LOG +Learned from 1 shot on 1 night[\s\S]*Enter: done/, ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
  folder.remove();
});

test('a first look stands before anything was tried, and is gone when the answer stands', async () => {
  session = openSession(['--no-input'], { main });
  await session.waitFor(/Layout for/);
  const shown = session.text();
  expect(shown).toMatch(
    /First look, by the regression alone: about [\d /x]+, hook start near \d+ ft\.\s+Working it out…\s+[#.]+ {2}Trying/,
  );
  const look = session.raw().slice(session.raw().indexOf('First look'));
  // lines that it took are gone up again and cleared before the answer is written
  // biome-ignore lint/suspicious/noControlCharactersInRegex: what is looked for moves the cursor
  expect(look).toMatch(/^[^\u001b]*\r\n[^\u001b]*\r\n\u001b[\s\S]*\u001b\[2F\u001b\[J[\s\S]*Layout for/);
  expect(look.match(/First look/g)).toHaveLength(1);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
});

test('with --json nothing of a first look is shown, on a terminal neither', async () => {
  session = openSession(['--no-input', '--json'], { main });
  await session.waitFor(/"schema": "flarewise\/recommend/);
  await session.exit;
  expect(session.text()).not.toContain('First look');
});

test.each([
  { when: 'at the first question', until: /1\/\d+ /, answers: 0, ends: '130' },
  { when: 'while the engine is made ready', until: /Which oil pattern/, answers: 99, ends: '130' },
  { when: 'while it searches', until: /Trying layouts/, args: ['--no-input'], answers: 0, ends: 'SIGINT' },
])('ctrl-C $when leaves the terminal as it was', async ({ until, args = [], answers, ends }) => {
  session = openSession(args, { main: [STTY_AROUND, MAIN] });
  for (let place = 1; place <= answers; place += 1) {
    const shown = await session.waitFor(new RegExp(`\\b${place}/\\d+ ([^\\n]*)`));
    if (until.test(shown[1])) break;
    session.type(ENTER);
  }
  await session.waitFor(until);
  session.type(CTRL_C);
  const [, before] = await session.waitFor(/before (\S+)/);
  const [, after, how] = await session.waitFor(/after (\S+) (\S+)/);
  expect(after).toBe(before);
  expect(how).toBe(ends);
  expect(session.raw().lastIndexOf('[?25l')).toBeLessThanOrEqual(session.raw().lastIndexOf('[?25h')); // the cursor is seen
});

test('ctrl-C during the search ends the program quietly, by the signal', async () => {
  session = openSession(['--no-input']);
  await session.waitFor(/\d+ %/); // the progress bar
  session.type(CTRL_C);
  expect(await session.exit).toMatchObject({ signal: 2 });
  expect(session.text()).not.toMatch(/Error|\n {4}at |Layout for/);
});

test('--no-input on a terminal asks nothing', async () => {
  session = openSession(['recommend', '--no-input']);
  expect(await session.exit).toMatchObject({ exitCode: 2 });
  expect(session.text()).toContain('--bowler is missing');
});

test.each([
  { args: ['recommend'], asked: ['Who bowls'] },
  {
    args: ['recommend', '--bowler', 'average-right', '--lane', 'house-easy', '--hook-start', 'late'],
    asked: ['1/1 Which ball'],
  },
  {
    args: ['recommend', '--bowler', 'average-right', '--ball', 'plain-low', '--lane', 'dry'],
    asked: ['1/3 When'],
  },
  { args: ['judge', '--bowler', 'average-right'], asked: ['1/6 Which layout'] },
  { args: ['sheet', '--ball', 'plain-low'], asked: ['1/7 Which layout'] },
])('$args in a terminal asks only for what its flags leave out', async ({ args, asked }) => {
  session = openSession(args, { main });
  for (const text of asked) await session.waitFor(new RegExp(text));
  session.type(CTRL_C);
  expect(await session.exit).toMatchObject({ exitCode: 130 });
});

test('a sheet for a layout, bowler and ball that were asked for', async () => {
  session = openSession(['sheet', '--bowler', 'average-right'], { main });
  const turn = turnsOf(session);
  await turn(/1\/2 Which layout/, '?');
  await turn(/layout: Where pin[\s\S]*Cannot be guessed[\s\S]*1\/2 Which layout/, `70 x 9 x 30${ENTER}`);
  await turn(/Must be 0 to 6\.75 in for pin-to-PAP/, `70 x 4 1/2 x 30${ENTER}`);
  await turn(/2\/2 Which ball/, 'Plain');
  await turn(/> Plain core/, ENTER);
  await turn(/> Go on[\s\S]*Layout +70 x 4 1\/2 x 30/, ENTER);
  await turn(/70 x 4 1\/2 x 30[\s\S]*What next/, ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
});

test('a layout that this ball cannot have opens the review at its line with the message, and can be mended there', async () => {
  session = openSession(['sheet', '--bowler', 'average-right', '--ball', 'asymmetric-mild'], { main });
  const turn = turnsOf(session);
  await turn(/Which layout/, `70 cg x 4 1/2 x 30${ENTER}`);
  await turn(/> Go on/, ENTER);
  await turn(/> Layout +70 cg x 4 1\/2 x 30[\s\S]*mass-bias mark/, ENTER);
  await turn(/Which layout/, `70 x 4 1/2 x 30${ENTER}`);
  await turn(/All answers[\s\S]*Layout +70 x 4 1\/2 x 30/, `go${ENTER}`);
  await turn(/What next/, ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
});

test('a grip that cannot be placed opens the review at the bowler with the message, and no answer is lost', async () => {
  const folder = scratchFolder();
  const grip = {
    ...usualGrip(true),
    vents: [{ into: 'thumb' as const, diameterIn: 0.25, overIn: 0.2, upIn: -2.7 }],
  };
  const file = folder.write('vent.json', JSON.stringify({ ...demo.bowler(), grip }));
  session = openSession(['sheet', '--layout', '70 x 4 1/2 x 30'], { main });
  const turn = turnsOf(session);
  await turn(/Who bowls/, 'From');
  await turn(/> From a file/, ENTER);
  await turn(/Which file/, `${file}${ENTER}`);
  await turn(/Which ball/, 'Plain');
  await turn(/> Plain core/, ENTER);
  await turn(/> Go on/, ENTER);
  await turn(/> Bowler +Average right-hander[\s\S]*Plain core[\s\S]*bowler\.grip\.vents\[0\]/, ENTER);
  await turn(/Who bowls/, 'Average r');
  await turn(/> Average right-hander/, ENTER);
  await turn(/Bowler +Average right-hander/, `go${ENTER}`);
  await turn(/What next/, ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
  folder.remove();
});

test('what is wrong with a record that a flag names ends the command with its message', async () => {
  const folder = scratchFolder();
  const file = folder.write('ball.json', JSON.stringify({ ...demo.ball(), rgIn: 2.75 }));
  session = openSession(['sheet', '--ball', file, '--layout', '70 x 4 1/2 x 30'], { main });
  const turn = turnsOf(session);
  await turn(/Who bowls/, 'Average r');
  await turn(/> Average right-hander/, ENTER);
  await turn(/> Go on/, ENTER);
  await turn(/ball\.json\s+rgIn must go with/);
  expect(await session.exit).toMatchObject({ exitCode: 2 });
  folder.remove();
});
