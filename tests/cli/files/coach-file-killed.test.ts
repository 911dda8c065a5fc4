import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openCoachFile } from '../../../src/cli/files/coach-file.js';
import { coachPairOf } from '../../support/coach-answer.js';
import { scratchFolder } from '../../support/demo-files.js';
import { killedAfter } from '../../support/killed.js';
import { killedAtStep } from '../../support/killed-at-step.js';

const BUILT = new URL('../../../dist/cli/files/coach-file.js', import.meta.url).href;
const scratch = scratchFolder();
afterAll(() => scratch.remove());

/** A run that goes on from a file, one unit of large lines after another. */
const adding = (file: string): string => `
  const { openCoachFile } = await import(${JSON.stringify(BUILT)});
  const { known, append } = openCoachFile(${JSON.stringify(file)});
  const line = { ...${JSON.stringify(coachPairOf('one'))}, padding: 'x'.repeat(200_000) };
  for (let n = known.size; ; n++) {
    append(String(n), [line, line, line]);
    if (n === known.size) process.stdout.write('begun');
  }`;

test('openCoachFile: runs killed 10 times lose no unit that was whole, and leave no lock that holds up the next', async () => {
  const file = join(scratch.path, 'out.jsonl');
  let before = 0;
  for (let time = 0; time < 10; time++) {
    await killedAfter(adding(file), 15 * Math.random());
    const { known, close } = openCoachFile(file);
    close();
    expect([...known.keys()]).toEqual(Array.from({ length: known.size }, (_, n) => String(n)));
    expect(known.size).toBeGreaterThan(before);
    for (const lines of known.values()) expect(lines).toHaveLength(3);
    before = known.size;
  }
  expect(readFileSync(file, 'utf8').split('\n').slice(0, -1)).toHaveLength(4 * before);
  expect(readdirSync(scratch.path).filter((name) => !/^out\.jsonl(\.lock\..+)?$/.test(name))).toEqual([]);
});

test('openCoachFile: killed at any step of mending a file, it leaves the file as it was or mended', () => {
  const file = join(scratch.path, 'half.jsonl');
  const first = openCoachFile(file);
  for (const key of ['a', 'b']) first.append(key, [coachPairOf(key)]);
  first.close();
  const mended = readFileSync(file, 'utf8');
  const half = mended + JSON.stringify(coachPairOf('c')).slice(0, 100);
  const script = `
    const { openCoachFile } = await import(${JSON.stringify(BUILT)});
    openCoachFile(${JSON.stringify(file)}).close();`;
  const seen = new Set<string>();
  let step = 0;
  for (let isKilled = true; isKilled; ) {
    writeFileSync(file, half);
    isKilled = killedAtStep(script, ++step);
    const text = readFileSync(file, 'utf8');
    expect([half, mended], `killed at step ${step}`).toContain(text);
    seen.add(text);
  }
  expect(seen.size).toBe(2);
  const { known, close } = openCoachFile(file);
  close();
  expect([...known.keys()]).toEqual(['a', 'b']);
});
