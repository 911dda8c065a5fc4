import { expect, test } from 'vitest';
import { ALL_COLUMNS, emptySamples, type Samples, widthOf } from '../../../src/motion/shot/samples.js';
import { Workspace } from '../../../src/motion/shot/workspace.js';

/** Samples whose numbers say which they are. */
function numbered(count: number, from: number): Samples {
  const samples = emptySamples(count);
  for (const [c, name] of ALL_COLUMNS.entries())
    samples[name].forEach((_, i) => {
      samples[name][i] = 1e6 * c + widthOf(name) * from + i;
    });
  return samples;
}

test('what is taken piece by piece comes out in one piece, however it grew; cleared, the workspace begins anew', () => {
  const workspace = new Workspace(ALL_COLUMNS);
  for (const sizes of [[3, 4, 1], [2], [5, 5, 20, 1]]) {
    workspace.clear();
    let from = 0;
    for (const size of sizes) {
      workspace.take(numbered(30, from), size);
      from += size;
    }
    expect(workspace.samples()).toEqual(numbered(from, 0));
  }
});

test('columns that are not asked for stay empty', () => {
  const workspace = new Workspace(['time', 'contact_B']);
  workspace.take(numbered(4, 0), 4);
  const { time, contact_B, ...others } = workspace.samples();
  expect(time).toHaveLength(4);
  expect(contact_B).toHaveLength(12);
  expect(Object.keys(others)).toHaveLength(ALL_COLUMNS.length - 2);
  for (const column of Object.values(others)) expect(column).toHaveLength(0);
});
