import { expect, test } from 'vitest';
import type { Finding } from '../../../src/cli/answering/answered.js';
import { findAhead } from '../../../src/cli/answering/find-ahead.js';
import type { Progress, ProgressLine } from '../../../src/cli/print/progress.js';
import type { Interviewed } from '../../../src/interview/made-records.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { UNITS } from '../../../src/report/text/display-units.js';

const { bowlers, balls } = demoShelf();

const records = (layout: string): Interviewed => ({
  bowler: bowlers[0].record,
  ball: balls[0].record,
  lane: null,
  want: {},
  layout,
  keep: {},
});

/** A line that notes what it is to show. */
function notingLine() {
  const shown: string[] = [];
  const line: ProgressLine = {
    show: ({ stage, done }) => shown.push(`${stage} ${done}`),
    look: ({ text }) => shown.push(text),
  };
  return { line, shown };
}

const at = (done: number): Progress => ({ stage: 'shots', done, total: 9 });

/** Finds what the test says, when it says so. */
function slowFinder() {
  const searches: {
    readonly layout: string;
    readonly how: Finding;
    readonly end: (found: string | Error) => void;
  }[] = [];
  const ahead = findAhead<string>(
    ({ layout }, how) =>
      new Promise((resolve, reject) => {
        const end = (found: string | Error): void =>
          found instanceof Error ? reject(found) : resolve(found);
        searches.push({ layout, how, end });
      }),
  );
  return { ahead, searches };
}

/** What waits in the event loop happens. */
const turn = (): Promise<void> => new Promise((resume) => setTimeout(resume));

test('what was begun is what is found, and it is begun once', async () => {
  const { ahead, searches } = slowFinder();
  const asked = records('a');
  ahead.begin(asked);
  expect(searches).toHaveLength(0); // what is read over is shown first
  await turn();
  expect(searches.map(({ layout }) => layout)).toEqual(['a']);
  const found = ahead.found(asked, notingLine().line);
  searches[0].end('found');
  expect(await found).toBe('found');
  expect(searches).toHaveLength(1);
});

test('for other records it begins anew, and what was begun ends at its next step', async () => {
  const { ahead, searches } = slowFinder();
  ahead.begin(records('a'));
  await turn();
  const [first] = searches;
  first.how.line.show(at(1));
  ahead.begin(records('b'));
  await turn();
  expect(() => first.how.line.show(at(2))).toThrow();
  const found = ahead.found(records('c'), notingLine().line);
  await turn();
  expect(searches.map(({ layout }) => layout)).toEqual(['a', 'b', 'c']);
  searches[2].how.line.show(at(1));
  searches[2].end('of c');
  expect(await found).toBe('of c');
});

test('nothing is shown until it is waited for; then where it stands, and all that follows', async () => {
  const { ahead, searches } = slowFinder();
  const asked = records('a');
  ahead.begin(asked);
  await turn();
  const { line, shown } = notingLine();
  const { how, end } = searches[0];
  how.line.look({ text: '50 x 4 x 30', hookStartFt: 40 }, { units: UNITS.trade, ascii: false });
  how.line.show(at(1));
  how.line.show(at(2));
  expect(shown).toEqual([]);
  const found = ahead.found(asked, line);
  expect(shown).toEqual(['50 x 4 x 30', 'shots 2']);
  how.line.show(at(3));
  expect(shown).toEqual(['50 x 4 x 30', 'shots 2', 'shots 3']);
  end('found');
  await found;
});

test('where the answer stands already, no progress is shown', async () => {
  const { ahead, searches } = slowFinder();
  const asked = records('a');
  ahead.begin(asked);
  await turn();
  searches[0].how.line.show(at(9));
  searches[0].end('found');
  await turn();
  const { line, shown } = notingLine();
  expect(await ahead.found(asked, line)).toBe('found');
  expect(shown).toEqual([]);
});

test('a failure is thrown where the answer is asked for, and not before', async () => {
  const { ahead, searches } = slowFinder();
  const asked = records('a');
  ahead.begin(asked);
  await turn();
  searches[0].end(new Error('no such ball'));
  await turn(); // an unhandled rejection would fail the run
  await expect(ahead.found(asked, notingLine().line)).rejects.toThrow('no such ball');
});

test('stop ends what was begun at its next step', async () => {
  const { ahead, searches } = slowFinder();
  ahead.stop(); // nothing was begun
  ahead.begin(records('a'));
  await turn();
  ahead.stop();
  expect(() => searches[0].how.line.show(at(1))).toThrow();
});
