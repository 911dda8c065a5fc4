import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import {
  CTRL_C,
  CTRL_Z,
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

const who: Turn = [/Who bowls/, ENTER];
const hand: Turn = [/Which hand/, ENTER];
const speed: Turn = [/in mph\?/, ENTER];
const revs: Turn = [/rev rate, in rpm/, ENTER];
const tilt: Turn = [/axis tilt do you/, ENTER];
const rotation: Turn = [/side turn/, ENTER];
const ball: Turn = [/Which ball/, ENTER];
const lane: Turn = [/Which oil pattern/, ENTER];
const wishes: Turn[] = [
  [/hook start/, ENTER],
  [/hook look/, ENTER],
  [/hook in all/, ENTER],
];
const release: Turn[] = [speed, revs, tilt, rotation];
/** Enter all the way to the review. */
const toReview: Turn[] = [who, hand, ...release, ball, lane, ...wishes];
const goOn: Turn = [/> Go on/, ENTER];

/** Marks a line of the review by its first letters and opens it. */
const open = (letters: string): Turn => [/All answers/, `${letters}${ENTER}`];

const keysIn = (turns: readonly Turn[]): number =>
  turns.reduce((sum, [, type]) => sum + (type === DOWN ? 1 : type.length), 0);

/** The lines of the interview, before its records, as they were written. */
function linesOf(shown: string): readonly string[] {
  const [interview = ''] = shown.split(/remembered:|\{"bowler"/);
  return interview.split(MOVE).map(stripVTControlCharacters);
}

const widest = (shown: string): number => Math.max(...linesOf(shown).map((line) => line.length));

test('a left-hander off the shelf, from the first question to the records', async () => {
  const shown = await talk([
    who,
    [/Which hand/, DOWN],
    [/> Left, with a thumb/, ENTER],
    ...release,
    [/Which ball/, 'Asym'],
    [/> Asymmetric core, mild/, ENTER],
    lane,
    [/hook start/, DOWN],
    [/> Earliest/, ENTER],
    [/hook look/, ENTER],
    [/hook in all/, ENTER],
    open('pa'),
    [/give your PAP/, ENTER],
    [/far over/, `5 1/8${ENTER}`],
    [/far up/, `1/4 down${ENTER}`],
    [/PAP +5 1\/8 in over, 1\/4 in down[\s\S]*All answers|All answers[\s\S]*1\/4 in down/, `go${ENTER}`],
  ]);
  expect(recordsIn(shown)).toMatchObject({
    bowler: { hand: 'left', thumbHole: true, pap: { overIn: 5.125, upIn: -0.25 } },
    ball: { coreShape: 'asymmetric' },
    lane: { schema: 'flarewise/lane/1' },
    want: { hookStart: 1 },
  });
  expect(shown).toMatch(COLOUR);
});

test('who knows only speed and revs is at the answer within 30 keys, and the guesses are in the record', async () => {
  const turns: Turn[] = [
    who,
    hand,
    [/in mph\?/, `18${ENTER}`],
    [/rev rate, in rpm/, `350${ENTER}`],
    [/axis tilt do you/, '?'],
    [/axis tilt: How far[\s\S]*Taken for now: 14 degrees \(guess, ± 5 deg\)[\s\S]*side turn/, '?'],
    [/Taken for now: 48 degrees[\s\S]*Which ball/, '?'],
    [/core: The dense body[\s\S]*Which oil/, '?'],
    [/hook start/, '?'],
    [/hook look/, '?'],
    [/hook in all/, '?'],
    goOn,
  ];
  expect(keysIn(turns)).toBeLessThanOrEqual(30);
  const { bowler, ball, want } = recordsIn(await talk(turns));
  expect(bowler).toMatchObject({ speedMph: 18, revRateRpm: 350, pap: { overIn: 4.875 } });
  expect(Object.keys(bowler.uncertainty)).toEqual(['axisTiltDeg', 'axisRotationDeg', 'papOverIn', 'papUpIn']);
  expect(bowler.uncertainty.papOverIn).toBe(0.4);
  expect(ball.note).toContain('guessed: weight, RG, differential');
  expect(want).toEqual({});
});

test('a bad answer is told at once and can be mended; Escape and < go back', async () => {
  const shown = await talk([
    who,
    hand,
    [/3\/11/, `170${ENTER}`],
    [/Must be 8 to 26 mph; got "170"/, '<'],
    [/2\/11/, DOWN],
    [/> Left, with/, ENTER],
    [/3\/11/, ESCAPE],
    [/2\/11[\s\S]*> Left, with/, '<'],
    [/1\/11/, ENTER],
    [/2\/11[\s\S]*> Left, with/, ENTER],
    [/3\/11/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('a word that begins no line chooses nothing, and what is typed is shown', async () => {
  const shown = await talk([
    who,
    [/Which hand/, `dunno${ENTER}`],
    [/No line begins with “dunno”\. Choose with the arrows, or take letters back\./, ERASE.repeat(5)],
    [/Which hand/, 'le'],
    [/> Left, with[\s\S]*Typed: le/, ENTER],
    [/3\/11/, CTRL_C],
  ]);
  expect(shown).not.toMatch(/Which hand[^\n]*Right, with a thumb hole\r?\n/);
});

test('three Escapes at once go back three times, and one waits for nothing', async () => {
  const shown = await talk([
    who,
    hand,
    [/3\/11/, `18${ENTER}`],
    [/4\/11/, ENTER],
    [/5\/11/, ESCAPE.repeat(3)],
    [/4\/11[\s\S]*3\/11[\s\S]*2\/11[\s\S]*Which hand/, ENTER],
    [/3\/11[\s\S]*\(18\)/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('ctrl-C at a choice leaves as well, and says that answers are kept and how to go on', async () => {
  const shown = await talk([who, [/Which hand/, CTRL_C]]);
  expect(shown).toContain('Cancelled');
  expect(shown).toContain('Your answer is kept. Run the same command again to go on.');
  expect(await talk([[/Who bowls/, CTRL_C]])).not.toContain('kept');
});

test('ctrl-Z stops it, fg goes on where one was, and the terminal is the shell’s between', async () => {
  const shown = await talk(
    [
      who,
      [/2\/11/, CTRL_Z],
      [/Stopped[\s\S]*\$ $/, 'stty -a\r'],
      [/[^-]icanon[\s\S]*\$ $/, 'fg\r'],
      [/2\/11 Which hand/, DOWN],
      [/> Left, with/, ENTER],
      [/3\/11/, CTRL_C],
      [/remembered: \[\["bowler","kind:usual"\],\["hand","left"\]\]/, ''],
    ],
    { shell: true },
  );
  expect(shown).toContain('Your 2 answers are kept');
});

test('what was typed stands there again after ctrl-Z and fg', async () => {
  const shown = await talk(
    [
      who,
      hand,
      [/in mph\?/, `18${CTRL_Z}`],
      [/Stopped[\s\S]*\$ $/, 'fg\r'],
      [/> \(17.5\) 18/, `.5${ENTER}`],
      [/in mph\? 18.5[\s\S]*4\/11/, CTRL_C],
      [/remembered/, ''],
    ],
    { shell: true },
  );
  expect(shown).toContain('Your 3 answers are kept');
});

test.each([
  { how: 'NO_COLOR', env: { NO_COLOR: '1' }, columns: 60 },
  { how: 'color: false', env: {}, columns: 60 },
  { how: 'color: false', env: {}, columns: 80 },
])('no line is wider than a terminal of $columns, and $how leaves no colour', async ({ env, columns }) => {
  const turns: Turn[] = [who, hand, speed, revs, [/axis tilt do you/, '?'], rotation, ball, lane, ...wishes];
  const shown = await talk([...turns, [/> Go on/, CTRL_C]], { columns, env, args: ['--no-color'] });
  expect(widest(shown)).toBeLessThanOrEqual(columns);
  expect(linesOf(shown).some((line) => line.includes('Arrows choose'))).toBe(true);
  expect(shown).not.toMatch(COLOUR);
});

test('a dumb terminal in another locale gets neither movements nor signs outside ASCII', async () => {
  const shown = await talk(
    [
      who,
      [/Which hand/, DOWN],
      [/> Left, with/, ENTER],
      [/in mph\?/, `17x${ERASE}0${ENTER}`],
      [/Must be 8 to 26 mph; got "170"/, `17${ENTER}`],
      revs,
      [/axis tilt do you/, '?'],
      [/\+\/- 5 deg[\s\S]*side turn/, ESCAPE],
      [/axis tilt do you/, ENTER],
      rotation,
      ball,
      lane,
      ...wishes,
      goOn,
    ],
    { columns: 60, env: { TERM: 'dumb', LANG: 'C' }, args: ['--no-color', '--ascii'] },
  );
  expect(recordsIn(shown).bowler).toMatchObject({ hand: 'left', speedMph: 17, axisTiltDeg: 14 });
  const [interview = ''] = shown.split('{"bowler"');
  expect(interview.replaceAll('\r', '').replaceAll('\n', '')).toMatch(/^[\x20-\x7e]*$/);
  expect(widest(shown)).toBeLessThanOrEqual(60);
});

test('a list that is cut says how many lines it has; where nothing can be written over, it is written whole', async () => {
  const cut = await talk([[/Who bowls/, CTRL_C]], { columns: 60, rows: 12 });
  expect(cut).toMatch(/\d+ lines in all: arrows show the others/);
  expect(cut).not.toContain('From a file');
  const whole = await talk([[/Who bowls/, CTRL_C]], { columns: 60, rows: 12, env: { TERM: 'dumb' } });
  expect(whole).not.toContain('lines in all');
  expect(whole).toContain('From a file');
});

test('all answers and guesses stand on one screen of 24 lines, and any can be changed from it', async () => {
  const shown = await talk(
    [
      ...toReview,
      open('we'),
      [/Weight before/, `14${ENTER}`],
      [/> RG/, ENTER], // the next line is marked
      [/RG, in inches/, '?'],
      [/RG: How far[\s\S]*All answers/, `la${ENTER}`],
      [/Which oil/, DOWN],
      [/> /, ENTER],
      [/All answers/, `more on bo${ENTER}`],
      [/More about the bowler[\s\S]*Common hole sizes/, `re${ENTER}`],
      [/How repeatable/, DOWN],
      [/> Very repeatable/, ENTER],
      [/More about the bowler/, ESCAPE],
      [/All answers/, `go${ENTER}`],
    ],
    { rows: 24 },
  );
  expect(recordsIn(shown)).toMatchObject({
    bowler: { skill: 'advanced' },
    ball: { weightLb: 14, rgIn: 2.53 },
  });
  const block = shown.slice(shown.indexOf('All answers'));
  const [first = ''] = block.split('\u001b[');
  const screen = stripVTControlCharacters(block).split(/\r?\n/);
  expect(first).toContain('All answers');
  expect(screen.findIndex((line) => line.includes('Escape goes back'))).toBeLessThan(24);
});

test('a number is measured from the review, and is told what it makes', async () => {
  const shown = await talk([
    ...toReview,
    open('axis t'),
    [/give your axis tilt/, DOWN],
    [/> Measure it: a tape/, ENTER],
    [/edge to edge/, `11 1/4${ENTER}`],
    [/Axis tilt: 15 degrees, give or take 0.84[\s\S]*All answers/, `axis r${ENTER}`],
    [/give your axis rotation/, DOWN.repeat(2)],
    [/> Guess it/, ENTER],
    [/Axis rotation: 48 degrees, give or take 11[\s\S]*All answers/, `pa${ENTER}`],
    [/give your PAP/, DOWN],
    [/> Measure it from/, ENTER],
    [/along the midline/, `1/2${ENTER}`],
    [/below the thumb/, '?'],
    [
      /PAP over: 5.1\d in[\s\S]*measured, ± [\s\S]*All answers|All answers[\s\S]*PAP +5 [\d/]+ in over[^\n]*measured/,
      `go${ENTER}`,
    ],
  ]);
  expect(recordsIn(shown).bowler).toMatchObject({
    axisTiltDeg: 15,
    uncertainty: { axisTiltDeg: 0.84, axisRotationDeg: 11 },
  });
});

test('a PAP that no bowler has is refused at its last reading, and an earlier one can be mended', async () => {
  const shown = await talk([
    who,
    hand,
    speed,
    revs,
    [/axis tilt do you/, `60${ENTER}`],
    rotation,
    ball,
    lane,
    ...wishes,
    open('pa'),
    [/give your PAP/, DOWN],
    [/> Measure it from/, ENTER],
    [/along the midline/, `2${ENTER}`],
    [/below the thumb/, '?'],
    [/Makes PAP over 0.24 in, which must be 2 to 7.5 in; got "\?"[\s\S]*below the thumb/, '<'],
    [/along the midline/, `-1/2${ENTER}`],
    [/below the thumb/, '?'],
    [/All answers[\s\S]*PAP +2 [\d/]+ in over/, CTRL_C],
  ]);
  expect(shown).toContain('Cancelled');
});

test('an interview that was answered to its end is taken up at its review', async () => {
  const answers = [
    ['bowler', 'average-right'],
    ['ball', 'plain-medium'],
    ['lane', 'house-easy'],
  ];
  const given = [
    ['hookStart', 4],
    ['sharpness', null],
    ['totalHook', 2],
  ];
  const shown = await talk(
    [
      [/stopped after 6 answers[\s\S]*Continue from there/, ENTER],
      [/> Go on[\s\S]*Total hook +Little/, ENTER],
    ],
    { env: { INTERVIEW_DRAFT: JSON.stringify([...answers, ...given]) } },
  );
  expect(recordsIn(shown).want).toEqual({ hookStart: 4, totalHook: 2 });
});

test('what was answered before ctrl-C is remembered and recapped, and can be gone on with', async () => {
  const left = await talk([who, [/Which hand/, DOWN], [/> Left, with/, ENTER], [/in mph\?/, CTRL_C]]);
  const [, remembered = ''] = /remembered: (.*)/.exec(stripVTControlCharacters(left)) ?? [];
  expect(JSON.parse(remembered)).toEqual([
    ['bowler', 'kind:usual'],
    ['hand', 'left'],
  ]);
  const env = { INTERVIEW_DRAFT: remembered };
  const recapped =
    /stopped after 2 answers\. So far: Bowler One-handed, hooks as most\s+do; Hand\s+Left, with a\s+thumb hole\.[\s\S]*Continue from there/;
  await talk(
    [
      [recapped, ENTER],
      [/3\/11 How fast/, CTRL_C],
    ],
    { env },
  );
  await talk(
    [
      [/Continue from there/, `n${ENTER}`],
      [/1\/11 Who bowls/, CTRL_C],
    ],
    { env },
  );
});

test('answers to what only another command asks for are kept along', async () => {
  const draft = [
    ['bowler', 'two-handed'],
    ['layout', '70 x 4 1/2 x 30'],
  ];
  const shown = await talk(
    [
      [/stopped after 1 answer\.[\s\S]*Continue from there/, ENTER],
      [/2\/6 Which ball/, ENTER],
      [/3\/6/, CTRL_C],
    ],
    { env: { INTERVIEW_DRAFT: JSON.stringify(draft) } },
  );
  const [, remembered = ''] = /remembered: (.*)/.exec(stripVTControlCharacters(shown)) ?? [];
  expect(JSON.parse(remembered)).toEqual([draft[0], ['ball', 'new:symmetric'], draft[1]]);
});

test('a bowler who knows all, with a used ball by its numbers', async () => {
  const shown = await talk([
    who,
    hand,
    [/in mph\?/, `18.2${ENTER}`],
    [/rev rate, in rpm/, `340${ENTER}`],
    [/axis tilt do you/, `12${ENTER}`],
    [/side turn/, `50${ENTER}`],
    ball,
    lane,
    ...wishes,
    open('pa'),
    [/give your PAP/, ENTER],
    [/far over/, `5 1/16${ENTER}`],
    [/far up/, `1/2${ENTER}`],
    open('we'),
    [/Weight[\s\S]*pounds/, `14${ENTER}`],
    [/> RG/, ENTER],
    [/RG, in inches/, `2.51${ENTER}`],
    [/> Diff/, ENTER],
    [/Total differential/, `0.046${ENTER}`],
    [/> Mass/, ENTER],
    [/Intermediate/, `0${ENTER}`],
    [/> More on ball/, ENTER],
    [/More about the ball/, `bu${ENTER}`],
    [/bumps or flats/, ENTER],
    [/More about the ball[\s\S]*> Pin/, ENTER],
    [/CG mark/, `3${ENTER}`],
    [/> Top/, ENTER],
    [/Top weight/, `2.5${ENTER}`],
    [/> Finish/, ENTER],
    [/Finish/, `3000${ENTER}`],
    [/> New/, ENTER],
    [/drilled before\?/, DOWN],
    [/> Drilled before/, ENTER],
    [/laid out then/, `70 x 45 x 30${ENTER}`],
    [/Must be 0 to 6.75 in for pin-to-PAP/, `4 1/2 x 3 3/8 x 2${ENTER}`],
    [/which hand was it/, ENTER],
    [/have a thumb hole/, ENTER],
    [/whose PAP/, DOWN],
    [/> Another one/, ENTER],
    [/That PAP/, `5${ENTER}`],
    [/how far up from/, `1/4 down${ENTER}`],
    [/More about the ball/, ESCAPE],
    open('more on bo'),
    [/More about the bowler/, `sa${ENTER}`],
    [/Save this bowler/, `Kim${ENTER}`],
    [/More about the bowler/, ESCAPE],
    open('go'),
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

test('a ball that no core can have opens the review at its line, in the units of the questions, and nothing is lost', async () => {
  const shown = await talk(
    [
      who,
      hand,
      [/in km\/h\?/, ENTER],
      revs,
      tilt,
      rotation,
      ball,
      lane,
      ...wishes,
      open('we'),
      [/Weight[\s\S]*kg/, `16 lb${ENTER}`],
      [/> RG/, ENTER],
      [/RG, in inches/, `69.85 mm${ENTER}`], // 2.75 in
      [/> RG[\s\S]*ball\.rgIn must go with[\s\S]*got 2\.75 in,[\s\S]*RG 2\.\d+ in/, 'go'],
      [/> Go on/, ENTER], // it does not
      [/> RG[\s\S]*ball\.rgIn must go with/, ENTER],
      [/RG, in inches/, `64.3 mm${ENTER}`],
      [/All answers[\s\S]*RG +2.53 in/, `go${ENTER}`],
    ],
    { columns: 100, args: ['--metric', '--check-ball'] },
  );
  expect(recordsIn(shown).ball.weightLb).toBe(16);
});

test('a left-handed two-hander without a thumb hole, in metric units on a narrow screen without colour', async () => {
  const shown = await talk(
    [
      [/Who bowls/, DOWN.repeat(3)],
      [/> Two-handed[\s\S]*29 km\/h/, ENTER],
      [/> Right, without/, DOWN],
      [/> Left, without/, ENTER],
      [/in km\/h\?[\s\S]*12.87 to 41.84 km\/h[\s\S]*\(29.0\)/, `18 mph${ENTER}`],
      revs,
      tilt,
      rotation,
      [/Which ball/, 'Plain'],
      [/6.8 kg/, ENTER],
      lane,
      ...wishes,
      open('pa'),
      [/give your PAP/, ENTER],
      [/far over from the grip centre, in mm/, `300${ENTER}`],
      [/Must be 50.8 to 190.5 mm; got "300"/, `127${ENTER}`],
      [/far up from the midline, in mm/, `6.35 down${ENTER}`],
      open('more on bo'),
      [/More about the bowler/, `re${ENTER}`],
      [/repeatable are your shots[\s\S]*0.64 km\/h/, ENTER],
      [/More about the bowler/, ESCAPE],
      open('go'),
    ],
    { columns: 60, env: { NO_COLOR: '1' }, args: ['--metric', '--no-color'] },
  );
  expect(recordsIn(shown).bowler).toMatchObject({
    hand: 'left',
    thumbHole: false,
    speedMph: 18,
    revRateRpm: 460,
    pap: { overIn: 5, upIn: -0.25 },
  });
  expect(widest(shown)).toBeLessThanOrEqual(60);
  expect(shown).not.toMatch(COLOUR);
});
