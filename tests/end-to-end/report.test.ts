import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { webReportData } from '../../src/answer/web-report-data.js';
import { demoInputs } from '../../src/cli/files/demo-inputs.js';
import { nextCommands } from '../../src/cli/print/next-commands.js';
import { compareAnswerSchema } from '../../src/records/answers/compare-answer.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { DEMO } from '../../src/records/read/shelf.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { compareHtml } from '../../src/report/web/compare-html.js';
import { recommendHtml } from '../../src/report/web/recommend-html.js';
import { scratchFolder } from '../support/demo-files.js';
import { runCli, runSmall } from '../support/run-cli.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

const ARGS = ['--bowler', DEMO.bowler, '--ball', DEMO.ball, '--lane', DEMO.lane, '--hook-start', '4'];

test('recommend --report writes the page of the answer it prints, and nothing else', async () => {
  const { code, out, err } = await runSmall(
    ['recommend', ...ARGS, '--top', '2', '--units', 'metric', '--json', '--report', 'answer.html'],
    { cwd: folder.path },
  );
  expect([code, err]).toEqual([0, '']);
  const answer = recommendAnswerSchema.parse(JSON.parse(out));
  // worked out again here, in another process, from what was printed: the same bytes
  const page = recommendHtml(
    answer as Parameters<typeof recommendHtml>[0],
    webReportData(demoInputs(), answer.layouts[0]!, undefined, SMALL_BUDGET),
    ['bowler', 'ball', 'lane'],
    UNITS.metric,
    nextCommands(
      {
        bowler: DEMO.bowler,
        ball: DEMO.ball,
        lane: DEMO.lane,
        units: 'metric',
        layout: answer.layouts[0]!.text,
      },
      ['sheet'],
    ),
  );
  expect(readFileSync(join(folder.path, 'answer.html'), 'utf8')).toBe(page);
  expect(page).toContain('A demonstration: the bowler, ball and lane are invented');
  expect(page.replace(/<[^>]*>/g, '')).toContain('Next: flarewise sheet');
});

test('compare --report writes the page of the answer it prints', async () => {
  const layouts = ['--layout', '50 x 4 1/2 x 35', '--layout', '70 x 4 1/2 x 30'];
  const { code, out, err } = await runSmall(
    ['compare', ...ARGS, ...layouts, '--json', '--report', 'compared.html'],
    { cwd: folder.path },
  );
  expect([code, err]).toEqual([0, '']);
  const answer = compareAnswerSchema.parse(JSON.parse(out));
  const page = compareHtml(
    answer as Parameters<typeof compareHtml>[0],
    ['bowler', 'ball', 'lane'],
    UNITS.trade,
  );
  expect(readFileSync(join(folder.path, 'compared.html'), 'utf8')).toBe(page);
  expect(page.replaceAll('\u00a0', ' ')).toContain('Each layout less 50 x 4 1/2 x 35');
});

test.each([
  ['answer.pdf', 'must end in .html'],
  ['none/answer.html', 'in a folder that does not exist'],
])('--report %s is refused before anything is worked out', async (path, why) => {
  for (const command of [
    ['recommend'],
    ['judge', '--layout', '70 x 4 1/2 x 30'],
    ['compare', '--finish', '500', '--finish', '4000'],
  ]) {
    const { code, out, err } = await runCli([...command, ...ARGS, '--report', path], { cwd: folder.path });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('--report');
    expect(err).toContain(why);
    expect(existsSync(join(folder.path, path))).toBe(false);
  }
});
