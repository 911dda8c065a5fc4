import { expect, test } from 'vitest';
import { afterCoach } from '../../src/cli/commands/after-coach.js';
import { coachPairOf } from '../support/coach-answer.js';

const records = {
  bowlers: [{ name: 'Ben' }, { name: 'Kim' }],
  balls: [{ name: 'Red' }],
  lanes: [{ name: 'House' }],
};
const lines = [coachPairOf('Red')]; // of Kim, on House
const commandsAfter = (bowlers: string, balls = 'red.json') =>
  afterCoach({ bowlers, balls, lanes: 'house' }, records, lines).map(({ words }) => words.flat().join(' '));

test('after a coach’s table comes the sheet of the first student, named as on the command line', () => {
  expect(commandsAfter('ben, kim')).toEqual([
    'sheet --bowler kim --ball red.json --lane house --layout 45 x 4 x 43 --out sheet.pdf',
  ]);
});

test('students of a list are kept first: a sheet takes a record', () => {
  expect(commandsAfter('my club.csv')).toEqual([
    'shelf import my club.csv',
    'sheet --bowler kim --ball red.json --lane house --layout 45 x 4 x 43 --out sheet.pdf',
  ]);
});

test('where no student has an answer nothing follows', () => {
  expect(afterCoach({ bowlers: 'kim', balls: 'red', lanes: 'house' }, records, [])).toEqual([]);
});
