import { expect, test } from 'vitest';
import { UNITS } from '../../../src/report/text/display-units.js';
import { sentences } from '../../../src/report/text/sentences.js';
import { adjustHtml } from '../../../src/report/web/adjust-html.js';
import { say, sayAll } from '../../../src/report/wording/say.js';
import { adjustAnswer as answer } from '../../support/adjust-answer.js';
import { LEARNED_FROM } from '../../support/learned-answer.js';

const html = adjustHtml(answer, [], UNITS.trade).replaceAll('\u00a0', ' ');

test('the verdict is the title', () => {
  const [first] = sayAll(answer.verdict, UNITS.trade).flatMap(sentences);
  expect(html).toContain(`<h1>${first}</h1>`);
});

test('every remedy, assumption and caution is told, and nothing is left open', () => {
  for (const { remedy } of answer.remedies) expect(html).toContain(say(remedy, UNITS.trade));
  for (const words of [...sayAll(answer.assumptions, UNITS.trade), ...sayAll(answer.cautions, UNITS.trade)])
    expect(html).toContain(words);
  expect(html).not.toMatch(/NaN|undefined|<script/);
});

test('the old holes of a ball that is redrilled stand in a table of their own, and none where it is not', () => {
  for (const { mark } of answer.redrill!.redrilled.oldMarks) expect(html).toContain(mark);
  expect(adjustHtml({ ...answer, redrill: null }, [], UNITS.trade)).not.toContain('id="redrilled"');
});

test('a line says what was learned from, and how many of the nights were on other lanes', () => {
  const learned = { ...LEARNED_FROM, elsewhere: 2 };
  const text = adjustHtml({ ...answer, learned }, [], UNITS.trade).replaceAll('\u00a0', ' ');
  expect(text).toContain('Learned from 24 shots on 3 nights (2 on other lanes)');
});
