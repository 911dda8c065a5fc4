import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import {
  CTRL_C,
  DOWN,
  ENTER,
  ERASE,
  ESCAPE,
  recordsIn,
  type Turn,
  talk,
} from '../support/interview/ask-session.js';

// biome-ignore-start lint/suspicious/noControlCharactersInRegex: terminals are driven by them
/** What moves the cursor: ends of lines, and ECMA-48's cursor and erase sequences. */
const MOVE = /[\r\n]+|\u001b\[[0-9;?]*[A-HJKf]/;
const COLOUR = /\u001b\[[0-9;]*m/;
// biome-ignore-end lint/suspicious/noControlCharactersInRegex: terminals are driven by them

const who: Turn = [/Whose ball/, ENTER];
const hand: Turn = [/Which hand/, ENTER];
const kind: Turn = [/nearest to how you bowl/, ENTER];
const skill: Turn = [/repeatable are your shots/, ENTER];
const thumb: Turn = [/thumb hole/, ENTER];
const release: Turn[] = [
  [/in mph\?/, ENTER],
  [/rev rate, in rpm/, ENTER],
  [/axis tilt do you/, ENTER],
  [/side turn/, ENTER],
];

test('a left-hander off the shelf, from the first question to the records', async () => {
  const shown = await talk([
    who,
    [/Which hand/, DOWN],
    [/❯ Left/, ENTER],
    kind,
    thumb,
    skill,
    ...release,
    [/far over/, `5 1/8${ENTER}`],
    [/far up/, `1/4 down${ENTER}`],
    [/Which ball/, DOWN],
    [/❯ From a file/, DOWN],
    [/❯ Asymmetric core, mild/, ENTER],
    [/Which oil pattern/, ENTER],
    [/hook start/, DOWN],
    [/❯ Earliest/, ENTER],
    [/hook look/, ENTER],
    [/hook in all/, ENTER],
    [/bowler be saved/, ENTER],
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
    who,
    hand,
    kind,
    thumb,
    skill,
    [/6\/\d+/, `170${ENTER}`],
    [/Must be 8 to 26 mph; got "170"/, `<${ENTER}`],
    [/5\/\d+/, '<'],
    [/4\/\d+/, DOWN],
    [/❯ No/, ENTER],
    [/5\/\d+/, ESCAPE],
    [/4\/\d+[\s\S]*❯ No/, ENTER],
    [/5\/\d+/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('ctrl-C at a choice leaves as well', async () => {
  expect(await talk([who, [/Which hand/, CTRL_C]])).toContain('Cancelled');
});

test.each([
  { how: 'NO_COLOR', env: { NO_COLOR: '1' }, args: [] },
  { how: 'color: false', env: {}, args: ['--no-color'] },
])('no line is wider than a narrow terminal, and $how leaves no colour', async ({ env, args }) => {
  const pap: Turn[] = [
    [/far over/, ENTER],
    [/far up/, ENTER],
  ];
  const leave: Turn = [/13\/\d+[\s\S]*\(15\)/, CTRL_C];
  const turns = [
    who,
    hand,
    kind,
    thumb,
    skill,
    ...release,
    ...pap,
    [/Which ball/, ENTER],
    leave,
  ] satisfies Turn[];
  const shown = await talk(turns, { columns: 60, env, args });
  const [interview = ''] = shown.split('remembered:');
  const lines = interview.split(MOVE).map(stripVTControlCharacters);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(60);
  expect(lines.some((line) => line.includes('Arrows choose'))).toBe(true);
  expect(shown).not.toMatch(COLOUR);
});

test('a bowler who knows only speed and revs measures the rest, and is told what it makes', async () => {
  const shown = await talk([
    who,
    hand,
    kind,
    thumb,
    skill,
    [/in mph\?/, `18${ENTER}`],
    [/rev rate, in rpm/, `350${ENTER}`],
    [/axis tilt do you/, `?${ENTER}`],
    [/axis tilt be found/, ENTER],
    [/edge to edge/, `11 1/4${ENTER}`],
    [/Axis tilt: 15 degrees, give or take 0.84[\s\S]*side turn/, `?${ENTER}`],
    [/rotation be found/, DOWN],
    [/❯ I can’t measure it/, ENTER],
    [/Axis rotation: 48 degrees, give or take 11[\s\S]*far over/, `?${ENTER}`],
    [/PAP be found/, ENTER],
    [/along the midline/, `1/2${ENTER}`],
    [/below the thumb/, `?${ENTER}`],
    [/PAP over: 5.1\d in[\s\S]*Which ball/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('a PAP that no bowler has is refused at its last reading, and an earlier one can be mended', async () => {
  const shown = await talk([
    who,
    hand,
    kind,
    thumb,
    skill,
    [/in mph\?/, ENTER],
    [/rev rate, in rpm/, ENTER],
    [/axis tilt do you/, `60${ENTER}`],
    [/side turn/, ENTER],
    [/far over/, `?${ENTER}`],
    [/PAP be found/, ENTER],
    [/along the midline/, `2${ENTER}`],
    [/below the thumb/, `?${ENTER}`],
    [/Makes PAP over 0.24 in, which must be 2 to 7.5 in; got "\?"/, `<${ENTER}`],
    [/along the midline/, `-1/2${ENTER}`],
    [/below the thumb/, `?${ENTER}`],
    [/PAP over: 2.\d+ in[\s\S]*Which ball/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('an interview that was answered to its end is taken up at its last question', async () => {
  const answers = [
    ['bowler', 'average-right'],
    ['ball', 'plain-medium'],
    ['lane', 'house-easy'],
  ];
  const wishes = [
    ['hookStart', 4],
    ['sharpness', null],
    ['totalHook', 2],
  ];
  const shown = await talk(
    [
      [/stopped after 6 answers. Continue from there/, ENTER],
      [/6\/6 {2}How much should it hook in all[\s\S]*❯ Little/, ENTER],
    ],
    { env: { INTERVIEW_DRAFT: JSON.stringify([...answers, ...wishes]) } },
  );
  expect(recordsIn(shown).want).toEqual({ hookStart: 4, totalHook: 2 });
});

test('what was answered before ctrl-C is remembered, and can be gone on with', async () => {
  const left = await talk([who, [/Which hand/, DOWN], [/❯ Left/, ENTER], [/nearest to how/, CTRL_C]]);
  const [, remembered = ''] = /remembered: (.*)/.exec(stripVTControlCharacters(left)) ?? [];
  expect(JSON.parse(remembered)).toEqual([
    ['bowler', 'by-questions'],
    ['hand', 'left'],
  ]);
  await talk(
    [
      [/stopped after 2 answers. Continue from there/, ENTER],
      [/3\/\d+ {2}Which comes nearest/, CTRL_C],
    ],
    {
      env: { INTERVIEW_DRAFT: remembered },
    },
  );
  await talk(
    [
      [/Continue from there/, `n${ENTER}`],
      [/1\/\d+ {2}Whose ball/, CTRL_C],
    ],
    {
      env: { INTERVIEW_DRAFT: remembered },
    },
  );
});

test('a bowler who knows all, with a used ball by its numbers', async () => {
  const shown = await talk([
    who,
    hand,
    kind,
    thumb,
    skill,
    [/in mph\?/, `18.2${ENTER}`],
    [/rev rate, in rpm/, `340${ENTER}`],
    [/axis tilt do you/, `12${ENTER}`],
    [/side turn/, `50${ENTER}`],
    [/far over/, `5 1/16${ENTER}`],
    [/far up/, `1/2${ENTER}`],
    [/Which ball/, ENTER],
    [/Weight[\s\S]*pounds/, `14${ENTER}`],
    [/RG, in inches/, `2.51${ENTER}`],
    [/Total differential/, `0.046${ENTER}`],
    [/Intermediate/, `0${ENTER}`],
    [/bumps or flats/, ENTER],
    [/CG mark/, `3${ENTER}`],
    [/Top weight/, `2.5${ENTER}`],
    [/Finish/, `3000${ENTER}`],
    [/drilled before\?/, DOWN],
    [/❯ Drilled before/, ENTER],
    [/laid out then/, `70 x 45 x 30${ENTER}`],
    [/Must be 0 to 6.75 in for pin-to-PAP/, `${ERASE.repeat(12)}4 1/2 x 3 3/8 x 2${ENTER}`],
    [/which hand was it/, ENTER],
    [/have a thumb hole/, ENTER],
    [/whose PAP/, DOWN],
    [/❯ Another one/, ENTER],
    [/That PAP/, `5${ENTER}`],
    [/how far up from/, `1/4 down${ENTER}`],
    [/Which oil pattern/, ENTER],
    [/hook start/, ENTER],
    [/hook look/, ENTER],
    [/hook in all/, ENTER],
    [/bowler be saved/, `Kim${ENTER}`],
    [/ball be saved/, ENTER],
  ]);
  expect(recordsIn(shown)).toMatchObject({
    bowler: {
      speedMph: 18.2,
      revRateRpm: 340,
      axisTiltDeg: 12,
      axisRotationDeg: 50,
      pap: { overIn: 5.0625, upIn: 0.5 },
    },
    ball: {
      weightLb: 14,
      surfaceGrit: 3000,
      drilledBefore: [
        {
          layoutDistances: '4.5 x 3.375 x 2',
          pinSide: 'above',
          hand: 'right',
          pap: { overIn: 5, upIn: -0.25 },
        },
      ],
    },
    keep: { bowler: 'Kim' },
  });
});

test('a ball that no core can have is refused in the units of the questions, and described anew', async () => {
  await talk(
    [
      who,
      hand,
      kind,
      thumb,
      skill,
      [/in km\/h\?/, ENTER],
      ...release.slice(1),
      [/far over/, ENTER],
      [/far up/, ENTER],
      [/Which ball/, ENTER],
      [/Weight[\s\S]*kg/, `16 lb${ENTER}`],
      [/RG, in inches/, `69.85 mm${ENTER}`], // 2.75 in
      [/Total differential/, `0.045${ENTER}`],
      [/Intermediate/, `0${ENTER}`],
      [/bumps or flats/, ENTER],
      [/CG mark/, ENTER],
      [/Top weight/, ENTER],
      [/Finish/, ENTER],
      [/ball\.rgIn must go with[\s\S]*got 2\.75 in,[\s\S]*RG 2\.\d+ in[\s\S]*13\/\d+ {2}Weight/, CTRL_C],
    ],
    { columns: 100, args: ['--metric', '--check-ball'] },
  );
});

test('a left-handed two-hander without a thumb hole, in metric units on a narrow screen without colour', async () => {
  const shown = await talk(
    [
      who,
      [/Which hand/, DOWN],
      [/❯ Left/, ENTER],
      [/nearest to how you bowl/, DOWN.repeat(3)],
      [/❯ Two-handed[\s\S]*29 km\/h/, ENTER],
      [/thumb hole/, DOWN],
      [/❯ No/, ENTER],
      [/repeatable are your shots[\s\S]*0.64 km\/h/, ENTER],
      [/in km\/h\?[\s\S]*12.87 to 41.84 km\/h[\s\S]*\(29.0\)/, `18 mph${ENTER}`],
      [/rev rate, in rpm/, ENTER],
      [/axis tilt do you/, ENTER],
      [/side turn/, ENTER],
      [/far over from the grip centre, in mm/, `300${ENTER}`],
      [/Must be 50.8 to 190.5 mm; got "300"/, `127${ENTER}`], // what was refused is gone,
      [/far up from the midline, in mm/, `6.35 down${ENTER}`],
      [/Which ball/, DOWN.repeat(2)],
      [/6.8 kg/, ENTER],
      [/Which oil pattern/, ENTER],
      [/hook start/, ENTER],
      [/hook look/, ENTER],
      [/hook in all/, ENTER],
      [/bowler be saved/, ENTER],
    ],
    { columns: 60, env: { NO_COLOR: '1' }, args: ['--metric'] },
  );
  expect(recordsIn(shown).bowler).toMatchObject({
    hand: 'left',
    thumbHole: false,
    speedMph: 18,
    revRateRpm: 460,
    pap: { overIn: 5, upIn: -0.25 },
  });
  const [interview = ''] = shown.split('{"bowler"');
  const lines = interview.split(MOVE).map(stripVTControlCharacters);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(60);
  expect(shown).not.toMatch(COLOUR);
});
