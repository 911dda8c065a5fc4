import { expect, test } from 'vitest';
import { UNITS } from '../../../src/report/text/display-units.js';
import { sentences } from '../../../src/report/text/sentences.js';
import { compareHtml } from '../../../src/report/web/compare-html.js';
import { sayAll } from '../../../src/report/wording/say.js';
import { compareAnswer as answer } from '../../support/compare-answer.js';
import { readFigures } from '../../support/pages/read-page.js';

const html = compareHtml(answer, [], UNITS.trade).replaceAll('\u00a0', ' ');
const figures = readFigures(html);

test('the verdict is the title', () => {
  const [first] = sayAll(answer.verdict, UNITS.trade).flatMap(sentences);
  expect(html).toContain(`<h1>${first}</h1>`);
});

test('every member is on the lane, and those after the first by their differences from it', () => {
  const partsOf = (id: string) =>
    [...figures.get(id)!.pictures.values()].flat().flatMap((each) => each.parts);
  for (const sign of ['1', '2', '3']) expect(partsOf('lane-figure')).toContain(`layout ${sign}`);
  for (const sign of ['2', '3']) expect(partsOf('paired-figure')).toContain(`layout ${sign}`);
  expect(partsOf('paired-figure')).not.toContain('layout 1');
  expect(html.match(/<input type="checkbox" id="show-\w+"/g)).toHaveLength(3);
});

test('differences, assumptions and cautions are told, and nothing is left open', () => {
  for (const words of [
    '+1.5!',
    'by practice',
    ...sayAll(answer.assumptions, UNITS.trade),
    ...sayAll(answer.cautions, UNITS.trade),
  ])
    expect(html).toContain(words);
  expect(html).not.toMatch(/NaN|undefined|<script/);
});
