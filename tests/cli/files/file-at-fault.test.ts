import { expect, test } from 'vitest';
import { withFileAtFault } from '../../../src/cli/files/file-at-fault.js';
import { Refusal } from '../../../src/records/refusals/refusal.js';

const meet = (field: string) =>
  new Refusal([
    { code: 'bores-meet', params: { field, hole: 'middle', other: 'ring', overlapIn: 0.01, depthIn: 0 } },
  ]);

test('a fault of the grip names the bowler’s file, and the field as it stands in it', () => {
  const found = withFileAtFault(meet('bowler.grip'), { bowler: 'me.json', ball: 'new.json' }) as Refusal;
  expect(found).toBeInstanceOf(Refusal);
  expect(found.source).toBe('me.json');
  expect(found.statements[0]?.params).toMatchObject({ field: 'grip', hole: 'middle' });
});

test('one of an earlier drilling names the ball’s', () => {
  const found = withFileAtFault(meet('ball.drilledBefore[0].grip'), { bowler: 'me.json', ball: 'old.json' });
  expect((found as Refusal).source).toBe('old.json');
});

test('what names no record, or one that no flag named, is left as it is', () => {
  for (const error of [meet('bowler.grip'), meet('layout'), new Error('other')])
    expect(withFileAtFault(error, { ball: 'new.json' })).toBe(error);
});
