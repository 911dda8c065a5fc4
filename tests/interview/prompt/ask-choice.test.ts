import { expect, test } from 'vitest';
import { marked } from '../../../src/interview/prompt/ask-choice.js';
import { readKeys } from '../../support/interview/read-keys.js';

const UP = '\u001b[A';
const DOWN = '\u001b[B';
const HOME = '\u001b[H';
const END = '\u001b[F';
const BACKSPACE = '\u007f';
const PAGE_DOWN = '\u001b[6~';

interface Option {
  readonly label: string;
  readonly note?: string;
}

const OPTIONS: readonly Option[] = ['Right', 'Left', 'Axis tilt', 'Axis rotation', '3'].map((label) => ({
  label,
}));

/** Which line is marked after keys. */
const at = (keys: string, from = 0, options = OPTIONS): number =>
  readKeys(keys).keys.reduce((state, key) => marked(state, key, key.sign, options), { at: from, typed: '' })
    .at;

test('arrows stop at the ends', () => {
  expect(at(UP)).toBe(0);
  expect(at(DOWN + DOWN)).toBe(2);
  expect(at(END + DOWN)).toBe(4);
  expect(at(PAGE_DOWN + HOME)).toBe(0);
});

test('letters find the line that begins with them, numbers the line of that place or name', () => {
  expect(at('axis r')).toBe(3);
  expect(at('2')).toBe(1);
  expect(at('3')).toBe(4);
  expect(at('9', 2)).toBe(2);
  expect(at('0', 2)).toBe(2);
});

test('what no line begins with moves nothing, until it is taken back or an arrow moves', () => {
  expect(at('dunnol')).toBe(0); // the last letter alone would find a line
  expect(at(`x${BACKSPACE}l`)).toBe(1);
  expect(at(`x${DOWN}a`)).toBe(2);
  expect(at('lr')).toBe(1);
  expect(at(`axis r${BACKSPACE}`)).toBe(2);
});

test('a step’s number finds that step, not the line of that place', () => {
  const steps: readonly Option[] = [
    { label: 'No preference' },
    { label: 'Early', note: '2 of 5' },
    { label: 'Late', note: '4 of 5' },
  ];
  expect(at('4', 0, steps)).toBe(2);
  expect(at('3', 0, steps)).toBe(2);
  expect(at('2', 0, steps)).toBe(1);
});
