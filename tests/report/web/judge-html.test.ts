import { Chalk } from 'chalk';
import { expect, test } from 'vitest';
import type { JudgeAnswer } from '../../../src/records/answers/answer.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { paintWith } from '../../../src/report/text/paint.js';
import { judgeHtml } from '../../../src/report/web/judge-html.js';
import { sayAll } from '../../../src/report/wording/say.js';
import { judgeAnswer } from '../../support/judge-answer.js';
import { facts } from '../../support/pages/page-fixture.js';
import { readFigures } from '../../support/pages/read-page.js';
import { pathOf } from '../../support/recommend-answer.js';

const answer: JudgeAnswer = { ...judgeAnswer, best: { ...judgeAnswer.best, path: pathOf(9.75) } };
const pageOf = (given: JudgeAnswer): string =>
  judgeHtml(given, facts, [], { units: UNITS.trade, paint: paintWith(new Chalk({ level: 0 })) }).replaceAll(
    '\u00a0',
    ' ',
  );
const html = pageOf(answer);
const figures = readFigures(html);

test('the verdict stands first, in bold, below the layout', () => {
  expect(html).toMatch(
    /<h1>85 x 3 3\/4 x 45<\/h1>\n<p><strong>70 x 4 1\/2 x 30 is probably better\.<\/strong>/,
  );
  const barred = {
    ...answer,
    layout: { ...answer.layout, objections: [{ code: 'ring-near-hole' as const, params: {} }] },
  };
  expect(pageOf(barred)).toContain('Problems: An oil ring would run over or too near to a hole.');
});

test('both layouts are in every picture that compares, and can be taken out', () => {
  for (const id of ['lane-figure', 'worlds-figure', 'map-figure'])
    for (const drawn of figures.get(id)!.pictures.values()) {
      const parts = new Set(drawn.flatMap(({ parts }) => parts));
      if (!parts.has('layout 1')) continue; // the key
      expect(parts).toContain('layout 2');
    }
  expect(html.match(/<input type="checkbox" id="show-\w+" checked>/g)).toHaveLength(2);
  for (const sign of ['1', '2'])
    expect(html).toContain(`main:has(#show-${sign}:not(:checked)) [data-part="layout ${sign}"]`);
});

test('shares lead from this layout to the best one', () => {
  const { rows, heads } = figures.get('shares-figure')!.tables[0]!;
  expect([heads[1], heads.at(-1)]).toEqual(['1 this layout', '2 best found']);
  const score = rows.find(([name]) => name === 'Score, points')!;
  expect(Number(score[1])).toBe(Math.round(answer.layout.nominalScore));
  expect(Number(score.at(-1))).toBe(Math.round(answer.layout.nominalScore + answer.shares.score.total));
});

test('place among all, marking errors and every assumption are told', () => {
  for (const words of [
    '1/16 in of pin-to-PAP',
    ...sayAll(answer.assumptions, UNITS.trade),
    ...sayAll(answer.cautions, UNITS.trade),
  ])
    expect(html).toContain(words);
  expect(html).not.toMatch(/NaN|undefined|<script/);
});
