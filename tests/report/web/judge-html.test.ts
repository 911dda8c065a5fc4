import { expect, test } from 'vitest';
import type { JudgeAnswer } from '../../../src/records/answers/answer.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { judgeHtml } from '../../../src/report/web/judge-html.js';
import { sayAll } from '../../../src/report/wording/say.js';
import { judgeAnswer } from '../../support/judge-answer.js';
import { facts } from '../../support/pages/page-fixture.js';
import { readFigures } from '../../support/pages/read-page.js';
import { pathOf } from '../../support/recommend-answer.js';

const answer: JudgeAnswer = { ...judgeAnswer, best: { ...judgeAnswer.best, path: pathOf(9.75) } };
const pageOf = (given: JudgeAnswer): string =>
  judgeHtml(given, facts, [], UNITS.trade).replaceAll('\u00a0', ' ');
const html = pageOf(answer);

test('a guessed PAP is said on the page of a second opinion', () => {
  const bowler = { ...answer.inputs.bowler, uncertainty: { papOverIn: 0.4, papUpIn: 0.45 } };
  const guessed = pageOf({ ...answer, inputs: { ...answer.inputs, bowler } });
  expect(guessed).toContain('Your PAP is a guess (± 0.45 in).');
  expect(html).not.toContain('PAP is a guess');
});
const figures = readFigures(html);

test('the verdict is the title; what speaks against the layout stands next', () => {
  expect(html).toContain('<h1>70 x 4 1/2 x 30 is probably better.</h1>');
  const barred = {
    ...answer,
    layout: { ...answer.layout, objections: [{ code: 'ring-near-hole' as const, params: {} }] },
  };
  expect(pageOf(barred)).toContain('<dt>Stop</dt><dd>An oil ring would run over or too near to a hole.</dd>');
});

test('both layouts are in the pictures that compare; on the lane both can be taken out', () => {
  for (const id of ['reach-figure', 'lane-figure']) {
    const parts = [...figures.get(id)!.pictures.values()].flat().flatMap((each) => each.parts);
    for (const sign of ['1', '2']) expect(parts, id).toContain(`layout ${sign}`);
  }
  expect(html.match(/<input type="checkbox" id="show-\w+" checked>/g)).toHaveLength(2);
  for (const sign of ['1', '2'])
    expect(html).toContain(`#lane-figure:has(#show-${sign}:not(:checked)) [data-part="layout ${sign}"]`);
});

test('differences and shares lead from this layout to the best one', () => {
  const { rows } = figures.get('paired-figure')!.tables[0]!;
  expect(rows.map(([sign]) => sign)).toEqual(['2']);
  const shares = figures.get('shares-figure')!.tables[0]!;
  expect(shares.heads[0]).toBe('from this one to the best');
  expect(Number(shares.rows[0]!.at(-1))).toBe(Math.round(answer.shares.score.total));
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
