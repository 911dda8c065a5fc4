import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { sheetAnswerSchema } from '../../src/records/answers/sheet-answer.js';
import { scratchFolder } from '../support/demo-files.js';
import { runCli } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

const SHEET = ['sheet', '--bowler', 'average-left', '--ball', 'asymmetric-mild', '--layout', '50 x 4 x 45'];
const DATED = [...SHEET, '--date', '2026-03-01'];

/** First bytes of each kind of file. */
const BEGINS = { pdf: '%PDF-1.', svg: '<svg xmlns=', png: '\u0089PNG', html: '<!doctype html>' } as const;

describe('flarewise sheet', () => {
  test.each(Object.entries(BEGINS))(
    '--out sheet.%s writes that kind of file, and its name to stdout',
    async (kind, begin) => {
      const { code, out, err } = await runCli([...DATED, '--out', `sheet.${kind}`], { cwd: folder.path });
      expect([code, err, out]).toEqual([0, '', `sheet.${kind}\n`]);
      expect(
        readFileSync(join(folder.path, `sheet.${kind}`))
          .toString('latin1')
          .startsWith(begin),
      ).toBe(true);
    },
  );

  test('the same command writes the same PDF, byte for byte', async () => {
    const [one, two] = ['one.pdf', 'two.pdf'].map((name) => join(folder.path, name)) as [string, string];
    await runCli([...DATED, '--out', one]);
    await runCli([...DATED, '--out', two]);
    expect(readFileSync(one).equals(readFileSync(two))).toBe(true);
  });

  test('--json is one document of the published schema, with --out as well', async () => {
    const { out } = await runCli([...DATED, '--json', '--out', 'json.svg'], { cwd: folder.path });
    expect(sheetAnswerSchema.parse(JSON.parse(out)).date).toBe('2026-03-01');
    expect(readdirSync(folder.path)).toContain('json.svg');
  });

  test('without --out it is a screen of text, with the rings where a lane is given', async () => {
    const { code, out, err } = await runCli([...DATED, '--lane', 'house-easy']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Mark the layout');
    expect(out).toContain('Oil rings to expect');
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  });

  test('every fault of a command line is told at once, with exit code 2 and no file', async () => {
    const { code, out, err } = await runCli(
      [
        'sheet',
        '--bowler',
        'nobody',
        '--layout',
        '1 x 2',
        '--out',
        'sheet.doc',
        '--paper',
        'legal',
        '--date',
        'x',
      ],
      { cwd: folder.path },
    );
    expect([code, out]).toEqual([2, '']);
    for (const fault of [
      '--bowler',
      '--ball is missing',
      '--out must end in',
      '--paper',
      '--date',
      'layout must be',
    ])
      expect(err).toContain(fault);
    expect(readdirSync(folder.path)).not.toContain('sheet.doc');
  });

  test('a folder that does not exist is the person’s to mend', async () => {
    const { code, err } = await runCli([...DATED, '--out', join(folder.path, 'none', 'sheet.pdf')]);
    expect(code).toBe(2);
    expect(err).toContain('in a folder that does not exist');
  });
});
