import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import { CTRL_C, DOWN, ENTER, ESCAPE, recordsIn, type Turn, talk } from './ask-session.js';

// biome-ignore-start lint/suspicious/noControlCharactersInRegex: terminals are driven by them
/** What moves the cursor: ends of lines, and ECMA-48's cursor and erase sequences. */
const MOVE = /[\r\n]+|\u001b\[[0-9;?]*[A-HJKf]/;
const COLOUR = /\u001b\[[0-9;]*m/;
// biome-ignore-end lint/suspicious/noControlCharactersInRegex: terminals are driven by them

const hand: Turn = [/Which hand/, ENTER];
const thumb: Turn = [/thumb hole/, ENTER];
const release: Turn[] = [
  [/3\/13 .*mph/, ENTER],
  [/turns per minute/, ENTER],
  [/axis stand/, ENTER],
  [/sideways/, ENTER],
];

test('a left-hander off the shelf, from the first question to the records', async () => {
  const shown = await talk([
    [/Which hand/, DOWN],
    [/❯ Left/, ENTER],
    thumb,
    ...release,
    [/far over/, `5 1/8${ENTER}`],
    [/far up/, `1/4 down${ENTER}`],
    [/Which ball/, DOWN],
    [/❯ From a file/, DOWN],
    [/❯ Asymmetric core, mild/, ENTER],
    [/Which lane/, ENTER],
    [/hook start/, DOWN],
    [/❯ Earliest/, ENTER],
    [/hook look/, ENTER],
    [/hook in all/, ENTER],
  ]);
  expect(recordsIn(shown)).toMatchObject({
    bowler: { hand: 'left', thumbHole: true, pap: { overIn: 5.125, upIn: -0.25 } },
    ball: { coreShape: 'asymmetric' },
    lane: { schema: 'flarewise/lane/1' },
    want: { hookStart: 1 },
  });
  expect(shown).toMatch(COLOUR);
});

test('a bad answer is told at once and can be mended; Escape and < go back', async () => {
  const shown = await talk([
    hand,
    thumb,
    [/3\/13/, `170${ENTER}`],
    [/Must be 8 to 26 mph; got "170"/, `<${ENTER}`],
    [/2\/13/, '<'],
    [/1\/13/, ENTER],
    [/2\/13/, DOWN],
    [/❯ No/, ENTER],
    [/3\/13/, ESCAPE],
    [/2\/13[\s\S]*❯ No/, ENTER],
    [/3\/13/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('ctrl-C at a choice leaves as well', async () => {
  expect(await talk([[/Which hand/, CTRL_C]])).toContain('Cancelled');
});

test.each([
  { how: 'NO_COLOR', env: { NO_COLOR: '1' }, args: [] },
  { how: 'color: false', env: {}, args: ['--no-color'] },
])('no line is wider than a narrow terminal, and $how leaves no colour', async ({ env, args }) => {
  const pap: Turn[] = [
    [/far over/, ENTER],
    [/far up/, ENTER],
  ];
  const leave: Turn = [/10\/\d+[\s\S]*\(15\)/, CTRL_C];
  const turns = [hand, thumb, ...release, ...pap, [/Which ball/, ENTER], leave] satisfies Turn[];
  const shown = await talk(turns, { columns: 60, env, args });
  const lines = shown.split(MOVE).map(stripVTControlCharacters);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(60);
  expect(lines.some((line) => line.includes('Arrows choose'))).toBe(true);
  expect(shown).not.toMatch(COLOUR);
});
