import { Chalk } from 'chalk';
import { expect, test } from 'vitest';
import { UNITS } from '../../../src/report/text/display-units.js';
import { paintWith } from '../../../src/report/text/paint.js';
import { compareHtml } from '../../../src/report/web/compare-html.js';
import { sayAll } from '../../../src/report/wording/say.js';
import { compareAnswer as answer } from '../../support/compare-answer.js';
import { readFigures } from '../../support/pages/read-page.js';

const html = compareHtml(answer, [], {
  units: UNITS.trade,
  paint: paintWith(new Chalk({ level: 0 })),
}).replaceAll('\u00a0', ' ');
const figures = readFigures(html);

test('the verdict stands first, in bold, below what is compared', () => {
  const [first] = sayAll(answer.verdict, UNITS.trade);
  expect(html).toContain(
    `<h1>${answer.rows.map(({ name }) => name).join(' · ')}</h1>\n<p><strong>${first}</strong>`,
  );
});

test('every member is in each picture that compares, and can be taken out; differences are from the first', () => {
  for (const id of ['lane-figure', 'worlds-figure'])
    for (const drawn of figures.get(id)!.pictures.values()) {
      const parts = new Set(drawn.flatMap(({ parts }) => parts));
      if (!parts.has('layout 2')) continue; // the key
      for (const sign of ['1', '2', '3']) expect(parts, id).toContain(`layout ${sign}`);
    }
  expect(html.match(/<input type="checkbox" id="show-\w+" checked>/g)).toHaveLength(3);
  expect([...figures.get('lane-figure')!.pictures.keys()]).toContain('Boards from the path of layout 1');
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
