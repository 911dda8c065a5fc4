import type { coach } from '../../src/recommend/coach.js';
import type { CoachUnit } from '../../src/recommend/coach-unit.js';
import { demoShelf } from '../../src/records/shelf.js';
import { machine } from './timing.js';

// workers run built files only
const built = (await import(new URL('../../dist/recommend/coach.js', import.meta.url).href)) as {
  coach: typeof coach;
};

/** Times a coach's table: twice the pairs take twice the time, two workers about half of it. Prints ratios. */
export async function coachBench(print: (line: string) => void = console.log): Promise<void> {
  print(`coach: ${machine()}`);
  const { bowlers, balls, lanes } = demoShelf();
  const plain = balls.find(({ id }) => id === 'plain-low')?.record;
  if (!plain) throw new Error('plain-low is missing from data/');
  const units = bowlers
    .slice(0, 4)
    .flatMap(({ record: bowler }) =>
      lanes
        .slice(0, 2)
        .map(({ record: lane }): CoachUnit => ({ bowler, lane, balls: [plain], want: { hookTotal: 4 } })),
    );
  const lines: string[] = [];
  const seconds = async (count: number, workers: number): Promise<number> => {
    const start = performance.now();
    const answer: unknown[] = [];
    await built.coach(units.slice(0, count), { seed: 1 }, workers, (each) => answer.push(...each));
    lines.push(JSON.stringify(answer));
    return (performance.now() - start) / 1000;
  };
  await seconds(1, 1); // warm
  const half = await seconds(units.length / 2, 1);
  const all = await seconds(units.length, 1);
  const both = await seconds(units.length, 2);
  if (lines[2] !== lines[3]) throw new Error('two workers answered otherwise than one');
  print(
    `  ${units.length} pairs ${all.toFixed(1)} s: ${(all / half).toFixed(2)} times half of them; two workers are ${(all / both).toFixed(2)} times as fast as one`,
  );
}
