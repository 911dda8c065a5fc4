import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Ten answers as JSON, to show that a change of the code's shape changed no number.
 *
 *   npx tsx tests/support/ten-answers.ts write FOLDER [PROGRAM]   writes the ten (PROGRAM: dist/cli/main.js)
 *   npx tsx tests/support/ten-answers.ts compare BEFORE AFTER     exits 1 where a number went or changed
 *
 * A number may move to another place by being listed in MOVED; a sentence may be worded anew.
 */
const CASES: Record<string, readonly string[]> = {
  demo: [
    'recommend',
    '--bowler',
    'average-right',
    '--ball',
    'plain-medium',
    '--lane',
    'house-easy',
    '--hook-start',
    '4',
    '--sharpness',
    '4',
  ],
  'left-hander': [
    'recommend',
    '--bowler',
    'average-left',
    '--ball',
    'lobed-strong',
    '--lane',
    'league-night',
    '--hook-start',
    '5',
    '--sharpness',
    '5',
  ],
  metric: [
    'recommend',
    '--bowler',
    'high-tilt',
    '--ball',
    'asymmetric-strong',
    '--lane',
    'long',
    '--total-hook',
    '5',
    '--units',
    'metric',
  ],
  redrilled: [
    'recommend',
    '--bowler',
    'two-handed',
    '--ball',
    'plain-redrilled',
    '--lane',
    'worn',
    '--hook-start',
    '2',
    '--pin-side',
    'above',
  ],
  'no-line': [
    'recommend',
    '--bowler',
    'slow-straight',
    '--ball',
    'plain-high',
    '--lane',
    'long',
    '--sharpness',
    '1',
  ],
  judge: [
    'judge',
    '--bowler',
    'speed-dominant',
    '--ball',
    'own-solids',
    '--lane',
    'dry',
    '--layout',
    '70 x 4 x 30',
    '--hook-start',
    '4',
  ],
  'judge-left': [
    'judge',
    '--bowler',
    'average-left',
    '--ball',
    'asymmetric-mild',
    '--lane',
    'short',
    '--layout',
    '30 x 5 x 60',
    '--sharpness',
    '5',
  ],
  sheet: [
    'sheet',
    '--bowler',
    'average-right',
    '--ball',
    'lobed-medium',
    '--layout',
    '50 x 4 1/2 x 35',
    '--lane',
    'house-easy',
    '--date',
    '2026-01-01',
  ],
  roll: [
    'roll',
    '--bowler',
    'rev-dominant',
    '--ball',
    'plain-redrilled',
    '--layout',
    '60 x 4 x 40',
    '--lane',
    'flat-demanding',
  ],
  map: ['map', '--bowler', 'youth-twelve', '--ball', 'plain-twelve', '--over', 'pin-to-pap'],
};

/** Where a number stands now, by where it stood before; both as patterns of paths with `*` for an index. */
const MOVED: Record<string, string> = {};

/** Names that stand in paths. */
const RENAMED: readonly (readonly [was: string, is: string])[] = [
  ['hookSharpness', 'sharpness'],
  ['hookShape', 'sharpness'],
  ['hookTotal', 'totalHook'],
];

function write(folder: string, program: string): void {
  mkdirSync(folder, { recursive: true });
  for (const [name, flags] of Object.entries(CASES)) {
    const text = execFileSync('node', [program, ...flags, '--json', '--workers', '1', '--no-input'], {
      encoding: 'utf8',
      maxBuffer: 1 << 28,
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    writeFileSync(join(folder, `${name}.json`), text);
    console.log(name);
  }
}

function compare(before: string, after: string): number {
  let faults = 0;
  for (const file of readdirSync(before).sort()) {
    const was = numbersIn(JSON.parse(readFileSync(join(before, file), 'utf8')));
    const is = numbersIn(JSON.parse(readFileSync(join(after, file), 'utf8')));
    const wrong = [...was].filter(([path, number]) => !Object.is(is.get(movedTo(path)), number));
    console.log(
      `${file}: ${was.size} numbers, ${wrong.length} gone or changed, ${is.size - was.size + wrong.length} more`,
    );
    for (const [path, number] of wrong.slice(0, 20))
      console.log(`  ${path}: ${number} → ${is.get(movedTo(path))}`);
    faults += wrong.length;
  }
  return faults;
}

function movedTo(before: string): string {
  const path = RENAMED.reduce((each, [was, is]) => each.replaceAll(was, is), before);
  const pattern = path.replace(/\[\d+\]/g, '[*]');
  const target = MOVED[pattern];
  if (target === undefined) return path;
  const indices = path.match(/\[\d+\]/g) ?? [];
  return target.replace(/\[\*\]/g, () => indices.shift() ?? '[0]');
}

function numbersIn(value: unknown, path = '$', found = new Map<string, number>()): Map<string, number> {
  if (typeof value === 'number') found.set(path, value);
  else if (Array.isArray(value)) value.forEach((each, i) => void numbersIn(each, `${path}[${i}]`, found));
  else if (typeof value === 'object' && value !== null)
    for (const [key, each] of Object.entries(value)) numbersIn(each, `${path}.${key}`, found);
  return found;
}

const [verb, first, second] = process.argv.slice(2);
if (verb === 'write' && first !== undefined) write(first, second ?? 'dist/cli/main.js');
else if (verb === 'compare' && first !== undefined && second !== undefined)
  process.exitCode = compare(first, second) > 0 ? 1 : 0;
else throw new Error('write FOLDER [PROGRAM] or compare BEFORE AFTER');
