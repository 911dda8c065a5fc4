import { expect, test } from 'vitest';
import { afterCoach } from '../../../src/cli/commands/after-coach.js';
import { coachPairOf } from '../../support/coach-answer.js';

const named = (...listed: readonly (readonly [name: string, word: string | null])[]) =>
  listed.map(([name, word]) => ({ record: { name }, word }));
const lines = [coachPairOf('Red')]; // of Kim, on House
const commandsAfter = (bowlers: string, listed: ReturnType<typeof named>, given = lines) =>
  afterCoach(
    { bowlers },
    { bowlers: listed, balls: named(['Red', 'red.json']), lanes: named(['House', 'house']) },
    given,
  ).map(({ words }) => words.flat().join(' '));

test('after a coach’s table comes the sheet of the first student, named as on the command line', () => {
  expect(commandsAfter('ben, kim', named(['Ben', 'ben'], ['Kim', 'kim']))).toEqual([
    'sheet --bowler kim --ball red.json --lane house --layout 45 x 4 x 43 --out sheet.pdf',
  ]);
});

test('a student of a folder is called as when it was read, whatever has been put there since', () => {
  const listed = named(['Kim', 'club/kim.json']); // the folder itself is not looked at again
  expect(commandsAfter('/no/such/folder', listed)[0]).toContain('--bowler club/kim.json');
});

test('students of a list are kept first: a sheet takes a record', () => {
  expect(commandsAfter('my club.csv', named(['Ben', null], ['Kim', null]))).toEqual([
    'shelf import my club.csv',
    'sheet --bowler kim --ball red.json --lane house --layout 45 x 4 x 43 --out sheet.pdf',
  ]);
});

test('where no student has an answer nothing follows', () => {
  expect(commandsAfter('kim', named(['Kim', 'kim']), [])).toEqual([]);
});
