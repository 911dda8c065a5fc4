import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { CTRL_C, openSession } from '../support/pty-session.js';
import { runCli } from '../support/run-cli.js';

/* Names, keys and heads out of files of others: a control sign in one must not reach whoever looks at it. */

const folder = scratchFolder();
afterAll(() => folder.remove());
const home = join(folder.path, 'home');
const run = (...args: string[]) => runCli(args, { env: { FLAREWISE_HOME: home }, cwd: folder.path });

/** A name with a colour code, a C1 control, signs that turn text around and hide, half a pair, and what XML forbids. */
const EVIL = 'Kim\u001b[31m\u009b31m\u202e\u200b\ud800\uffff';
const UNSEEN = /[^\P{C}\n\r]/u;

folder.write('kim.json', { ...demo.bowler(), name: EVIL, note: EVIL });
folder.write('new.json', { ...demo.ball(), name: EVIL, note: EVIL });
const setUp = run('shelf', 'import', 'kim.json', 'new.json');

const drilled = ['drilled', '--bowler', 'kim', '--ball', 'new', '--layout', '70 x 4 1/2 x 30'];

test.each([
  { args: ['shelf'] },
  { args: ['shelf', '--json'] },
  { args: ['shelf', 'show', 'kim'] },
  { args: ['shelf', 'export'] },
  { args: ['shelf', 'export', '--csv'] },
  { args: drilled },
  { args: [...drilled, '--json'] },
])('on screen: $args', async ({ args }) => {
  await setUp;
  const { code, out, err } = await run(...args);
  expect({ code, unseen: UNSEEN.exec(out + err) }).toEqual({ code: 0, unseen: null });
  expect(out).toMatch(/kim/i);
});

test('what is exported as JSON still holds the name as it was', async () => {
  await setUp;
  const { records } = JSON.parse((await run('shelf', 'export')).out);
  expect(records.map(({ record }: { record: { name: string } }) => record.name)).toEqual([EVIL, EVIL]);
});

test.each(['svg', 'html', 'pdf', 'png'])('a sheet as %s', async (kind) => {
  await setUp;
  const file = join(folder.path, `sheet.${kind}`);
  const { code, err } = await run('sheet', ...drilled.slice(1), '--out', file);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const bytes = readFileSync(file);
  expect(bytes.length).toBeGreaterThan(1000);
  if (kind === 'svg' || kind === 'html') expect(UNSEEN.exec(bytes.toString('utf8'))).toBeNull();
});

describe('in messages', () => {
  folder.write('keys.json', { ...demo.bowler(), [EVIL]: EVIL, hand: EVIL });
  folder.write('broken.json', `{"name": ${EVIL}}`);
  folder.write('heads.csv', `name,${EVIL}\n${EVIL},1\n`);
  folder.write(
    'cells.csv',
    `name,hand,thumbHole,speedMph,revRateRpm,axisTiltDeg,axisRotationDeg,papOverIn,papUpIn\n${EVIL},${EVIL},x,y,z,1,2,3,4\n`,
  );
  const name = folder.write('na\u001b[31m\u009b\u202eme.json', '{}');

  test.each([
    { args: ['shelf', 'import', 'keys.json'] },
    { args: ['shelf', 'import', 'broken.json'] },
    { args: ['shelf', 'import', 'heads.csv'] },
    { args: ['shelf', 'import', 'cells.csv'] },
    { args: ['shelf', 'import', name] },
    { args: ['shelf', EVIL.replace('\ud800', '')] },
    { args: ['drilled', `--${EVIL}`] },
    { args: [EVIL] },
    { args: ['explain', EVIL] },
    { args: ['drilled', '--bowler', EVIL, '--ball', EVIL, '--layout', EVIL] },
  ])('$args', async ({ args }) => {
    const { code, out, err } = await run(...args);
    expect({ code, out, unseen: UNSEEN.exec(err) }).toEqual({ code: 2, out: '', unseen: null });
  });
});

test('in the lists that questions offer', async () => {
  await setUp;
  const session = openSession([], { env: { FLAREWISE_HOME: home } });
  await session.waitFor(/Kim/);
  expect(session.raw()).not.toMatch(/[\u0080-\u009f\u200b\u202e\uffff]/);
  expect(session.raw()).not.toContain('\u001b[31m');
  session.type(CTRL_C);
  await session.exit;
});
