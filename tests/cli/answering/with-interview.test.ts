import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { CTRL_C, ENTER, openSession, turnsOf } from '../../support/pty-session.js';

const SCRIPT = fileURLToPath(new URL('../../support/interview/stub-answer.ts', import.meta.url));

let session: ReturnType<typeof openSession> | undefined;
afterEach(() => {
  if (session && !session.isOver()) session.kill();
});

/** Opens the interview and answers it to the review, where an answer is then looked for. */
async function toReview() {
  session = openSession([], { main: ['--import', 'tsx', SCRIPT] });
  const turn = turnsOf(session);
  await turn(/hook start\?/, ENTER);
  await turn(/hook look/, ENTER);
  await turn(/hook in all/, ENTER);
  return turn;
}

test('an answer is looked for while the review is read, and once', async () => {
  const turn = await toReview();
  const [, wish] = await turn(/> Go on[\s\S]*<looking for (\{.*\})>/, ENTER);
  await turn(new RegExp(`<shown ${wish}>`));
  await session?.exit;
  expect(session?.text().match(/<looking for/g)).toHaveLength(1);
});

test('what was looked for is given up once a line is changed', async () => {
  const turn = await toReview();
  const change = `hook start${ENTER}`;
  await turn(/> Go on[\s\S]*<looking for \{.*\}>/, change);
  await turn(/hook start\?/, `Earliest${ENTER}`);
  await turn(/<looking for (\{"hookStart":1.*\})>/, change);
  await turn(/hook start\?/, `Latest${ENTER}`);
  await turn(/<looking for \{"hookStart":5.*\}>[\s\S]*<given up \{"hookStart":1.*\}>/, `go${ENTER}`);
  await turn(/<shown \{"hookStart":5.*\}>/);
  await session?.exit;
});

test('who leaves at the review leaves at once', async () => {
  const turn = await toReview();
  await turn(/> Go on[\s\S]*<looking for/, CTRL_C);
  await session?.exit;
  expect(session?.text()).not.toContain('<shown');
});
