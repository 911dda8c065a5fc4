import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { afterEach, describe, expect, test } from 'vitest';
import { DOWN, ENTER, openSession, turnsOf } from '../support/pty-session.js';
import { runSmall, smallMain } from '../support/run-cli.js';

/* What new users would try first, from the first key to the answer. */

const main = smallMain();
const SCREEN_ROWS = 24;

let session: ReturnType<typeof openSession> | undefined;
afterEach(() => {
  if (session && !session.isOver()) session.kill();
});

/** Answers the questions of the interview in order, each as it is asked, and goes on from the review. */
async function interviewed(
  replies: Readonly<Record<string, string>>,
  options: { readonly columns: number; readonly env?: Record<string, string> },
) {
  session = openSession([], { main, rows: SCREEN_ROWS, ...options });
  const turn = turnsOf(session);
  let count = 0;
  let of = 1;
  const press = (keys: string): void => {
    count += keys === DOWN + ENTER ? 2 : keys.length;
    session?.type(keys);
  };
  for (let place = 1; place <= of; place++) {
    const asked = await turn(new RegExp(`\\b${place}/(\\d+) ([^\\n]*)\\r?\\n`));
    of = Number(asked[1]);
    const [, keys = ENTER] = Object.entries(replies).find(([words]) => asked[2]?.includes(words)) ?? [];
    press(keys);
  }
  await turn(/> Go on/);
  press(ENTER);
  await turn(/Layout for [\s\S]*HOW SURE/);
  await turn(/Enter: done/, ENTER);
  expect(await session.exit).toMatchObject({ exitCode: 0 });
  const [, answer = ''] = stripVTControlCharacters(session.raw())
    .split(/(?=Layout for )/)
    .slice(-2);
  const lines = answer
    .replaceAll('\r', '')
    .split(/\n\n?[a-z]: /)[0]!
    .split('\n');
  return { count, of, lines, raw: session.raw() };
}

describe('who knows only ball speed and rev rate', () => {
  const replies = {
    'ball speed': `17${ENTER}`,
    'rev rate': `300${ENTER}`,
    'axis tilt': '?',
    'axis rotation': '?',
  };

  test.each([
    { columns: 60, env: { NO_COLOR: '1' } },
    { columns: 80, env: { TERM: 'dumb' } },
    { columns: 120, env: { LANG: 'C' } },
  ])('is at an answer of one screen within 30 keys: $columns columns, $env', async ({ columns, env }) => {
    const { count, of, lines, raw } = await interviewed(replies, { columns, env: env as never });
    expect(of).toBeLessThanOrEqual(11);
    expect(count).toBeLessThanOrEqual(30);
    expect(lines.length, lines.join('\n')).toBeLessThanOrEqual(SCREEN_ROWS);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
    const text = lines.join('\n');
    expect(text).toMatch(/FIRST[\s\S]*PAP is a guess/);
    expect(text).toMatch(/The ball.s\s+numbers\s+are\s+guesses/);
    if ('LANG' in env) expect(stripVTControlCharacters(raw)).not.toMatch(/[^ -~\s]/);
    else expect(raw).toContain('°');
    if (!('LANG' in env)) expect(raw).not.toContain('\u001b[1m');
  });
});

test('a left-handed two-hander without a thumb hole is answered as one', async () => {
  const replies = {
    'Who bowls': `${DOWN}${DOWN}${DOWN}${ENTER}`,
    'Which hand': `${DOWN}${DOWN}${DOWN}${ENTER}`,
  };
  const { lines } = await interviewed(replies, { columns: 60 });
  expect(lines.length, lines.join('\n')).toBeLessThanOrEqual(SCREEN_ROWS);
  expect(session?.text()).toMatch(/Bowler +Two-handed\s+Hand +Left, without a thumb hole/);
});

test('a shop’s second opinion is one command, and its first word is the verdict', async () => {
  const flags = ['--bowler', 'average-right', '--ball', 'plain-medium', '--lane', 'house-easy'];
  const { code, out } = await runSmall(['judge', ...flags, '--hook-start', 'late', '--layout', '70x4½x30']);
  expect(code).toBe(0);
  const [opinion = ''] = out.split('\n\n');
  expect(opinion).toMatch(/^Second opinion for [^:]*: [^\n]*\n([^\n]*\n)?VERDICT /);
  expect(opinion.split('\n').length).toBeLessThanOrEqual(12);
});

test('behind a layout that may not be drilled the next step is the sheet of one that may', async () => {
  const flags = ['--bowler', 'rev-dominant', '--ball', 'lobed-strong', '--lane', 'house-easy'];
  const { out } = await runSmall(['judge', ...flags, '--total-hook', 'least', '--layout', '20 x 2 x 70']);
  const best = /Do not drill 20 x 2 x 70 as it stands; (.*)\s+is\s+the\s+best/.exec(out)?.[1];
  expect(best).toBeDefined();
  const next = out.slice(out.indexOf('flarewise sheet'));
  expect(next.replace(/\s+/g, ' ')).toContain(`--layout "${best}"`);
  expect(next).not.toContain('20 x 2 x 70');
});

describe('a coach with eight students in a spreadsheet', () => {
  const folder = mkdtempSync(join(tmpdir(), 'flarewise-coach-'));
  const list = join(folder, 'club.csv');
  const ROWS = [
    'name;hand;thumbHole;speedMph;revRateRpm;axisTiltDeg;axisRotationDeg;papOverIn;papUpIn;kind;note',
    'Zoë Müller;right;yes;27,5 km/h;310;14;45;4 7/8;3/8;;',
    'Kim;left;no;18,5;450;8;60;5¼;1;two-handed;',
    'Lee;right;yes;16;250;?;?;?;?;usual;',
    'Ada;right;yes;17,2;300-340;~14;40-50;4,5;up 3/8;;',
    'Bo;left;yes;25,5 km/h;280;;;;;straight;"says; ""more hook"""',
    'Cy;right;yes;13;190;?;?;?;?;young;',
    'Di;right;yes;19;220;20;30;4 3/4;−1/4;;',
    'Ed;right;no;18;470;6;65;5 1/2;1 1/8;;',
  ];
  const text = `${ROWS.join('\r\n')}\r\n`;
  const coach = [
    'coach',
    '--bowlers',
    list,
    '--balls',
    'plain-high',
    '--lanes',
    'house-easy',
    '--total-hook',
    '4',
  ];

  test('saved with semicolons, decimal commas and a byte order mark: a row a student, and back as a table', async () => {
    writeFileSync(list, `\ufeff${text}`);
    const { code, out, err } = await runSmall([...coach]);
    expect(err).not.toMatch(/must|refused/);
    expect(code).toBe(0);
    for (const row of ROWS.slice(1)) {
      const [name = ''] = row.split(';');
      expect(
        out.split('\n').filter((line) => line.startsWith(`  ${name}`) || line.startsWith(name)),
        name,
      ).toHaveLength(1);
    }
    expect(out).toMatch(/Measure the PAP before drilling, it is only a guess: Lee, Bo, Cy\./);
    expect(out).toMatch(/Guessed or roughly measured: Lee \(axis tilt,\s+axis\s+rotation,\s+PAP\)/);
  });

  test('saved as Windows-1252 it is read as that, and the names to check are said', async () => {
    writeFileSync(list, Buffer.from(text.replaceAll('\u2212', '-'), 'latin1')); // which has no minus of its own
    const { code, out, err } = await runSmall([...coach]);
    expect(code).toBe(0);
    const [name = ''] = (ROWS.find((row) => /[^\0-\x7f]/.test(row)) ?? '').split(';');
    expect(err).toContain('is not UTF-8 and was read as Windows-1252. Check: ');
    expect(err).toContain(name);
    expect(out).toContain(name);
  });

  test('saved as UTF-16 it is refused, with the remedy', async () => {
    writeFileSync(list, Buffer.from(`\ufeff${text}`, 'utf16le'));
    const { code, err } = await runSmall([...coach]);
    expect(code).toBe(2);
    expect(err).toMatch(/UTF-8[\s\S]*UTF-16[\s\S]*CSV UTF-8/);
    rmSync(folder, { recursive: true, force: true });
  });
});

test('the array job of the README is a script that bash can read', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const [, script = ''] = /```\n(#!\/bin\/bash\n#SBATCH[\s\S]*?)```/.exec(readme) ?? [];
  expect(script).toContain('--part $SLURM_ARRAY_TASK_ID/20');
  execFileSync('bash', ['-n'], { input: script });
  const flags = [...script.matchAll(/ (--[a-z-]+)/g)].map(([, flag]) => flag as string);
  const help = readme.slice(readme.indexOf('### `flarewise coach`'));
  for (const flag of flags.filter((each) => !['--workers', '--array'].includes(each)))
    expect(help).toContain(`\`${flag}`);
});
