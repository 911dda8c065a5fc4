import { expect, test } from 'vitest';
import { remembered } from '../../../src/search/surrogate/remembered.js';
import type { Reached } from '../../../src/simulate/readings.js';

/** A made-up regression that says which layout and world it was asked about, and always in the same object. */
function asked() {
  const calls: string[] = [];
  const reaction = { hookStart: 0, sharpness: 0, totalHook: 0, entryAngle: 0 };
  const reached = { shot: 'pins', reaction } as { shot: Reached['shot']; reaction: typeof reaction };
  const reachedIn = remembered(50, async (world, which, tell) => {
    calls.push(`${world}: ${[...which].join(' ')}`);
    for (const layout of which) {
      const name = 100 * world + layout;
      Object.assign(reaction, {
        hookStart: name,
        sharpness: name + 0.25,
        totalHook: -name,
        entryAngle: name / 2,
      });
      reached.shot = layout % 2 === 0 ? 'pins' : 'gutter';
      tell(layout, reached, layout / 64);
    }
  });
  return { calls, reachedIn };
}

test('what was asked once in a world is remembered, number by number, and told again in the order asked for', async () => {
  const { calls, reachedIn } = asked();
  const told: unknown[] = [];
  const ask = (world: number, ...which: number[]) =>
    reachedIn(world, Int32Array.from(which), (layout, { shot, reaction }, chance) => {
      told.push([world, layout, shot, { ...reaction }, chance]);
    });
  await ask(0, 3, 8);
  await ask(0, 8, 49, 3);
  await ask(2, 3);
  await ask(2, 3);
  expect(calls).toEqual(['0: 3 8', '0: 49', '2: 3']);
  expect(told).toEqual(
    [
      [0, 3],
      [0, 8],
      [0, 8],
      [0, 49],
      [0, 3],
      [2, 3],
      [2, 3],
    ].map(([world, layout]) => {
      const name = 100 * world + layout;
      const reaction = { hookStart: name, sharpness: name + 0.25, totalHook: -name, entryAngle: name / 2 };
      return [world, layout, layout % 2 === 0 ? 'pins' : 'gutter', reaction, layout / 64];
    }),
  );
});
