import { constants } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { CTRL_C, ENTER, openSession } from '../support/pty-session.js';
import { MAIN, runCli, smallMain } from '../support/run-cli.js';

/* The built program in a real pseudo-terminal, with keys as a person presses them. */

const STTY_AROUND = fileURLToPath(new URL('../support/stty-around.mjs', import.meta.url));

/** Of answers that are waited for only their form is looked at. */
const main = smallMain();

let session: ReturnType<typeof openSession> | undefined;
afterEach(() => {
  if (session && !session.isOver()) session.kill();
});

test('from the first question to the answer at a keyboard, in metric units; exit 0', async () => {
  session = openSession(['--units', 'metric'], { main });
  let of = 1;
  for (let place = 1; place <= of; place += 1) {
    const shown = await session.waitFor(new RegExp(`\\b${place}/(\\d+) {2}([^\\n]*)`));
    of = Number(shown[1]);
    if (/km\/h/.test(shown[2])) session.type('30');
    session.type(ENTER);
  }
  expect(of).toBeGreaterThanOrEqual(12);
  await session.waitFor(/Layout for You[\s\S]*Before drilling[\s\S]*legal/);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
  expect(session.raw()).toContain('\u001b[1m'); // a terminal gets colours
  expect(session.text()).not.toMatch(/undefined|NaN|\[object/);
  const [, answer] = session.text().split('Layout for You');
  expect(answer).not.toMatch(/\b(mph|ft|lb|oz|inches)\b/);
});

test('NO_COLOR is heeded on a terminal: styles nowhere, not in questions either', async () => {
  session = openSession([], { env: { NO_COLOR: '1' } });
  await session.waitFor(/1\/\d+ {2}/);
  session.type(ENTER);
  await session.waitFor(/2\/\d+ {2}/);
  session.type(CTRL_C);
  await session.exit;
  // biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes are what is looked for
  expect(session.raw()).not.toMatch(/\u001b\[(?:[1-9]|[1-9]\d)(?:;\d+)*m/);
});

test.each([1, 3])('ctrl-C at question %i leaves quietly with 130', async (question) => {
  session = openSession([]);
  for (let place = 1; place < question; place += 1) {
    await session.waitFor(new RegExp(`\\b${place}/\\d+ {2}`));
    session.type(ENTER);
  }
  await session.waitFor(new RegExp(`\\b${question}/\\d+ {2}`));
  session.type(CTRL_C);
  expect(await session.exit).toMatchObject({ exitCode: 130 });
  expect(session.text()).not.toMatch(/Error|Cancelled|\n {4}at /);
});

test('what was answered before ctrl-C is offered the next time, and kept names work as records', async () => {
  const folder = scratchFolder();
  const env = { FLAREWISE_HOME: folder.path };
  session = openSession([], { env, main });
  await session.waitFor(/1\/\d+ {2}/);
  session.type(ENTER);
  await session.waitFor(/2\/\d+ {2}Which hand/);
  session.type(CTRL_C);
  await session.exit;

  session = openSession([], { env, main });
  await session.waitFor(/stopped after 1 answer\. Continue from there/);
  session.type(ENTER);
  for (let place = 2, of = 2; place <= of; place += 1) {
    const shown = await session.waitFor(new RegExp(`\\b${place}/(\\d+) {2}([^\\n]*)`));
    of = Number(shown[1]);
    if (/bowler be saved/.test(shown[2])) session.type('Kim');
    session.type(ENTER);
  }
  await session.waitFor(/Kept as bowler\/kim[\s\S]*Layout for Kim/);
  await session.exit;
  expect((await runCli(['shelf', 'show', 'kim'], { env })).out).toContain('"speedMph": 17.5');

  session = openSession([], { env, main });
  await session.waitFor(/1\/\d+ {2}Whose ball/); // the answer stood, so nothing is left to go on with
  session.type(CTRL_C);
  await session.exit;
  folder.remove();
});

test('leaving before the answer stands loses no answer, and keeps nothing twice', async () => {
  const folder = scratchFolder();
  const env = { FLAREWISE_HOME: folder.path };
  session = openSession([], { env, main });
  let of = 1;
  for (let place = 1; place <= of; place += 1) {
    const shown = await session.waitFor(new RegExp(`\\b${place}/(\\d+) {2}([^\\n]*)`));
    of = Number(shown[1]);
    if (/bowler be saved/.test(shown[2])) session.type('Kim');
    session.type(ENTER);
  }
  await session.waitFor(/Kept as bowler\/kim/);
  session.type(CTRL_C);
  expect(await session.exit).toMatchObject({ signal: constants.signals.SIGINT }); // which a shell counts as 130

  session = openSession([], { env, main });
  await session.waitFor(new RegExp(`stopped after ${of} answers\\. Continue from there`));
  session.type(ENTER);
  await session.waitFor(new RegExp(`${of}/${of} {2}`));
  session.type(ENTER);
  await session.waitFor(/Kept as bowler\/kim\./);
  session.type(CTRL_C);
  await session.exit;
  folder.remove();
});

test('where nothing can be kept the answer is shown all the same, and then what went wrong', async () => {
  const folder = scratchFolder();
  const home = join(folder.write('file', 'no folder'), 'home');
  session = openSession([], { env: { FLAREWISE_HOME: home }, main });
  for (let place = 1, of = 1; place <= of; place += 1) {
    const shown = await session.waitFor(new RegExp(`\\b${place}/(\\d+) {2}([^\\n]*)`));
    of = Number(shown[1]);
    if (/bowler be saved/.test(shown[2])) session.type('Kim');
    session.type(ENTER);
  }
  await session.waitFor(/Layout for Kim[\s\S]*Before drilling/);
  expect((await session.exit).exitCode).not.toBe(0);
  expect(session.text()).not.toContain('Kept as');
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
  { when: 'at the first question', until: /1\/\d+ {2}/, answers: 0, ends: '130' },
  { when: 'while the engine is made ready', until: /Which oil pattern/, answers: 99, ends: '130' },
  { when: 'while it searches', until: /Trying layouts/, args: ['--no-input'], answers: 0, ends: 'SIGINT' },
])('ctrl-C $when leaves the terminal as it was', async ({ until, args = [], answers, ends }) => {
  session = openSession(args, { main: [STTY_AROUND, MAIN] });
  for (let place = 1; place <= answers; place += 1) {
    const shown = await session.waitFor(new RegExp(`\\b${place}/\\d+ {2}([^\\n]*)`));
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
