import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import type { LearnedInputs, Taught } from '../../../src/answer/learned-answer.js';
import { forgetLessons, lessonPlace, MOST_LESSONS } from '../../../src/cli/learned/kept-lesson.js';
import { scratchFolder } from '../../support/demo-files.js';
import { learnedAnswer } from '../../support/learned-answer.js';
import { averageBowler, houseLane } from '../../support/problems.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());
const home = join(scratch.path, 'home');
const lessons = join(home, 'lessons');
beforeEach(() => forgetLessons(home));

const INPUTS: LearnedInputs = { bowler: averageBowler, balls: [], lane: houseLane };
const TAUGHT = {
  answer: learnedAnswer,
  learned: { mean: Float64Array.of(0.1, -0, Number.NaN) },
} as unknown as Taught;

test('lessonPlace: what is kept is read back to the last bit', () => {
  const place = lessonPlace(home, INPUTS, { seed: 1 });
  expect(place.read()).toBeNull();
  place.keep(TAUGHT);
  expect(lessonPlace(home, INPUTS, { seed: 1 }).read()).toEqual(TAUGHT);
});

test.each<{ what: string; inputs: LearnedInputs; seed: number }>([
  { what: 'another seed', inputs: INPUTS, seed: 2 },
  { what: 'another rev rate', inputs: { ...INPUTS, bowler: { ...averageBowler, revRateRpm: 311 } }, seed: 1 },
  { what: 'the lane of the latest night', inputs: { ...INPUTS, lane: undefined }, seed: 1 },
])('lessonPlace: $what has a place of its own', ({ inputs, seed }) => {
  lessonPlace(home, INPUTS, { seed: 1 }).keep(TAUGHT);
  expect(lessonPlace(home, inputs, { seed }).read()).toBeNull();
});

test.each([
  { what: 'cut short', spoil: (bytes: Buffer) => bytes.subarray(0, -1) },
  { what: 'with a bit turned', spoil: (bytes: Buffer) => bytes.fill(bytes[99] ^ 1, 99, 100) },
  { what: 'empty', spoil: () => Buffer.alloc(0) },
])('lessonPlace: a file that is $what counts as none, and is replaced', ({ spoil }) => {
  const place = lessonPlace(home, INPUTS, { seed: 1 });
  place.keep(TAUGHT);
  const path = join(lessons, readdirSync(lessons)[0]);
  writeFileSync(path, spoil(readFileSync(path)));
  expect(place.read()).toBeNull();
  place.keep(TAUGHT);
  expect(place.read()).toEqual(TAUGHT);
});

test('lessonPlace: the newest are kept', () => {
  for (let seed = 0; seed < MOST_LESSONS + 5; seed++) lessonPlace(home, INPUTS, { seed }).keep(TAUGHT);
  expect(readdirSync(lessons)).toHaveLength(MOST_LESSONS);
  expect(lessonPlace(home, INPUTS, { seed: MOST_LESSONS + 4 }).read()).toEqual(TAUGHT);
});

test('lessonPlace: where nothing can be written nothing is kept, and nothing goes wrong', () => {
  const file = scratch.write('a-file', '');
  const place = lessonPlace(file, INPUTS, { seed: 1 });
  place.keep(TAUGHT);
  expect(place.read()).toBeNull();
});

test('forgetLessons: takes all of them, and none where there are none', () => {
  lessonPlace(home, INPUTS, { seed: 1 }).keep(TAUGHT);
  forgetLessons(home);
  expect(existsSync(lessons)).toBe(false);
  forgetLessons(home);
});
