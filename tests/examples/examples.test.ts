import { readFileSync, statSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { demoAnswer } from '../support/shared-answer.js';
import { exampleScreen, exampleSources } from './examples.js';
import { withScreen } from './readme-screen.js';

/* The examples are of the program as it is; where one is not: npm run examples. */

const root = new URL('../../', import.meta.url);
const example = (name: string): Buffer => readFileSync(new URL(`shared/examples/${name}`, root));

let answer: RecommendAnswer;
beforeAll(async () => {
  answer = JSON.parse((await demoAnswer()).out);
});

test('the first screen is the one that the demo’s answer makes, in shared/examples and in the README', () => {
  const screen = example('first-screen.txt').toString();
  expect(screen).toBe(exampleScreen(answer));
  const readme = readFileSync(new URL('README.md', root), 'utf8');
  expect(withScreen(readme, screen)).toBe(readme);
});

test('the pictures are of the sheet and the page as they are', async () => {
  expect(JSON.parse(example('sources.json').toString())).toEqual(await exampleSources(answer));
});

test.each(['sheet.png', 'report.png'])('%s is a PNG that loads quickly, and the README shows it', (name) => {
  const bytes = example(name);
  expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG'); // PNG (third edition), 5.2: signature
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)]; // 11.2.1: IHDR
  expect(Math.min(width, height)).toBeGreaterThanOrEqual(700);
  expect(statSync(new URL(`shared/examples/${name}`, root)).size).toBeLessThanOrEqual(300_000);
  expect(readFileSync(new URL('README.md', root), 'utf8')).toMatch(
    new RegExp(`!\\[[^\\]]{20,}\\]\\(shared/examples/${name}\\)`),
  );
});
