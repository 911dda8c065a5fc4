import { afterAll, expect, test } from 'vitest';
import { laneAnswerSchema } from '../../src/records/answers/lane-answer.js';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

test('every fault of a lane file and of the flags is told at once, and nothing is drawn', async () => {
  const file = folder.write('bad-lane.json', {
    ...demo.lane(),
    patternFt: 70,
    frictionOiled: -0.1,
    games: -4,
    zones: [{ fromFt: 0, toFt: 70, fromBoard: -3, toBoard: 44, units: 20 }],
  });
  const { code, out, err } = await runCli(['lane', '--lane', file, '--hand', 'both']);
  expect(code).toBe(2);
  expect(out).toBe('');
  for (const field of [
    'patternFt',
    'frictionOiled',
    'games',
    'zones[0].toFt',
    'zones[0].fromBoard',
    'zones[0].toBoard',
  ])
    expect(err).toContain(field);
  expect(err).toContain('--hand must be right or left');
});

test('the answer as JSON keeps its schema, and a left-hander’s boards count from the left', async () => {
  const { code, out } = await runCli(['lane', '--lane', 'league-night', '--hand', 'left', '--json']);
  expect(code).toBe(0);
  const answer = laneAnswerSchema.parse(JSON.parse(out));
  expect(answer.hand).toBe('left');
  // worn on the right, which is a left-hander's far side: boards 25 to 31 rather than 9 to 15 at 20 ft
  const { units } = answer.film[20];
  expect(units[26]).toBeLessThan(units[12]);
});

test('ASCII signs only on request', async () => {
  const lane = ['lane', '--lane', 'house-easy'];
  const [usual, ascii] = await Promise.all([runCli(lane), runCli([...lane, '--ascii'])]);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: everything outside ASCII is meant
  const onlyAscii = /^[\x00-\x7f]+$/;
  expect(usual.out).not.toMatch(onlyAscii);
  expect(ascii.out).toMatch(onlyAscii);
  expect(ascii.out.split('\n')).toHaveLength(usual.out.split('\n').length);
});
