import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { CTRL_C, ENTER, openSession, turnsOf } from '../support/pty-session.js';
import { runCli, runSmall } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

const home = join(folder.path, 'home');
const env = { FLAREWISE_HOME: home };
const adjust = (...args: string[]) => runSmall(['adjust', ...args], { env, cwd: folder.path });

beforeAll(async () => {
  for (const [id, ball] of [
    ['first', 'plain-medium'],
    ['second', 'plain-high'],
  ])
    await runCli(
      ['shelf', 'add', id, '--bowler', 'average-right', '--ball', ball, '--layout', '70 x 4 1/2 x 30'],
      { env },
    );
});

test('every fault is told at once, each with its flag and what to do', async () => {
  const { code, err, out } = await adjust(
    '--ball',
    'frist',
    '--hook-start',
    'sooner',
    '--did-total-hook',
    'a lot',
  );
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(err).toMatch(/Did you mean first\?/);
  expect(err).toMatch(/--hook-start must be "later", "earlier"/);
  expect(err).toMatch(/--did-total-hook must be a number, 0 to 39 boards/);
});

test('at a terminal what cannot be read is told beneath its question, without a flag', async () => {
  const session = openSession(['adjust', '--ball', 'first', '--lane', 'house-easy'], { env });
  const turn = turnsOf(session);
  await turn(/When should the hook start\?/, `3 boards${ENTER}`);
  await turn(/ {2}Must be "later", "earlier"/, CTRL_C);
  await session.exit;
  expect(session.text()).not.toContain('--hook-start must');
});

test('no wish, no ball or no lane is refused by the name of its flag', async () => {
  expect(await adjust('--ball', 'first', '--lane', 'house-easy')).toMatchObject({
    code: 2,
    err: expect.stringMatching(/--hook-start or --sharpness or --total-hook is missing/),
  });
  expect(await adjust('--hook-start', 'later')).toMatchObject({
    code: 2,
    err: expect.stringMatching(/--ball is missing/),
  });
  expect(await adjust('--ball', 'first', '--hook-start', 'later')).toMatchObject({
    code: 2,
    err: expect.stringMatching(/--lane is missing.*\n?.*No night of this ball is logged/),
  });
});

test('a layout whose bowler or ball is not kept is refused by its name', async () => {
  const path = join(home, 'layouts', 'first.json');
  const other = join(home, 'layouts', 'lost.json');
  const record = JSON.parse(readFileSync(path, 'utf8'));
  writeFileSync(other, JSON.stringify({ ...record, bowler: 'Nemo' }));
  const { code, err } = await adjust('--ball', 'lost', '--lane', 'house-easy', '--hook-start', 'later');
  expect(code).toBe(2);
  expect(err).toMatch(/the bowler of lost must be one that is kept, or a demo; got "Nemo"/);
});

test('what was logged is what the ball did, learned from unless it is left out; threads change nothing', async () => {
  for (const shot of [
    ['20', '14', '8', '17'],
    ['20', '14.5', '8', '18'],
  ])
    await runCli(
      ['log', 'first', ...shot, '--night', '2026-03-31', '--lane', 'house-easy', '--target', '14'],
      {
        env,
      },
    );
  const asked = ['--ball', 'first', '--total-hook', '4 boards less', '--json'];
  const [one, two, unlearned] = await Promise.all([
    adjust(...asked, '--workers', '1'),
    adjust(...asked, '--workers', '2'),
    adjust(...asked, '--unlearned'),
  ]);
  expect(one.code).toBe(0);
  expect(two.out).toBe(one.out);
  const answer = JSON.parse(one.out);
  expect(answer.night).toBe('2026-03-31');
  // pins less the line drawn on: 17.5 - (20 - 4 x 5.75), by hand
  expect(answer.wished[0]).toMatchObject({ from: 'log', did: expect.closeTo(20.5, 6), change: -4 });
  expect(answer.line.laydownBoard).toBeCloseTo(20, 6);
  const codes = (text: string) => JSON.parse(text).verdict.map(({ code }: { code: string }) => code);
  expect(
    codes(one.out).some((code: string) => /^(learned-used|release-explains|lane-explains)$/.test(code)),
  ).toBe(true);
  expect(codes(unlearned.out)).not.toContain('learned-used');
  expect(answer.remedies.map(({ remedy }: { remedy: { code: string } }) => remedy.code)).toContain(
    'another-drilled-ball',
  );
});
